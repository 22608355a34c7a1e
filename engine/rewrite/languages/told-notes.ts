/** Limits, notes, reasons and questions in other languages, by their English sentences: `data/note-words.json`. */
import { foodTable } from '../../foods/index.ts';
import { foodNameIn } from '../../match/languages/display-names.ts';
import { literal } from '../wording/name-patterns.ts';
import noteWords from './data/note-words.json' with { type: 'json' };
import { decimals, localFoodName, type MethodWords, methodWords } from './method-words.ts';

interface Sentence {
  english: RegExp;
  /** Names of its blanks, in the order of the groups. */
  blanks: readonly string[];
  said: Readonly<Record<string, string>>;
}

const BLANK = /\{(\w+)\}/g;
const FIGURE = String.raw`([\d,]+(?:\.\d+)?)`;
const WORDS = '(.+?)';

/** Blanks that stand for a food and for the page's own words; all others are figures. */
const patternOf = (blank: string): string =>
  blank === 'food' || blank === 'line' ? WORDS : FIGURE;

function sentenceOf([english, said]: [string, Sentence['said']]): Sentence {
  const parts = english.split(BLANK);
  const pattern = parts
    .map((part, at) => (at % 2 === 1 ? patternOf(part) : literal(part)))
    .join('');
  // What a sentence ends with is the page's own line, with all its full stops.
  const rest = /[.?;]$/.test(english) ? '(?: (?<rest>.+))?' : '';
  return {
    english: new RegExp(`^${pattern}${rest}$`, 's'),
    blanks: parts.filter((_, at) => at % 2 === 1),
    said,
  };
}

let sentences: readonly Sentence[] | null = null;

/** Made when first asked for: a page in English needs none. */
function allSentences(): readonly Sentence[] {
  sentences ??= Object.entries(noteWords).map(sentenceOf);
  return sentences;
}

let ids: ReadonlyMap<string, string> | null = null;

/** A food's name in the language; a name that is in no table is the user's own, null where there is none. */
function nameOf(english: string, words: MethodWords): string | null {
  ids ??= new Map(foodTable().foods.map(({ id, name }) => [name, id]));
  const id = ids.get(english);
  if (id === undefined) return english;
  return localFoodName(id, words) ?? foodNameIn(words.tag, id);
}

function filled(sentence: Sentence, groups: readonly string[], words: MethodWords): string | null {
  let text = sentence.said[words.tag] ?? null;
  for (const [at, blank] of sentence.blanks.entries()) {
    const found = groups[at] ?? '';
    const value =
      blank === 'food'
        ? nameOf(found, words)
        : blank === 'line'
          ? // The page's own words, or a source that is named with the figure.
            (said(found, words) ?? found)
          : decimals(found);
    if (value === null || text === null) return null;
    text = text.replace(`{${blank}}`, () => value);
  }
  return text;
}

/** 'Glaze: sweetness has to match.' */
const IN_PART = /^([^:.]{1,60}): (\p{Ll}.*)$/su;

function said(text: string, words: MethodWords): string | null {
  for (const sentence of allSentences()) {
    const found = sentence.english.exec(text);
    if (found === null) continue;
    const first = filled(sentence, found.slice(1), words);
    const { rest } = found.groups ?? {};
    const last = rest === undefined ? '' : said(rest, words);
    if (first !== null && last !== null) return `${first} ${last}`.trim();
  }
  const [, part, own = ''] = IN_PART.exec(text) ?? [];
  if (part === undefined) return null;
  const whole = said(`${own.charAt(0).toUpperCase()}${own.slice(1)}`, words);
  return whole === null ? null : `${part}: ${whole}`;
}

/** A limit, note, reason or question in the language of a BCP 47 tag; null where the language has no words for it. */
export function toldNote(text: string, language: string | null): string | null {
  const words = methodWords(language);
  return words === null ? null : said(text, words);
}
