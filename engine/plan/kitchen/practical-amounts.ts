/** Rounds a plan to amounts that a kitchen scale and whole eggs allow; lines that did not change stay as written. */
import { hasTag } from '../../foods/tags.ts';
import type { Food, Role } from '../../model.ts';
import { mayAdd } from '../dish/candidates.ts';
import type { Dish, Section } from '../dish/dish.ts';
import { functionOf, gluten, starch, sweetness, water } from '../dish/food-figures.ts';
import { setFor } from '../model/rows/set-rows.ts';
import { shareCap } from '../model/rows/structure-rows.ts';
import { binderDose, isHeldByEgg } from './binder-dose.ts';
import { down, near, quarterTsp, stepFor, tidy, up } from './kitchen-steps.ts';
import { withLift } from './leavening.ts';
import { withLessFat } from './less-fat.ts';
import { withAdjustments } from './lever-amounts.ts';
import { withPartners } from './partners.ts';
import { type Amount, added, originalAmounts, total } from './planned-masses.ts';
import { withPotLiquid } from './pot-liquid.ts';
import { hydrating, type WaterChange, waterChange } from './water.ts';
import { wholePieces } from './whole-pieces.ts';
import { feedsYeast, sensibleFood, withYeast } from './yeast.ts';

/** One large egg without shell, g (USDA SR 171287). */
const EGG_G = 50;
/** Below this share of a line, the rest of it goes as well: of a flour, of crumbs, of other foods. Own choice. */
const REMNANT = { base: 0.05, crumbs: 0.35, other: 0.15 };

/** A rest of sugar below this, g, and this share of its line is not worth a bag of its own on the scale, nor is a slight one. Own choice. */
const SWEET_REST = { grams: 15, share: 0.25, slight: 0.12 };

/** Share of a sweet line that is dropped as a scrap: within what a tongue tells. Own choice. */
const SWEET_SCRAP = 0.06;

/** The same in a yeast dough, where so little feeds nothing. Own choice. */
const YEAST_SCRAP = 0.1;

/** A change of fat, salt, powder or water by under this share is not worth asking for. Own choice. */
const SAME_SCOOP = 0.1;

/** Roles whose masses are held by a dose or a balance, so that a scrap of them stays. */
const AS_SOLVED: ReadonlySet<Role> = new Set(['fat', 'sweetness', 'salt']);

/**
 * Whether a dough can do with its stand-ins grown in place of kept flours: starch and gluten stay
 * above what it needs, and no flour goes above its share.
 */
function canSpare(
  exact: readonly Amount[],
  grown: ReadonlyMap<string, number>,
  section: Section,
  dish: Dish,
): boolean {
  const after = exact.flatMap((a): Amount[] => {
    const factor = a.key === null ? undefined : grown.get(a.key);
    if (factor === undefined) return [a];
    return a.origin === 'kept' ? [] : [{ ...a, grams: a.grams * factor }];
  });
  const percent = (list: readonly Amount[], of: (food: Food) => number): number =>
    (100 * total(list, (a) => (a.base ? of(a.food) : 0))) /
    Math.max(
      total(list, (a) => (a.base ? 1 : 0)),
      1e-9,
    );
  const { limits } = section;
  const holds = (of: (food: Food) => number, floor: number): boolean =>
    percent(after, of) >= Math.min(floor, percent(exact, of)) - 0.5;
  const within = after.every((a) => {
    if (!a.base || a.origin === 'kept') return true;
    const cap = shareCap(dish, section, a.food) ?? 100;
    return percent(after, (food) => (food.id === a.food.id ? 1 : 0)) <= cap + 0.5;
  });
  const fibre = (list: readonly Amount[]): number =>
    percent(list, (food) => functionOf(food).insolubleFibre);
  return (
    within &&
    holds(starch, limits.starch.strong) &&
    holds(gluten, limits.gluten?.hard ?? 0) &&
    fibre(after) <= Math.max(limits.inertFibre, fibre(exact)) + 0.5
  );
}

/** So little sugar left beside its stand-in that it does nothing; yeast and what sets by sugar keep theirs. */
const isRest = (grams: number, original: number, { limits, family }: Section): boolean =>
  grams <= (grams < SWEET_REST.grams ? SWEET_REST.share : SWEET_REST.slight) * original &&
  !limits.yeast &&
  family !== 'candy';

