/** Foods and ingredients made by hand, so that the tests stand apart from the food table. */
import type { FoodTable } from '../../engine/foods/index.ts';
import type { Composition, Food, Ingredient, Interval, Line, Weight } from '../../engine/model.ts';

const EMPTY: Composition = {
  waterG: null,
  energyKcal: null,
  proteinG: null,
  fatG: null,
  saturatedG: null,
  carbohydrateG: null,
  fiberG: null,
  sugarsG: null,
  starchG: null,
  polyolsG: {},
  alluloseG: 0,
  alcoholG: 0,
  sodiumMg: null,
  potassiumMg: null,
};

export function makeFood(
  id: string,
  per100g: Partial<Composition>,
  rest: Partial<Omit<Food, 'id' | 'per100g'>> = {},
): Food {
  return {
    id,
    name: id.replaceAll('-', ' '),
    aliases: [],
    group: 'test',
    state: 'as-is',
    source: { kind: 'SR', id: null, note: null },
    per100g: { ...EMPTY, ...per100g },
    spread: {},
    carbohydrateBasis: 'total',
    polyolsInCarbohydrate: true,
    fiberMethod: null,
    refuseShare: null,
    measures: [],
    allergens: [],
    function: null,
    ...rest,
  };
}

export function makeTable(...foods: Food[]): FoodTable {
  return { foods, byId: (id) => foods.find((food) => food.id === id) ?? null };
}

export const sure = (value: number): Interval => ({ low: value, best: value, high: value });

export function makeLine(text: string, rest: Partial<Line> = {}): Line {
  return {
    text,
    group: null,
    kind: 'ingredient',
    items: [{ amounts: [], size: null, name: text, preparation: null, alternatives: [] }],
    name: text,
    note: null,
    purpose: null,
    optional: false,
    ...rest,
  };
}

export function makeWeight(grams: number | Interval, eaten: number | Interval = 1): Weight {
  return {
    grams: typeof grams === 'number' ? sure(grams) : grams,
    eaten: typeof eaten === 'number' ? sure(eaten) : eaten,
    basis: 'mass',
    assumptions: [],
    disagreement: null,
  };
}

export function makeIngredient(
  key: string,
  foodId: string | null,
  weight: Weight | null,
  options: { confidence?: number; line?: Line } = {},
): Ingredient {
  const line = options.line ?? makeLine(`${weight?.grams.best ?? 'some'} g ${foodId ?? 'mystery'}`);
  const item = line.items[0];
  if (item === undefined) throw new Error('a fixture line needs an item');
  const match =
    foodId === null
      ? null
      : {
          foodId,
          foodName: foodId,
          confidence: options.confidence ?? 1,
          reason: 'test',
          others: [],
        };
  return { key, line, item, match, weight };
}
