/** What is in the user's kitchen: packages, foods at home, names, and what is never used. */

import { foodTable } from '../../../../engine/index.ts';
import { FoodPicker } from '../../../ui/controls/food-picker.tsx';
import { NamesList } from '../../../ui/packages/names-list.tsx';
import { say } from '../../../ui/words/say.ts';
import type { PlaceProps } from '../kitchen.ts';
import { Packages } from './packages-part.tsx';

function AtHome({ kitchen }: Pick<PlaceProps, 'kitchen'>) {
  const { pantry, own } = kitchen;
  return (
    <section class="at-home" aria-labelledby="home-title">
      <h2 id="home-title">{say('atHome')}</h2>
      {pantry.failure && (
        <p role="alert" class="failure">
          {pantry.failure}
        </p>
      )}
      {pantry.foods.length === 0 && <p class="soft">{say('nothingAtHome')}</p>}
      <ul class="chips">
        {pantry.foods.map(({ foodId, foodName }) => (
          <li key={foodId}>
            <span>{foodName}</span>
            <button type="button" class="button bare" onClick={() => pantry.take(foodId)}>
              {say('remove')}
              <span class="hidden">: {foodName}</span>
            </button>
          </li>
        ))}
      </ul>
      <FoodPicker
        label={say('anotherAtHome')}
        table={foodTable(own.foods)}
        onPick={({ id, name }) => pantry.add({ foodId: id, foodName: name })}
      />
    </section>
  );
}

function NeverUsed({ kitchen }: Pick<PlaceProps, 'kitchen'>) {
  const { preferences, prefer, own } = kitchen;
  const { never } = preferences;
  const without = (id: string) => never.filter(({ foodId }) => foodId !== id);
  return (
    <section class="never-used" aria-labelledby="never-title">
      <h2 id="never-title">{say('neverUsed')}</h2>
      <p class="soft">{say('neverUsedHow')}</p>
      <ul class="chips">
        {never.map(({ foodId, foodName }) => (
          <li key={foodId}>
            <span>{foodName}</span>
            <button
              type="button"
              class="button bare"
              onClick={() => prefer({ never: without(foodId) })}
            >
              {say('allow')}
              <span class="hidden">: {foodName}</span>
            </button>
          </li>
        ))}
      </ul>
      <FoodPicker
        label={say('anotherNever')}
        table={foodTable(own.foods)}
        onPick={({ id, name }) =>
          prefer({ never: [...without(id), { foodId: id, foodName: name }] })
        }
      />
    </section>
  );
}

export function CupboardPlace({ kitchen }: PlaceProps) {
  return (
    <section class="place">
      <h1>{say('placeCupboard')}</h1>
      <Packages store={kitchen.store} own={kitchen.own} onChanged={kitchen.setOwn} />
      <AtHome kitchen={kitchen} />
      <NeverUsed kitchen={kitchen} />
      <NamesList names={kitchen.names} />
    </section>
  );
}
