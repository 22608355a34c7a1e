/** Logged bakes, latest first. */
import type { Adaptation } from '../../../engine/model.ts';
import type { Store } from '../../store/db.ts';
import { photoOfBake } from '../../store/kept/photos.ts';
import type { Bake } from '../../store/records.ts';
import { dayText, short } from '../figures/format.ts';
import { PhotoPart } from '../photo/photo-part.tsx';
import { say } from '../words/say.ts';
import { dishText, kitchenText, pieceText, symptomLabels } from './bake-summary.ts';
import type { Heat } from './heat-scale.ts';
import { HOW_WORDS } from './how-was-it.tsx';

interface Props {
  store: Store;
  bakes: readonly Bake[];
  adaptation: Adaptation;
  heat: Heat;
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
      {say('reckonedWith', short(servings))}{' '}
      <button type="button" class="button" onClick={() => onServings(cut)}>
        {say('reckonWith', short(cut))}
      </button>
    </p>
  );
}

export function BakeList({ store, bakes, adaptation, heat, onServings, onRemove }: Props) {
  return (
    <ul class="bakes">
      {bakes.map((bake) => {
        const family = adaptation.plan.family.id;
        const wrong = symptomLabels(bake, family);
        return (
          <li key={bake.id}>
            <p class="bake-head">
              <strong>{dayText(bake.day)}</strong>
              {bake.how && <span>{say(HOW_WORDS[bake.how])}</span>}
              <span class="soft">{say('budgetOf', short(bake.baked.goals.budgetG))}</span>
              <button type="button" class="button bare" onClick={() => onRemove(bake)}>
                {say('remove')}
                <span class="hidden">{say('ofFood', dayText(bake.day))}</span>
              </button>
            </p>
            {[dishText(bake, family), pieceText(bake), kitchenText(bake, heat)].map(
              (text) => text && <p key={text}>{text}</p>,
            )}
            <AsCut bake={bake} servings={adaptation.after.servings} onServings={onServings} />
            <p>{wrong.length === 0 ? say('nothingWrong') : say('notRight', wrong.join(', '))}</p>
            {bake.notes !== '' && <p class="bake-notes">{bake.notes}</p>}
            <PhotoPart store={store} id={photoOfBake(bake.id)} of={dayText(bake.day)} />
          </li>
        );
      })}
    </ul>
  );
}
