/** Invented recipes of every family, from pasted text to the reworked lines, held to what a cook would check. */
import { describe, expect, it } from 'vitest';
import type { Adaptation, Family } from '../../engine/model.ts';
import { weighRecipe } from '../../engine/walk.ts';
import { foods } from './build.ts';
import { adapted, isHeading, PASTED, type Pasted, pastedNamed } from './pasted.ts';

const BUDGETS = [15, 10, 25];

/** Least gluten-forming protein, percent of the flour base (common practice, no source). */
const GLUTEN_LEAST: Partial<Record<Family, number>> = {
  'lean-yeast-bread': 8,
  'enriched-yeast-bread': 8,
  flatbread: 6,
};
const GLUTEN_IDEAL = 11;

const DOSED = [
  'allulose',
  'erythritol',
  'xylitol',
  'isomalt',
  'tagatose',
  'polydextrose',
  'inulin',
];

/**
 * The planner lets the sweetness of a sweet fall by at most 30 %, that of a drink, dressing or glaze by 60 %;
 * kitchen rounding and scraps add a little.
 */
const LEAST_SWEET = { sweet: 0.64, other: 0.34 } as const;
const MOST_SWEET = 1.15;
/** A fine scale shows tenths of a gram, and half a tenth of an intense sweetener is as sweet as 7.5 g of sugar. */
const GRAIN_SWEET_G = 7.5;

const results = new Map<string, Adaptation>();
function result(recipe: Pasted, budgetG: number): Adaptation {
  const id = `${recipe.title} ${budgetG}`;
  const known = results.get(id) ?? adapted(recipe, { budgetG });
  results.set(id, known);
  return known;
}

const net = ({ after }: Adaptation): number => after.perServing.netCarbsG?.best ?? Number.NaN;

function sweetness({ plan }: Adaptation): number {
  return plan.items
    .filter(({ role }) => role === 'sweetness')
    .reduce((sum, { foodId, grams }) => sum + grams * sweetOf(foodId), 0);
}

const sweetOf = (foodId: string): number => {
  const food = foods.byId(foodId);
  return food?.function?.sweetness ?? (food?.per100g.sugarsG ?? 0) / 100;
};

const ICING = /frosting|icing|glaze/i;

/** A halved line, after kitchen rounding. */
const HALF = 0.55;

/** Sweet lines of an icing of which half is made, as its butter, cream and the like show. */
function halvedSweets(recipe: Pasted, budgetG: number): Adaptation['plan']['items'] {
  const whole = result(recipe, 1000);
  const { plan } = result(recipe, budgetG);
  const left = ({ key, foodId, grams }: (typeof plan.items)[number]): number =>
    (plan.items.find((i) => i.key === key && i.foodId === foodId)?.grams ?? 0) / grams;
  let at = 0;
  return whole.recipe.groups.flatMap(({ title, lines }) => {
    const keys = new Set(lines.map(() => String(at++)));
    const own = whole.plan.items.filter(({ key }) => key !== null && keys.has(key));
    const others = own.filter(({ role }) => role !== 'sweetness');
    const halved = ICING.test(title ?? '') && others.some((item) => left(item) <= HALF);
    return halved ? own.filter(({ role }) => role === 'sweetness') : [];
  });
}

/** How sweet the dish is to be: as written, with half of an icing that is spread thinly. */
function sweetnessToKeep(recipe: Pasted, budgetG: number): number {
  const notMade = halvedSweets(recipe, budgetG).reduce(
    (sum, { foodId, grams }) => sum + (grams / 2) * sweetOf(foodId),
    0,
  );
  return sweetness(result(recipe, 1000)) - notMade;
}

const THICKENERS = /starch|flour|xanthan|guar|glucomannan|gelatin|chia|cream-cheese|cauliflower/;

function badNumbers({ plan, after }: Adaptation): string[] {
  const faults = plan.items.flatMap(({ key, grams, eaten }) =>
    Number.isFinite(grams) && grams >= 0 && eaten.low <= eaten.high ? [] : [`${key}: ${grams}`],
  );
  for (const [name, value] of Object.entries(after.perServing)) {
    if (value === null) continue;
    const whole = [value.low, value.best, value.high];
    if (!whole.every((v) => Number.isFinite(v) && v >= 0)) faults.push(`${name}: ${whole}`);
  }
  return faults;
}

/** Lines whose words do not read back as the grams of the plan, within 3 %. */
function misread(adaptation: Adaptation): string[] {
  const changed = adaptation.lines.flatMap(({ key, change, after }) =>
    change === 'kept' || after === null ? [] : [{ key, after }],
  );
  const groups = [{ title: null, lines: changed.map(({ after }) => after) }];
  const again = weighRecipe({ ...adaptation.recipe, groups });
  return changed.flatMap(({ key, after }, at) => {
    const [lineKey, foodId] = key.split('>');
    const read = again.find((ingredient) => ingredient.key === String(at));
    const item = adaptation.plan.items.find(
      (one) =>
        one.key === lineKey &&
        one.foodId === read?.match?.foodId &&
        (foodId === undefined || one.foodId === foodId),
    );
    if (item === undefined) return [`${after}: read as ${read?.match?.foodId}`];
    const off = Math.abs((read?.weight?.grams.best ?? 0) - item.grams);
    return off <= Math.max(0.1, 0.03 * item.grams) ? [] : [`${after}: ${item.grams} g planned`];
  });
}

