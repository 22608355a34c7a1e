/** What the method alone calls a marinade: mixed, poured over, and left behind before cooking. */
import { keptFor } from '../../kept-results.ts';
import type { Item, Line } from '../../model.ts';
import { nameOf, plain } from '../line-words.ts';

const MIXES = /\b(?:whisk|mix|combine|stir|blend|shake)\b/;
const MARINADE = /\bmarinad|\bmarinat/;
export const LEFT_BEHIND =
  /\bdiscard[^.]{0,30}\bmarinade|\b(?:remove|lift|take|drain)\b[^.]{0,40}\b(?:from|out of) (?:the|its|their) marinade/;
/** Words of a name that tell nothing of which food it is. */
const LEAST_LETTERS = 3;

const sentencesOf = (steps: readonly string[]): string[] =>
  steps.flatMap((step) => plain(step).split(/(?<=[.;!?])\s+|\n/));

/** The last word of a name, which is what steps call the food by. */
const headOf = (name: string): string => plain(name).split(' ').at(-1) ?? '';

const namesIn = (sentence: string, heads: readonly string[]): number =>
  heads.filter((head) => head.length >= LEAST_LETTERS && sentence.includes(head)).length;

interface Method {
  steps: readonly string[];
  lines: readonly Line[];
}

interface Marinade {
  /** The sentence that mixes it. */
  mixed: string;
  /** What each line's food is called. */
  heads: readonly string[];
}

/** What the method mixes to a marinade and leaves behind; null where a group has that name already. */
const marinadeOf = keptFor(({ steps, lines }: Method): Marinade | null => {
  const sentences = sentencesOf(steps);
  if (!sentences.some((sentence) => LEFT_BEHIND.test(sentence))) return null;
  if (lines.some(({ group }) => /marinad/i.test(group ?? ''))) return null;
  const heads = lines.flatMap(({ items }) => items.map((one) => headOf(nameOf(one, null))));
  const at = sentences.findIndex((sentence) => MARINADE.test(sentence));
  const mixed = sentences
    .slice(0, at + 1)
    .findLast((sentence) => MIXES.test(sentence) && namesIn(sentence, heads) > 1);
  return mixed === undefined ? null : { mixed, heads };
});

/**
 * Is the item one of those mixed into a marinade that the method leaves behind? Only where the page
 * has no group of that name, and only for a food that stands on one line: of two lines of oil nothing
 * tells which is meant.
 */
export function isMarinadeOfSteps(item: Item, recipe: Method): boolean {
  const marinade = marinadeOf(recipe);
  if (marinade === null) return false;
  const head = headOf(nameOf(item, null));
  const alone = marinade.heads.filter((other) => other === head).length === 1;
  return alone && head.length >= LEAST_LETTERS && marinade.mixed.includes(head);
}
