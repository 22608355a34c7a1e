/** Tells a recipe's language from its words and script. */
import type { Recipe } from '../../model.ts';
import foods from '../data/language-foods.json' with { type: 'json' };
import table from '../data/language-words.json' with { type: 'json' };
import { languageTag } from './language-tag.ts';

/** Languages by a word of theirs. */
type Speakers = ReadonlyMap<string, readonly string[]>;

function speakersOf(words: Record<string, string>): Speakers {
  const speakers = new Map<string, string[]>();
  for (const [tag, list] of Object.entries(words))
    for (const word of new Set(list.split(' ')))
      speakers.set(word, [...(speakers.get(word) ?? []), tag]);
  return speakers;
}

const WORDS = speakersOf(table);
/** Foods and measures, by which a bare list of lines tells its language. */
const FOODS = speakersOf(foods);

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

type Guess = { tag: string; hits: number; next: number };

/** A language guessed from words or script, with the lead over the runner-up in words counted. */
function guessLanguage(text: string): Guess | null {
  const sample = text.slice(0, SAMPLE);
  for (const [script, tag] of SCRIPTS) {
    if ((sample.match(script)?.length ?? 0) > sample.length * 0.15)
      return { tag: tag === 'ru' ? cyrillic(sample) : tag, hits: 99, next: 0 };
  }
  return leadIn(wordsOf(sample), WORDS);
}

/** The words of a text; 'el' after a figure is a spoon in German and Dutch, and no article. */
function wordsOf(sample: string): string[] {
  const text = sample.toLowerCase().replace(/(\d\s?)el(?!\p{L})/gu, '$1');
  return text.match(/\p{L}+/gu) ?? [];
}

/** The language with most of the words, with the lead over the runner-up. */
function leadIn(words: readonly string[], speakers: Speakers): Guess | null {
  const scores = new Map<string, number>();
  for (const word of words)
    for (const tag of speakers.get(word) ?? []) scores.set(tag, (scores.get(tag) ?? 0) + 1);
  const order = [...scores].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const top = order[0];
  return top ? { tag: top[0], hits: top[1], next: order[1]?.[1] ?? 0 } : null;
}

/** Foods and measures of another language that overrule what the page says, at least. Own choice. */
const FEWEST_FOODS = 3;

/**
 * The language of a list too short for common words, by its foods; null when it is not clear, when a food
 * is named in the language `stated`, or when that one's common words are as many.
 */
function languageOfFoods(text: string, stated: string): string | null {
  const words = wordsOf(text.slice(0, SAMPLE));
  const count = (speakers: Speakers) =>
    words.filter((word) => speakers.get(word)?.includes(stated)).length;
  if (count(FOODS) > 0) return null;
  const lead = leadIn(words, FOODS);
  if (!lead || lead.hits < FEWEST_FOODS || lead.hits < lead.next * 2) return null;
  return lead.hits > count(WORDS) ? lead.tag : null;
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
  if (!tag)
    return guess && guess.hits >= 3 && guess.hits > guess.next
      ? guess.tag
      : languageOfFoods(words, '');
  const primary = tag.split('-')[0] ?? tag;
  if (guess && overrules(guess, primary)) return guess.tag;
  const told = Object.hasOwn(foods, primary) ? languageOfFoods(words, primary) : null;
  return told && !areSisters(told, primary) ? told : tag;
}

function areSisters(one: string, other: string): boolean {
  return SISTERS.some((set) => set.includes(one) && set.includes(other));
}

/** True when the words clearly speak another language than the page says. */
function overrules({ tag, hits, next }: Guess, stated: string): boolean {
  if (tag === stated || areSisters(tag, stated)) return false;
  return hits >= 10 && hits >= next * (Object.hasOwn(table, stated) ? 1.8 : 3);
}

/** The recipe in the language its own words speak, which pages do not always state. */
export function withLanguage(recipe: Recipe): Recipe {
  const texts = [
    ...recipe.groups.flatMap(({ lines }) => lines),
    ...recipe.steps.map(({ text }) => text),
  ];
  return { ...recipe, language: recipeLanguage(recipe.language, texts.join(' ')) };
}
