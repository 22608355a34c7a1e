import type { SavedVersion } from '../../store/records.ts';
import { amount, momentText, short } from '../../ui/format.ts';

interface Props {
  versions: readonly SavedVersion[];
  onTake(version: SavedVersion): void;
}

/** Earlier states of this recipe; taking one up changes nothing until it is saved. */
export function Versions({ versions, onTake }: Props) {
  if (versions.length === 0) return null;
  return (
    <section class="no-print" aria-labelledby="versions-title">
      <h2 id="versions-title">Earlier versions</h2>
      <ul class="saved">
        {versions.map((version) => {
          const net = version.adaptation.after.perServing.netCarbsG;
          return (
            <li key={version.id}>
              <span>{momentText(version.savedAt)}</span>
              <span class="figure">
                {net ? `${amount(net.best)} g` : 'not known'} net carbs, budget{' '}
                {short(version.goals.budgetG)} g, {version.adaptation.after.servings} servings
              </span>
              <button type="button" onClick={() => onTake(version)}>
                Take up again
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
