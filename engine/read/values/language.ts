/** Tells a recipe's language from its words and script. */
import type { Recipe } from '../../model.ts';
import table from '../data/language-words.json' with { type: 'json' };
import { languageTag } from './language-tag.ts';

const WORDS = new Map(
  Object.entries(table).map(([tag, words]) => [tag, new Set(words.split(' '))] as const),
);

/** Scripts that name a language by themselves, for the languages read here. */
const SCRIPTS: [RegExp, string][] = [
  [/[\u3040-\u30ff]/g, 'ja'],
  [/[\u4e00-\u9fff]/g, 'zh'],
  [/[\uac00-\ud7af]/g, 'ko'],
  [/[\u0370-\u03ff]/g, 'el'],
  [/[\u0400-\u04ff]/g, 'ru'],
  [/[\u0e00-\u0e7f]/g, 'th'],
  [/[\u0900-\u097f]/g, 'hi'],
  [/[\u0590-\u05ff]/g, 'he'],
  [/[\u0600-\u06ff]/g, 'ar'],
];

/** Characters looked at; a recipe's words settle well before that. */
const SAMPLE = 6_000;

/** Letters that one of the languages in Cyrillic script has and Russian has not, or has and the others lack. */
function cyrillic(sample: string): string {
  if (/[іїєґ]/i.test(sample)) return 'uk';
  if (/[јљњћђџ]/i.test(sample)) return 'sr';
  return /[ыэё]/i.test(sample) ? 'ru' : /[ъщ]/i.test(sample) ? 'bg' : 'ru';
}

/** A language guessed from words or script, with the lead over the runner-up in words counted. */
function guessLanguage(text: string): { tag: string; hits: number; next: number } | null {
  const sample = text.slice(0, SAMPLE);
  for (const [script, tag] of SCRIPTS) {
    if ((sample.match(script)?.length ?? 0) > sample.length * 0.15)
      return { tag: tag === 'ru' ? cyrillic(sample) : tag, hits: 99, next: 0 };
  }
  const scores = new Map<string, number>();
  for (const word of sample.toLowerCase().match(/\p{L}+/gu) ?? []) {
    for (const [tag, words] of WORDS) {
      if (words.has(word)) scores.set(tag, (scores.get(tag) ?? 0) + 1);
    }
  }
  const order = [...scores].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const top = order[0];
  return top ? { tag: top[0], hits: top[1], next: order[1]?.[1] ?? 0 } : null;
}

/** Sister tags that the words cannot tell apart well enough to overrule a page. */
const SISTERS = [
  ['no', 'nb', 'nn', 'da', 'sv'],
  ['cs', 'sk'],
  ['es', 'pt', 'gl', 'ca'],
];

/**
 * The recipe's language: what the page says, unless the recipe's words clearly say another; guessed
 * when the page says nothing. Null when neither tells.
 */
export function recipeLanguage(stated: string | null, words: string): string | null {
  const tag = languageTag(stated);
  const guess = guessLanguage(words);
  if (!tag) return guess && guess.hits >= 3 && guess.hits > guess.next ? guess.tag : null;
  if (!guess) return tag;
  const primary = tag.split('-')[0] ?? tag;
  if (
    guess.tag === primary ||
    SISTERS.some((set) => set.includes(primary) && set.includes(guess.tag))
  )
    return tag;
  const own = WORDS.has(primary);
  return guess.hits >= 10 && guess.hits >= guess.next * (own ? 1.8 : 3) ? guess.tag : tag;
}

/** The recipe in the language its own words speak, which pages do not always state. */
export function withLanguage(recipe: Recipe): Recipe {
  const texts = [
    ...recipe.groups.flatMap(({ lines }) => lines),
    ...recipe.steps.map(({ text }) => text),
  ];
  return { ...recipe, language: recipeLanguage(recipe.language, texts.join(' ')) };
}
