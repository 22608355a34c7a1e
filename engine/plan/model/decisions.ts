/** The planner's free choices: how much of each swap, binder, egg, sweetener, yeast food, and less fat or salt. */
import type { ClosenessPart, Family, Food, Role } from '../../model.ts';
import { mayAdd } from '../dish/candidates.ts';
import type { Candidate, Dish, Part, Section } from '../dish/dish.ts';
import { isHeldByEgg } from '../kitchen/binder-dose.ts';
import { fatOf } from '../kitchen/fats/own-fat.ts';
import type { Change, Decision } from './expressions.ts';
import { isSpoonOfSweet } from './seasoning-sugar.ts';
import { idIn } from './variable-ids.ts';

export interface Choice extends Decision {
  kind: 'swap' | 'add' | 'cut';
  /** Closeness lost per unit of the variable. */
  cost: number;
  part: ClosenessPart;
  max: number;
  candidate: Candidate | null;
  /** Section of the dish it belongs to. */
  section: number;
  /** The ingredient a cut is made in. */
  cut: Part | null;
  food: Food | null;
}

/** Fixed closeness cost of every swap, and of every new food: it tastes of one more thing. Own choice. */
export const SWAP_COST = 0.005;
const FOOD_COST = 0.015;

/** Added closeness cost of every allergen that a swap brings into the dish. Own choice. */
const ALLERGEN_COST = 0.015;

/** A swap that is used replaces at least this share of its line, so that no pinch of a new flour is asked for. Own choice. */
export const LEAST_USE = 0.15;

/** How much a role matters to what the dish is, 0..1, when all of it is swapped. Own choice. */
const ROLE_WEIGHT: Partial<Record<Role, number>> = {
  structure: 1,
  'starch-bulk': 1,
  wrapper: 1,
  coating: 0.6,
  sweetness: 0.5,
  thickener: 0.4,
  fruit: 0.5,
  flavour: 0.4,
  liquid: 0.3,
  vegetable: 0.3,
};

const PART_OF_ROLE: Partial<Record<Role, ClosenessPart>> = {
  structure: 'structure',
  'starch-bulk': 'structure',
  wrapper: 'structure',
  coating: 'structure',
  thickener: 'structure',
  sweetness: 'sweetness',
  liquid: 'water',
};

/** Of a creamy sweet, a base or a biscuit in it is the lesser part. Own choice. */
const CREAMY: ReadonlySet<Family> = new Set(['custard', 'frozen-dessert', 'sweet-sauce']);
const BASE_OF_CREAM = 0.5;

/** Whether a line is the base of a creamy sweet, listed with the cream or in a part of its own. */
export function isBaseOfCream({ role, section }: Part, { sections, main }: Dish): boolean {
  if (PART_OF_ROLE[role] !== 'structure') return false;
  const own = sections[section];
  return own !== undefined && [own, main].some(({ family, dough }) => CREAMY.has(family) && !dough);
}

/** Roles that together are the filling part of a plate: rice in a wrap, potatoes beside pasta. */
const FILLING: ReadonlySet<Role> = new Set(['structure', 'starch-bulk', 'wrapper']);

/** Whether two lines do the same for the dish, so that each weighs less beside the other. */
const alike = (a: Part, b: Part, dish: Dish): boolean =>
  a.role === b.role || (!dish.main.dough && FILLING.has(a.role) && FILLING.has(b.role));

/** Crumbs over a dish, g a serving, that are a topping of it and no coat; how much they matter. Own choice. */
const TOPPING = { grams: 15, weight: 0.5 } as const;

/** Whether crumbs are only strewn over a dish: a coat is what a breaded dish is. */
const isTopping = ({ role, class: cls, grams, section }: Part, dish: Dish): boolean =>
  role === 'coating' &&
  cls === 'breadcrumbs' &&
  grams < TOPPING.grams * dish.servings &&
  dish.sections[section]?.family !== 'breaded-food';

function weightOf(dish: Dish, part: Part): number {
  const same = dish.parts.filter((p) => alike(p, part, dish));
  const total = same.reduce((sum, p) => sum + p.grams, 0);
  const lesser = isBaseOfCream(part, dish);
  const topping = isTopping(part, dish) ? TOPPING.weight : 1;
  const weight = (ROLE_WEIGHT[part.role] ?? 0.3) * (lesser ? BASE_OF_CREAM : 1) * topping;
  return (weight * part.grams) / Math.max(total, 1e-9);
}

