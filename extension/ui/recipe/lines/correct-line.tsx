/** Puts a line right: another food, or its grams. */
import { useRef, useState } from 'preact/hooks';
import type { FoodTable } from '../../../../engine/index.ts';
import type { Corrections, Ingredient } from '../../../../engine/model.ts';
import { FoodPicker } from '../../controls/food-picker.tsx';
import { Stepper } from '../../controls/stepper.tsx';
import { gramsOnScale } from '../../figures/sources/source-words.ts';
import type { Names } from '../../hooks/use-names.ts';
import { foodWord } from '../../words/food-words.ts';
import { say } from '../../words/say.ts';
import { NextTime } from './next-time.tsx';
import { differenceText, type Tie } from './tied-foods.ts';

export type Correction = Corrections[string];

interface Props {
  ingredient: Ingredient;
  correction: Correction | undefined;
  table: FoodTable;
  /** What else the line may be, when that is worth telling. */
  ties: readonly Tie[];
  names: Names;
  /** The choice of another food is open. */
  choosing: boolean;
  onChoosing(open: boolean): void;
  onCorrect(correction: Correction | null): void;
}

/** A scale's step that suits the amount, g: own choice. */
export const scaleStep = (grams: number): number => (grams >= 200 ? 10 : grams >= 40 ? 5 : 1);

function Ties({ ties, onPick }: { ties: readonly Tie[]; onPick(foodId: string): void }) {
  if (ties.length === 0) return null;
  return (
    <div class="ties">
      <p>{say('mayAlsoBe')}</p>
      <ul>
        {ties.map(({ foodId, foodName, differenceG }) => (
          <li key={foodId}>
            <button type="button" class="choice" onClick={() => onPick(foodId)}>
              <b>{foodWord(foodId, foodName)}</b>
              <span>{differenceText(differenceG)}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** The grams of the page's line; what is not known waits to be typed. */
function Grams({
  ingredient,
  correction,
  onCorrect,
}: Pick<Props, 'ingredient' | 'correction' | 'onCorrect'>) {
  const { weight, item } = ingredient;
  const known = correction?.grams ?? (weight ? Number(weight.grams.best.toPrecision(3)) : null);
  const [asked, setAsked] = useState(false);
  if (known === null && !asked) {
    return (
      <button type="button" class="button" onClick={() => setAsked(true)}>
        {say('sayGrams')}
      </button>
    );
  }
  const grams = known ?? 0;
  return (
    <Stepper
      label={say('gramsOf', item.name)}
      unit="g"
      caption={say('inThePage')}
      value={grams}
      min={0}
      max={100_000}
      step={scaleStep(grams)}
      onValue={(next) => onCorrect({ ...correction, grams: next })}
    />
  );
}

export function CorrectLine(props: Props) {
  const { ingredient, correction, table, ties, names, choosing, onChoosing, onCorrect } = props;
  const opener = useRef<HTMLButtonElement>(null);
  const { item, match } = ingredient;
  const chosen = correction?.foodId === undefined ? null : table.byId(correction.foodId);
  const pick = (foodId: string) => {
    onCorrect({ ...correction, foodId });
    onChoosing(false);
    // The pressed button is gone now; focus must not fall back to the page.
    opener.current?.focus();
  };
  return (
    <div class="correct">
      <p class="soft">
        {match
          ? say(
              'readAs',
              foodWord(match.foodId, match.foodName),
              ingredient.weight ? gramsOnScale(ingredient.weight.grams.best) : '–',
            )
          : say('notRecognised')}
      </p>
      <div class="acts">
        <Grams ingredient={ingredient} correction={correction} onCorrect={onCorrect} />
        <button
          type="button"
          class="button"
          ref={opener}
          aria-expanded={choosing}
          onClick={() => onChoosing(!choosing)}
        >
          {say('anotherFood')}
        </button>
        {correction && (
          <button type="button" class="button bare" onClick={() => onCorrect(null)}>
            {say('takeBack')}
          </button>
        )}
      </div>
      {choosing && (
        <>
          <Ties ties={ties} onPick={pick} />
          <FoodPicker
            label={say('whichFood', item.name)}
            table={table}
            onPick={({ id }) => pick(id)}
          />
        </>
      )}
      {chosen && <NextTime name={item.name} food={chosen} names={names} />}
    </div>
  );
}
