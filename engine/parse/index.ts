/** Understands one ingredient line. */
import type { Line } from '../model.ts';
import { itemsOf } from './items.ts';
import type { Parts } from './line-parts.ts';
import { nameText } from './name/finish-name.ts';
import { readParts } from './take-apart.ts';
import { guessLanguage } from './words/guess-language.ts';
import { isPairAt, type Lexicon, lexiconOf } from './words/lexicon.ts';
import { tidy } from './words/tidy-line.ts';
import { isAt, isNumber, someOf, type Token, textOf, tokenize } from './words/tokens.ts';
import { unspacedLanguage, withBlanks } from './words/unspaced-line.ts';

export interface ParseOptions {
  /** BCP 47 tag of the page; English when absent or unknown. */
  language?: string | null;
  /** Title of the group the line stands in. */
  group?: string | null;
}

/** Characters that are read; what goes beyond is no ingredient line and is kept as a note. */
const LONGEST = 4000;

/**
 * An ingredient line as amounts, name, preparation, note and purpose. Pure and total: every string
 * gives a line, the worst case being one item whose name is the whole text. Names and notes keep
 * the line's own words; units are canonical short forms (see `Amount`).
 */
export function parseLine(text: string, options: ParseOptions = {}): Line {
  const whole = withBlanks(tidy(text), options.language);
  const clean = whole.slice(0, LONGEST);
  const line: Line = {
    text,
    group: options.group ?? null,
    kind: 'ingredient',
    items: [],
    name: '',
    note: null,
    purpose: null,
    optional: false,
  };
  if (clean === '') return line;
  let tokens = tokenize(clean);
  const lex = lexiconOf(
    options.language ?? unspacedLanguage(text) ?? guessLanguage(tokens.map((t) => t.low)),
  );
  // '1.500 g' is fifteen hundred where the comma is the decimal mark
  if (lex.language !== 'en' && tokens.some(isGrouped)) tokens = tokenize(clean, true);
  if (lex.labels.has(clean.toLowerCase()) || isHeading(tokens, lex))
    return { ...line, kind: 'heading', name: clean.replace(/\s*:$/, '') };
  const parts = readParts(tokens, lex);
  // 'pesto (recipe below) or store-bought' may be the ready-made food
  const own = parts.reference && !someOf(tokens, lex.bought) && !offersInBrackets(tokens, lex);
  return {
    ...line,
    kind: own ? 'reference' : 'ingredient',
    name: nameText(parts) || clean,
    items: itemsOf(parts, lex),
    note: [...phrases(parts, 'notes'), whole.slice(LONGEST)].filter(Boolean).join('; ') || null,
    purpose: phrases(parts, 'purposes').join(', ') || null,
    optional: isOptional(parts),
  };
}

/** Language of a line that stands alone, by its unit and small words: a BCP 47 tag, English when in doubt. */
export const lineLanguage = (text: string): string =>
  unspacedLanguage(text) ?? guessLanguage(tokenize(tidy(text).slice(0, LONGEST)).map((t) => t.low));

/** 'butter (or herb butter, see below)' is butter all the same. */
const offersInBrackets = (tokens: readonly Token[], lex: Lexicon): boolean =>
  tokens.some(({ text }, at) => text === '(' && isAt(lex.or, tokens, at + 1));

const isGrouped = (t: Token): boolean => isNumber(t) && /[.,]\d{3}/.test(t.text);

/** A line that only titles the ones after it: 'For the sauce:', 'FOR THE DOUGH', 'Topping:'. */
function isHeading(tokens: readonly Token[], lex: Lexicon): boolean {
  if (tokens.some(isNumber)) return false;
  if (tokens.at(-1)?.text === ':') return true;
  return (
    tokens.length <= 6 &&
    tokens.length > 1 &&
    ((isAt(lex.headingStarts, tokens, 0) && !tokens.some((t) => t.text === ':')) ||
      isPairAt(lex.headingStarts, tokens, 0, lex))
  );
}

/** Texts of the line and of the further foods on it. */
const phrases = (parts: Parts, of: 'notes' | 'purposes'): string[] => [
  ...parts[of].map(textOf),
  ...parts.extras.flatMap((extra) => phrases(extra, of)),
];

const isOptional = (parts: Parts): boolean => parts.optional || parts.extras.some(isOptional);
