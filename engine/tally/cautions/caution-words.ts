/** The words of each caution: English, and nine other languages in `data/caution-words.json`. */
import type { Note } from '../../model.ts';
import words from '../data/caution-words.json' with { type: 'json' };
import english from '../data/cautions.json' with { type: 'json' };

type Words = Readonly<Record<string, string>>;

const ENGLISH: Words = Object.fromEntries(english.map(({ code, words }) => [code, words]));
const OTHERS: Readonly<Record<string, Words>> = words;

/** Norwegian pages say 'no' or 'nn' as well. */
const SAME_AS: Words = { no: 'nb', nn: 'nb' };

function wordsIn(language: string | null): Words {
  const base = (language ?? 'en').toLowerCase().split(/[-_]/)[0] ?? 'en';
  const tag = SAME_AS[base] ?? base;
  return Object.hasOwn(OTHERS, tag) ? (OTHERS[tag] ?? ENGLISH) : ENGLISH;
}

/**
 * A caution said in the language of a BCP 47 tag, with its figures; English where there are no words for
 * the language, and the note's own text where it is no caution of `data/cautions.json`.
 */
export function cautionText({ code, text, figures = {} }: Note, language: string | null): string {
  const words = wordsIn(language);
  const said = words[code];
  if (said === undefined) return text;
  // All nine write a decimal comma.
  const written = (figure: string): string =>
    words === ENGLISH ? figure : figure.replace('.', ',');
  return Object.entries(figures).reduce(
    (filled, [name, figure]) => filled.replaceAll(`{${name}}`, written(figure)),
    said,
  );
}
