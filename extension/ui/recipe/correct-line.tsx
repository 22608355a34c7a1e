import { useId, useRef, useState } from 'preact/hooks';
import type { FoodTable } from '../../../engine/foods/index.ts';
import type { Corrections, Ingredient } from '../../../engine/model.ts';
import { searchFoods } from '../controls/food-search.ts';
import { NumberField } from '../controls/number-field.tsx';
import { gramsOnScale } from '../figures/source-words.ts';
import type { Names } from '../hooks/use-names.ts';
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
  onCorrect(correction: Correction | null): void;
}

interface Choice {
  id: string;
  name: string;
}

function choicesOf({ match }: Ingredient, correction: Correction | undefined, table: FoodTable) {
  const choices = new Map<string, string>();
  const add = ({ id, name }: Choice) => {
    if (!choices.has(id)) choices.set(id, name);
  };
  if (match) add({ id: match.foodId, name: match.foodName });
  for (const other of match?.others ?? []) add({ id: other.foodId, name: other.foodName });
  const own = correction?.foodId === undefined ? null : table.byId(correction.foodId);
  if (own) add(own);
  return [...choices].map(([id, name]) => ({ id, name }));
}

/** Puts a line right: another food, or its grams. */
export function CorrectLine(props: Props) {
  const { ingredient, correction, table, ties, names, onCorrect } = props;
  const id = useId();
  const [query, setQuery] = useState('');
  const select = useRef<HTMLSelectElement>(null);
  const choices = choicesOf(ingredient, correction, table);
  const chosen = correction?.foodId ?? ingredient.match?.foodId ?? '';
  const found = searchFoods(table.foods, query);
  const pick = (foodId: string) => {
    onCorrect({ ...correction, foodId });
    setQuery('');
    // The pressed button is gone now; focus must not fall back to the page.
    select.current?.focus();
  };
  const takeBack = () => {
    onCorrect(null);
    select.current?.focus();
  };
  const { weight } = ingredient;
  const name = ingredient.item.name;
  const chosenFood = correction?.foodId === undefined ? null : table.byId(correction.foodId);
  return (
    <div class="correct">
      {ties.length > 0 && (
        <div class="ties">
          <p>It may also be, with what that changes in a serving of the original:</p>
          <ul>
            {ties.map(({ foodId, foodName, differenceG }) => (
              <li key={foodId}>
                <button type="button" onClick={() => pick(foodId)}>
                  {foodName}: {differenceText(differenceG)}
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
      <div class="field">
        <label for={`${id}-food`}>
          Food<span class="hidden"> for {name}</span>
        </label>
        <select
          ref={select}
          id={`${id}-food`}
          value={chosen}
          onChange={(event) => event.currentTarget.value !== '' && pick(event.currentTarget.value)}
        >
          {chosen === '' && <option value="">none found</option>}
          {choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {choice.name}
            </option>
          ))}
        </select>
      </div>
      <div class="field">
        <label for={`${id}-search`}>
          Another food<span class="hidden"> for {name}</span>
        </label>
        <input
          id={`${id}-search`}
          type="search"
          autocomplete="off"
          placeholder="type to search"
          value={query}
          onInput={(event) => setQuery(event.currentTarget.value)}
        />
      </div>
      <NumberField
        label="Grams"
        unit="g"
        value={correction?.grams ?? (weight ? Number(gramsOnScale(weight.grams.best)) : null)}
        min={0}
        max={100000}
        onValue={(grams) => onCorrect({ ...correction, grams })}
      />
      {query.trim().length >= 2 && (
        <ul class="found" aria-label="Foods found">
          {found.map((food) => (
            <li key={food.id}>
              <button type="button" onClick={() => pick(food.id)}>
                {food.name}
              </button>
            </li>
          ))}
          {found.length === 0 && <li>No such food in the table.</li>}
        </ul>
      )}
      {chosenFood && <NextTime name={name} food={chosenFood} names={names} />}
      {correction && (
        <button type="button" onClick={takeBack}>
          Take back<span class="hidden"> the correction of {name}</span>
        </button>
      )}
    </div>
  );
}
