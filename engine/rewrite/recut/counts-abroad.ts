/** Numbers of pieces in steps of other languages: 'in 9-12 Stücke schneiden'. */
import type { MethodWords } from '../languages/method-words.ts';

const NUMBER = '(?<low>\\d+)(?:\\s?(?:-|–|\\p{L}{1,4})\\s?(?<high>\\d+))?';

const countOf = ({ recut: { into, nouns } }: MethodWords): RegExp =>
  new RegExp(
    `(?<=(?<!\\p{L})(?:${into})\\s(?:\\p{L}{2,9}\\.?\\s)?)${NUMBER}(?=\\s${nouns})`,
    'giu',
  );

/** The text with the new number of pieces wherever the page's stands; null where it stands nowhere. */
export function recountedAbroad(
  text: string,
  { page, now }: { page: number; now: number },
  words: MethodWords,
): string | null {
  const put = text.replace(countOf(words), (found, ...rest) => {
    const { low, high } = rest.at(-1) as { low: string; high?: string };
    return Number(low) <= page && page <= Number(high ?? low) ? String(now) : found;
  });
  return put === text ? null : put;
}
