/** Sweeteners in the order the user likes them; plans take the first that fits the dish. */
import { useId } from 'preact/hooks';
import { type FoodTable, hasTag } from '../../../engine/index.ts';
import type { PantryFood } from '../../store/pantry-food.ts';
import { foodWord } from '../words/food-words.ts';
import { locale, say } from '../words/say.ts';

interface Props {
  liked: readonly PantryFood[];
  table: FoodTable;
  onLiked(liked: PantryFood[]): void;
}

const called = ({ foodId, foodName }: PantryFood): string => foodWord(foodId, foodName);

/** What is sold to sweeten in place of sugar. */
const sweeteners = (table: FoodTable): PantryFood[] =>
  table.foods
    .filter((food) => hasTag(food, 'sweetener') && hasTag(food, 'speciality'))
    .map(({ id, name }) => ({ foodId: id, foodName: name }))
    .sort((a, b) => called(a).localeCompare(called(b), locale()));

function Liked({ liked, onLiked }: Omit<Props, 'table'>) {
  const moved = (at: number): PantryFood[] => {
    const next = [...liked];
    const [one] = next.splice(at, 1);
    if (one) next.splice(at - 1, 0, one);
    return next;
  };
  return (
    <ol class="liked">
      {liked.map((food, at) => (
        <li key={food.foodId}>
          <span>{called(food)}</span>
          {at > 0 && (
            <button type="button" class="button bare" onClick={() => onLiked(moved(at))}>
              {say('sooner')}
              <span class="hidden">{say('ofFood', called(food))}</span>
            </button>
          )}
          <button
            type="button"
            class="button bare"
            onClick={() => onLiked(liked.filter(({ foodId }) => foodId !== food.foodId))}
          >
            {say('remove')}
            <span class="hidden">{say('ofFood', called(food))}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}

export function SweetenerOrder({ liked, table, onLiked }: Props) {
  const id = useId();
  const others = sweeteners(table).filter(
    ({ foodId }) => !liked.some((one) => one.foodId === foodId),
  );
  return (
    <section class="sweeteners" aria-labelledby="sweet-title">
      <h2 id="sweet-title">{say('sweetenersTitle')}</h2>
      <p class="soft">{say('sweetenersHow')}</p>
      <Liked liked={liked} onLiked={onLiked} />
      <div class="field">
        <label for={id}>{say('anotherSweetener')}</label>
        <select
          id={id}
          value=""
          onChange={({ currentTarget }) => {
            const picked = others.find(({ foodId }) => foodId === currentTarget.value);
            if (picked) onLiked([...liked, picked]);
          }}
        >
          <option value="">{say('choose')}</option>
          {others.map((food) => (
            <option key={food.foodId} value={food.foodId}>
              {called(food)}
            </option>
          ))}
        </select>
      </div>
    </section>
  );
}
