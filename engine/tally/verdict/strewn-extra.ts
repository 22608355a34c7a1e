/** Sugar that a counted line has more of to taste, for dusting or sprinkling: 'plus more to taste' has no amount. */
import type { Ingredient, MissingLine } from '../../model.ts';
import data from '../data/missing-kinds.json' with { type: 'json' };
import { between, bounds, kindOf, plainText, times } from './missing-kinds.ts';

const EXTRA =
  /\b(?:(?:plus|and|with) )?(?:(?:a (?:little|bit) |some )?(?:extra|more)|etwas mehr|etwas extra|un peu plus|un poco mas|wat extra)\b[^,;()]{0,12}?\b(?:to|for|zum|pour|para|om te|voor)\b[^,;()]{0,8}?\b(?:dust|sprinkl|strew|roll|coat|finish|top\b|topping|taste|sweeten|drizzl|bestauben|bestreuen|saupoudrer|espolvorear|bestrooien|bestuiven)[a-z]*/;

/** Crystals of sugar, g of carbohydrate in 100 g. */
const SUGAR_PER_100 = [95, 100] as const;

function extraOf({ key, line, item, weight, match }: Ingredient): MissingLine | null {
  const found = EXTRA.exec(plainText(line.text))?.[0];
  if (found === undefined || weight === null || match === null || line.optional) return null;
  if (kindOf(item.name)?.kind !== 'sugar or syrup') return null;
  return {
    key,
    text: `${item.name}, ${found}`,
    why: 'what is strewn over has no amount',
    kind: 'sugar or syrup',
    netCarbsG: between(times(bounds(data.strewnExtra.serving), SUGAR_PER_100)),
  };
}

/** What is strewn over beside a counted amount of the same sugar. */
export const strewnExtras = (ingredients: readonly Ingredient[]): MissingLine[] =>
  ingredients.flatMap((ingredient) => extraOf(ingredient) ?? []);
