/** The list as plain lines, to be pasted into a note or a message. */
import { unrun } from '../../../engine/export/shared-parts.ts';
import { gramsOnScale } from '../figures/sources/source-words.ts';
import { say } from '../words/say.ts';
import { AISLES, type Aisle, type ToBuy } from './buy-list.ts';

export const AISLE_TITLES = {
  seldom: 'aisleSeldom',
  grocer: 'aisleGrocer',
  usual: 'aisleUsual',
} as const satisfies Record<Aisle, string>;

export function buyText(titles: readonly string[], foods: readonly ToBuy[]): string {
  const parts = AISLES.flatMap((aisle) => {
    const rows = foods.filter((one) => one.aisle === aisle);
    if (rows.length === 0) return [];
    return [
      '',
      say(AISLE_TITLES[aisle]),
      ...rows.map(({ food, grams }) => `• ${food}, ${gramsOnScale(grams)} g`),
    ];
  });
  return [unrun(titles.join(', ')), ...parts].join('\n');
}