describe.each(PASTED.map((recipe) => [recipe.title, recipe] as const))('%s', (_, recipe) => {
  it('is the dish it says', () => {
    expect(recipe.family).toContain(result(recipe, 15).plan.family.id);
  });

  it.each(BUDGETS)('keeps its promises at %d g', (budgetG) => {
    const adaptation = result(recipe, budgetG);
    const { plan, before } = adaptation;
    expect(badNumbers(adaptation)).toEqual([]);
    if (plan.met) expect(net(adaptation)).toBeLessThanOrEqual(budgetG + 1e-6);
    else expect(plan.limits.map(({ code }) => code)).toContain('BUDGET_NOT_MET');
    expect(net(adaptation)).toBeLessThanOrEqual((before.perServing.netCarbsG?.best ?? 0) + 1e-6);
    expect(misread(adaptation)).toEqual([]);
    for (const id of DOSED) {
      const cap = foods.byId(id)?.function?.doseCapG ?? Number.POSITIVE_INFINITY;
      const grams = plan.items.reduce((sum, i) => sum + (i.foodId === id ? i.grams : 0), 0);
      expect(grams / plan.servings, id).toBeLessThanOrEqual(cap + 0.5);
    }
  });

  it('loses no line', () => {
    const before = result(recipe, 10).lines.flatMap((line) => line.before ?? []);
    const written = recipe.lines.filter((line) => !isHeading(line));
    for (const line of written) expect(before).toContain(line);
  });

  it('keeps its sweetness', () => {
    if (sweetness(result(recipe, 1000)) < 20) return;
    const { id: family } = result(recipe, 1000).plan.family;
    const least = LEAST_SWEET[/sauce|other|-dish$|breaded/.test(family) ? 'other' : 'sweet'];
    for (const budgetG of BUDGETS) {
      const original = sweetnessToKeep(recipe, budgetG);
      const share = sweetness(result(recipe, budgetG)) / original;
      expect(share, `${budgetG} g`).toBeGreaterThan(least);
      const most = Math.max(MOST_SWEET, 1.03 + GRAIN_SWEET_G / original);
      expect(share, `${budgetG} g`).toBeLessThan(most);
    }
  });

  it('keeps a thickener where one was', () => {
    const { plan } = result(recipe, 1000);
    const thickened = plan.items.filter(({ role }) => role === 'thickener').map(({ key }) => key);
    for (const budgetG of BUDGETS) {
      const now = result(recipe, budgetG).plan.items;
      for (const key of thickened) {
        const left = now.some((i) => i.key === key && i.grams > 0 && THICKENERS.test(i.foodId));
        expect(left, `${key} at ${budgetG} g`).toBe(true);
      }
    }
  });

  it('keeps a yeast dough together', () => {
    for (const budgetG of BUDGETS) {
      const { plan } = result(recipe, budgetG);
      const least = GLUTEN_LEAST[plan.family.id];
      if (least === undefined || plan.dough === null) continue;
      const { before, after } = plan.dough;
      // Kitchen rounding moves a share by a fraction of a point.
      const floor = Math.min(least, before.glutenProteinPct) - 0.5;
      expect(after.glutenProteinPct, `${budgetG} g`).toBeGreaterThan(floor);
      if (after.glutenProteinPct < GLUTEN_IDEAL && plan.swaps.length > 0)
        expect(after.binderPct, `${budgetG} g`).toBeGreaterThan(0);
    }
  });

  it('leaves a pinned line alone', () => {
    const first = result(recipe, 15).plan.swaps.find(({ key }) => key !== null);
    if (first?.key == null) return;
    const { plan, lines } = adapted(recipe, { pinned: [first.key] });
    expect(plan.swaps.some(({ key }) => key === first.key)).toBe(false);
    expect(lines.find(({ key }) => key === first.key)?.change).toBe('kept');
  });
});

/**
 * Dishes that are flour, rice, potato or fruit first of all: what is left of them by a rework that meets 15 g
 * is another dish, or takes more products than a cook buys for one. The list may only shrink.
 */
const OUT_OF_REACH = [
  'Thin-crust pizza margherita',
  'Deep apple pie',
  'Fresh egg pasta',
  'Mushroom risotto',
  'Mango sorbet',
  'Ham and mushroom pan pizza',
  'Chicken pot pie',
  'Potato gnocchi',
];

/** Dishes that a smaller piece or plate brought there, which would be a piece or plate no more. */
const CUT_NO_FURTHER = [
  'Burger buns',
  'Fruit scones',
  'Vanilla layer cake',
  'Lentil and bacon soup',
  'Thin crepes',
  'Bacon and cheese muffins',
];

/** Of those out of reach, what is mashed and rolled has no stand-in that would hold together. */
const LEFT_AS_IT_IS = ['Potato gnocchi'];

const meets = (recipe: Pasted): boolean =>
  result(recipe, 15).plan.met || adapted(recipe, { budgetG: 15, way: 'within' }).plan.met;

it('meets 15 g by the way we would take or the way within, but in named dishes', () => {
  expect(PASTED.length).toBeGreaterThanOrEqual(100);
  const missed = PASTED.filter((recipe) => !meets(recipe)).map(({ title }) => title);
  expect(missed.toSorted()).toEqual([...OUT_OF_REACH, ...CUT_NO_FURTHER].toSorted());
});

it.each(OUT_OF_REACH.filter((title) => !LEFT_AS_IT_IS.includes(title)))(
  'takes two fifths off a serving of %s all the same',
  (title) => {
    const adaptation = result(pastedNamed(title), 15);
    const was = adaptation.before.perServing.netCarbsG?.best ?? Number.NaN;
    expect(net(adaptation)).toBeLessThan(0.6 * was);
  },
);
