/** Names that mean a part of what they name, or less than they say: juice, zest, roots without their leaves. */
import type { Item, Line } from '../../model.ts';

const CITRUS = /^(?:.* )?(lemon|lime|orange|grapefruit|clementine|tangerine|mandarin)s?$/i;

/** '1 lemon, juiced' and '1 lemon for juicing' name its juice, '1 lemon, zested' its zest; 'zest and juice' the juice. */
export function takenPart(item: Item, line: Line, named: string): string {
  const [whole = '', ...rest] = named.split(',');
  const fruit = CITRUS.exec(whole.trim())?.[1];
  const done = `${item.preparation ?? ''} ${rest.join(' ')} ${line.items.length === 1 ? `${line.note ?? ''} ${line.purpose ?? ''}` : ''}`;
  if (fruit === undefined || done.trim() === '') return named;
  if (/juic(?:e|ing)/i.test(done)) return `${fruit} juice`;
  return /zest|rind|peel(?!ed)/i.test(done) ? `${fruit} zest` : named;
}

/** What lies in a brine, whose juice is the brine. */
const IN_BRINE = /pickl|pepper|olive|caper|jalape|peperoncin|gherkin|kraut/i;

/** 'Zest of 1 lemon plus 1 tablespoon juice': the juice of what was named before it. */
export function juiceOfSame(named: string, item: Item, items: readonly Item[]): string {
  if (!/^(?:fresh )?juice$/i.test(named.trim())) return named;
  const before = items.slice(0, items.indexOf(item)).map(({ name }) => name.trim());
  const fruit = before.map((name) => CITRUS.exec(name)?.[1]).findLast((one) => one !== undefined);
  if (fruit !== undefined) return `${fruit} juice`;
  return before.some((name) => IN_BRINE.test(name)) ? 'pickle juice' : named;
}

/** 'Beets with greens', 'carrots with their tops on' name the root, not what hangs on it; nor does 'the size of a walnut' name a nut. */
const ATTACHED =
  /(?<=[a-z])\s+with (?:(?:the|their|its|some|leafy|green) )*(?:greens|leaves|leaf|tops|stems?|fronds|stalks?|roots?)(?: (?:attached|on))?$|\s+(?:about )?the size of .*$/i;

/** 'Seeds roasted with salt': what a food was seasoned with is not the food; sugar and honey add too much to be left out. */
const SEASONED_WITH =
  /(?<=[a-z] (?:roasted|toasted|seasoned|simmered|boiled|cooked|tossed|rubbed|cured|fried))\s+with\s+(?:[a-z-]+ ){0,3}(?:salt|pepper|spices?|oil|herbs?)$/i;

/** Flours that replace others by the cup say so; it is no other food. */
const BY_THE_CUP =
  /\b(?:measure[- ]for[- ]measure|cup[- ]for[- ]cup|one[- ]to[- ]one|1[- ]to[- ]1)\s+/i;

/** A name without what hangs on it, tells its size, seasons it or how it is measured. */
export const withoutAttached = (name: string): string =>
  name.replace(ATTACHED, '').replace(SEASONED_WITH, '').replace(BY_THE_CUP, '');
