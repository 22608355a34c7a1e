/** Foods as a row of names, each with a button that takes it off the list. */
import type { PantryFood } from '../../store/pantry-food.ts';
import { foodWord } from '../words/food-words.ts';
import { say } from '../words/say.ts';

interface Props {
  foods: readonly PantryFood[];
  /** On the button: 'Remove', 'Allow again'. */
  act: string;
  onAct(food: PantryFood): void;
}

export function FoodChips({ foods, act, onAct }: Props) {
  if (foods.length === 0) return null;
  return (
    <ul class="chips">
      {foods.map((food) => (
        <li key={food.foodId}>
          <span>{foodWord(food.foodId, food.foodName)}</span>
          <button type="button" class="button bare" onClick={() => onAct(food)}>
            {act}
            <span class="hidden">{say('ofFood', foodWord(food.foodId, food.foodName))}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
