import type { Adaptation } from '../../../engine/model.ts';
import type { Bake } from '../../store/records.ts';
import { dayText, short } from '../figures/format.ts';
import { dishText, pieceText, symptomLabels } from './bake-summary.ts';

interface Props {
  bakes: readonly Bake[];
  adaptation: Adaptation;
  onServings(servings: number): void;
  onRemove(bake: Bake): void;
}

interface CutProps {
  bake: Bake;
  servings: number;
  onServings(servings: number): void;
}

/** Another number of servings was cut than the recipe is reckoned with. */
function AsCut({ bake, servings, onServings }: CutProps) {
  if (bake.pieces === null) return null;
  // A double recipe cut in 24 is one cut in 12.
  const cut = Math.round((bake.pieces / bake.factor) * 2) / 2;
  if (cut === servings || cut === 0) return null;
  return (
    <p>
      The recipe is reckoned with {short(servings)} servings.{' '}
      <button type="button" onClick={() => onServings(cut)}>
        Reckon with {short(cut)}
      </button>
    </p>
  );
}

/** Logged bakes, latest first. */
export function BakeList({ bakes, adaptation, onServings, onRemove }: Props) {
  return (
    <ul class="bakes">
      {bakes.map((bake) => {
        const family = adaptation.plan.family.id;
        const wrong = symptomLabels(bake, family);
        return (
          <li key={bake.id}>
            <p class="bake-head">
              <strong>{dayText(bake.day)}</strong>
              <span class="quiet">budget {bake.baked.goals.budgetG} g</span>
              <button type="button" onClick={() => onRemove(bake)}>
                Remove<span class="hidden"> the bake of {dayText(bake.day)}</span>
              </button>
            </p>
            {[dishText(bake, family), pieceText(bake)].map(
              (text) => text && <p key={text}>{text}</p>,
            )}
            <AsCut bake={bake} servings={adaptation.after.servings} onServings={onServings} />
            <p>{wrong.length === 0 ? 'Nothing was wrong.' : `Not right: ${wrong.join(', ')}.`}</p>
            {bake.notes !== '' && <p class="bake-notes">{bake.notes}</p>}
          </li>
        );
      })}
    </ul>
  );
}
