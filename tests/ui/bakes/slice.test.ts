import { describe, expect, it } from 'vitest';
import { adaptRecipe } from '../../../engine/index.ts';
import { today } from '../../../extension/ui/bakes/bake-form.tsx';
import { bakeOf, dishText, pieceText } from '../../../extension/ui/bakes/bake-summary.ts';
import { gramsFor, sliceNetCarbs } from '../../../extension/ui/bakes/slice.ts';
import { sampleBake } from '../../store/sample.ts';
import { adaptedPage } from '../adapted.ts';

const estimated = adaptedPage('hearth-loaf.html');
const { recipe, goals, corrections } = estimated;
const weighed = adaptRecipe(recipe, goals, { reworkedGrams: 780 });

describe('a weighed slice', () => {
  it('has its share of the net carbs of the whole dish', () => {
    const whole = weighed.after.whole.netCarbsG;
    const slice = sliceNetCarbs(weighed.after, 65);
    expect(slice?.best).toBeCloseTo(((whole?.best ?? Number.NaN) * 65) / 780, 6);
    expect(sliceNetCarbs(weighed.after, 780)?.best).toBeCloseTo(whole?.best ?? Number.NaN, 6);
  });

  it('is surer when the dish was weighed than when its weight is an estimate', () => {
    const width = (value: ReturnType<typeof sliceNetCarbs>) =>
      value ? (value.high - value.low) / value.best : Number.NaN;
    expect(width(sliceNetCarbs(weighed.after, 65))).toBeLessThan(
      width(sliceNetCarbs(estimated.after, 65)),
    );
  });

  it('of the budget’s weight has the budget', () => {
    const grams = gramsFor(weighed.after, 15);
    if (!grams) throw new Error('not known');
    expect(sliceNetCarbs(weighed.after, grams.best)?.best).toBeCloseTo(15, 9);
    // The least of the range is what keeps even the upper end within the budget.
    expect(sliceNetCarbs(weighed.after, grams.low)?.high).toBeCloseTo(15, 9);
    expect(grams.low).toBeLessThan(grams.best);
  });

  it('is not known when 100 g are not', () => {
    const unknown = { ...weighed.after, per100gCooked: null };
    expect(sliceNetCarbs(unknown, 65)).toBeNull();
    expect(gramsFor(unknown, 15)).toBeNull();
  });
});

describe('a logged bake', () => {
  const words = {
    day: '2026-11-25',
    dishGrams: 780,
    pieces: 10,
    sliceGrams: null,
    innerC: 98,
    cooledHours: 3,
    extraWaterG: null,
    ovenSetC: null,
    ovenReadC: null,
    minutes: null,
    how: null,
    readings: null,
    symptoms: [],
    notes: '',
  };

  it('keeps the figures of what was baked', () => {
    const at = { recipeId: 'loaf', factor: 2, now: 1000 };
    const bake = bakeOf(words, { recipe, goals, corrections }, estimated, at);
    expect(bake).toMatchObject({
      ...words,
      recipeId: 'loaf',
      factor: 2,
      servings: estimated.after.servings,
      netCarbsG: estimated.after.whole.netCarbsG,
    });
  });

  // By hand: 168 g of net carbs in 760 g are 22.1 g in 100 g, 16.8 g in one of ten, 14.4 g in 65 g.
  it('says what 100 g, one piece and one slice have', () => {
    const bake = sampleBake({ dishGrams: 760, rawGrams: 884, pieces: 10 });
    expect(dishText(bake, 'lean-yeast-bread')).toMatch(
      /^760 g after baking, 14 % lost\. In 100 g: 22\.1 g .*net carbs\.$/,
    );
    expect(pieceText(bake)).toMatch(/^One of 10: 16\.8 g /);
    expect(pieceText({ ...bake, sliceGrams: 65 })).toMatch(/^A slice of 65 g: 14\.4 g /);
  });

  // Twice 168 g of net carbs in 1520 g are the same 22.1 g in 100 g; one of 20 has 16.8 g.
  it('of a double recipe counts what is in all of it', () => {
    const bake = sampleBake({ factor: 2, dishGrams: 1520, rawGrams: 884, pieces: 20 });
    expect(dishText(bake, 'lean-yeast-bread')).toMatch(
      /^1520 g after baking, ×2, 14 % lost\. In 100 g: 22\.1 g .*net carbs\.$/,
    );
    expect(pieceText(bake)).toMatch(/^One of 20: 16\.8 g /);
    expect(pieceText({ ...bake, sliceGrams: 65 })).toMatch(/^A slice of 65 g: 14\.4 g /);
  });

  it('is not called a bake when it is none', () => {
    expect(dishText(sampleBake({ dishGrams: 760 }), 'sweet-sauce')).toMatch(/^760 g when done, /);
  });

  it('says nothing that was not weighed or is not known', () => {
    const bare = sampleBake({ dishGrams: null, pieces: null, sliceGrams: 65 });
    expect(dishText(bare, 'other')).toBeNull();
    expect(pieceText(bare)).toBeNull();
    expect(pieceText(sampleBake({ netCarbsG: null }))).toBeNull();
  });
});

it('today is the day of the user’s own calendar', () => {
  expect(today(new Date(2026, 0, 5, 0, 10))).toBe('2026-01-05');
  expect(today(new Date(2026, 11, 31, 23, 50))).toBe('2026-12-31');
});
