/** The planner against published figures and common practice, worked by hand. */
import { describe, expect, it } from 'vitest';
import { limitsOf } from '../../engine/plan/dish/family/family-limits.ts';
import { binderDose } from '../../engine/plan/kitchen/binder-dose.ts';
import { foods, frontier, plan, tallyAfter, tallyOf } from '../plan/build.ts';
import { HEARTH_LOAF } from '../plan/samples.ts';

describe('hearth loaf within 15 g', () => {
  const before = tallyOf(HEARTH_LOAF).perServing;
  const result = plan(HEARTH_LOAF);
  const after = tallyAfter(HEARTH_LOAF, result).perServing;
  const grams = (id: string): number =>
    result.items.reduce((sum, item) => sum + (item.foodId === id ? item.grams : 0), 0);

  it('starts where USDA composition puts it', () => {
    // 500 g x (72.53 - 2.4) / 100 / 12 = 29.22 g net; 500 x 3.61 / 12 = 150.4 kcal (USDA SR 168896), yeast 2 g adds 0.5 kcal.
    expect(before.netCarbsG?.best).toBeGreaterThan(29.2);
    expect(before.netCarbsG?.best).toBeLessThan(29.4);
    expect(before.energyKcal?.best).toBeGreaterThan(150);
    expect(before.energyKcal?.best).toBeLessThan(152);
  });

  it('meets the budget with at least six times the fibre and no more energy or sodium', () => {
    expect(result.met).toBe(true);
    expect(after.netCarbsG?.best).toBeLessThanOrEqual(15);
    expect(after.netCarbsG?.best).toBeGreaterThan(13.5);
    expect((after.fiberG?.best ?? 0) / (before.fiberG?.best ?? 1)).toBeGreaterThanOrEqual(6);
    expect(after.energyKcal?.best).toBeLessThanOrEqual(before.energyKcal?.best ?? 0);
    expect(after.sodiumMg?.best).toBeLessThanOrEqual(before.sodiumMg?.best ?? 0);
  });

  it('agrees with the sum worked by hand', () => {
    const flour = grams('bread-flour');
    const blend = grams('low-carb-wheat-flour-blend');
    // Per gram: bread flour 0.7013 net (USDA SR 168896), blend 0.21 (calculated from its parts), gum at most 0.05.
    const hand = (flour * 0.7013 + blend * 0.21) / 12;
    expect(Math.abs((after.netCarbsG?.best ?? 0) - hand)).toBeLessThan(0.1);
    expect(flour + blend).toBe(500);
  });

  it('keeps 20 to 45 % bread flour, binds with 0.5 to 1.5 % gum, raises water to 75 to 92 %', () => {
    expect(grams('bread-flour') / 500).toBeGreaterThanOrEqual(0.2);
    expect(grams('bread-flour') / 500).toBeLessThanOrEqual(0.45);
    expect(grams('xanthan-gum') / 500).toBeGreaterThanOrEqual(0.005);
    expect(grams('xanthan-gum') / 500).toBeLessThanOrEqual(0.015);
    expect(grams('water')).toBeGreaterThan(370);
    expect(grams('water') / 500).toBeGreaterThanOrEqual(0.75);
    expect(grams('water') / 500).toBeLessThanOrEqual(0.92);
    expect(result.reserveWaterG).toBeGreaterThan(0);
  });

  it('keeps salt between 1.5 and 2.2 % and the yeast', () => {
    const salt = grams('salt') / 500;
    expect(salt).toBeGreaterThanOrEqual(0.015);
    expect(salt).toBeLessThanOrEqual(0.022);
    expect(grams('dry-yeast')).toBe(2);
  });

  it('balances water by what the flours hold', () => {
    const flour = grams('bread-flour');
    const blend = grams('low-carb-wheat-flour-blend');
    // Bread flour holds 0.62, the blend 0.95, gum 5 times its mass (from memory; common practice, no source).
    const held = flour * 0.62 + blend * 0.95 + grams('xanthan-gum') * 5 - 500 * 0.62;
    expect(Math.abs(grams('water') - 370 - 0.7 * held)).toBeLessThanOrEqual(5);
    expect(Math.abs((result.reserveWaterG ?? 0) - 0.3 * held)).toBeLessThanOrEqual(5);
  });

  it('shows a frontier of at least twelve points', () => {
    expect(frontier(HEARTH_LOAF).length).toBeGreaterThanOrEqual(12);
  });
});

describe('binder rule', () => {
  it('gives the base dose without deficit and the full dose without gluten', () => {
    // Doses 0.3 to 2.5 %, at most 3.5 % (Encina-Zelada 2018), gluten 11 (Yeo & Seib 2009); 0.3 x share replaced is own choice.
    const limits = limitsOf('lean-yeast-bread');
    expect(binderDose(limits, 'xanthan-gum', { gluten: 27, replaced: 0.7 }).least).toBeCloseTo(
      0.3 + 0.3 * 0.7,
      9,
    );
    expect(binderDose(limits, 'xanthan-gum', { gluten: 5.5, replaced: 1 }).least).toBeCloseTo(
      0.3 + 0.3 + 1.1,
      9,
    );
    expect(binderDose(limits, 'xanthan-gum', { gluten: 0, replaced: 1 }).least).toBeCloseTo(2.8, 9);
    expect(binderDose(limits, 'xanthan-gum', { gluten: 12, replaced: 0 }).least).toBe(0);
    expect(binderDose(limits, 'gelatin', { gluten: 0, replaced: 1 })).toEqual({
      least: 0,
      most: 0,
    });
  });
});

describe('sweetener doses', () => {
  it('stay below the published single dose for a 60 kg adult', () => {
    // 0.4 g/kg allulose (Han 2018) is 24 g; the plan stops at 15 g. Erythritol: 0.46 g/kg (Oku & Nakamura 2007) is 27.6 g.
    expect(foods.byId('allulose')?.function?.doseCapG).toBeLessThanOrEqual(24);
    expect(foods.byId('erythritol')?.function?.doseCapG).toBeLessThanOrEqual(27.6);
  });
});