/** Lines of crumbs that something else stands in for. */
function crumbLines(exact: readonly Amount[], dish: Dish): Set<string> {
  const swapped = new Set(exact.flatMap((a) => (a.origin === 'swap' && a.key ? [a.key] : [])));
  const crumbs = dish.parts.filter((p) => p.class === 'breadcrumbs' && swapped.has(p.key));
  return new Set(crumbs.map(({ key }) => key));
}

/** A scrap of a line that is left is replaced too, by what replaces the rest of it. */
function withoutRemnants(exact: readonly Amount[], section: Section, dish: Dish): Amount[] {
  const dropped = new Set<string>();
  const grown = new Map<string, number>();
  const crumbs = crumbLines(exact, dish);
  for (const { origin, key, grams, original, base, role } of exact) {
    const scrap = section.limits.yeast
      ? !feedsYeast(grams, section) && grams < YEAST_SCRAP * original
      : grams < SWEET_SCRAP * original;
    const sweet = role === 'sweetness' && key !== null && origin === 'kept' && grams > 0;
    if (sweet && scrap) dropped.add(key);
    else if (sweet && isRest(grams, original, section))
      grown.set(key, original / (original - grams));
    const other = crumbs.has(key ?? '') ? REMNANT.crumbs : REMNANT.other;
    const least = (base ? REMNANT.base : other) * original;
    if (origin !== 'kept' || key === null || grams <= 0 || grams >= least || AS_SOLVED.has(role))
      continue;
    const factor = original / (original - grams);
    if (base && !canSpare(exact, new Map([...grown, [key, factor]]), section, dish)) continue;
    grown.set(key, factor);
  }
  return exact.map((a) => {
    // Its stand-in may be at its dose already, so it does not grow.
    if (a.key !== null && a.origin === 'kept' && dropped.has(a.key)) return { ...a, grams: 0 };
    const factor = a.key === null ? undefined : grown.get(a.key);
    if (factor === undefined) return a;
    return { ...a, grams: a.origin === 'kept' ? 0 : a.grams * factor };
  });
}

/** Roles whose amounts are a measure of their own, not what is left of a swap. */
const MEASURED: ReadonlySet<Role> = new Set(['fat', 'salt', 'leavening', 'liquid']);

function roundedGrams(amount: Amount, cautious: boolean, exact: boolean): number {
  const { grams, role, food, origin } = amount;
  if (origin === 'kept') {
    if (Math.abs(grams - amount.original) < 1e-6) return grams;
    const off = Math.abs(grams - amount.original) / amount.original;
    if (off < SAME_SCOOP && MEASURED.has(role)) return amount.original;
    const step = exact && amount.base ? Math.min(1, stepFor(role, grams)) : stepFor(role, grams);
    return (cautious || role === 'salt' ? down : near)(grams, step);
  }
  if (food.id === 'egg') return up(grams - 0.1 * EGG_G, EGG_G);
  if (role === 'binder' || hasTag(food, 'binder')) return Math.max(up(grams, quarterTsp(food)), 0);
  if ((food.function?.sweetness ?? 0) > 10) return grams < 0.05 ? 0 : near(grams, 0.1);
  // What a serving may hold of it is limited, so rounding must not add to it.
  if (food.function?.doseCapG) return down(grams, stepFor(role, grams));
  return near(grams, stepFor(role, grams));
}

/** What the rounding took from a kept flour goes to its first stand-in, so that the flour base keeps its mass. */
function keepBase(amounts: Amount[], exact: readonly Amount[]): Amount[] {
  const missing = new Map<string, number>();
  exact.forEach((amount, at) => {
    const now = amounts[at];
    if (now && amount.base && amount.key !== null) {
      missing.set(amount.key, (missing.get(amount.key) ?? 0) + amount.grams - now.grams);
    }
  });
  return amounts.map((amount) => {
    const gap = amount.key === null ? 0 : (missing.get(amount.key) ?? 0);
    if (amount.origin !== 'swap' || !amount.base || amount.key === null || Math.abs(gap) < 0.5)
      return amount;
    missing.set(amount.key, 0);
    return { ...amount, grams: Math.max(0, tidy(amount.grams + near(gap, 1))) };
  });
}

/** A flour of which less than this share would go stays as it is. Own choice. */
const TRACE = 0.08;

