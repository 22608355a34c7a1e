/** Kitchen foods by the names two sides of an ocean use, and the figures that must not drift. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import type { Food } from '../../engine/model.ts';

const { foods, byId } = foodTable();

const owners = new Map(
  foods.flatMap((food) => [food.name, ...food.aliases].map((word) => [word, food.id] as const)),
);

const KITCHEN = new Set([
  'vegetables',
  'fruit',
  'legumes',
  'meat and poultry',
  'fish and seafood',
  'sauces and condiments',
  'stocks and broths',
  'spices and dried herbs',
  'drinks',
  'prepared foods',
  'vegetable stand-ins',
]);
const kitchen = foods.filter(({ group }) => KITCHEN.has(group));

const food = (id: string): Food => {
  const found = byId(id);
  if (found === null) throw new Error(`no food ${id}`);
  return found;
};

const measure = (id: string, unit: string): number | undefined =>
  food(id).measures.find((each) => each.unit === unit)?.grams;

describe('names of kitchen foods', () => {
  it.each([
    ['aubergine', 'eggplant'],
    ['courgette', 'zucchini'],
    ['spring onion', 'scallion'],
    ['green onion', 'scallion'],
    ['swede', 'rutabaga'],
    ['celery root', 'celeriac'],
    ['beetroot', 'beet'],
    ['rocket', 'arugula'],
    ['mangetout', 'snow peas'],
    ['broad beans', 'fava beans'],
    ['coriander leaf', 'cilantro'],
    ['prawn', 'shrimp'],
    ['minced beef', 'ground beef'],
    ['beef mince', 'ground beef'],
    ['chicken stock', 'chicken broth'],
    ['tinned tomatoes', 'canned tomatoes'],
    ['filo pastry', 'phyllo dough'],
    ['catsup', 'tomato ketchup'],
    ['crisps', 'potato chips'],
  ])('%s is %s', (british, american) => {
    expect(owners.get(british)).toBeDefined();
    expect(owners.get(british)).toBe(owners.get(american));
  });

  it.each([
    ['tomato paste', 'canned tomatoes'],
    ['tomato paste', 'passata'],
    ['coriander leaf', 'coriander seed'],
    ['red pepper', 'cayenne pepper'],
    ['black pepper', 'bell pepper'],
    ['dried chickpeas', 'canned chickpeas'],
    ['dried black beans', 'canned black beans'],
    ['fresh ginger', 'ground ginger'],
    ['soy sauce', 'tamari'],
    ['sweet potato', 'potato'],
    ['sweet pickle', 'dill pickle'],
    ['rice vinegar', 'seasoned rice vinegar'],
    ['flour tortilla', 'corn tortilla'],
  ])('%s is not %s', (one, other) => {
    expect(owners.get(one)).toBeDefined();
    expect(owners.get(other)).toBeDefined();
    expect(owners.get(one)).not.toBe(owners.get(other));
  });
});

describe('figures of kitchen foods', () => {
  it.each([
    ['potato', 'SR 170026', 17.49, 2.1],
    ['sweet-potato', 'SR 168482', 20.12, 3],
    ['onion', 'SR 170000', 9.34, 1.7],
    ['celeriac', 'SR 170400', 9.2, 1.8],
    ['breadcrumbs-dry', 'SR 174928', 71.98, 4.5],
    ['kidney-beans-cooked', 'SR 173740', 22.8, 6.4],
    ['chickpeas-dry', 'SR 173756', 62.95, 12.2],
    ['lentils-dry', 'SR 172420', 63.35, 10.7],
  ])('%s carries the figures of %s', (id, record, carbohydrate, fibre) => {
    const { source, per100g } = food(id);
    expect(`${source.kind} ${source.id}`).toBe(record);
    expect(per100g.carbohydrateG).toBe(carbohydrate);
    expect(per100g.fiberG).toBe(fibre);
  });

  it('weighs what a cook counts', () => {
    expect(measure('onion', 'piece')).toBe(110);
    expect(measure('onion', 'small')).toBe(70);
    expect(measure('onion', 'large')).toBe(150);
    expect(measure('garlic', 'clove')).toBe(3);
    expect(measure('celery', 'stalk')).toBe(40);
    expect(measure('lemon-juice', 'piece')).toBe(48);
  });

  it('knows the alcohol of spirits, wine and beer', () => {
    for (const id of ['vodka', 'rum', 'brandy']) {
      expect(food(id).per100g.alcoholG).toBeCloseTo(33.4, 0);
    }
    expect(food('wine-white').per100g.alcoholG).toBeCloseTo(10.3, 0);
    expect(food('wine-red').per100g.alcoholG).toBeCloseTo(10.6, 0);
    expect(food('beer').per100g.alcoholG).toBeCloseTo(3.9, 0);
  });

  it('gives a range to every starch or sugar figure from memory', () => {
    const bare = kitchen.filter(
      ({ source, per100g, spread }) =>
        source.kind === 'memory' &&
        (per100g.carbohydrateG ?? 0) > 1.5 &&
        spread.carbohydrateG === undefined,
    );
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  it('has a household measure of every food but meat, which is sold by mass', () => {
    const bare = kitchen.filter(
      ({ group, measures }) => group !== 'meat and poultry' && measures.length === 0,
    );
    expect(bare.map(({ id }) => id)).toEqual([]);
  });
});

describe('allergens of kitchen foods', () => {
  it.each([
    ['soy-sauce', ['gluten', 'soy', 'wheat']],
    ['celeriac', ['celery']],
    ['celery', ['celery']],
    ['dijon-mustard', ['mustard', 'sulphites']],
    ['worcestershire-sauce', ['fish', 'gluten']],
    ['oyster-sauce', ['gluten', 'molluscs', 'soy', 'wheat']],
    ['shrimp', ['crustaceans']],
    ['anchovy', ['fish']],
    ['mayonnaise', ['egg', 'mustard']],
    ['hummus', ['sesame']],
    ['apricot-dried', ['sulphites']],
    ['wine-white', ['sulphites']],
    ['beer', ['gluten']],
    ['pesto', ['milk', 'tree nuts']],
    ['lupin-beans-cooked', ['lupin']],
  ])('%s: %j', (id, allergens) => {
    expect(food(id).allergens).toEqual(allergens);
  });

  it('names gluten wherever it names wheat', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kitchen), ({ allergens }) => {
        if (allergens.includes('wheat')) expect(allergens).toContain('gluten');
      }),
      { numRuns: 500 },
    );
  });
});
