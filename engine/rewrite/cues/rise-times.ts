/** Stated times of a rise, put right where they stand: two of them side by side leave the cook in doubt. */
import data from '../data/rise-times.json' with { type: 'json' };
import type { MethodWords } from '../languages/method-words.ts';
import { literal } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';
import type { Amendment } from './amendments.ts';
import { statedIn, timesAsLong } from './stated-time.ts';

type Words = Readonly<Record<string, string>>;

const CLOCK: Words = data.clock;
const MINUTES: Words = data.minutes;
const IN_WORDS: Readonly<Record<string, readonly (readonly string[])[]>> = data.inWords;

const tagOf = (words: MethodWords | null): string => words?.tag ?? 'en';

/** What is said beside a rise whose time has been put right. */
export const byTheDough = (words: MethodWords | null): string => CLOCK[tagOf(words)] ?? '';

interface Stated {
  /** As the page has it. */
  text: string;
  /** The same in figures. */
  figures: string;
}

/** The time that a sentence states, in figures or words; null when it states none. */
export function riseIn(sentence: string, words: MethodWords | null): Stated | null {
  const found = statedIn(sentence);
  if (found !== null) return { text: found.text, figures: found.text };
  for (const [pattern = '', figures = ''] of IN_WORDS[tagOf(words)] ?? []) {
    const [text] = new RegExp(`(?<!\\p{L})${pattern}(?!\\p{L})`, 'iu').exec(sentence) ?? [];
    if (text !== undefined) return { text, figures };
  }
  return null;
}

/** '1½ Stunden' -> '2¼ Stunden', '1 hour' -> '75 minutes'. */
function longer(figures: string, factor: number, words: MethodWords | null): string {
  const found = statedIn(figures);
  if (found === null) return figures;
  const [number = '', unit = ''] = timesAsLong(found.minutes, factor).split(' ');
  const isSame = (unit === 'h') === found.inHours;
  return `${number} ${isSame ? found.unit : unit === 'h' ? unit : MINUTES[tagOf(words)]}`;
}

/** What the page says of how long it took. */
const TAKES = /\b(?:takes?|took)\b/i;

/** The times of a rise in one of the page's steps, from the sentence that states it on. */
export function riseAmendments(
  at: number,
  text: string,
  sentence: number,
  { factor, words, why }: { factor: number; words: MethodWords | null; why: string },
): Amendment[] {
  return sentencesOf(text).flatMap((own, index): Amendment[] => {
    if (index < sentence || (index > sentence && !TAKES.test(own))) return [];
    const stated = riseIn(own, words);
    if (stated === null) return [];
    const before = own.slice(0, own.indexOf(stated.text)).slice(-LEAD);
    const phrase = new RegExp(`(?<=${literal(before)})${literal(stated.text)}`, 'u');
    return [{ at, phrase, to: longer(stated.figures, factor, words), why }];
  });
}

/** Letters before a time by which it is found again. */
const LEAD = 6;
