/**
 * The four-ingredient loaf, worked by hand from published composition beside the engine's figures.
 * Targets without a source are common practice: about 150 kcal and 30 g net carbs a slice before,
 * at most 15 g and at least six times the fibre after.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import {
  adaptRecipe,
  DEFAULT_GOALS,
  foodTable,
  type Nutrient,
  readPage,
} from '../../engine/index.ts';

const PAGE = join(import.meta.dirname, '../pages/demo/hearth-loaf.html');
const SERVINGS = 12;

interface Per100g {
  kcal: number;
  carbohydrate: number;
  fiber: number;
  sodium: number;
}

const COMPOSITION: Record<string, Per100g> = {
  // USDA SR 28, FDC 168896, bread flour
  'bread-flour': { kcal: 361, carbohydrate: 72.53, fiber: 2.4, sodium: 2 },
  // USDA SR 28, FDC 175043, active dry yeast
  'dry-yeast': { kcal: 325, carbohydrate: 41.22, fiber: 26.9, sodium: 51 },
  // USDA SR 28, FDC 173468, table salt
  salt: { kcal: 0, carbohydrate: 0, fiber: 0, sodium: 38758 },
  // drinking water, taken as pure
  water: { kcal: 0, carbohydrate: 0, fiber: 0, sodium: 0 },
  // calculated from 43 vital gluten, 26 resistant wheat starch, 9 oat fibre, 15 bread flour and 7
  // defatted soy flour (make-up: common practice, no source; sodium from memory)
  'low-carb-wheat-flour-blend': { kcal: 308, carbohydrate: 51, fiber: 30, sodium: 40 },
  // typical label, from memory
  'xanthan-gum': { kcal: 194, carbohydrate: 88, fiber: 85, sodium: 3000 },
};

function byHand(items: readonly { foodId: string; grams: number }[]) {
  const total = { kcal: 0, net: 0, fiber: 0, sodium: 0 };
  for (const { foodId, grams } of items) {
    const food = COMPOSITION[foodId];
    if (!food) throw new Error(`no hand figures for ${foodId}`);
    total.kcal += (food.kcal * grams) / 100 / SERVINGS;
    total.net += ((food.carbohydrate - food.fiber) * grams) / 100 / SERVINGS;
    total.fiber += (food.fiber * grams) / 100 / SERVINGS;
    total.sodium += (food.sodium * grams) / 100 / SERVINGS;
  }
  return total;
}

const page = readPage(new JSDOM(readFileSync(PAGE, 'utf8')).window.document);
if (!page.ok || !page.recipes[0]) throw new Error('the hearth loaf page cannot be read');
const loaf = adaptRecipe(page.recipes[0], { ...DEFAULT_GOALS, budgetG: 15 });
const { plan } = loaf;

const figure = (part: 'before' | 'after', nutrient: Nutrient): number =>
  loaf[part].perServing[nutrient]?.best ?? Number.NaN;

const planned = (foodId: string): number =>
  plan.items.filter((item) => item.foodId === foodId).reduce((sum, item) => sum + item.grams, 0);

describe('the flour blend', () => {
  it('has the net carbs and fibre of its components', () => {
    // share of the blend; net carbs and fibre per 100 g: gluten FDC 168147, bread flour 168896 and
    // soy flour 174275 (USDA SR 28); resistant starch and oat fibre typical labels, from memory
    const parts = [
      { share: 0.43, net: 13.19, fiber: 0.6 },
      { share: 0.26, net: 13, fiber: 76 },
      { share: 0.09, net: 3, fiber: 88 },
      { share: 0.15, net: 70.13, fiber: 2.4 },
      { share: 0.07, net: 16.4, fiber: 17.5 },
    ];
    const sum = (of: 'net' | 'fiber') =>
      parts.reduce((all, part) => all + part.share * part[of], 0);
    const blend = foodTable().byId('low-carb-wheat-flour-blend')?.per100g;
    expect(blend?.fiberG).toBeCloseTo(sum('fiber'), -0.3);
    expect((blend?.carbohydrateG ?? 0) - (blend?.fiberG ?? 0)).toBeCloseTo(sum('net'), 0);
  });
});

describe('the loaf before', () => {
  const hand = byHand([
    { foodId: 'bread-flour', grams: 500 },
    { foodId: 'water', grams: 370 },
    { foodId: 'salt', grams: 10 },
    { foodId: 'dry-yeast', grams: 2 },
  ]);

  it('has the figures of the hand-worked sum', () => {
    expect(figure('before', 'energyKcal')).toBeCloseTo(hand.kcal, 0);
    expect(figure('before', 'netCarbsG')).toBeCloseTo(hand.net, 2);
    expect(figure('before', 'fiberG')).toBeCloseTo(hand.fiber, 2);
    expect(figure('before', 'sodiumMg')).toBeCloseTo(hand.sodium, 0);
  });

  it('lies where practice puts such a slice', () => {
    expect(figure('before', 'energyKcal')).toBeGreaterThanOrEqual(140);
    expect(figure('before', 'energyKcal')).toBeLessThanOrEqual(160);
    expect(figure('before', 'netCarbsG')).toBeGreaterThanOrEqual(28);
    expect(figure('before', 'netCarbsG')).toBeLessThanOrEqual(32);
    expect(figure('before', 'fiberG')).toBeLessThanOrEqual(1.5);
  });
});

describe('the loaf after, at 15 g', () => {
  const hand = byHand(plan.items);

  it('is within the budget by the engine and by hand', () => {
    expect(plan.met).toBe(true);
    expect(figure('after', 'netCarbsG')).toBeLessThanOrEqual(15);
    expect(hand.net).toBeLessThanOrEqual(15);
    expect(figure('after', 'netCarbsG')).toBeCloseTo(hand.net, 1);
  });

  it('agrees with the hand-worked sum within two percent', () => {
    expect(figure('after', 'energyKcal') / hand.kcal).toBeCloseTo(1, 1.7);
    expect(figure('after', 'fiberG') / hand.fiber).toBeCloseTo(1, 1.7);
    expect(figure('after', 'sodiumMg') / hand.sodium).toBeCloseTo(1, 1.7);
  });

  it('has at least six times the fibre, and no more energy or sodium', () => {
    expect(figure('after', 'fiberG')).toBeGreaterThanOrEqual(6 * figure('before', 'fiberG'));
    expect(figure('after', 'energyKcal')).toBeLessThanOrEqual(figure('before', 'energyKcal'));
    expect(figure('after', 'sodiumMg')).toBeLessThanOrEqual(figure('before', 'sodiumMg'));
  });

  it('keeps bread flour, adds a binder and raises the water', () => {
    const share = planned('bread-flour') / (plan.dough?.after.flourBaseG ?? Number.NaN);
    expect(share).toBeGreaterThanOrEqual(0.2);
    expect(share).toBeLessThanOrEqual(0.45);
    expect(planned('xanthan-gum') + planned('psyllium-husk-whole')).toBeGreaterThan(0);
    expect(planned('water')).toBeGreaterThan(370);
    expect(plan.dough?.after.hydrationPct).toBeLessThanOrEqual(92);
    expect(plan.dough?.after.saltPct).toBeLessThanOrEqual(2.2);
  });

  it('keeps the handling that makes crust and crumb', () => {
    const method = loaf.steps.map((step) => step.after).join('\n');
    expect(method).toMatch(/30 minutes/);
    expect(method).toMatch(/35-38 °C/);
    expect(method).toMatch(/never hotter than 43 °C/);
    expect(method).toMatch(
      /^Mix [^\n]*flour[^\n]*xanthan gum; from here on, the flours are this mix/,
    );
    expect(method.match(/\bfold\b/gi)?.length ?? 0).toBeGreaterThanOrEqual(2);
    expect(method).toMatch(/lid on/);
    expect(method).toMatch(/lid off/);
    expect(method).toMatch(/cool/i);
    for (const step of loaf.steps) if (step.change === 'inserted') expect(step.why).toBeTruthy();
  });
});
