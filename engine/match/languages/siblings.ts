/** The same food in another state: 'lentils-dry' canned is 'lentils-canned'. */
import type { FoodTable } from '../../foods/index.ts';
import type { Food } from '../../model.ts';
import siblings from '../data/siblings.json' with { type: 'json' };
import type { State } from '../name-words.ts';

const LISTED: Readonly<Record<string, Partial<Record<State, string>>>> = siblings;
const STATE_ENDS = /-(?:dry|dried|canned|cooked|frozen|fresh)$/;
const ENDS: Readonly<Record<State, readonly string[]>> = {
  canned: ['-canned'],
  cooked: ['-cooked'],
  dry: ['-dry', '-dried'],
  frozen: ['-frozen'],
  raw: ['-fresh', ''],
};

/** `food` itself when the table has it in no such state. */
export function inState(food: Food, state: State, foods: FoodTable): Food {
  if (food.state === state) return food;
  const listed = Object.hasOwn(LISTED, food.id) ? LISTED[food.id]?.[state] : undefined;
  const stem = food.id.replace(STATE_ENDS, '');
  const ids = listed ? [listed] : ENDS[state].map((end) => stem + end);
  for (const id of ids) {
    const found = foods.byId(id);
    if (found) return found;
  }
  return food;
}
