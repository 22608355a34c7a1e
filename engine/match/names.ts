/**
 * Food names in other languages: `data/names/xx.json` lists them by food id. To add a language, add
 * its file here; Danish and Norwegian share the Swedish file.
 */
import type { FoodTable } from '../foods/index.ts';
import type { Match } from '../model.ts';
import de from './data/names/de.json' with { type: 'json' };
import es from './data/names/es.json' with { type: 'json' };
import fr from './data/names/fr.json' with { type: 'json' };
import it from './data/names/it.json' with { type: 'json' };
import nl from './data/names/nl.json' with { type: 'json' };
import pt from './data/names/pt.json' with { type: 'json' };
import sv from './data/names/sv.json' with { type: 'json' };
import { plainText } from './normalise.ts';

type Names = Readonly<Record<string, readonly string[]>>;

const FILES: Readonly<Record<string, Names>> = {
  de,
  es,
  fr,
  it,
  nl,
  pt,
  sv,
  da: sv,
  no: sv,
  nb: sv,
  nn: sv,
};

/** Languages whose compound names end with the food ('Vollkornmehl'), unlike 'farine complete'. */
const HEAD_LAST: ReadonlySet<string> = new Set(['de', 'nl', 'sv', 'da', 'no', 'nb', 'nn']);

const WHOLE = 0.92;
const PART = 0.65;
const LONGEST = 5;

function wordsOf(name: string): string[] {
  const spaced = name.slice(0, 300).replace(/\b([dl]|dell|all)['’]/gi, '$1 ');
  return plainText(spaced.replace(/\([^)]*\)?/g, ' ')).match(/[a-z0-9]+/g) ?? [];
}

const indexes = new Map<Names, ReadonlyMap<string, string>>();

/** Names to food ids, built once per language. */
function indexOf(names: Names): ReadonlyMap<string, string> {
  let index = indexes.get(names);
  if (!index) {
    const entries = Object.entries(names).flatMap(([id, list]) =>
      list.map((name): [string, string] => [wordsOf(name).join(' '), id]),
    );
    index = new Map(entries);
    indexes.set(names, index);
  }
  return index;
}

/** The longest run of words that is a name; of equal ones the one where the head stands. */
function longestName(
  words: readonly string[],
  index: ReadonlyMap<string, string>,
  headLast: boolean,
): { id: string; length: number } | null {
  for (let length = Math.min(words.length, LONGEST); length > 0; length -= 1) {
    const starts = Array.from({ length: words.length - length + 1 }, (_, at) => at);
    if (headLast) starts.reverse();
    for (const at of starts) {
      const id = index.get(words.slice(at, at + length).join(' '));
      if (id !== undefined) return { id, length };
    }
  }
  return null;
}

/** Is the language one whose names are looked up here? Takes a BCP 47 tag. */
export function isOtherLanguage(language: string | null | undefined): boolean {
  return Object.hasOwn(FILES, primaryOf(language));
}

const primaryOf = (language: string | null | undefined): string =>
  (language ?? '').toLowerCase().split(/[-_]/)[0] ?? '';

/** The food a name stands for in a language other than English, or null. */
export function matchOtherLanguage(
  name: string,
  language: string | null | undefined,
  foods: FoodTable,
): Match | null {
  const primary = primaryOf(language);
  const names = Object.hasOwn(FILES, primary) ? FILES[primary] : undefined;
  if (!names) return null;
  const words = wordsOf(name);
  const found = longestName(words, indexOf(names), HEAD_LAST.has(primary));
  const food = found && foods.byId(found.id);
  if (!found || !food) return null;
  const whole = found.length === words.length;
  return {
    foodId: food.id,
    foodName: food.name,
    confidence: whole ? WHOLE : PART,
    reason: whole ? 'same name in the language of the page' : 'part of the name, in its language',
    others: [],
  };
}