/** Less of what seasons sweetly in a savoury dish is missed less than other food. Own choice. */
const SEASONING_WEIGHT = 0.2;

/** What a swap costs for a line as a whole. */
function costOf({ part, rule }: Candidate, dish: Dish): number {
  const isLess = rule.to.length === 0 && isSpoonOfSweet(part, dish);
  return rule.cost * weightOf(dish, part) * (isLess ? SEASONING_WEIGHT : 1);
}

function swapChoice(dish: Dish, candidate: Candidate): Choice {
  const { part, rule, to, cap } = candidate;
  const changes: Change[] = [
    {
      food: part.food,
      grams: -part.grams,
      eaten: part.eaten,
      base: part.base,
      role: part.role,
      key: part.key,
      section: part.section,
    },
    ...to.map(({ food, ratio }) => ({
      food,
      grams: part.grams * ratio,
      eaten: part.eaten,
      base: part.base,
      role: part.role,
      key: part.key,
      section: part.section,
    })),
  ];
  return {
    id: `swap ${part.key} ${rule.id}`,
    kind: 'swap',
    changes,
    cost: costOf(candidate, dish),
    part: PART_OF_ROLE[part.role] ?? 'flavour',
    max: cap,
    candidate,
    section: part.section,
    cut: null,
    food: null,
  };
}

interface Addition {
  section: Section;
  ids: readonly string[];
  role: Role;
  /** Grams per unit. */
  unit: number;
  max: number;
  cost: number;
  part: ClosenessPart;
}

function addition(dish: Dish, wish: Addition): Choice[] {
  const { section } = wish;
  const food = wish.ids.map((id) => dish.foods.byId(id)).find((f) => f !== null && mayAdd(f, dish));
  if (!food) return [];
  const change: Change = {
    food,
    grams: wish.unit,
    eaten: 1,
    base: false,
    role: wish.role,
    key: null,
    section: section.id,
  };
  return [
    {
      id: idIn(section, `add ${food.id}`),
      kind: 'add',
      changes: [change],
      cost: wish.cost,
      part: wish.part,
      max: wish.max,
      candidate: null,
      section: section.id,
      cut: null,
      food,
    },
  ];
}

function cutChoice(part: Part, max: number, cost: number, of: ClosenessPart): Choice {
  const { food, grams, eaten, base, role, key, section } = part;
  return {
    id: `cut ${key}`,
    kind: 'cut',
    changes: [{ food, grams: -grams, eaten, base, role, key, section }],
    cost,
    part: of,
    max,
    candidate: null,
    section,
    cut: part,
    food: null,
  };
}

/** Fixed cost of a food that the dish did not have: one more to buy, and allergens of its own. */
export function foodCost(dish: Dish, food: Food): number {
  const had = new Set(dish.parts.flatMap((part) => part.food.allergens));
  const fresh = food.allergens.filter((allergen) => !had.has(allergen)).length;
  return FOOD_COST + ALLERGEN_COST * fresh;
}

const largest = (parts: readonly Part[]): Part | undefined =>
  [...parts].sort((a, b) => b.grams - a.grams)[0];

function doughAdditions(dish: Dish, section: Section): Choice[] {
  const { limits, flourBase } = section;
  const unit = flourBase / 100;
  const wish = { section, unit, part: 'structure' } as const;
  const held = isHeldByEgg(dish, section);
  const binder = Object.entries(held ? {} : limits.binder).flatMap(([id, { cap }]) =>
    addition(dish, { ...wish, ids: [id], role: 'binder', max: cap, cost: 0.002 }),
  )[0];
  const hasEgg = dish.parts.some(({ role }) => role === 'egg');
  const eggs =
    limits.eggStructure > 0 && hasEgg
      ? addition(dish, { ...wish, ids: ['egg'], role: 'egg', max: 40, cost: 0.003 })
      : [];
  const yeastFood =
    limits.yeastFood > 0
      ? addition(dish, {
          ...wish,
          ids: ['sugar', 'honey'],
          role: 'yeast-food',
          max: 3,
          cost: 0.004,
          part: 'sweetness',
        })
      : [];
  return [...(binder ? [binder] : []), ...eggs, ...yeastFood];
}

