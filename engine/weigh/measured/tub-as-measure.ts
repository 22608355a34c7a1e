/** Cakes measured with the empty tub of their yogurt or cream: '3 pots de farine', '1 Becher Zucker'. */
import { massAround } from '../../interval.ts';
import type { Food, Item } from '../../model.ts';
import type { Region } from '../../units.ts';
import tubs from '../data/tub-measures.json' with { type: 'json' };
import { type Weighed, weighVolume } from './volume.ts';

/** Foods that are poured into such a tub and not sold in one; jars of honey or jam are packages. */
const POURED =
  /^(?:[a-z0-9-]+-)?(?:flour|sugar|starch)$|^(?:vegetable|sunflower|olive|corn)-oil$|^(?:corn)starch$|^almond-flour$/;

/** Grams of one tub of the food as a measure; null where the unit is none, or the food is sold in it. */
export function weighTub(
  unit: string | null,
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): Weighed | null {
  const tub = tubs.find((row) => row.unit === unit);
  if (tub === undefined || food === null || !POURED.test(food.id)) return null;
  const { grams } = weighVolume(tub.millilitres, 'cup', item, food, text, region);
  return {
    grams: massAround(grams.best, tub.scatter),
    basis: 'volume',
    assumptions: [`${unit} taken as a measure of ${tub.millilitres} ml (${tub.source})`],
  };
}
