/** An invented series of six bakes whose water and weight drift; the plan after it is worked out here by hand. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Adaptation,
  adaptRecipe,
  type BakeFacts,
  DEFAULT_GOALS,
  foodFromLabel,
  lessonsFrom,
  readText,
  type Taught,
} from '../../../engine/index.ts';
import { blendUs } from '../../foods/label/labels.ts';

const made = foodFromLabel(blendUs());
if (!made.ok) throw new Error(made.why);
const blend = made.food;
const OWN = new Set([blend.id]);

const TEXT =
  'Invented series loaf\n\n500 g bread flour\n370 g water\n10 g salt\n7 g dry yeast\n\n' +
  'Mix the flour and water.\nBake at 230 °C for 40 minutes.\n\nServes 12';

function loaf(taught?: Taught): Adaptation {
  const read = readText(TEXT);
  const recipe = read.ok ? read.recipes[0] : undefined;
  if (!recipe) throw new Error('not read');
  return adaptRecipe(recipe, DEFAULT_GOALS, { ownFoods: [blend], ...(taught ? { taught } : {}) });
}

const gramsOf = ({ plan }: Adaptation, foodId: string): number =>
  plan.items.reduce((sum, item) => sum + (item.foodId === foodId ? item.grams : 0), 0);

const plain = loaf();
const BLEND = gramsOf(plain, blend.id);

const facts = (changes: Partial<BakeFacts>): BakeFacts => ({
  id: 'bake',
  recipeId: 'loaf',
  title: 'Invented series loaf',
  day: '2026-09-01',
  addedAt: 0,
  plan: {
    family: 'lean-yeast-bread',
    flours: { 'bread-flour': 300, [blend.id]: 200 },
    taughtWaterG: 0,
  },
  rawGrams: null,
  dishGrams: null,
  extraWaterG: null,
  ovenSetC: null,
  ovenReadC: null,
  ...changes,
});

/**
 * Six invented bakes, 200 g of the package in each. Water beyond the plain plan: 0, 5, 10, 15, 20, 25 g; from
 * the third on the list held some of it already. Of 1000 g with it are left 880, 870, 860, 850, 840, 830 g. The
 * thermometer read 0, 5, 5, 10, 12, 14 °C above the dial.
 */
const SERIES: readonly BakeFacts[] = [
  { extra: 0, taught: 0, dish: 880, read: 230 },
  { extra: 5, taught: 0, dish: 870, read: 235 },
  { extra: 5, taught: 5, dish: 860, read: 235 },
  { extra: 10, taught: 5, dish: 850, read: 240 },
  { extra: 10, taught: 10, dish: 840, read: 242 },
  { extra: 10, taught: 15, dish: 830, read: 244 },
].map(({ extra, taught, dish, read }, at) =>
  facts({
    id: `bake-${at + 1}`,
    day: `2026-09-0${at + 1}`,
    plan: {
      family: 'lean-yeast-bread',
      flours: { 'bread-flour': 300, [blend.id]: 200 },
      taughtWaterG: taught,
    },
    rawGrams: 1000 - extra,
    dishGrams: dish,
    extraWaterG: extra,
    ovenSetC: 230,
    ovenReadC: read,
  }),
);

const taughtBy = (bakes: readonly BakeFacts[], off: readonly string[] = []): Taught => ({
  lessons: lessonsFrom(bakes, OWN).filter(({ id }) => !off.includes(id)),
  recipeId: 'loaf',
  foodNames: { [blend.id]: blend.name },
});

