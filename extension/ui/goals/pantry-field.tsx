/** Plans with nothing but what is at home, and the list of it. */

import { useEffect, useRef } from 'preact/hooks';
import type { FoodTable } from '../../../engine/index.ts';
import type { Adaptation, Goals } from '../../../engine/model.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { FoodPicker } from '../controls/food-picker.tsx';
import type { Pantry } from '../hooks/use-pantry.ts';
import { foodWord } from '../words/food-words.ts';
import { say, sayCount } from '../words/say.ts';

interface Props {
  adaptation: Adaptation;
  /** What is asked now; the adaptation may still answer an earlier question. */
  goals: Goals;
  table: FoodTable;
  pantry: Pantry;
  onGoals(goals: Partial<Goals>): void;
}

/** Foods this plan brings in that are not on the list yet. */
function newFoods({ plan }: Adaptation, pantry: Pantry): { foodId: string; food: string }[] {
  const here = new Set(pantry.foods.map(({ foodId }) => foodId));
  const brought = plan.swaps.flatMap(({ to }) => to);
  const missing = brought.filter(({ foodId }) => foodId !== 'water' && !here.has(foodId));
  return [...new Map(missing.map((one) => [one.foodId, one])).values()];
}

export function PantryField({ adaptation, goals, table, pantry, onGoals }: Props) {
  const on = goals.pantry !== null;
  const ids = pantry.foods.map(({ foodId }) => foodId);
  const listed = ids.join();
  const summary = useRef<HTMLElement>(null);
  // A pressed button of the list is gone then; focus stays at the list's head.
  const changing = (change: () => void) => {
    change();
    summary.current?.focus();
  };
  const behind = goals.pantry !== null && goals.pantry.join() !== listed;
  // A change of the list is worked in at once; a recipe saved with another list is not changed unasked.
  const before = useRef(listed);
  useEffect(() => {
    if (before.current !== listed && behind) onGoals({ pantry: ids });
    before.current = listed;
  }, [listed]);
  return (
    <div class="pantry">
      <label class="tick">
        <input
          type="checkbox"
          checked={on}
          onChange={({ currentTarget }) => onGoals({ pantry: currentTarget.checked ? ids : null })}
        />
        <span>{say('onlyAtHome')}</span>
      </label>
      {behind && (
        <p>
          {say('otherPantryList')}{' '}
          <button type="button" class="button" onClick={() => onGoals({ pantry: ids })}>
            {say('planWithList')}
          </button>
        </p>
      )}
      <details class="plain-fold">
        <summary ref={summary}>
          {ids.length === 0 ? say('nothingAtHome') : sayCount('listedAtHome', ids.length)}
        </summary>
        <FailureLine text={pantry.failure} />
        <ul class="chips">
          {pantry.foods.map(({ foodId, foodName }) => (
            <li key={foodId}>
              <span>{foodWord(foodId, foodName)}</span>
              <button
                type="button"
                class="button bare"
                onClick={() => changing(() => pantry.take(foodId))}
              >
                {say('remove')}
                <span class="hidden">: {foodWord(foodId, foodName)}</span>
              </button>
            </li>
          ))}
        </ul>
        {newFoods(adaptation, pantry).map(({ foodId, food }) => (
          <button
            key={foodId}
            type="button"
            class="button"
            onClick={() => changing(() => pantry.add({ foodId, foodName: food }))}
          >
            {say('iHave', foodWord(foodId, food))}
          </button>
        ))}
        <FoodPicker
          label={say('anotherAtHome')}
          table={table}
          onPick={({ id, name }) => pantry.add({ foodId: id, foodName: name })}
        />
      </details>
    </div>
  );
}