function withoutTraces(amounts: Amount[]): Amount[] {
  const traces = new Set(
    amounts.flatMap((a) =>
      a.base && a.origin === 'kept' && a.grams < a.original && a.grams > (1 - TRACE) * a.original
        ? [a.key]
        : [],
    ),
  );
  return amounts.flatMap((a) => {
    if (a.key === null || !traces.has(a.key)) return [a];
    return a.origin === 'kept' ? [{ ...a, grams: a.original }] : [];
  });
}

/** Binder from the rounded masses, at least the rule's dose, in quarter teaspoons. */
function withBinder(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  if (base <= 0 || !amounts.some((a) => a.base && a.origin === 'swap')) return amounts;
  if (isHeldByEgg(dish, section)) return amounts;
  // What has gluten of its own leaves nothing for a gum to do.
  const own = (a: Amount): boolean =>
    a.origin === 'kept' || (!section.limits.binderAlways && hasTag(a.food, 'gluten'));
  const replaced = 1 - total(amounts, (a) => (a.base && own(a) ? 1 : 0)) / base;
  const state = {
    gluten: (100 * total(amounts, (a) => (a.base ? gluten(a.food) : 0))) / base,
    replaced,
    was: (100 * total(originalOf(dish, section), (a) => (a.base ? gluten(a.food) : 0))) / base,
  };
  const present = amounts.find((a) => a.role === 'binder');
  const id =
    present?.food.id ??
    Object.keys(section.limits.binder).find((name) => {
      const food = dish.foods.byId(name);
      return food !== null && mayAdd(food, dish);
    });
  const food = id === undefined ? null : dish.foods.byId(id);
  if (id === undefined || !food) return amounts;
  const { least, most } = binderDose(section.limits, id, state);
  const spoon = quarterTsp(food);
  const cap = tidy(Math.max(spoon, down((most * base) / 100, spoon)));
  const grams = tidy(Math.min(cap, up((least * base) / 100, spoon)));
  if (present)
    return amounts.map((a) =>
      a === present && a.origin === 'add'
        ? { ...a, grams: Math.min(cap, Math.max(a.grams, grams)) }
        : a,
    );
  return grams <= 0 ? amounts : [...amounts, added(food, grams, 'binder', section.id)];
}

const largestOf = (amounts: readonly Amount[]): Amount | undefined =>
  [...amounts].sort((a, b) => b.grams - a.grams)[0];

/** Added water below this share of the flour, or of the dough's liquid, is not felt. Own choice. */
const UNFELT = 0.025;

/** Share of the liquid below which a change is not felt: a yeast dough is felt sooner than a batter. Own choice. */
const sameFeel = ({ limits }: Section): number => (limits.yeast ? SAME_SCOOP / 2 : SAME_SCOOP);

const unfelt = (amounts: readonly Amount[], base: number, section: Section): number =>
  Math.max(UNFELT * base, sameFeel(section) * total(amounts, hydrating));

/** Share of milk or buttermilk that need not be left out for the sake of balance. Own choice. */
const UNNOTICED = 0.08;

/** Share of a liquid that stays at least: of milk and the like, and where the dough is too wet or it is water. Own choice. */
const LEAST_LIQUID = { milk: 0.75, water: 0.5 };

/** Liquid that is not poured off to the gram, g (common practice, no source). */
const LEAST_POURED_G = 10;

const hydrationPct = (amounts: readonly Amount[]): number =>
  (100 * total(amounts, hydrating)) /
  Math.max(
    total(amounts, (a) => (a.base ? 1 : 0)),
    1e-9,
  );

/** Wetter than its kind may be, and than the page's own was by more than a spoon. */
const tooWet = (amounts: readonly Amount[], section: Section, dish: Dish): boolean =>
  hydrationPct(amounts) >
  Math.max(
    section.limits.hydration?.max ?? Number.POSITIVE_INFINITY,
    (1 + SAME_SCOOP) * hydrationPct(originalOf(dish, section)),
  );

/** Water in a gram from which a liquid is poured: soured cream and the like are there for their fat and acid. Own choice. */
const POURED = 0.84;

