/** Rows that keep a dish what its title says: a food that is named there stays, or gives way to its own kind. */

import type { Part } from '../../dish/dish.ts';
import { sameKind, titleFoods } from '../../dish/title-foods.ts';
import type { Change } from '../expressions.ts';
import type { Builder } from '../row-builder.ts';

/** Least share of a food named in the title that stays: a third, and room for rounding. Own choice. */
const LEAST = 0.35;
/** The same for fruit in a bake, whose taste is the bake's (common practice, no source). */
const LEAST_FRUIT_IN_BAKES = 0.6;

function leastShare(b: Builder, parts: readonly Part[]): number {
  const baked = parts.some((part) => b.dish.sections[part.section]?.dough === true);
  return baked && parts.every(({ role }) => role === 'fruit') ? LEAST_FRUIT_IN_BAKES : LEAST;
}

/** A stem as the title has it, where that is the longer: 'milchreis' of 'milchrei'. */
function asTitled(word: string, title: string): string {
  const whole: readonly string[] = title.toLowerCase().match(/\p{L}+/gu) ?? [];
  return whole.includes(word) ? word : (whole.find((one) => one === `${word}s`) ?? word);
}

/** For each food of the title: what stays of it, and what its own kind puts in its place. */
export function identityRows(b: Builder): void {
  for (const [word, parts] of titleFoods(b.dish)) {
    const original = new Map(parts.map((part) => [part.key, part.food]));
    const stays = (c: Change): number => {
      const food = c.key === null ? undefined : original.get(c.key);
      return food !== undefined && sameKind(food, c.food) ? 1 : 0;
    };
    const all = parts.reduce((sum, part) => sum + part.grams, 0);
    b.floor(
      `title ${word}`,
      b.sum(stays, all),
      leastShare(b, parts),
      `The title says ${asTitled(word, b.dish.title)}, so at least part of it stays.`,
    );
  }
}
