/** The user's own packages on the way through all stages. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { JSDOM, VirtualConsole } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { foodFromLabel } from '../engine/foods/label/label.ts';
import type { PackageLabel } from '../engine/foods/label/package-label.ts';
import {
  type Adaptation,
  adaptRecipe,
  DEFAULT_GOALS,
  type Food,
  foodTable,
  type Recipe,
  readPage,
  tallyRecipe,
  toText,
} from '../engine/index.ts';
import { blendEu, blendUs } from './foods/label/labels.ts';

const PAGES = join(import.meta.dirname, 'pages/demo');

function recipesOf(file: string): Recipe[] {
  const html = readFileSync(join(PAGES, file), 'utf8');
  const options = { virtualConsole: new VirtualConsole() };
  const result = readPage(new JSDOM(html, options).window.document);
  return result.ok ? result.recipes : [];
}

function made(label: PackageLabel): Food {
  const result = foodFromLabel(label);
  if (!result.ok) throw new Error(result.why);
  return result.food;
}

const [loaf] = recipesOf('hearth-loaf.html');
if (!loaf) throw new Error('the loaf cannot be read');

const adapt = (ownFoods: Food[], budgetG = 15): Adaptation =>
  adaptRecipe(loaf, { ...DEFAULT_GOALS, budgetG }, { ownFoods });

const width = ({ after }: Adaptation): number => {
  const net = after.perServing.netCarbsG;
  return net ? net.high - net.low : Number.NaN;
};

const BLEND = 'low-carb-wheat-flour-blend';

describe.each([
  ['US', blendUs({ name: 'Soft Mill flour' })],
  ['EU', blendEu({ name: 'Soft Mill flour' })],
  ['EU, less fibre', blendEu({ name: 'Soft Mill flour', fiberG: 23, energyKcal: 293 })],
])('the loaf with a blend by its %s label', (_, label) => {
  const food = made(label);
  const result = adapt([food]);
  const { plan, before, after } = result;
  const grams = (id: string): number =>
    plan.items.filter((item) => item.foodId === id).reduce((sum, item) => sum + item.grams, 0);

  it('meets the budget as a hybrid loaf with enough water', () => {
    expect(plan.met).toBe(true);
    expect(after.perServing.netCarbsG?.best).toBeLessThanOrEqual(15);
    const share = (100 * grams('bread-flour')) / (plan.dough?.after.flourBaseG ?? Number.NaN);
    expect(share).toBeGreaterThanOrEqual(20);
    expect(share).toBeLessThanOrEqual(45);
    expect(plan.dough?.after.hydrationPct).toBeGreaterThanOrEqual(75);
    expect(plan.dough?.after.hydrationPct).toBeLessThanOrEqual(92);
    expect(after.perServing.fiberG?.best).toBeGreaterThanOrEqual(
      6 * (before.perServing.fiberG?.best ?? Number.NaN),
    );
  });

  it('counts by the label', () => {
    const flour = (72.53 - 2.4) * grams('bread-flour'); // USDA SR 168896
    const net = food.per100g.carbohydrateG ?? 0;
    const blend = (label.form === 'us' ? net - (food.per100g.fiberG ?? 0) : net) * grams(BLEND);
    const rest = after.contributions.length;
    expect(rest).toBeGreaterThanOrEqual(2);
    expect(after.whole.netCarbsG?.best).toBeGreaterThanOrEqual((flour + blend) / 100);
    expect(after.whole.netCarbsG?.best).toBeLessThanOrEqual((flour + blend) / 100 + 2);
  });

  it('is surer than with the typical composition', () => {
    expect(width(result)).toBeLessThan(width(adapt([])));
  });

  it('names the package in swaps, lines and files, and asks for no label', () => {
    const swap = plan.swaps.find((one) => one.to.some((to) => to.foodId === BLEND));
    expect(swap?.to[0]?.food).toBe('Soft Mill flour');
    expect(swap?.cautions.join()).not.toMatch(/label/);
    expect(result.lines.some((line) => line.after?.includes('Soft Mill flour'))).toBe(true);
    expect(toText(result)).toContain('Soft Mill flour');
    expect(toText(result)).not.toContain(foodTable().byId(BLEND)?.name ?? 'flour');
  });
});

describe('without the label', () => {
  it('the plan says to enter it', () => {
    const swap = adapt([]).plan.swaps.find((one) => one.to.some((to) => to.foodId === BLEND));
    expect(swap?.cautions.join()).toMatch(/label/);
  });
});

describe('a package with no gluten', () => {
  it('is not taken for one that holds a dough', () => {
    const weak = made(blendEu({ glutenAmongFirst: false }));
    const { plan } = adapt([weak]);
    const gluten = plan.dough?.after.glutenProteinPct ?? Number.NaN;
    expect(gluten).toBeGreaterThanOrEqual(8);
    const blend = plan.items.find((item) => item.foodId === BLEND)?.grams ?? 0;
    const strong = adapt([made(blendEu())]).plan.items.find((item) => item.foodId === BLEND);
    expect(blend).toBeLessThan(strong?.grams ?? 0);
  });
});

describe('own packages and recipes that do not use them', () => {
  const packages = [
    made(blendEu({ name: 'Soft Mill bread flour, low net' })),
    made(blendEu({ name: 'Golden baking flour mix', standsInFor: null })),
  ];
  const recipes = readdirSync(PAGES)
    .filter((file) => file.endsWith('.html'))
    .sort()
    .flatMap(recipesOf);

  it.each(recipes.map((recipe) => [recipe.title, recipe] as const))(
    '%s counts the same',
    (_, recipe) => {
      const plain = tallyRecipe(recipe, DEFAULT_GOALS);
      const own = tallyRecipe(recipe, DEFAULT_GOALS, { ownFoods: packages });
      expect(own.ingredients.map((i) => i.match?.foodId)).toEqual(
        plain.ingredients.map((i) => i.match?.foodId),
      );
      expect(own.tally.whole).toEqual(plain.tally.whole);
    },
  );
});
