/** Salt, sugar and vinegar that stay in a pickling jar, and salt that is rinsed off. */
import { keptFor } from '../../kept-results.ts';
import type { Line } from '../../model.ts';
import { plain } from '../line-words.ts';

const POURS_OVER =
  /\b(?:pour|ladle)\w*\b[^.]{0,60}\b(?:vinegar|brine|pickling (?:liquid|mixture))\b[^.]{0,60}\bover\b/;
const PICKLES = /\bpickl|\bbrine\b|\bsubmerge|\bjars?\b/;
const BATH = /\b(?:salt|sugar|vinegar|honey)$/;
/** Vinegar by the cup: a dressing has spoons of it. */
const MUCH_VINEGAR = /\bcups?\b[^,]*\bvinegar|\b[1-9]\d{2}\s?(?:ml|g)\b[^,]*\bvinegar/;

const RINSED =
  /\brins\w*\b[^.]{0,50}\b(?:excess |the )?(?:salt|cure)\b|\bsalt\b[^.]{0,40}\brins(?:e|ed|ing)\b/;
/** Salt by the spoon to draw water or to cure, g; a pinch is not rinsed off. Own choice. */
const MUCH_SALT = 12;
const A_LITTLE_SALT = 5;

interface Method {
  title: string;
  steps: readonly string[];
  lines: readonly Line[];
}

interface Jar {
  /** Vinegar by the cup stands on a line. */
  vinegar: boolean;
  /** The method pours it over what is pickled. */
  pickles: boolean;
  /** The method rinses salt off. */
  rinses: boolean;
}

const jarOf = keptFor(({ title, steps, lines }: Method): Jar => {
  const text = plain(steps.join(' ').slice(0, 1990));
  return {
    vinegar: lines.some((line) => MUCH_VINEGAR.test(plain(line.text))),
    pickles: PICKLES.test(`${plain(title)} ${text}`) && POURS_OVER.test(text),
    rinses: RINSED.test(text),
  };
});

/** The other lines of the same bath food, which tell that this one may be for something else. */
const othersOf = (bath: string, recipe: Method): number =>
  recipe.lines.filter(({ items }) =>
    items.some(({ name, amounts }) => amounts.length > 0 && plain(name).endsWith(bath)),
  ).length - 1;

/** Is the item part of the liquid of pickles that a jar keeps? `group` is the line's group, in plain letters. */
export function isPicklingLiquid(
  name: string,
  group: string,
  grams: number | null,
  recipe: Method,
): boolean {
  const bath = BATH.exec(plain(name).trim())?.[0];
  if (bath === undefined || (bath === 'salt' && (grams ?? 0) < A_LITTLE_SALT)) return false;
  const { vinegar, pickles } = jarOf(recipe);
  if (!vinegar) return false;
  return /\bpickl/.test(group) || (pickles && othersOf(bath, recipe) === 0);
}

/** Is it salt that the method rinses off what it was strewn over? */
export const isRinsedSalt = (name: string, grams: number | null, recipe: Method): boolean =>
  /\bsalt$/.test(plain(name).trim()) && (grams ?? 0) >= MUCH_SALT && jarOf(recipe).rinses;
