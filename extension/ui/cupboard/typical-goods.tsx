/** What most reworked recipes ask for and is not at home yet: what it is, its other names, how it keeps. */
import type { FoodTable } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';
import type { Pantry } from '../hooks/use-pantry.ts';
import { foodWord } from '../words/food-words.ts';
import { capital, say } from '../words/say.ts';
import { notedGoods, shelfNote } from './shelf-notes.ts';

interface Props {
  pantry: Pantry;
  table: FoodTable;
  /** Ids of foods that are never used: they are not missed either. */
  never: ReadonlySet<string>;
}

function Good({ food, onHave }: { food: Food; onHave(): void }) {
  const note = shelfNote(food.id);
  return (
    <li class="good">
      <div>
        <b>{capital(foodWord(food.id, food.name))}</b>
        {note && (
          <p class="soft">
            {capital(note.is)}. {say('alsoCalled', note.called)} {say('storedHow', note.storing)}
          </p>
        )}
      </div>
      <button type="button" class="button" onClick={onHave}>
        {say('haveIt')}
        <span class="hidden">{say('ofFood', foodWord(food.id, food.name))}</span>
      </button>
    </li>
  );
}

export function TypicalGoods({ pantry, table, never }: Props) {
  const atHome = new Set(pantry.foods.map(({ foodId }) => foodId));
  const missing = notedGoods()
    .filter((id) => !atHome.has(id) && !never.has(id))
    .flatMap((id) => table.byId(id) ?? []);
  if (missing.length === 0) return <p class="soft">{say('allTypicalThere')}</p>;
  return (
    <ul class="goods">
      {missing.map((food) => (
        <Good
          key={food.id}
          food={food}
          onHave={() => pantry.add({ foodId: food.id, foodName: food.name })}
        />
      ))}
    </ul>
  );
}
