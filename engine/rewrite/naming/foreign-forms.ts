/** Forms of a food's name in methods of other languages: one of many, and inside compounds of its pieces. */
import { keptFor } from '../../kept-results.ts';
import type { MethodWords } from '../languages/method-words.ts';
import { END, isNamedIn, literal, START } from '../wording/name-patterns.ts';
import type { Mention } from './mention.ts';

/** Endings that stand behind a name or its stem. */
export const ENDINGS = '(?:[esnxatr]|en|er|et|ne|na|ene|erne|arna|orna)?';

/** Pieces that a compound names behind a food: 'Kartoffelstücke', 'aardappelblokjes', 'potatistärningar'. */
const PIECES =
  '(?:n|s|en)?(?:stück\\p{L}*|würfel\\p{L}*|scheibe\\p{L}*|spalte\\p{L}*|schnitz\\p{L}*|hälfte\\p{L}*|viertel\\p{L}*|streifen|blok\\p{L}*|stuk\\p{L}*|schijf\\p{L}*|schijv\\p{L}*|plak\\p{L}*|partje\\p{L}*|reepjes|part(?:en)?|tärning\\p{L}*|terning\\p{L}*|bit(?:er|ar|arna|ene|erne)|skiv\\p{L}*|klyft\\p{L}*|båd(?:e|ene)|båter|stykke\\p{L}*)';

/** Names in several that stand for one too; short stems would begin other words. */
const MANY = /^(\p{L}{5,}?)(?:en|n|s|er)$/u;

/** The stem of a plural of one word; the name itself where it is none. */
function stemOf(name: string): string {
  return MANY.exec(name)?.[1] ?? name;
}

const spaced = (name: string): boolean => /\s/.test(name);

/** Each name with the forms it takes; longer ones first. */
export function formsOf(names: readonly string[]): Map<string, string> {
  const forms = new Map<string, string>();
  for (const name of names) {
    forms.set(name, name);
    const stem = stemOf(name);
    if (!spaced(name) && !names.includes(stem) && !forms.has(stem)) forms.set(stem, name);
  }
  return forms;
}

/** Finds names and their forms, those that begin compounds of pieces too. */
export function foreignPattern(forms: readonly string[]): RegExp {
  const longest = [...forms].sort((a, b) => b.length - a.length).map(literal);
  const stems = longest.filter((form) => form.length >= 6 && !spaced(form));
  const cut = stems.length === 0 ? '' : `|(?<stem>${stems.join('|')})${PIECES}`;
  return new RegExp(`${START}(?:(?<name>${longest.join('|')})${ENDINGS}${cut})${END}`, 'giu');
}

const patternOf = keptFor(
  (names: Mention['names']) => new RegExp(foreignPattern([...formsOf(names).keys()]).source, 'iu'),
);

/** Whether a text names an ingredient, in the forms its language has for it. */
export const isSaidIn = (text: string, mention: Mention, words: MethodWords | null): boolean =>
  words === null
    ? isNamedIn(text, mention)
    : mention.names.length > 0 && patternOf(mention.names).test(text);
