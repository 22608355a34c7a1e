/** Foods that are never added to a recipe. */
import type { FoodTable } from '../../../engine/index.ts';
import type { PantryFood } from '../../store/pantry-food.ts';
import { FoodPicker } from '../controls/food-picker.tsx';
import { say } from '../words/say.ts';
import { FoodChips } from './food-chips.tsx';

interface Props {
  never: readonly PantryFood[];
  table: FoodTable;
  onNever(never: PantryFood[]): void;
}

export function NeverUsed({ never, table, onNever }: Props) {
  const without = (id: string) => never.filter(({ foodId }) => foodId !== id);
  return (
    <section class="never-used" aria-labelledby="never-title">
      <h2 id="never-title">{say('neverUsed')}</h2>
      <p class="soft">{say('neverUsedHow')}</p>
      <FoodChips
        foods={never}
        act={say('allow')}
        onAct={({ foodId }) => onNever(without(foodId))}
      />
      <FoodPicker
        label={say('anotherNever')}
        table={table}
        onPick={({ id, name }) => onNever([...without(id), { foodId: id, foodName: name }])}
      />
    </section>
  );
}
