/** Checks a plan from its items alone: figures are taken from foods and compared with this table, not with the planner's. */
import type { Family, Food, Plan, PlannedItem } from '../../engine/model.ts';
import { foods, ingredientsOf, type Sample, tallyAfter, tallyOf } from './build.ts';

interface Bounds {
  column: 'YB' | 'FT' | 'QB' | 'CK' | 'CO' | 'PA';
  glutenHard: number;
  glutenIdeal: number;
  glutenMost: number;
  starch: number;
  fibre: number;
  water: number;
  xanthanMost: number;
}

/** Percent of the flour base. Gluten 11 in bread: Yeo & Seib 2009; binder: Encina-Zelada 2018; rest common practice, no source. */
const BOUNDS: Partial<Record<Family, Bounds>> = {
  'lean-yeast-bread': {
    column: 'YB',
    glutenHard: 8,
    glutenIdeal: 11,
    glutenMost: 30,
    starch: 15,
    fibre: 12,
    water: 110,
    xanthanMost: 3.5,
  },
  'enriched-yeast-bread': {
    column: 'YB',
    glutenHard: 8,
    glutenIdeal: 11,
    glutenMost: 26,
    starch: 15,
    fibre: 12,
    water: 110,
    xanthanMost: 3.5,
  },
  flatbread: {
    column: 'FT',
    glutenHard: 6,
    glutenIdeal: 10,
    glutenMost: 28,
    starch: 15,
    fibre: 12,
    water: 100,
    xanthanMost: 1.5,
  },
  tortilla: {
    column: 'FT',
    glutenHard: 5,
    glutenIdeal: 9,
    glutenMost: 26,
    starch: 15,
    fibre: 12,
    water: 90,
    xanthanMost: 1.5,
  },
  'quick-bread': {
    column: 'QB',
    glutenHard: 0,
    glutenIdeal: 5,
    glutenMost: 12,
    starch: 15,
    fibre: 15,
    water: 180,
    xanthanMost: 1,
  },
  pancake: {
    column: 'QB',
    glutenHard: 0,
    glutenIdeal: 4,
    glutenMost: 12,
    starch: 10,
    fibre: 15,
    water: 260,
    xanthanMost: 0.6,
  },
  biscuit: {
    column: 'QB',
    glutenHard: 0,
    glutenIdeal: 5,
    glutenMost: 11,
    starch: 15,
    fibre: 15,
    water: 110,
    xanthanMost: 1,
  },
  cookie: {
    column: 'CO',
    glutenHard: 0,
    glutenIdeal: 0,
    glutenMost: 9,
    starch: 0,
    fibre: 15,
    water: 60,
    xanthanMost: 0.6,
  },
  cake: {
    column: 'CK',
    glutenHard: 0,
    glutenIdeal: 3,
    glutenMost: 9,
    starch: 15,
    fibre: 15,
    water: 200,
    xanthanMost: 0.8,
  },
  brownie: {
    column: 'CK',
    glutenHard: 0,
    glutenIdeal: 0,
    glutenMost: 9,
    starch: 0,
    fibre: 15,
    water: 200,
    xanthanMost: 0.8,
  },
  'pie-crust': {
    column: 'CO',
    glutenHard: 0,
    glutenIdeal: 3,
    glutenMost: 8,
    starch: 0,
    fibre: 15,
    water: 40,
    xanthanMost: 0.8,
  },
  choux: {
    column: 'CK',
    glutenHard: 5,
    glutenIdeal: 8,
    glutenMost: 16,
    starch: 35,
    fibre: 15,
    water: 300,
    xanthanMost: 0,
  },
  cracker: {
    column: 'FT',
    glutenHard: 0,
    glutenIdeal: 0,
    glutenMost: 20,
    starch: 0,
    fibre: 15,
    water: 80,
    xanthanMost: 0.5,
  },
  'fresh-pasta': {
    column: 'PA',
    glutenHard: 7,
    glutenIdeal: 10,
    glutenMost: 35,
    starch: 20,
    fibre: 8,
    water: 75,
    xanthanMost: 2.5,
  },
};

/** What kitchen rounding may move, percent of the flour base. */
const GRAIN = 1.5;

const foodOf = (id: string): Food => {
  const food = foods.byId(id);
  if (!food) throw new Error(`no such food: ${id}`);
  return food;
};

type Weighed = Pick<PlannedItem, 'foodId' | 'grams' | 'role'>;

const share = (items: readonly Weighed[], base: number, of: (food: Food) => number): number =>
  items.reduce(
    (sum, item) => sum + (item.role === 'structure' ? item.grams * of(foodOf(item.foodId)) : 0),
    0,
  ) / base;

function flourFigures(items: readonly Weighed[]) {
  const base = items.reduce((sum, item) => sum + (item.role === 'structure' ? item.grams : 0), 0);
  return {
    base,
    gluten: share(items, base, (f) => f.function?.glutenProtein ?? 0),
    starch: share(items, base, (f) => f.function?.digestibleStarch ?? 0),
    fibre: share(items, base, (f) => 100 * (f.function?.insolubleFibre ?? 0)),
  };
}

