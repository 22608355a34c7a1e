/** Name of an ingredient -> food of the table, with how sure and what else it might be. */
import { type FoodTable, foodTable } from '../foods/index.ts';
import type { Item, Line, Match } from '../model.ts';
import { namesOrSynonyms } from './by-name.ts';
import { choices, fromChoices } from './choices.ts';
import {
  isOtherLanguage,
  matchAnyLanguage,
  matchOtherLanguage,
} from './languages/foreign-names.ts';
import { type Candidate, type Lookup, lookupOf } from './lookup.ts';
import { keyOf } from './name-keys.ts';
import type { State } from './name-words.ts';
import { tokensOf } from './normalise.ts';
import { toMatch } from './ranked.ts';
import { matchName, shortened, sure } from './search.ts';
import { ambiguousMatch } from './special/ambiguous.ts';
import { meantName, withNextNoun } from './special/first-of-two.ts';
import { isTool, lastResort } from './special/last-resort.ts';
import { foreignByAmount, isLeftover, nameByAmount } from './special/named-by-amount.ts';
import { juiceOfSame, takenPart, withoutAttached } from './special/part-taken.ts';
import { toldByLine } from './special/told-by-line.ts';
import { vegetablePeppers } from './special/unknown-pepper.ts';
import { wantedState } from './state.ts';

export { isTool };

export interface MatchOptions {
  foods: FoodTable;
  /** The user's own names for foods: name -> food id. */
  aliases?: Record<string, string>;
  language?: string | null;
}

function ownChoice(name: string, options: MatchOptions): Match | null {
  if (!options.aliases) return null;
  const key = keyOf(tokensOf(name));
  for (const [alias, id] of Object.entries(options.aliases)) {
    const food = options.foods.byId(id);
    if (food && keyOf(tokensOf(alias)) === key) {
      return {
        foodId: food.id,
        foodName: food.name,
        confidence: 1,
        reason: 'your own name for it',
        others: [],
      };
    }
  }
  return null;
}

/**
 * The food an item names. The user's own aliases win; then the same name in any spelling; then the
 * nearest name with the same head noun. `confidence` is 0..1; null when no food is near enough.
 */
export function matchItem(item: Item, line: Line, options: MatchOptions): Match | null {
  const own = ownChoice(item.name, options) ?? matchByName(item, line, options);
  if (own && own.confidence >= FAR_OFF) return own;
  return matchAnyLanguage(item, line, options.language, options.foods) ?? own;
}

function matchByName(item: Item, line: Line, options: MatchOptions): Match | null {
  const lookup = lookupOf(options.foods);
  const wanted = wantedState(item, line);
  if (isOtherLanguage(options.language)) return matchInLanguage(item, line, options, wanted);
  if (isLeftover(line)) return null;
  const meant = juiceOfSame(
    withNextNoun(meantName(item, lookup), item, line.items),
    item,
    line.items,
  );
  const part = withoutAttached(takenPart(item, line, meant));
  const name = toldByLine(nameByAmount(part, item, line.text), line);
  const asked = wanted === 'cooked' ? `cooked ${name}` : name;
  const usual =
    wanted === null || wanted === 'cooked' ? ambiguousMatch(asked, options.foods, lookup) : null;
  if (usual) return usual;
  const found = vegetablePeppers(name, matchName(name, lookup, wanted), lookup);
  const whole = sure(found) ?? shortened(name, found, lookup, wanted);
  if (sure(whole)) return toMatch(whole);
  const first = toMatch(whole);
  if (first && first.confidence >= UNSURE) return first;
  return (
    surer(first, () => fromChoices(choices(name, item), lookup, wanted)) ??
    surer(first, () => readOut(name, item, line, lookup, wanted)) ??
    first
  );
}

/** A whole name of the page's language; English names are tried too, but its rules do not fit another language. */
function matchInLanguage(
  item: Item,
  line: Line,
  options: MatchOptions,
  wanted: State | null,
): Match | null {
  const lookup = lookupOf(options.foods);
  const told = foreignByAmount(item);
  if (told) return toMatch(namesOrSynonyms(tokensOf(told), lookup, wanted));
  const found = matchOtherLanguage(item, line, options.language, options.foods);
  if (found && found.confidence > SURE_FOREIGN) return found;
  const english = namesOrSynonyms(tokensOf(item.name), lookup, wanted);
  return toMatch(english) ?? found;
}

/** Another reading's match, when it is surer than the first. */
function surer(first: Match | null, read: () => Match | null): Match | null {
  const other = read();
  return other && other.confidence > (first?.confidence ?? 0) ? other : null;
}

/** What can still be read out of a name that fits nothing as a whole. */
function readOut(
  name: string,
  item: Item,
  line: Line,
  lookup: Lookup,
  wanted: State | null,
): Match | null {
  const find = (part: string): readonly Candidate[] =>
    sure(matchName(part.trim(), lookup, wanted)) ?? [];
  const names = [name, ...item.alternatives.map((other) => other.name)];
  for (const read of [...names, ...wordsBehind(item, line)]) {
    const found = toMatch(lastResort(read, line, lookup, find));
    if (found) return found;
  }
  return null;
}

/** 'Bone in, skin on chicken thighs': the food may stand behind a comma, or behind a 'for'. */
function wordsBehind(item: Item, line: Line): string[] {
  if (line.items.length > 1) return [];
  const parts = [...(item.preparation ?? '').split(','), line.purpose ?? ''];
  return parts.filter((part) => part.trim() !== '' && !/\d|\b(?:in|into|with|by)\b/i.test(part));
}

/** Above this no English name is looked for on a page in another language. Own choice. */
const SURE_FOREIGN = 0.9;

/** Below this a whole name of another language is nearer. Own choice. */
const FAR_OFF = 0.5;

/** Below this another reading of the name is tried. */
const UNSURE = 0.6;

/** Makes the index of the built-in foods' names now, for which the first recipe would wait. */
export const indexFoods = (): void => void lookupOf(foodTable());
