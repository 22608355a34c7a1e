/** Weighs all that a page says of how much a recipe makes, and keeps what it did not choose. */
import type { StatedYield, Yield } from '../../model.ts';
import type { YieldStatement } from '../draft.ts';
import { readYield } from './yield.ts';

/** The counts of one statement. */
function countsIn({ text, from }: YieldStatement): StatedYield[] {
  const { text: shown, servings, pieces } = readYield([text]);
  if (shown === null) return [];
  const counts: StatedYield[] = [];
  if (servings) counts.push({ text: shown, ...servings, noun: null, from });
  if (pieces)
    counts.push({ text: shown, low: pieces.count, high: pieces.count, noun: pieces.noun, from });
  return counts;
}

function isSameCount(one: StatedYield, other: StatedYield): boolean {
  return one.low === other.low && one.high === other.high && one.noun === other.noun;
}

const hasWords = ({ text }: { text: string }): boolean => /\p{L}/u.test(text);

/** The counts without bare numbers that are the count of named pieces: '24' beside '24 cookies'. */
function withoutBareCopies(stated: readonly StatedYield[]): StatedYield[] {
  const isNamed = (low: number) => stated.some((one) => one.noun !== null && one.low === low);
  return stated.filter(
    (one, i) =>
      stated.findIndex((other) => isSameCount(one, other)) === i &&
      (one.noun !== null || hasWords(one) || !isNamed(one.low)),
  );
}

/**
 * The yield by the statements of the trusted source; what it lacks comes from the others. What the page
 * calls servings goes before pieces, and pieces are not made into servings here; a bare number is servings
 * unless the page names pieces of that number. `stated` keeps all counts, so that a later stage or the user
 * may choose another.
 */
export function chooseYield(
  trusted: readonly YieldStatement[],
  others: readonly YieldStatement[],
): Yield {
  const statements = trusted.some(({ text }) => /\d/.test(text)) ? [trusted] : [];
  for (const one of others) statements.push([one]);
  const stated = withoutBareCopies([...trusted, ...others].flatMap(countsIn));
  const first = statements.map((some) => readYield(some.map(({ text }) => text)));
  const made =
    first.find(({ text }) => text !== null) ?? readYield(trusted.map(({ text }) => text));
  const isBare = made.servings !== null && !hasWords({ text: made.text ?? '' });
  const pieces = isBare
    ? stated.find(({ noun, low }) => noun !== null && low === made.servings?.low)
    : undefined;
  const servings = stated.find((one) => one.noun === null && hasWords(one));
  if (pieces && !(servings && servings.low === pieces.low)) {
    const { text, low: count, noun } = pieces;
    return { text, servings: null, pieces: { count, noun: noun ?? '' }, stated };
  }
  const sameAsPieces = servings?.low === made.pieces?.count;
  if (made.servings !== null || !servings || sameAsPieces) return { ...made, stated };
  const { low, high, text } = servings;
  const words = made.text === null || made.text === text ? text : `${made.text}; ${text}`;
  return { text: words, servings: { low, high }, pieces: made.pieces, stated };
}
