import type { Adaptation } from '../../engine/model.ts';
import type { Bake } from '../store/records.ts';
import { dishText, pieceText, symptomLabels } from './bake-figures.ts';
import { dayText, short } from './format.ts';

interface Props {
  bakes: readonly Bake[];
  adaptation: Adaptation;
  onServings(servings: number): void;
  onRemove(bake: Bake): void;
}

/** Logged bakes, latest first. */
export function BakeList({ bakes, adaptation, onServings, onRemove }: Props) {
  return (
    <ul class="bakes">
      {bakes.map((bake) => {
        const wrong = symptomLabels(bake, adaptation.plan.family.id);
        return (
          <li key={bake.id}>
            <p class="bake-head">
              <strong>{dayText(bake.day)}</strong>
              <span class="quiet">budget {bake.baked.goals.budgetG} g</span>
              <button type="button" onClick={() => onRemove(bake)}>
                Remove<span class="hidden"> the bake of {dayText(bake.day)}</span>
              </button>
            </p>
            {[dishText(bake), pieceText(bake)].map((text) => text && <p key={text}>{text}</p>)}
            {bake.pieces !== null && bake.pieces !== adaptation.after.servings && (
              <p>
                The figures above are for {short(adaptation.after.servings)} servings.{' '}
                <button type="button" onClick={() => onServings(bake.pieces ?? 1)}>
                  Reckon with {short(bake.pieces)}
                </button>
              </p>
            )}
            <p>{wrong.length === 0 ? 'Nothing was wrong.' : `Not right: ${wrong.join(', ')}.`}</p>
            {bake.notes !== '' && <p class="bake-notes">{bake.notes}</p>}
          </li>
        );
      })}
    </ul>
  );
}