/** Water into the recipe's own water, or a new line; less comes from the largest liquid that is poured. */
function withWater(amounts: Amount[], change: WaterChange, section: Section, dish: Dish): Amount[] {
  const shift = change.mixing > 0 ? down(change.mixing, 5) : near(change.mixing, 5);
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  if (shift === 0 || (shift > 0 && shift < unfelt(amounts, base, section))) return amounts;
  const loose = amounts.filter(
    (a) => a.role === 'liquid' && a.grams > 0 && !dish.goals.pinned.includes(a.key ?? ''),
  );
  const plain =
    largestOf(loose.filter((a) => a.food.id === 'water' && a.origin === 'kept')) ??
    largestOf(loose.filter((a) => a.food.id === 'water'));
  if (shift < 0) {
    const target = plain ?? largestOf(loose.filter(({ food }) => water(food) >= POURED));
    // A change of a liquid other than water that no one would notice is not asked for.
    if (!target) return amounts;
    const wet = tooWet(amounts, section, dish);
    const stays = plain || wet ? LEAST_LIQUID.water : LEAST_LIQUID.milk;
    const grams = near(Math.max(stays * target.grams, target.grams + shift), 5);
    const less = Math.min(-shift, target.grams - grams);
    const slight = plain || wet ? sameFeel(section) : UNNOTICED;
    if (less < Math.max(LEAST_POURED_G, slight * target.grams)) return amounts;
    return amounts.map((a) => (a === target ? { ...a, grams } : a));
  }
  if (plain)
    return amounts.map((a) => (a === plain ? { ...a, grams: near(plain.grams + shift, 5) } : a));
  const food = dish.foods.byId('water');
  return food ? [...amounts, added(food, shift, 'liquid', section.id)] : amounts;
}

/** The original amounts of one section. */
const originalOf = (dish: Dish, section: Section): Amount[] =>
  originalAmounts(dish).filter((a) => a.section === section.id);

const sodium = (amounts: readonly Amount[]): number =>
  total(amounts, (a) => ((a.food.per100g.sodiumMg ?? 0) / 100) * a.eaten);

/** Step in which salt is taken off, g. Own choice. */
const HALF_GRAM = 0.5;

const saltOf = (amounts: readonly Amount[]): number =>
  total(amounts, (a) => (a.role === 'salt' ? 1 : 0));

/** Half grams of salt less while a yeast dough has more sodium than before, down to the family's least salt. */
function lowered(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const floor = section.limits.yeast ? (section.limits.saltPct?.min ?? 0) : 0;
  const before = sodium(originalOf(dish, section));
  let now = amounts;
  while (floor > 0 && sodium(now) > before) {
    const salt = now.find(
      (a) => a.role === 'salt' && a.origin === 'kept' && !dish.goals.pinned.includes(a.key ?? ''),
    );
    // A spoon's mass is no half gram, what is weighed is one.
    const less = salt ? down(salt.grams - HALF_GRAM, HALF_GRAM) : 0;
    if (!salt || less < (floor * section.flourBase) / 100) return now;
    now = now.map((a) => (a === salt ? { ...a, grams: less } : a));
  }
  return now;
}

/** The same, where it is more than a pinch; a lean loaf, of which much is eaten, counts each half gram. */
function withSalt(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const now = lowered(amounts, section, dish);
  const slight = section.family === 'lean-yeast-bread' ? 0 : SAME_SCOOP * saltOf(amounts);
  return saltOf(amounts) - saltOf(now) < slight ? amounts : now;
}

/** Pure intense sweeteners below this are not weighed on a fine scale, g. Own choice. */
const FINE_SCALE_G = 0.1;

/** Sweeteners sold with an intense one in them, as sweet as sugar. */
const BLENDS: Readonly<Record<string, string>> = {
  allulose: 'sweetener-blend-allulose',
  erythritol: 'sweetener-blend-erythritol',
};

/** A blend may come out this much sweeter or less sweet than what it stands for, share of the original's sweetness. Own choice. */
const NEAR_ENOUGH = 0.15;

/**
 * An intense sweetener too little to weigh goes: into a blend in place of its plain sweetener when
 * that comes near enough, or away when no one would taste it.
 */
function measurable(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const sweet = total(originalOf(dish, section), (a) =>
    a.role === 'sweetness' ? sweetness(a.food) : 0,
  );
  let list = amounts;
  for (const a of amounts) {
    const strength = sweetness(a.food);
    if (a.origin === 'kept' || strength <= 10 || a.grams >= FINE_SCALE_G) continue;
    const worth = a.grams * strength;
    const without = list.filter((b) => b !== a);
    const host = without.find((b) => b.origin === 'swap' && b.food.id in BLENDS);
    const blend = host ? dish.foods.byId(BLENDS[host.food.id] ?? '') : null;
    if (worth < SWEET_SCRAP * sweet) list = without;
    else if (host && blend && mayAdd(blend, dish)) {
      const gain = host.grams * (sweetness(blend) - sweetness(host.food));
      if (Math.abs(gain - worth) <= NEAR_ENOUGH * sweet)
        list = without.map((b) => (b === host ? { ...b, food: blend } : b));
    }
  }
  return list;
}

