/** Accepted changes after a bake that act on kitchen amounts: water, binder, egg, fat, salt, yeast and so on. */
import { hasTag } from '../../foods/tags.ts';
import type { Adjustment, Food, Lever, Role } from '../../model.ts';
import { mayAdd } from '../dish/candidates.ts';
import type { Dish, Section } from '../dish/dish.ts';
import { isEgg } from '../dish/food-classes.ts';
import { fat, sweetness } from '../dish/food-figures.ts';
import { adjusted, ROW_LEVERS, shiftBase } from '../model/rows/lever-rows.ts';
import { near, quarterTsp, stepFor, tidy } from './kitchen-steps.ts';
import { type Amount, added, total } from './planned-masses.ts';
import { hydrating } from './water.ts';

interface Handle {
  /** How much of the lever a gram of the amount is; 0 for amounts it does not act on. */
  of: (a: Amount) => number;
  /** Foods to add when the plan has none, first that is allowed. */
  foods: (section: Section) => readonly string[];
  role: Role;
  /** All amounts by the same factor, else only the largest. */
  spread?: boolean;
}

const byRole =
  (role: Role) =>
  (a: Amount): number =>
    a.role === role ? 1 : 0;

const HANDLES: Partial<Record<Lever, Handle>> = {
  water: { of: hydrating, foods: () => ['water'], role: 'liquid' },
  binder: {
    of: byRole('binder'),
    foods: (section) => [...Object.keys(section.limits.binder), 'xanthan-gum'],
    role: 'binder',
  },
  egg: {
    of: (a) => (isEgg(a.food) && !hasTag(a.food, 'egg-white') ? 1 : 0),
    foods: () => ['egg'],
    role: 'egg',
  },
  'egg-white': {
    of: (a) => (hasTag(a.food, 'egg-white') ? 1 : 0),
    foods: () => ['egg-white'],
    role: 'egg',
  },
  fat: {
    of: (a) => (a.role === 'fat' && fat(a.food) > 0.5 ? 1 : 0),
    foods: () => ['vegetable-oil', 'butter'],
    role: 'fat',
  },
  salt: { of: byRole('salt'), foods: () => ['salt'], role: 'salt' },
  yeast: { of: byRole('yeast'), foods: () => [], role: 'yeast' },
  'yeast-food': { of: byRole('yeast-food'), foods: () => ['sugar', 'honey'], role: 'yeast-food' },
  leavening: {
    of: (a) => (a.role === 'leavening' ? 1 : 0),
    foods: () => [],
    role: 'leavening',
    spread: true,
  },
  acid: { of: byRole('acid'), foods: () => ['vinegar', 'lemon-juice'], role: 'acid' },
  sugar: {
    of: (a) => (a.role === 'sweetness' ? 1 : 0),
    foods: () => [],
    role: 'sweetness',
    spread: true,
  },
  thickener: {
    of: (a) =>
      a.role === 'thickener' || (a.role === 'binder' && hasTag(a.food, 'binder')) ? 1 : 0,
    foods: () => ['xanthan-gum', 'guar-gum'],
    role: 'thickener',
    spread: true,
  },
};

/** Grain of an adjusted amount, g. */
function grain(food: Food, role: Role, grams: number): number {
  if (hasTag(food, 'binder')) return quarterTsp(food) / 2;
  if (sweetness(food) > 10) return 0.1;
  if (role === 'egg' || food.id === 'water') return 5;
  return stepFor(role, grams);
}

/** What most people bear in a serving still holds for what was raised. */
const withinDose = (grams: number, food: Food, dish: Dish): number => {
  const cap = food.function?.doseCapG;
  return cap ? Math.min(grams, cap * dish.servings) : grams;
};

function changed(a: Amount, grams: number, dish: Dish, asked: string): Amount {
  const step = grain(a.food, a.role, grams);
  const next = near(Math.max(0, grams), step);
  const settled = tidy(grams > a.grams ? withinDose(next, a.food, dish) : next);
  // Less than a kitchen can weigh is not followed, and the plan says so.
  return settled === a.grams ? a : { ...a, grams: settled, asked };
}

