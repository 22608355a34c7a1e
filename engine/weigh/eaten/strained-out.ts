/** Vegetables that a stock is cooked of and that the method strains out and throws away. */
import { keptFor } from '../../kept-results.ts';
import type { Food, Item, Line } from '../../model.ts';
import { plain } from '../line-words.ts';

interface Method {
  steps: readonly string[];
  lines: readonly Line[];
}

const THROWN =
  'discard|throw (?:away|out)|toss out|entsorgen|wegwerfen|wegwerp|jet(?:er|ez)|desech|descart|scart|kassera|kast|smid';
const SOLIDS =
  'solids|vegetables|veggies|veg|aromatics|onions?|carrots?|celery|bones|herbs|gemuse|suppengrun|wurzelgemuse|legumes|groenten|verduras|verdure|legumes|gronsaker|gronsager|gronnsaker';
const STRAINED =
  /\b(?:strain|sieve|(?:pass|pour)\w* [^.]{0,30}through|abseihen|passieren|durch ein(?:en)? sieb|filtr|passoire|zeef|zeven|colar|colad|cuela|coar|sila|si)\w*\b/;
const GONE = new RegExp(
  `\\b(?:${THROWN})\\w*\\b[^.]{0,60}\\b(?:${SOLIDS})\\b|\\b(?:${SOLIDS})\\b[^.]{0,40}\\b(?:${THROWN})`,
);
/** Groups of which something may be strained out and missed; meat is mostly picked off and eaten. */
const OF_PLANTS = /^(?:vegetables|fruit)/;
const LEAST_LETTERS = 3;

/** The method up to the straining, and what comes after it; null where nothing is strained out. */
const halvesOf = keptFor(({ steps }: Method): { before: string; after: string } | null => {
  const sentences = steps.flatMap((step) => plain(step).split(/(?<=[.;!?])\s+|\n/));
  const gone = sentences.findIndex((sentence, at) => {
    const near = [sentences[at - 1], sentence, sentences[at + 1]].join(' ');
    return GONE.test(sentence) && STRAINED.test(near);
  });
  if (gone < 0) return null;
  return { before: sentences.slice(0, gone).join(' '), after: sentences.slice(gone + 1).join(' ') };
});

/** The last word of a name as both numbers of it begin: 'carrots' -> 'carrot'. */
const stemOf = (name: string): string =>
  (plain(name).split(' ').at(-1) ?? '').replace(/(?:es|s)$/, '');

const sameStem = (line: Line, stem: string): boolean =>
  line.items.some(({ name }) => stemOf(name) === stem);

/**
 * Is the item cooked in a stock and strained out of it? It is named before the straining and not
 * after; of two lines of one food the first is in the stock, the second what is named afterwards.
 */
export function isStrainedOut(item: Item, line: Line, food: Food | null, recipe: Method): boolean {
  const halves = halvesOf(recipe);
  if (halves === null || food === null || !OF_PLANTS.test(food.group)) return false;
  const stem = stemOf(item.name);
  if (stem.length < LEAST_LETTERS || !halves.before.includes(stem)) return false;
  if (!halves.after.includes(stem)) return true;
  const lines = recipe.lines.filter((other) => sameStem(other, stem));
  return lines.length > 1 && lines[0]?.text === line.text;
}
