/** One new food that stands for two neighbours of a list goes in as one amount. */
import { literal } from './name-patterns.ts';

/** What may stand between the two: other things of the list, no new sentence or verb. */
const BETWEEN = String.raw`(?<between>(?:(?:, | and |, and )(?:the )?[^.,;:()\d]{2,40}?){0,3}(?:, | and |, and ))`;

const listed = (name: string): RegExp =>
  new RegExp(
    String.raw`(?<first>, |, and | and )(?<a>\d+(?:\.\d+)?) g ${literal(name)}${BETWEEN}(?<b>\d+(?:\.\d+)?) g ${literal(name)}(?![\p{L}-])`,
    'iu',
  );

/** 'brown sugar, 100 g allulose, white sugar and 60 g allulose' -> 'brown sugar, white sugar and 160 g allulose'. */
export const withOneAmount = (text: string, names: readonly string[]): string =>
  names.reduce(
    (now, name) =>
      now.replace(listed(name), (...found) => {
        const { a = '0', b = '0', between = '' } = found.at(-1) as Record<string, string>;
        const grams = Math.round((Number(a) + Number(b)) * 10) / 10;
        return `${between}${grams} g ${name}`;
      }),
    text,
  );