describe('six bakes whose water and weight drift', () => {
  const lessons = lessonsFrom(SERIES, OWN);
  const named = (id: string) => lessons.find((lesson) => lesson.id === id);

  it('teach what the last three have in common', () => {
    // (15 + 20 + 25) / 3 = 20 g for 200 g of the package: 10 g for each 100 g.
    expect(named(`flour-water:${blend.id}`)).toMatchObject({
      value: 10,
      low: 7.5,
      high: 12.5,
      bakes: ['bake-6', 'bake-5', 'bake-4'],
      earlier: 3,
    });
    // (850 + 840 + 830) / 3 of 1000 g; 1 % on either side is left to scale and tin.
    const weight = named('dish-weight:loaf');
    expect(weight?.value).toBeCloseTo(0.84, 10);
    expect(weight?.low).toBeCloseTo(0.82, 10);
    expect(weight?.high).toBeCloseTo(0.86, 10);
    // (10 + 12 + 14) / 3 = 12 °C.
    expect(named('oven')).toMatchObject({ value: 12, low: 10, high: 14 });
  });

  it('move the figures of the next plan, which says why', () => {
    const next = loaf(taughtBy(SERIES));
    expect(gramsOf(next, blend.id)).toBe(BLEND);
    // A tenth of the package's grams more water, weighed to 5 g.
    const water = gramsOf(plain, 'water') + BLEND / 10;
    expect(gramsOf(next, 'water')).toBe(5 * Math.round(water / 5));
    const line = next.lines.find(({ after }) => after?.includes(' water'));
    expect(line?.why).toContain(`More water: 10 g for each 100 g of ${blend.name}.`);
    expect(line?.why).toContain('Your bakes taught it');
    // 84 % of what goes in is left, and the net carbs of 100 g follow.
    const { rawGrams, cookedGrams, cookedSource, whole, per100gCooked } = next.after;
    expect(cookedGrams?.best).toBeCloseTo(0.84 * rawGrams.best, 6);
    expect(cookedSource).toContain('taught by your bakes');
    expect(per100gCooked?.netCarbsG?.best).toBeCloseTo(
      (100 * (whole.netCarbsG?.best ?? Number.NaN)) / (0.84 * rawGrams.best),
      6,
    );
    // 12 °C to the dial's step of 5 is 10 °C, told before the dish goes into the oven.
    const at = next.steps.findIndex(({ after }) => after.startsWith('Set the oven 10 °C'));
    expect(at).toBeGreaterThanOrEqual(0);
    expect(next.steps.slice(0, at).some(({ before }) => before?.startsWith('Bake'))).toBe(false);
    expect(next.steps[at]?.why).toContain('12 °C hotter');
    expect(next.goals).toEqual(DEFAULT_GOALS);
  });

  it('are left alone one by one when switched off', () => {
    const water = loaf(taughtBy(SERIES, [`flour-water:${blend.id}`]));
    expect(gramsOf(water, 'water')).toBe(gramsOf(plain, 'water'));
    const oven = loaf(taughtBy(SERIES, ['oven']));
    expect(oven.steps.some(({ after }) => after.startsWith('Set the oven'))).toBe(false);
    const all = lessons.map(({ id }) => id);
    const none = loaf(taughtBy(SERIES, all));
    expect(none).toEqual(plain);
  });

  it('follow the drift bake by bake', () => {
    const after = (count: number) => lessonsFrom(SERIES.slice(0, count), OWN);
    const water = (count: number) =>
      after(count).find(({ of }) => of === 'flour-water')?.value ?? null;
    // None from one; 0 and 5 g are 1.25 g for 100 g; then means of three: 5, 10 and 15 g of 200 g.
    expect([1, 2, 3, 4, 5, 6].map(water)).toEqual([null, 1.25, 2.5, 5, 7.5, 10]);
  });

  it('teach the dish its water where no package of the user is in it', () => {
    const bakes = SERIES.map((bake) => ({ ...bake, plan: bake.plan && { ...bake.plan } }));
    const [lesson] = lessonsFrom(bakes, new Set()).filter(({ of }) => of === 'dish-water');
    // 20 g for 500 g of flour.
    expect(lesson).toMatchObject({ id: 'dish-water:loaf', value: 4 });
    const taught: Taught = { lessons: lesson ? [lesson] : [], recipeId: 'loaf', foodNames: {} };
    expect(gramsOf(loaf(taught), 'water')).toBe(gramsOf(plain, 'water') + 20);
    expect(loaf({ ...taught, recipeId: 'another' })).toEqual(plain);
  });

  it('teach another dish of the family its weight', () => {
    const next = loaf({ ...taughtBy(SERIES), recipeId: 'another' });
    expect(next.after.cookedGrams?.best).toBeCloseTo(0.84 * next.after.rawGrams.best, 6);
    expect(next.after.cookedSource).toContain('of such dishes');
  });
});

describe('lessons', () => {
  it('do not depend on the order the bakes are listed in', () => {
    const plainly = lessonsFrom(SERIES, OWN);
    const sorted = (list: typeof plainly) => [...list].sort((a, b) => (a.id < b.id ? -1 : 1));
    fc.assert(
      fc.property(fc.shuffledSubarray([...SERIES], { minLength: 6 }), (bakes) => {
        expect(sorted(lessonsFrom(bakes, OWN))).toEqual(sorted(plainly));
      }),
      { numRuns: 30, seed: 5 },
    );
  });

  it('rest on nothing that was not measured', () => {
    const bare = SERIES.map((bake) => ({
      ...bake,
      extraWaterG: null,
      dishGrams: null,
      ovenReadC: null,
    }));
    expect(lessonsFrom(bare, OWN)).toEqual([]);
    expect(lessonsFrom(SERIES.slice(0, 1), OWN)).toEqual([]);
  });

  it('pass over mistyped readings', () => {
    const odd = SERIES.map((bake) => ({
      ...bake,
      ovenReadC: 23,
      dishGrams: 84_000,
      extraWaterG: 0,
    }));
    expect(lessonsFrom(odd, OWN).map(({ of }) => of)).toEqual(['flour-water']);
    const still = odd.map((bake) => ({ ...bake, plan: null }));
    expect(lessonsFrom(still, OWN)).toEqual([]);
  });

  it('tell an oven that runs cool to be set higher', () => {
    const cool = SERIES.map((bake) => ({ ...bake, ovenReadC: 216 }));
    const next = loaf(taughtBy(cool));
    expect(
      next.steps.some(({ after }) => after.startsWith('Set the oven 15 °C (27 °F) higher')),
    ).toBe(true);
  });
});

describe('a change accepted after a bake', () => {
  it('can be switched off and stays with the recipe', () => {
    const read = readText(TEXT);
    const recipe = read.ok ? read.recipes[0] : undefined;
    if (!recipe) throw new Error('not read');
    const change = {
      id: 'too-dry.2',
      symptom: 'too-dry',
      lever: 'water' as const,
      factor: null,
      shiftPct: 5,
      text: 'More water: 5 % of the flour’s weight.',
      why: 'invented for the test',
      source: 'own choice',
    };
    const goals = { ...DEFAULT_GOALS, adjustments: [change] };
    const options = { ownFoods: [blend] };
    const on = adaptRecipe(recipe, goals, options);
    expect(gramsOf(on, 'water')).toBe(gramsOf(plain, 'water') + 25);
    const taught = { lessons: [], recipeId: 'loaf', foodNames: {}, changesOff: ['too-dry.2'] };
    const off = adaptRecipe(recipe, goals, { ...options, taught });
    expect(gramsOf(off, 'water')).toBe(gramsOf(plain, 'water'));
    expect(off.goals.adjustments).toEqual([change]);
  });
});
