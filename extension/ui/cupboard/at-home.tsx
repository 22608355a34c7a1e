/** What is at home: plans can keep to it, and it is not on the list of what to buy. */

import type { FoodTable } from '../../../engine/index.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { FoodPicker } from '../controls/food-picker.tsx';
import type { Pantry } from '../hooks/use-pantry.ts';
import { say } from '../words/say.ts';
import { FoodChips } from './food-chips.tsx';

export function AtHome({ pantry, table }: { pantry: Pantry; table: FoodTable }) {
  return (
    <section class="at-home" aria-labelledby="home-title">
      <h2 id="home-title">{say('atHome')}</h2>
      <FailureLine text={pantry.failure} />
      {pantry.foods.length === 0 && <p class="soft">{say('nothingAtHome')}</p>}
      <FoodChips
        foods={pantry.foods}
        act={say('remove')}
        onAct={({ foodId }) => pantry.take(foodId)}
      />
      <FoodPicker
        label={say('anotherAtHome')}
        table={table}
        onPick={({ id, name }) => pantry.add({ foodId: id, foodName: name })}
      />
    </section>
  );
}