function doughFaults(
  items: readonly Weighed[],
  original: readonly Weighed[],
  bounds: Bounds,
  changed: boolean,
): string[] {
  const before = flourFigures(original);
  const now = flourFigures(items);
  const faults: string[] = [];
  const need = (ok: boolean, text: string): void => {
    if (!ok) faults.push(text);
  };
  need(
    now.gluten >= Math.min(bounds.glutenHard, before.gluten) - GRAIN,
    `gluten ${now.gluten} below ${bounds.glutenHard}`,
  );
  need(
    now.gluten <= Math.max(bounds.glutenMost, before.gluten) + GRAIN,
    `gluten ${now.gluten} above ${bounds.glutenMost}`,
  );
  need(
    now.starch >= Math.min(bounds.starch, before.starch) - GRAIN,
    `starch ${now.starch} below ${bounds.starch}`,
  );
  need(
    now.fibre <= Math.max(bounds.fibre, before.fibre) + GRAIN,
    `inert fibre ${now.fibre} above ${bounds.fibre}`,
  );
  for (const item of items) {
    const most = foodOf(item.foodId).function?.maxShare[bounds.column];
    if (
      item.role !== 'structure' ||
      most === undefined ||
      original.some((o) => o.foodId === item.foodId)
    )
      continue;
    need((100 * item.grams) / now.base <= most + GRAIN, `${item.foodId} above ${most} %`);
  }
  const water = items.reduce(
    (sum, item) =>
      sum +
      (item.role === 'liquid' || item.role === 'egg'
        ? (item.grams * (foodOf(item.foodId).per100g.waterG ?? 0)) / 100
        : 0),
    0,
  );
  const was = original.reduce(
    (sum, item) =>
      sum +
      (item.role === 'liquid' || item.role === 'egg'
        ? (item.grams * (foodOf(item.foodId).per100g.waterG ?? 0)) / 100
        : 0),
    0,
  );
  need(
    (100 * water) / now.base <= Math.max(bounds.water, (100 * was) / before.base) + 2 * GRAIN,
    `water ${(100 * water) / now.base} above ${bounds.water}`,
  );
  const xanthan = items.reduce(
    (sum, item) => sum + (item.foodId === 'xanthan-gum' && item.role === 'binder' ? item.grams : 0),
    0,
  );
  // A quarter teaspoon is the least that is measured, so small batches may go above the cap by one.
  need(
    xanthan <= (bounds.xanthanMost * now.base) / 100 + 0.75,
    `xanthan ${xanthan} g above ${bounds.xanthanMost} %`,
  );
  const deficit = bounds.glutenIdeal - now.gluten;
  if (changed && deficit > 1 && before.gluten > bounds.glutenIdeal && bounds.xanthanMost > 0)
    need(
      items.some((i) => i.role === 'binder'),
      'gluten is short and there is no binder',
    );
  return faults;
}

function sweetFaults(
  items: readonly Weighed[],
  original: readonly Weighed[],
  servings: number,
): string[] {
  const faults: string[] = [];
  const sweet = (list: readonly Weighed[]): number =>
    list.reduce(
      (sum, i) =>
        sum +
        (i.role === 'sweetness'
          ? i.grams *
            (foodOf(i.foodId).function?.sweetness ?? (foodOf(i.foodId).per100g.sugarsG ?? 0) / 100)
          : 0),
      0,
    );
  const before = sweet(original);
  if (before > 20 && Math.abs(sweet(items) / before - 1) > 0.35)
    faults.push(`sweetness ${sweet(items)} against ${before}`);
  for (const id of [
    'allulose',
    'erythritol',
    'xylitol',
    'isomalt',
    'tagatose',
    'polydextrose',
    'inulin',
  ]) {
    const cap = foods.byId(id)?.function?.doseCapG;
    const dose = items.reduce((sum, i) => sum + (i.foodId === id ? i.grams : 0), 0) / servings;
    if (cap && dose > cap + 0.5) faults.push(`${id} ${dose} g a serving above ${cap}`);
  }
  return faults;
}

/** Everything wrong with a plan: budget, structure, sweetness, doses, sense of the numbers. Empty when all is well. */
export function faultsOf(sample: Sample, plan: Plan, budget: number): string[] {
  const faults: string[] = [];
  const after = tallyAfter(sample, plan).perServing.netCarbsG?.best ?? Number.NaN;
  if (plan.met && after > budget + 1e-6) faults.push(`net carbs ${after} above ${budget}`);
  if (!plan.met && plan.limits.length === 0) faults.push('budget not met, and no limit named');
  const before = tallyOf(sample).perServing.netCarbsG?.best ?? 0;
  if (after > before + 1e-6) faults.push(`net carbs rose from ${before} to ${after}`);
  for (const item of plan.items)
    if (!Number.isFinite(item.grams) || item.grams <= 0)
      faults.push(`${item.foodId} ${item.grams}`);
  const original = ingredientsOf(sample).map(
    ({ key, match, weight }): Weighed => ({
      foodId: match?.foodId ?? '',
      grams: weight?.grams.best ?? 0,
      role: plan.roles[key]?.[0] ?? 'other',
    }),
  );
  const bounds = BOUNDS[plan.family.id];
  const changed = plan.swaps.length > 0;
  if (bounds) faults.push(...doughFaults(plan.items, original, bounds, changed));
  faults.push(...sweetFaults(plan.items, original, sample.servings));
  return faults;
}
