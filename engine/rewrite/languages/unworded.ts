/** What is added to a recipe in a language that has no words here: in English, marked as such, beside the page's own sentences. */
import type { RewrittenStep } from '../../model.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import type { Mention } from '../naming/mention.ts';
import { itemName, listOf } from '../naming/method-names.ts';

const MARK = 'In English: ';

export const markedStep = (step: RewrittenStep): RewrittenStep => ({
  ...step,
  after: step.after.startsWith(MARK) ? step.after : `${MARK}${step.after}`,
  lang: 'en',
});

/** Behind the name of a food on a line. */
export const LINE_MARK = ' (English name)';

/** Letters that an inflected word shares with its name, at least; its end may differ by {@link ENDING} letters. */
const LEAST = 4;
const ENDING = 2;
/** A word with as many first letters in common is of the same root. */
const KIN = 6;
const WORDS = /\p{L}{4,}/gu;

const stemOf = (word: string): string =>
  word.toLowerCase().slice(0, Math.max(LEAST, word.length - ENDING));

const stemsOf = (name: string): string[] => [...name.matchAll(WORDS)].map(([word]) => stemOf(word));

/** The word of a step that names an ingredient, in whatever form; null when none does. */
function wordFor(text: string, stems: readonly string[]): string | null {
  for (const [word] of text.matchAll(WORDS)) {
    const low = word.toLowerCase();
    const isForm = (stem: string): boolean =>
      low.startsWith(stem) && low.length - stem.length <= 2 * ENDING;
    // An adjective of the noun: 'шоколадных' of 'шоколад'.
    const isKin = (stem: string): boolean =>
      low.length >= KIN && stem.startsWith(low.slice(0, KIN));
    if (stems.some((stem) => isForm(stem) || isKin(stem))) return word;
  }
  return null;
}

/** What became of an ingredient, for the word by which a step names it. */
function whatItIs(word: string, { items, ingredient }: Mention): string {
  const own = items.find(({ foodId }) => foodId === ingredient.match?.foodId);
  const others = items.filter((item) => item !== own);
  const amount = (grams: number): string => `${Math.round(grams)} g`;
  const list = listOf(others.map((item) => `${amount(item.grams)} ${itemName(item, ingredient)}`));
  if (items.length === 0) return `leave out “${word}” in the next step.`;
  if (own === undefined) return `“${word}” in the next step is ${list} now.`;
  const less = `of “${word}” in the next step take ${amount(own.grams)}`;
  return others.length === 0 ? `${less}.` : `${less}, and ${list} with it.`;
}

/** Words on changed ingredients before the first of the page's steps that names each; of lines of one name each in turn. */
export function remarksBeside(
  steps: readonly { text: string }[],
  mentions: readonly Mention[],
  why: string,
): Insertion[] {
  const changed = mentions.filter(
    (one, at) =>
      one.changed &&
      mentions.findIndex(({ ingredient }) => ingredient.key === one.ingredient.key) === at,
  );
  const namesOf = ({ ingredient }: Mention): string[] => stemsOf(ingredient.item.name);
  const shared = (stem: string, own: Mention): boolean =>
    mentions.some(
      (one) =>
        !one.changed && one.ingredient.key !== own.ingredient.key && namesOf(one).includes(stem),
    );
  const told = new Set<string>();
  return steps.flatMap(({ text }, at): Insertion[] => {
    const said = new Set<string>();
    const parts = changed.flatMap((mention): string[] => {
      if (told.has(mention.ingredient.key)) return [];
      const stems = namesOf(mention).filter((stem) => !shared(stem, mention));
      const word = wordFor(text, stems);
      if (word === null || said.has(word)) return [];
      said.add(word);
      told.add(mention.ingredient.key);
      return [whatItIs(word, mention)];
    });
    if (parts.length === 0) return [];
    const step: RewrittenStep = {
      section: null,
      before: null,
      after: parts.map((part) => part.charAt(0).toUpperCase() + part.slice(1)).join(' '),
      change: 'inserted',
      why,
    };
    return [{ at, behind: null, rank: RANKS.warning, step }];
  });
}