/** Why an amount is another: what the user asked for, and what earlier bakes taught. */
function askedWords(changes: readonly Adjustment[], { taught }: Dish): string {
  const words = (list: readonly Adjustment[], start: string): string[] =>
    list.length === 0 ? [] : [`${start}: ${list.map(({ text }) => text).join(' ')}`];
  const own = changes.filter((one) => !taught.includes(one));
  const learned = changes.filter((one) => taught.includes(one));
  return [
    ...words(own, 'You asked for it after a bake'),
    ...learned.map(({ text, why }) => `${text} ${why}`),
  ].join(' ');
}

/** An amount after its changes; percent are of the flour base, or of the food a change names. */
function adjustedBy(
  amounts: readonly Amount[],
  now: number,
  changes: readonly Adjustment[],
  section: Section,
): number {
  return changes.reduce((amount, change) => {
    const { foodId } = change;
    const base =
      foodId === undefined
        ? shiftBase(section)
        : total(amounts, ({ food }) => (food.id === foodId ? 1 : 0));
    return adjusted(amount, [change], base);
  }, now);
}

function act(
  amounts: Amount[],
  handle: Handle,
  changes: readonly Adjustment[],
  section: Section,
  dish: Dish,
): Amount[] {
  const asked = askedWords(changes, dish);
  const pinned = (a: Amount): boolean => dish.goals.pinned.includes(a.key ?? '');
  const now = total(amounts, handle.of);
  const shift = adjustedBy(amounts, now, changes, section) - now;
  if (Math.abs(shift) < 1e-9) return amounts;
  const open = amounts.filter((a) => !pinned(a));
  if (handle.spread === true && now > 0) {
    const movable = total(open, handle.of);
    const factor = movable > 0 ? Math.max(0, 1 + shift / movable) : 1;
    return amounts.map((a) =>
      handle.of(a) > 0 && a.grams > 0 && !pinned(a) ? changed(a, a.grams * factor, dish, asked) : a,
    );
  }
  if (open.some((a) => handle.of(a) > 0 && a.grams > 0))
    return moved(amounts, handle, shift, open, dish, asked);
  const food = handle
    .foods(section)
    .map((id) => dish.foods.byId(id))
    .find((f) => f !== null && mayAdd(f, dish));
  if (!food || shift <= 0) return amounts;
  const fresh = added(food, 0, handle.role, section.id);
  return [...amounts, changed(fresh, shift, dish, asked)];
}

/** Plain water moves before milk or egg, then the largest; what one cannot give, the next one gives. */
function moved(
  amounts: Amount[],
  handle: Handle,
  shift: number,
  open: readonly Amount[],
  dish: Dish,
  asked: string,
): Amount[] {
  const rank = (a: Amount): number => (a.food.id === 'water' ? 1e6 : 0) + a.grams;
  const targets = open
    .filter((a) => handle.of(a) > 0 && a.grams > 0)
    .sort((a, b) => rank(b) - rank(a));
  const next = new Map<Amount, Amount>();
  let left = shift;
  for (const a of targets) {
    if (Math.abs(left) < 1e-9) break;
    const to = changed(a, a.grams + left / handle.of(a), dish, asked);
    next.set(a, to);
    // A grain's rounding is no reason to touch the next line.
    const wanted = Math.max(0, a.grams + left / handle.of(a));
    left = a.grams + left / handle.of(a) < 0 ? left + a.grams * handle.of(a) : 0;
    if (wanted > 0) break;
  }
  return amounts.map((a) => next.get(a) ?? a);
}

/** The main part's amounts with every accepted change that acts on kitchen amounts. */
export function withAdjustments(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const levers = Object.keys(HANDLES) as Lever[];
  return levers.reduce((list, lever) => {
    const changes = [...dish.goals.adjustments, ...dish.taught].filter((c) => c.lever === lever);
    const handle = HANDLES[lever];
    return handle && changes.length > 0 ? act(list, handle, changes, section, dish) : list;
  }, amounts);
}

/** Whether a lever acts on kitchen amounts or on the programme; the rest is words. */
export const isPlanned = (lever: Lever): boolean => lever in HANDLES || ROW_LEVERS.has(lever);
