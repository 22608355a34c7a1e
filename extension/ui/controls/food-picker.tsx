/** A food of the table by typed words. */
import { useId, useState } from 'preact/hooks';
import type { FoodTable } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';
import { foodWord } from '../words/food-words.ts';
import { say } from '../words/say.ts';
import { searchFoods } from './food-search.ts';

interface Props {
  label: string;
  table: FoodTable;
  onPick(food: Food): void;
}

export function FoodPicker({ label, table, onPick }: Props) {
  const id = useId();
  const [query, setQuery] = useState('');
  const found = searchFoods(table.foods, query);
  return (
    <div class="food-picker">
      <div class="field">
        <label for={id}>{label}</label>
        <input
          id={id}
          type="search"
          autocomplete="off"
          placeholder={say('typeToSearch')}
          value={query}
          onInput={({ currentTarget }) => setQuery(currentTarget.value)}
        />
      </div>
      {query.trim().length >= 2 && (
        <ul class="found" aria-label={say('foodsFound')}>
          {found.map((food) => (
            <li key={food.id}>
              <button
                type="button"
                class="choice"
                onClick={() => {
                  onPick(food);
                  setQuery('');
                  // The pressed button is gone now; focus must not fall back to the page.
                  document.getElementById(id)?.focus();
                }}
              >
                <b>{foodWord(food.id, food.name)}</b>
              </button>
            </li>
          ))}
          {found.length === 0 && <li>{say('noSuchFood')}</li>}
        </ul>
      )}
    </div>
  );
}
