/** A fraction of what is not counted, without its unit: '3/4 cocoa powder' among cups. */
import { massInterval } from '../interval.ts';
import type { Food, Item } from '../model.ts';
import type { Region } from '../units.ts';
import type { RecipeWords } from './eaten/purpose.ts';
import type { Weighed } from './measured/volume.ts';
import { weighReading } from './weigh-reading.ts';

/** Lines in cups that make a page one of cups. Own choice. */
const CUPS_FROM = 3;

const linesInCups = ({ lines }: RecipeWords): number =>
  lines.filter(({ items }) => items.some(({ amounts }) => amounts[0]?.unit === 'cup')).length;

/**
 * Grams of a broken number without a unit on a page that measures in cups: as many cups, and from
 * as many tablespoons up, as nothing tells which was lost. Null for whole numbers and other pages.
 */
export function inLostCups(
  item: Item,
  food: Food | null,
  text: string,
  recipe: RecipeWords,
  region: Region,
): Weighed | null {
  const [amount, ...more] = item.amounts;
  if (!amount || more.length > 0 || amount.unit !== null || food === null) return null;
  if (Number.isInteger(amount.quantity) || amount.quantity > 5) return null;
  if (linesInCups(recipe) < CUPS_FROM) return null;
  const weighIn = (unit: string): Weighed | null =>
    weighReading([{ amount: { ...amount, unit }, size: null }], item, food, text, region);
  const cups = weighIn('cup');
  const spoons = weighIn('tbsp');
  if (!cups || !spoons) return null;
  return {
    grams: massInterval(spoons.grams.low, cups.grams.best, cups.grams.high),
    basis: 'assumed',
    assumptions: ['no unit given: taken as cups, as the other lines are; please check'],
  };
}
