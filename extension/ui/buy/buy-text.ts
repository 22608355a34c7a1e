/** The list as plain lines, to be pasted into a note or a message. */
import { unrun } from '../../../engine/export/shared-parts.ts';
import type { FoodTable } from '../../../engine/index.ts';
import { foodWord } from '../words/food-words.ts';
import { say } from '../words/say.ts';
import { AISLES, type Aisle, type ToBuy } from './buy-list.ts';
import { shopAmount } from './shop-amount.ts';

export const AISLE_TITLES = {
  seldom: 'aisleSeldom',
  grocer: 'aisleGrocer',
  usual: 'aisleUsual',
} as const satisfies Record<Aisle, string>;

export function buyText(
  titles: readonly string[],
  foods: readonly ToBuy[],
  table: Pick<FoodTable, 'byId'>,
): string {
  const parts = AISLES.flatMap((aisle) => {
    const rows = foods.filter((one) => one.aisle === aisle);
    if (rows.length === 0) return [];
    return [
      '',
      say(AISLE_TITLES[aisle]),
      ...rows.map(
        (one) => `• ${foodWord(one.foodId, one.food)}, ${shopAmount(one, table.byId(one.foodId))}`,
      ),
    ];
  });
  return [unrun(titles.join(', ')), ...parts].join('\n');
}
