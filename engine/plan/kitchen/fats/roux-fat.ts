/** Less of the butter of a roux whose flour gives way to a gum: what no flour takes up stands on the sauce. */
import { hasTag } from '../../../foods/tags.ts';
import data from '../../data/partners.json' with { type: 'json' };
import type { Dish, Part } from '../../dish/dish.ts';
import { fat } from '../../dish/food-figures.ts';
import { near, stepFor, tidy } from '../kitchen-steps.ts';
import type { Amount } from '../planned-masses.ts';
import { PLAIN_FAT } from './own-fat.ts';

const { leastFlourGrams, mostFatOfFlour, keeps } = data.rouxFat;

const BECAUSE = 'There is less flour to take it up.';

const isRouxFlour = ({ role, class: cls, grams }: Part): boolean =>
  role === 'thickener' && cls.endsWith('flours') && grams >= leastFlourGrams;

const isMeltedWith = (line: Part, flour: Part): boolean =>
  line.role === 'fat' &&
  !line.fixed &&
  line.section === flour.section &&
  fat(line.food) > PLAIN_FAT &&
  line.grams <= mostFatOfFlour * flour.grams &&
  flour.steps.split('\n').some((step) => step !== '' && line.steps.includes(step));

/** Share of a roux's flour that is left beside a gum; 1 where no gum stands in. */
function flourLeft({ key, grams }: Part, amounts: readonly Amount[]): number {
  const own = amounts.filter((one) => one.key === key);
  if (!own.some(({ origin, food }) => origin === 'swap' && hasTag(food, 'gum'))) return 1;
  const kept = own.reduce((sum, one) => sum + (one.origin === 'kept' ? one.grams : 0), 0);
  return kept / grams;
}

/** The amounts of a dish with the fat of its roux in step with the flour. */
export function withRouxFat(amounts: readonly Amount[], { parts }: Dish): Amount[] {
  let now = [...amounts];
  for (const flour of parts.filter(isRouxFlour)) {
    const share = Math.max(keeps, flourLeft(flour, amounts));
    const line = share < 1 ? parts.find((part) => isMeltedWith(part, flour)) : undefined;
    if (line === undefined) continue;
    const grams = tidy(near(line.grams * share, stepFor('fat', line.grams * share)));
    now = now.map((one) =>
      one.key === line.key && one.origin === 'kept' && grams < one.grams
        ? { ...one, grams, because: BECAUSE }
        : one,
    );
  }
  return now;
}
