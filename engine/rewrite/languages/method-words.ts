/** Words of other languages for steps that are put in. A new language is a file in `data/words/`. */
import { keptFor, keptResults } from '../../kept-results.ts';
import { LETTER } from '../../letters.ts';
import { capital } from '../naming/method-names.ts';
import { sentencesOf } from '../wording/sentences.ts';
import da from './data/da.json' with { type: 'json' };
import de from './data/de.json' with { type: 'json' };
import es from './data/es.json' with { type: 'json' };
import foodNames from './data/food-names.json' with { type: 'json' };
import fr from './data/fr.json' with { type: 'json' };
import it from './data/it.json' with { type: 'json' };
import nb from './data/nb.json' with { type: 'json' };
import nl from './data/nl.json' with { type: 'json' };
import pt from './data/pt.json' with { type: 'json' };
import reasons from './data/reasons.json' with { type: 'json' };
import sv from './data/sv.json' with { type: 'json' };
import swapHandling from './data/swap-handling.json' with { type: 'json' };
import { baseOf, type Language, languageOfTag } from './language-tags.ts';
import type { WordsFile, WrittenWords } from './words-file.ts';

export type MethodWords = WordsFile & {
  /** The language's two letters. */
  tag: Language;
};

const FILES = { da, de, es, fr, it, nb, nl, pt, sv } as unknown as Readonly<
  Record<Language, WrittenWords>
>;

const known = new Map<string, MethodWords>();

/** Words for a BCP 47 tag; null for English and for languages without a file. */
export function methodWords(language: string | null): MethodWords | null {
  const tag = languageOfTag(language);
  if (tag === null) return null;
  const before = known.get(tag);
  if (before) return before;
  const { amends = {}, ...file } = FILES[tag];
  const words = { ...file, amends, tag };
  known.set(tag, words);
  return words;
}

type Names = Readonly<Partial<Record<Language, string>>>;

/** What a food is called in the language; null when it has no name there. */
export const localFoodName = (foodId: string, { tag }: MethodWords): string | null =>
  (foodNames as Readonly<Record<string, Names>>)[foodId]?.[tag] ?? null;

const whys = new Map<string, Names>(
  reasons.flatMap(({ cues, ...names }) => cues.map((id) => [id, names] as const)),
);

/** What a swap says of its handling, in the language; null when that has not been put into it. */
export const localHandling = (method: string, { tag }: MethodWords): string | null =>
  (swapHandling as Readonly<Record<string, Names>>)[method]?.[tag] ?? null;

/** The reason for a cue or warning in the language; null when it has none there. */
export const localReason = (cue: string, { tag }: MethodWords): string | null =>
  whys.get(cue)?.[tag] ?? null;

/** Whether a recipe's language is another than English. */
export const isForeign = (language: string | null): boolean => baseOf(language) !== 'en';

interface Stem {
  /** The stem alone, which is quick to look for, and the words that hold it. */
  stem: RegExp;
  word: RegExp;
  english: string;
}

/** The stems of a language as patterns. */
const stemsOf = (words: MethodWords): Stem[] =>
  words.keys.map(([stem, english]) => ({
    stem: new RegExp(stem, 'iu'),
    word: new RegExp(`${LETTER}*(?:${stem})${LETTER}*`, 'giu'),
    english,
  }));

/** Sentences of one recipe, which are asked for time and again. */
const MOST_TEXTS = 512;

function keyer(words: MethodWords): (text: string) => string {
  const stems = stemsOf(words);
  const sentence = (text: string): string => {
    const found: string[] = [];
    let now = text;
    for (const { stem, word, english } of stems) {
      if (!stem.test(text)) continue;
      found.push(english);
      now = now.replace(word, english);
    }
    return found.length === 0 ? text : capital(`${found.join(' ')}: ${now}`);
  };
  // Each sentence has its own key words, and stays one: places are found by sentences.
  const closed = (text: string): string => `${text}${/[.!?;]\s*$/.test(text) ? ' ' : '\n'}`;
  return keptResults(MOST_TEXTS, (text) =>
    sentencesOf(text)
      .map((one) => closed(sentence(one)))
      .join('')
      .trimEnd(),
  );
}

const keyerOf = keptFor(keyer);

/** 'ca. 35 Min. in der Mitte': full stops that end no sentence. */
const SHORTENED = /(?<=\b(?:ca|min|std|env|aprox|circa))\.(?=\s+[\p{Ll}\d])/giu;

/** 'Im Ofen 40 Minuten backen' -> 'Oven minutes bake: Im oven 40 minutes bake', for finding places; sentence by sentence. */
export const keyed = (text: string, words: MethodWords): string =>
  keyerOf(words)(text.replace(SHORTENED, ''));

/** 'a', 'a und b', 'a, b und c'. */
export function joinedWith(list: readonly string[], and: string): string {
  const last = list.at(-1) ?? '';
  return list.length < 2 ? last : `${list.slice(0, -1).join(', ')} ${and} ${last}`;
}

/** 'tbsp' as it is called beside a number: one of it up to a whole one. */
const spoon = (name: MethodWords['units']['tsp'], number: string): string =>
  typeof name === 'string' ? name : (name[/^(?:1|[¼-¾⅐-⅞])$/.test(number) ? 0 : 1] ?? name[0]);

/** 'about 2 tbsp' in the language's own abbreviations. */
export const localUnits = (text: string, { units }: MethodWords): string =>
  text
    .replace(
      /([\d¼-¾⅐-⅞]+) (tbsp|tsp)\b/g,
      (_, number: string, unit: 'tbsp' | 'tsp') => `${number} ${spoon(units[unit], number)}`,
    )
    .replace(/\babout\b/g, units.about);

/** A name that is written large because it began the page's line: 'Riz spécial risotto'. */
const LINE_START = /^\p{Lu}\p{Ll}*(?:['’ ]\P{Lu}+)?$/u;

/** A name that has the word already. */
const OF = /^(?:d[eio]s?|del|dell[ae]|du)\s|^(?:d|dell)['’]/iu;

/** 'de' before what is weighed: '100 g de sucre', '100 g d’allulose'. */
export function withOf(name: string, { brackets }: MethodWords): string {
  const [, of = ''] = brackets.of.find(([start]) => new RegExp(start, 'iu').test(name)) ?? [];
  const small = LINE_START.test(name) ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;
  return of === '' || OF.test(name) ? name : `${of}${small}`;
}
