/** Puts a sentence of the engine's into another language, by its English words: what stands for what is data. */
import { literal } from '../wording/name-patterns.ts';
import { decimals } from './language-tags.ts';

export interface Phrasebook {
  /** Sentences and parts of them with `{blanks}`, English first; those without a blank are found at once. */
  sentences: readonly (readonly [english: string, said: string])[];
  /** What stands in `{word}` blanks. */
  words: Readonly<Record<string, string>>;
  /** A food by its English name: null when it has no name in the language, undefined when it is the user's own. */
  foodName(english: string): string | null | undefined;
}

/** A text in the language, or null when any part of it has no words there. */
export type Telling = (text: string) => string | null;

const BLANK = /\{(\w+)\}/g;
const FIGURE = String.raw`([\d,]+(?:\.\d+)?)`;
const WORDS = '(.+?)';
/** Names within a list of changes. */
const FOOD = '([^;:]+?)';
const NAME = '([^;:.]+?)';

type Kind =
  | 'food'
  | 'line'
  | 'name'
  | 'word'
  | 'words'
  | 'told'
  | 'source'
  | 'quoted'
  | 'dropped'
  | 'figure';

/** What may stand in a blank, by its name. */
const KINDS: readonly (readonly [name: RegExp, kind: Kind])[] = [
  [/^food$|Food$/, 'food'],
  [/^line\d*$/, 'line'],
  [/^name$/, 'name'],
  [/^words$/, 'words'],
  [/^(?:word|size|lever|whose)\d*$/, 'word'],
  [/^reason$/, 'told'],
  [/^source$/, 'source'],
  [/^faults\d*$/, 'quoted'],
  [/^dropped$/, 'dropped'],
];

const kindOf = (blank: string): Kind => KINDS.find(([name]) => name.test(blank))?.[1] ?? 'figure';

const SHAPES: Partial<Record<Kind, string>> = { figure: FIGURE, food: FOOD, name: NAME };

interface Pattern {
  english: RegExp;
  /** Names of its blanks, in the order of the groups. */
  blanks: readonly string[];
  said: string;
}

function patternOf([english, said]: readonly [string, string]): Pattern {
  const parts = english.split(BLANK);
  const pattern = parts
    .map((part, at) => (at % 2 === 0 ? literal(part) : (SHAPES[kindOf(part)] ?? WORDS)))
    .join('');
  return {
    english: new RegExp(`^${pattern}$`, 's'),
    blanks: parts.filter((_, at) => at % 2 === 1),
    said,
  };
}

/** 'Glaze: sweetness has to match.', 'almond flour + allulose: at most 20 % of the flour'. */
const IN_PART = /^([^:.]{1,120}): ([\p{Ll}\d].*)$/su;

/** Where one sentence, or one of several reasons, ends and the next begins. */
const ENDS = /[.;?] /g;

/** A record's number is all that is kept of what is cited in English: 'USDA SR 169988, medium stalk'. */
const RECORD = /^USDA \D*\d+/;

/** Between foods that come in together. */
const JOINED = ' + ';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A phrasebook made ready: what is found at once, and patterns in their order. */
interface Book extends Omit<Phrasebook, 'sentences'> {
  whole: ReadonlyMap<string, string>;
  patterns: readonly Pattern[];
}

/** One food, or a list of them; undefined when no table has it. */
function foodsOf(english: string, { foodName }: Book): string | null | undefined {
  const one = foodName(english);
  if (one !== undefined) return one;
  const names = english.split(JOINED).map(foodName);
  if (names.includes(undefined)) return undefined;
  return names.includes(null) ? null : names.join(JOINED);
}

function wordsOf(english: string, { words }: Book): string | null {
  const list = english.split(', ').map((one) => words[one]);
  return list.includes(undefined) ? null : list.join(', ');
}

/** Names of faults, which the book has as sentences. */
function quotedOf(english: string, { whole }: Book): string | null {
  const said = english
    .split(', ')
    .map((one) => whole.get(`${capital(one.replace(/[“”]/g, ''))}.`)?.replace(/\.$/, ''));
  return said.includes(undefined) ? null : said.map((one) => `„${one}“`).join(', ');
}

/** What stands in a blank, in the language. */
function filling(kind: Kind, found: string, book: Book): string | null {
  switch (kind) {
    case 'food': {
      // A name that is in no table is the user's own.
      const name = foodsOf(found, book);
      return name === undefined ? found : name;
    }
    case 'line':
      // The page's own words, or a source that is named with the figure.
      return told(found, book) ?? found;
    case 'name':
      return found;
    case 'word':
      return book.words[found] ?? null;
    case 'words':
      return wordsOf(found, book);
    case 'told':
      return told(found, book);
    case 'source':
      return told(found, book) ?? RECORD.exec(found)?.[0] ?? found;
    case 'quoted':
      return quotedOf(found, book);
    case 'dropped':
      return '';
    case 'figure':
      return decimals(found.replaceAll(',', ''));
  }
}

function filled({ blanks, said }: Pattern, groups: readonly string[], book: Book): string | null {
  let text = said;
  for (const [at, blank] of blanks.entries()) {
    const value = filling(kindOf(blank), groups[at] ?? '', book);
    if (value === null) return null;
    text = text.replace(`{${blank}}`, () => value);
  }
  return text;
}

function asOne(text: string, book: Book): string | null {
  const said = book.whole.get(text);
  if (said !== undefined) return said;
  for (const pattern of book.patterns) {
    const found = pattern.english.exec(text);
    const known = found && filled(pattern, found.slice(1), book);
    if (known) return known;
  }
  return null;
}

/** Up to an end: with it, as sentences are kept, or without the mark that joins two reasons. */
function upTo(text: string, end: number, book: Book): string | null {
  const closed = asOne(text.slice(0, end + 1), book);
  if (closed !== null || text[end] !== ';') return closed;
  const open = asOne(text.slice(0, end), book);
  return open && `${open};`;
}

function inSentences(text: string, book: Book): string | null {
  const ends = [...text.matchAll(ENDS)].map(({ index }) => index);
  for (const end of ends.reverse()) {
    const first = upTo(text, end, book);
    const rest = first && told(text.slice(end + 2), book);
    if (first && rest) return `${first} ${rest}`;
  }
  return null;
}

function ofPart(text: string, book: Book): string | null {
  const [, part, own = ''] = IN_PART.exec(text) ?? [];
  const said = part === undefined ? null : told(capital(own), book);
  if (said === null || part === undefined) return null;
  const first = asOne(part, book) ?? foodsOf(part, book);
  return `${first ? capital(first) : part}: ${said}`;
}

const told = (text: string, book: Book): string | null =>
  asOne(text, book) ?? inSentences(text, book) ?? ofPart(text, book);

export function telling({ sentences, ...rest }: Phrasebook): Telling {
  const book: Book = {
    ...rest,
    whole: new Map(sentences.filter(([english]) => !english.includes('{'))),
    patterns: sentences.filter(([english]) => english.includes('{')).map(patternOf),
  };
  return (text) => told(text, book);
}
