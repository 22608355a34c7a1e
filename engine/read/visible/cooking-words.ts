/** Tells a recipe from other lists with amounts: by the work its text speaks of, and by what nobody eats. */
import { withoutAccents } from '../../accents.ts';
import words from '../data/cook-words.json' with { type: 'json' };
import { listed } from '../values/word-lists.ts';

const SIGNS = listed(words.signs);
const STEMS = listed(words.stems).map(withoutAccents);
const NOT_FOOD = new RegExp(
  `(?:^|\\s)(?:${listed(words.notFood).map(withoutAccents).join('|')})(?:$|[\\s,])`,
);
/** Units of workshops and laboratories. */
const TECHNICAL = /\d\s?(?:[µμ]l|mmol|mol|rpm|[WV])(?![A-Za-z])/;
/** Different words of kitchen work that make a text a method; one will do for a short one (own choice). */
const ENOUGH = 2;
const SHORT = 200;
/** Characters of a text looked at. */
const SAMPLE = 3_000;

/** True when a text speaks of kitchen work, in any of the languages read. */
export function speaksOfCooking(texts: readonly string[]): boolean {
  const sample = withoutAccents(texts.join(' ').slice(0, SAMPLE).toLowerCase());
  const enough = sample.length < SHORT ? 1 : ENOUGH;
  const found = new Set(SIGNS.filter((sign) => sample.includes(sign)));
  for (const word of sample.split(/[^a-z\u00df-\u1fff]+/)) {
    const stem = word.length < 3 ? undefined : STEMS.find((one) => word.startsWith(one));
    if (stem !== undefined) found.add(stem);
    if (found.size >= enough) return true;
  }
  return found.size >= enough;
}

/** True when a line names what no dish holds, such as the lye of a soap. */
export function namesNoFood(lines: readonly string[]): boolean {
  return lines.some(
    (line) => TECHNICAL.test(line) || NOT_FOOD.test(withoutAccents(line.toLowerCase())),
  );
}