/** Least salt of a yeast dough when a limit of sodium asks for it, percent of the flour (common practice, no source). */
const LOW_SALT_PCT = 1;
/** Largest share of the salt a limit of sodium may take where no dough needs it. Own choice. */
const SALT_CUT = 0.8;

/** Largest share of a dough's fat that nuts and seeds may stand in for: more is felt in the crumb (common practice, no source). */
const MOST_FAT_CUT = 0.2;

/** Closeness that all of a dough's fat is worth: the fat in nuts sits in their cells and does not shorten. Own choice. */
const FAT_CUT_COST = 0.12;

/** Share of a section's salt that may go; 0 when none may. */
function saltRoom(dish: Dish, section: Section, salt: Part): number {
  const asked = dish.goals.sodiumLimitMg !== null;
  const usual = section.limits.saltPct?.min ?? 0;
  if (section.limits.yeast && section.dough) {
    const floor = asked ? Math.min(LOW_SALT_PCT, usual) : usual;
    return usual > 0 ? 1 - (floor * section.flourBase) / 100 / salt.grams : 0;
  }
  return asked ? SALT_CUT : 0;
}

function cuts(dish: Dish, section: Section, flourMoves: boolean): Choice[] {
  const free = dish.parts.filter((part) => !part.fixed && part.section === section.id);
  const flour = largest(free.filter(({ base }) => base));
  const own = flour === undefined ? null : fatOf(flour, dish);
  const fats = own?.fixed === false ? own : null;
  const salts = largest(free.filter((p) => p.role === 'salt'));
  const list: Choice[] = [];
  const lean = dish.goals.energyLimitKcal !== null;
  if (fats && (flourMoves || lean))
    list.push(cutChoice(fats, MOST_FAT_CUT, lean ? 0.03 : FAT_CUT_COST, 'fat'));
  if (salts && (flourMoves || dish.goals.sodiumLimitMg !== null)) {
    const room = saltRoom(dish, section, salts);
    if (room > 0) list.push(cutChoice(salts, room, 0.02, 'flavour'));
  }
  return list;
}

/** Intense sweetener makes up what weaker sweeteners lack; grams are small, so the unit is what replaces 1 % of the sugar. */
function intense(dish: Dish, section: Section): Choice[] {
  const sugar = dish.parts.reduce(
    (sum, p) => sum + (p.role === 'sweetness' && p.section === section.id ? p.grams : 0),
    0,
  );
  const swapped = dish.candidates.some(
    (c) => c.part.role === 'sweetness' && c.part.section === section.id,
  );
  if (sugar === 0 || !swapped) return [];
  for (const id of ['monk-fruit-extract', 'steviol-glycosides']) {
    const strength = dish.foods.byId(id)?.function?.sweetness ?? 0;
    if (strength <= 0) continue;
    const found = addition(dish, {
      section,
      ids: [id],
      role: 'sweetness',
      unit: sugar / 100 / strength,
      max: 60,
      cost: 0.001,
      part: 'flavour',
    });
    if (found.length > 0) return found;
  }
  return [];
}

/** Whether the user asked for something besides the budget that a cut of salt or fat can give. */
const wishesCuts = ({ goals }: Dish): boolean =>
  goals.sodiumLimitMg !== null || goals.energyLimitKcal !== null;

/** Every choice open for this dish, in a fixed order. */
export function choicesFor(dish: Dish): Choice[] {
  const swaps = dish.candidates.map((candidate) => swapChoice(dish, candidate));
  if (swaps.length === 0 && !wishesCuts(dish)) return [];
  const others = dish.sections.flatMap((section): Choice[] => {
    const flourMoves =
      section.dough && swaps.some((s) => s.section === section.id && s.candidate?.part.base);
    return [
      ...intense(dish, section),
      ...(flourMoves ? doughAdditions(dish, section) : []),
      ...cuts(dish, section, flourMoves),
    ];
  });
  return [...swaps, ...others];
}
