/** A food named in the title stays at least in part, or gives way to its own kind. */
import { describe, expect, it } from 'vitest';
import { sameKind } from '../../../engine/plan/dish/title-foods.ts';
import { foods } from '../build.ts';
import { adapted, type Pasted } from '../pasted.ts';

const food = (id: string) => {
  const found = foods.byId(id);
  if (!found) throw new Error(id);
  return found;
};

const kept = (page: Pasted, foodId: string, budgetG: number): number => {
  const { plan, ingredients } = adapted(page, { budgetG });
  const before = ingredients.reduce(
    (sum, i) => sum + (i.match?.foodId === foodId ? (i.weight?.grams.best ?? 0) : 0),
    0,
  );
  const after = plan.items.reduce((sum, i) => sum + (i.foodId === foodId ? i.grams : 0), 0);
  return after / before;
};

const BANANA_BREAD: Pasted = {
  title: 'Banana bread',
  serves: 'Makes 1 loaf, 12 slices',
  lines: [
    '450 g ripe bananas, peeled',
    '250 g plain flour',
    '150 g sugar',
    '2 eggs',
    '100 g butter',
    '1 tsp baking soda',
  ],
  steps: ['Mash the bananas.', 'Mix everything.', 'Bake at 175 C for 60 minutes.'],
  family: ['quick-bread'],
};

const POTATO_SOUP: Pasted = {
  title: 'Potato and leek soup',
  serves: 'Serves 4',
  lines: [
    '900 g potatoes',
    '300 g leeks',
    '1 litre vegetable stock',
    '100 ml cream',
    '30 g butter',
  ],
  steps: [
    'Soften the leeks in the butter.',
    'Add the potatoes and stock and simmer for 20 minutes.',
    'Blend with the cream.',
  ],
  family: ['other', 'thickened-sauce', 'potato-dish'],
};

describe('foods of the title', () => {
  it.each([15, 8, 3])('banana bread keeps most of its banana at %d g', (budgetG) => {
    expect(kept(BANANA_BREAD, 'banana', budgetG)).toBeGreaterThan(0.58);
  });

  it.each([15, 8, 3])('potato soup keeps a third of its potato at %d g', (budgetG) => {
    expect(kept(POTATO_SOUP, 'potato', budgetG)).toBeGreaterThan(0.32);
  });

  it('mac and cheese keeps pasta of some kind', () => {
    const mac: Pasted = {
      title: "Baked mac 'n' cheese",
      serves: 'Serves 6',
      lines: ['450 g elbow pasta', '600 ml milk', '400 g cheddar', '30 g butter', '30 g flour'],
      steps: [
        'Boil the pasta.',
        'Make a sauce of butter, flour and milk, melt in the cheddar.',
        'Mix and bake.',
      ],
      family: ['pasta-dish'],
    };
    for (const { plan } of adapted(mac, { budgetG: 12 }).ways)
      expect(plan.items.some(({ foodId }) => /pasta/.test(foodId))).toBe(true);
  });

  it('are free to go where the title does not name them', () => {
    expect(kept({ ...POTATO_SOUP, title: 'Winter soup' }, 'potato', 3)).toBeLessThan(0.3);
  });

  it('give way to their own kind only', () => {
    expect(sameKind(food('pasta-dry'), food('soybean-pasta-dry'))).toBe(true);
    expect(sameKind(food('rice-white-dry'), food('konjac-rice'))).toBe(true);
    expect(sameKind(food('all-purpose-flour'), food('almond-flour'))).toBe(true);
    expect(sameKind(food('pasta-dry'), food('zucchini'))).toBe(false);
    expect(sameKind(food('honey'), food('allulose'))).toBe(false);
    expect(sameKind(food('honey'), food('allulose-honey-style'))).toBe(true);
  });
});

describe('a compound of a title', () => {
  it('names the potatoes in it too', () => {
    const page: Pasted = {
      title: 'Bunte Kartoffelpfanne mit Lauch',
      serves: 'Für 4 Portionen',
      lines: ['800 g Kartoffeln', '2 Stangen Lauch', '200 g Champignons', '3 EL Öl', '150 g Käse'],
      steps: ['Kartoffeln würfeln und im Öl braten.', 'Lauch und Champignons mitbraten.'],
      family: ['potato-dish'],
    };
    expect(kept(page, 'potato', 15)).toBeGreaterThan(0.2);
  });
});
