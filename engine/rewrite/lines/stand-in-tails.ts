/** What a stand-in takes over from its line: how bread was cut, toasted or dried, and the shape of pasta. */
import { hasTag } from '../../foods/tags.ts';
import type { Ingredient, PlannedItem } from '../../model.ts';
import shapes from '../data/pasta-shapes.json' with { type: 'json' };

const BREADS = /bread|bun|bagel|english-muffin|^rolls?-/;

/** Bread that has dried out, in the page's own words: fresh bread would make a wet mass. */
const STALE =
  /\b(?:stale|day[- ]old|altbacken\w*|oudbakken|rassis|duros?|endurecidos?|raffermo|dagsgammalt|daggammel)(?![\p{L}])/iu;

/** Bread that the line has in cubes comes in cubes again, and toasted bread is toasted. */
function piecesTail({ line }: Ingredient, foodId: string): string {
  const cubes = /bread/.test(foodId) && /\b(?:cubes|cubed)\b/i.test(line.text);
  return `${cubes ? ', in cubes' : ''}${/\btoasted\b/i.test(line.text) ? ', toasted' : ''}`;
}

/** How bread was cut, toasted or dried, which what stands for it is again. */
export function breadTail(
  { foodId }: PlannedItem,
  ingredient: Ingredient,
  foreign: boolean,
): string {
  if (!BREADS.test(foodId)) return '';
  const [stale] = STALE.exec(ingredient.line.text) ?? [];
  return `${foreign ? '' : piecesTail(ingredient, foodId)}${stale === undefined ? '' : `, ${stale.toLowerCase()}`}`;
}

const PEELED_ROOTS = /^(?:celeriac|turnip|rutabaga|kohlrabi|daikon|chayote)$/;
const POTATOES = /^(?:sweet-)?potato/;
const PEELED_AND_CUT =
  /\bpeel(?:ed)?\b.*\b(?:cut|cubed|diced|sliced|chopped|quartered|halved|chunks|wedges|cubes|pieces)\b/i;

/** Potatoes that are cooked whole, as no root of a pound is. */
const SMALL = /\b(?:baby|small|mini|new|fingerling|creamer)\b/i;
const CUT =
  /\b(?:cut|cubed|diced|sliced|chopped|quartered|halved|chunks|wedges|cubes|pieces|half)\b/i;
const HEADS = /^(?:cauliflower|broccoli|romanesco)$/;
const GRATED = /\b(?:grat(?:e|ed)|shred(?:s|ded)?|hash|riced|lasagn\w*|sheets)\b/i;

/** A head is bought whole, and goes in as florets where potatoes or pasta did. */
function headTail({ foodId }: PlannedItem, { line, match }: Ingredient, foreign: boolean): string {
  const id = match?.foodId ?? '';
  const isFor = POTATOES.test(id) || hasTag(id, 'pasta');
  if (foreign || !HEADS.test(foodId) || !isFor || GRATED.test(line.text)) return '';
  return ', in florets';
}

/** A root that stands for potatoes is peeled and cut as they were; a chayote has a stone. */
export function rootTail(planned: PlannedItem, ingredient: Ingredient, foreign: boolean): string {
  const { foodId } = planned;
  const head = headTail(planned, ingredient, foreign);
  if (head !== '') return head;
  const { item, match } = ingredient;
  const said = item.preparation ?? '';
  if (foreign || !PEELED_ROOTS.test(foodId) || !POTATOES.test(match?.foodId ?? '')) return '';
  const isWhole = SMALL.test(ingredient.line.text);
  if (!PEELED_AND_CUT.test(said))
    return isWhole || CUT.test(said)
      ? `, ${isWhole ? 'peeled, in pieces as large as the potatoes' : 'peeled and cut like the potato'}`
      : '';
  const cut = /\d/.test(said) ? 'peeled and cut like the potato' : said;
  return `, ${foodId === 'chayote' ? 'stoned, ' : ''}${cut}`;
}

/** Shapes that pasta of beans is sold in, with the page's shapes that each comes nearest to. */
const SOLD_SHAPES = Object.entries(shapes.sold).map(
  ([sold, named]) =>
    [sold, new RegExp(`\\b(?:${[sold, ...named].join('|')})(?!\\p{L})`, 'iu')] as const,
);

/** The shape of pasta that stands for pasta, as it is sold; a cup of it would be another weight in each shape. */
export function shapeTail(
  { foodId }: PlannedItem,
  { line }: Ingredient,
  foreign: boolean,
): string | null {
  if (!shapes.standIns.includes(foodId)) return null;
  const sold = SOLD_SHAPES.find(([, named]) => named.test(line.text))?.[0];
  if (sold === undefined) return '';
  return foreign ? ` (${sold})` : ` (${sold} shape)`;
}

/** Whether the page measures a line by the cup. */
export const inCups = ({ item }: Ingredient): boolean =>
  item.amounts.some(({ unit }) => unit === 'cup');
