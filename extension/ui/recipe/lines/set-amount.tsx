/** How much of a food is taken in the reworked recipe, set by the user on its line. */
import type { ComponentChildren } from 'preact';
import { splitKey } from '../../../../engine/index.ts';
import type { Adaptation, PlannedItem, SetAmount } from '../../../../engine/model.ts';
import { Stepper } from '../../controls/stepper.tsx';
import { short } from '../../figures/format.ts';
import { foodWord } from '../../words/food-words.ts';
import { say } from '../../words/say.ts';
import { scaleStep } from './correct-line.tsx';
import type { IngredientRow } from './ingredient-rows.ts';
import type { LineActions } from './line-actions.ts';

interface Settable {
  item: Pick<PlannedItem, 'key' | 'foodId' | 'foodName' | 'grams'>;
  set: SetAmount | null;
}

/** What can be set on a row: a food of a page's line on which something changes, or one that was added; null where nothing can. */
export function settableOn(
  { line, foodId }: Pick<IngredientRow, 'line' | 'foodId'>,
  { plan }: Pick<Adaptation, 'plan'>,
  setAmounts: readonly SetAmount[],
): Settable | null {
  const { ingredient: key } = splitKey(line.key);
  const item = plan.items.find((one) => one.key === key && one.foodId === foodId);
  if (!item) return null;
  const set = setAmounts.find((one) => one.key === key && one.foodId === foodId) ?? null;
  const changes =
    key.startsWith('new.') || plan.swaps.some((swap) => swap.key === key && swap.to.length > 0);
  return changes || set ? { item, set } : null;
}

interface Props {
  row: IngredientRow;
  adaptation: Adaptation;
  actions: LineActions;
  /** What else can be done with the amount, beside it. */
  children: ComponentChildren;
}

export function SetAmountField({ row, adaptation, actions, children }: Props) {
  const { goals, factor, onGoals } = actions;
  const found = settableOn(row, adaptation, goals.setAmounts);
  if (!found) return children ? <div class="acts">{children}</div> : null;
  const { item, set } = found;
  const others = goals.setAmounts.filter((one) => one !== set);
  const shown = Math.round((set?.grams ?? item.grams) * factor * 10) / 10;
  // What is asked now may not be answered yet; then the answer is not compared with it.
  const answered = adaptation.goals.setAmounts.some(
    (one) => one.key === set?.key && one.foodId === set.foodId && one.grams === set.grams,
  );
  const missed = set && answered && Math.abs(set.grams - item.grams) >= 0.05;
  return (
    <>
      <div class="acts">
        <Stepper
          label={say('takeOf', foodWord(item.foodId, item.foodName))}
          unit="g"
          caption={say('toTake')}
          value={shown}
          min={0}
          max={100_000}
          step={scaleStep(shown)}
          onValue={(next) =>
            onGoals({
              setAmounts: [...others, { key: item.key, foodId: item.foodId, grams: next / factor }],
            })
          }
        />
        {children}
        {set && (
          <button type="button" class="button bare" onClick={() => onGoals({ setAmounts: others })}>
            {say('workOutAgain')}
          </button>
        )}
      </div>
      {missed && (
        <p role="status">
          {say('setNotTaken', short(set.grams * factor), short(item.grams * factor))}
        </p>
      )}
    </>
  );
}
