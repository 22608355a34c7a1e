/** What the reworked dish still contains of what the user avoids, line by line. */
import { withoutAccents } from '../../accents.ts';
import type { FoodTable } from '../../foods/index.ts';
import type { Allergen, Ingredient, StillContains } from '../../model.ts';
import words from '../data/allergen-words.json' with { type: 'json' };

const WORDS: Partial<Record<Allergen, string>> = words;

const patternOf = (allergen: Allergen): RegExp | null => {
  const list = WORDS[allergen];
  return list === undefined ? null : new RegExp(`(?:^|[^a-z])(?:${list})`);
};

/** '3>oat-fibre' and 'new.egg>egg' stand for the plan's items '3' and 'new.egg'. */
const itemKey = (key: string): string => key.split('>')[0] ?? key;

const unique = (keys: readonly string[]): string[] => [...new Set(keys.map(itemKey))];

/** Is anything of it in the dish? Without a weight it is there in an unknown amount. */
const isThere = ({ weight }: Ingredient): boolean => weight === null || weight.grams.high > 0;

function textOf({ line, item }: Ingredient): string {
  const text = line.items.length > 1 ? item.name : line.text;
  return withoutAccents(text.slice(0, 500)).toLowerCase();
}

/**
 * For each avoided allergen that is in the dish, the lines that bring it, optional ones too; lines
 * without a known food count as likely when their words name it. `ingredients` are those after the
 * rework. Allergens that no line has are left out.
 */
export function stillContains(
  ingredients: readonly Ingredient[],
  avoid: readonly Allergen[],
  foods: FoodTable,
): StillContains[] {
  const there = ingredients.filter((i) => i.line.kind !== 'heading' && isThere(i));
  const foodOf = ({ match }: Ingredient) => (match ? foods.byId(match.foodId) : null);
  return avoid.flatMap((allergen): StillContains[] => {
    const pattern = patternOf(allergen);
    const known = there.filter((i) => foodOf(i)?.allergens.includes(allergen));
    const likely = there.filter((i) => foodOf(i) === null && pattern?.test(textOf(i)) === true);
    if (known.length + likely.length === 0) return [];
    return [
      {
        allergen,
        keys: unique(known.map(({ key }) => key)),
        likelyKeys: unique(likely.map(({ key }) => key)),
      },
    ];
  });
}
