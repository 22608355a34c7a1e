/** Foods that one part of the page makes and another takes: counted once, and by what is taken. */
import { massInterval } from '../interval.ts';
import type { Ingredient, Interval, Line } from '../model.ts';
import { plain } from './line-words.ts';

/** A line that says where its food is made. */
const SAYS_SO =
  /\b(?:above|below|sub-? ?recipes?|recipe follows|home-?made|batch(?:es)?|recipes?)\b/;
const SMALL_WORDS: ReadonlySet<string> = new Set(
  'a an and for from homemade of our recipe see the this to your'.split(' '),
);
/** Names of as many words mean the same without being told. Own choice. */
const TELLING_WORDS = 2;

/** Words of a title or a name, singular: 'For the Garlic Butter' -> garlic, butter. */
const wordsOf = (text: string): string[] =>
  plain(text)
    .replace(/\([^)]*\)/g, ' ')
    .split(/[^a-z]+/)
    .filter((word) => word !== '' && !SMALL_WORDS.has(word))
    .map((word) => word.replace(/(?<=[^s]{2})s$/, ''));

const within = (few: readonly string[], many: readonly string[]): boolean =>
  few.every((word) => many.includes(word));

/** The same words, or fewer of them with the same noun: 'butter' for 'herb butter'. */
function named(name: readonly string[], title: readonly string[]): 'same' | 'alike' | null {
  if (name.length === 0 || title.length === 0 || name.at(-1) !== title.at(-1)) return null;
  const [less, more] = [within(name, title), within(title, name)];
  if (less && more) return 'same';
  return less || more ? 'alike' : null;
}

/** A part that makes two things, or something that is strained off: no share of it can be told. */
const NO_ONE_FOOD = /[&+,/]|\b(?:and|with|stocks?|broths?)\b/;

/** The title of the other part that makes what the line takes, or null. */
function makerOf(line: Line, titles: readonly string[]): string | null {
  const [item, ...others] = line.items;
  if (!item || others.length > 0 || line.kind === 'heading') return null;
  const name = wordsOf(item.name);
  const told = line.kind === 'reference' || SAYS_SO.test(plain(line.text));
  const fits = (title: string): boolean => {
    if (title === line.group || NO_ONE_FOOD.test(plain(title))) return false;
    const likeness = named(name, wordsOf(title));
    if (likeness === null) return false;
    return told || (likeness === 'same' && name.length >= TELLING_WORDS);
  };
  return titles.find(fits) ?? null;
}

const titlesOf = (lines: readonly Line[]): string[] => [
  ...new Set(lines.flatMap(({ group }) => (group === null ? [] : [group]))),
];

/** The lines, with those whose food another part of the page makes told apart from other recipes. */
export function linesMadeHere(lines: readonly Line[]): Line[] {
  const titles = titlesOf(lines);
  return lines.map((line) =>
    makerOf(line, titles) === null ? line : { ...line, kind: 'made-here' },
  );
}

/** Below this share of a part's weight the rest of it is left over. Own choice. */
const LEFT_OVER_BELOW = 0.7;
/** How far the share scatters: a spoonful of it is loose or dense, water boils away. Own choice. */
const SCATTER = { low: 0.3, high: 0.7 };

/** What is taken, g, rather too much than too little; pieces of it are all that it makes. */
const takenGrams = ({ weight }: Ingredient): number =>
  weight?.basis === 'mass' || weight?.basis === 'volume' ? weight.grams.high : Infinity;

const eatenGrams = ({ weight }: Ingredient): number =>
  weight === null ? 0 : weight.grams.best * weight.eaten.best;

/** Share of each part that is taken, where its weight and what is taken of it are known. */
function takenShares(ingredients: readonly Ingredient[]): Map<string, number> {
  const titles = titlesOf(ingredients.map(({ line }) => line));
  const taken = new Map<string, number>();
  for (const one of ingredients) {
    const maker = one.line.kind === 'made-here' ? makerOf(one.line, titles) : null;
    if (maker !== null) taken.set(maker, (taken.get(maker) ?? 0) + takenGrams(one));
  }
  const shares = new Map<string, number>();
  for (const [title, grams] of taken) {
    const whole = ingredients
      .filter(({ line }) => line.group === title)
      .reduce((sum, one) => sum + eatenGrams(one), 0);
    if (whole > 0 && grams / whole < LEFT_OVER_BELOW) shares.set(title, grams / whole);
  }
  return shares;
}

const shareOf = ({ low, best, high }: Interval, share: number): Interval =>
  massInterval(
    low * share * (1 - SCATTER.low),
    best * share,
    Math.min(high, high * share * (1 + SCATTER.high)),
  );

/** The ingredients of a part of which only some is taken, cut to that share of what is eaten. */
export function withTakenShares(ingredients: readonly Ingredient[]): Ingredient[] {
  const shares = takenShares(ingredients);
  if (shares.size === 0) return [...ingredients];
  return ingredients.map((one) => {
    const share = shares.get(one.line.group ?? '');
    if (share === undefined || one.weight === null) return one;
    const text = `${Math.round(share * 100)} % of this part taken as eaten: what the other part takes of it`;
    const { weight } = one;
    return {
      ...one,
      weight: {
        ...weight,
        eaten: shareOf(weight.eaten, share),
        assumptions: [...weight.assumptions, text],
      },
    };
  });
}