export interface KitchenPlan {
  amounts: Amount[];
  /** g of water to hold back, in steps of 5; null when none. */
  reserve: number | null;
}

function sectionAmounts(
  exact: readonly Amount[],
  section: Section,
  dish: Dish,
  cautious: boolean,
): KitchenPlan {
  const whole = measurable(withoutRemnants(exact, section, dish), section, dish);
  const rounded = whole.map((amount) => {
    const grams = roundedGrams(amount, cautious, dish.goals.flourKept > 0);
    if (grams === amount.grams) return amount;
    return wholePieces({ ...amount, grams: grams === amount.original ? grams : tidy(grams) }, dish);
  });
  const based = withLessFat(
    withoutTraces(keepBase(rounded, whole)).filter((a) => a.grams > 0 || a.origin === 'kept'),
    section,
    dish,
  );
  if (!section.dough) return { amounts: based, reserve: null };
  const before = originalOf(dish, section);
  const lifted = withLift(withBinder(sensibleFood(based, section), section, dish), section, dish);
  const risen = withYeast(lifted, before, section, dish.goals.pinned);
  const bound = withSalt(risen, section, dish);
  const change = waterChange(before, bound, section.limits);
  const reserve = near(change.reserve, 5);
  return {
    amounts: withWater(bound, change, section, dish),
    reserve: reserve >= 5 ? reserve : null,
  };
}

/** An addition the kitchen works out may be set to this many times as much, unless it gets too wet. Own choice. */
const MOST_TIMES = 2;

/** Whether an addition that the programme did not choose may be what the user has set. */
function mayBeSet(
  amounts: readonly Amount[],
  amount: Amount,
  grams: number,
  { section, dish }: { section: Section | undefined; dish: Dish },
): boolean {
  if (amount.origin !== 'add' || !section || grams > MOST_TIMES * amount.grams) return false;
  const own = amounts.filter((a) => a.section === section.id);
  return !tooWet(
    own.map((a) => (a === amount ? { ...a, grams } : a)),
    section,
    dish,
  );
}

/** What the user has set is as it was solved for, however the kitchen would round it. */
function asSet(amounts: readonly Amount[], exact: readonly Amount[], dish: Dish): Amount[] {
  return amounts.map((amount) => {
    const set = setFor(dish.goals, amount);
    if (!set) return amount;
    const solved = exact.find(
      (a) => a.key === amount.key && a.food === amount.food && a.section === amount.section,
    );
    const section = dish.sections.find(({ id }) => id === amount.section);
    const taken = solved
      ? Math.abs(solved.grams - set.grams) < 0.01
      : mayBeSet(amounts, amount, set.grams, { section, dish });
    return taken ? { ...amount, grams: set.grams } : amount;
  });
}

const ORDER = { kept: 0, swap: 1, add: 2 } as const;

/**
 * Kitchen amounts for exact ones, part by part, with water and binder settled on the rounded masses
 * and the changes accepted after a bake made last. `cautious` rounds what stays of a line down, so
 * that net carbs cannot rise; else to the nearest step. What stays comes first, in the dish's order.
 */
export function kitchenAmounts(
  exact: readonly Amount[],
  dish: Dish,
  cautious: boolean,
): KitchenPlan {
  const place = new Map(dish.parts.map((part, at) => [part.key, at]));
  const plans = dish.sections.map((section) => {
    const own = exact.filter((a) => a.section === section.id);
    const plan = sectionAmounts(own, section, dish, cautious);
    return section.id === 0
      ? { ...plan, amounts: withAdjustments(plan.amounts, section, dish) }
      : plan;
  });
  const potted = withPotLiquid(
    plans.flatMap((plan) => plan.amounts),
    dish,
  );
  const settled = withPartners(potted, dish);
  const amounts = asSet(settled, exact, dish);
  if (plans.length > 1) {
    const at = (a: Amount): number => (a.origin === 'kept' ? (place.get(a.key ?? '') ?? 0) : 0);
    amounts.sort((a, b) => ORDER[a.origin] - ORDER[b.origin] || at(a) - at(b));
  }
  return { amounts, reserve: plans[0]?.reserve ?? null };
}
