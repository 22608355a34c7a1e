/** Rows on what a stomach bears in one serving: sweeteners that draw water, and fibre that comes in. */
import type { Food } from '../../../model.ts';
import { fibreIn, stomachSweetenersIn } from '../../dish/food-figures.ts';
import type { Builder } from '../row-builder.ts';
import { alluloseIn } from './taste-rows.ts';

/** Most of all polyols in a serving, g: what most adults bear of the mildest (Oku & Nakamura 2007; EFSA 2023). */
const POLYOLS_G = 15;

/** Most allulose in a serving when its food states no other, g: 0.4 g a kg of weight at once (Han 2018), for a small adult. */
const ALLULOSE_G = 15;

/**
 * Allulose, polyols and polydextrose add up in the gut: most of all in a serving, g, and from where each
 * further gram costs points of closeness. Own choice, below the sum of the single limits.
 */
const SWEETENERS = { most: 20, dearFrom: 10, perGram: 0.004 } as const;

/** Fibre that comes in: most in a serving, g, and from where each further gram costs (common practice, no source). */
const ADDED_FIBRE = { most: 20, dearFrom: 10, perGram: 0.004 } as const;

const polyolsIn = (food: Food): number =>
  Object.values(food.per100g.polyolsG ?? {}).reduce((sum, g) => sum + g, 0) / 100;

function broughtFoods(b: Builder): Food[] {
  const foods = new Map<string, Food>();
  for (const { changes } of b.choices)
    for (const { food, grams } of changes) if (grams > 0) foods.set(food.id, food);
  return [...foods.values()];
}

function cap(
  b: Builder,
  id: string,
  of: (food: Food) => number,
  most: number,
  words: string,
  pieces: number,
): void {
  const dose = b.sum((c) => of(c.food) * c.eaten, pieces);
  b.cap(
    `dose ${id}`,
    dose,
    most,
    `More than ${most} g of ${words} in a serving may upset the stomach.`,
  );
}

/** The single sweeteners and fibres, each to its own limit. */
function singleRows(b: Builder, brought: readonly Food[], pieces: number): void {
  if (brought.some((food) => alluloseIn(food) > 0)) {
    const most = b.dish.foods.byId('allulose')?.function?.doseCapG ?? ALLULOSE_G;
    cap(b, 'allulose', alluloseIn, most, 'allulose', pieces);
  }
  if (brought.some((food) => polyolsIn(food) > 0))
    cap(b, 'polyols', polyolsIn, POLYOLS_G, 'sugar alcohols', pieces);
  for (const food of brought) {
    const most = food.function?.doseCapG;
    if (most === null || most === undefined || alluloseIn(food) > 0) continue;
    if (polyolsIn(food) > 0 && most >= POLYOLS_G) continue;
    cap(b, food.id, (f) => (f.id === food.id ? 1 : 0), most, food.name, pieces);
  }
}

/** Amounts that most adults bear in one of the `pieces` that the whole dish is served in. */
export function stomachRows(b: Builder, pieces: number): void {
  const brought = broughtFoods(b);
  singleRows(b, brought, pieces);
  if (brought.some((food) => stomachSweetenersIn(food) > 0)) {
    const words = 'sweeteners that draw water';
    cap(b, 'sweeteners', stomachSweetenersIn, SWEETENERS.most, words, pieces);
    const dose = b.sum((c) => stomachSweetenersIn(c.food) * c.eaten, pieces);
    b.dearAbove('sweeteners-more', dose, SWEETENERS.dearFrom, SWEETENERS.perGram);
  }
  const fibre = b.sum((c) => fibreIn(c.food) * c.eaten, pieces);
  b.cap(
    'fibre-dose',
    fibre,
    fibre.constant + ADDED_FIBRE.most,
    `More than ${ADDED_FIBRE.most} g of added fibre in a serving may upset the stomach.`,
  );
  const from = fibre.constant + ADDED_FIBRE.dearFrom;
  b.dearAbove('fibre-more', fibre, from, ADDED_FIBRE.perGram);
}
