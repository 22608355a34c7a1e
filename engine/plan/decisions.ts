/** The planner's free choices: how much of each swap, binder, egg, sweetener, yeast food, and less fat or salt. */
import type { ClosenessPart, Food, Role } from '../model.ts';
import { type Candidate, type Dish, isClass, mayAdd, type Part } from './dish.ts';
import { fat } from './figures.ts';
import type { Change, Decision } from './state.ts';

export interface Choice extends Decision {
  kind: 'swap' | 'add' | 'cut';
  /** Closeness lost per unit of the variable. */
  cost: number;
  part: ClosenessPart;
  max: number;
  candidate: Candidate | null;
  /** The ingredient a cut is made in. */
  cut: Part | null;
  food: Food | null;
}

/** Fixed closeness cost of every swap used, so that few are preferred. Own choice. */
const SWAP_COST = 0.02;

/** Added closeness cost of every allergen that a swap brings into the dish. Own choice. */
const ALLERGEN_COST = 0.015;

/** A swap that is used replaces at least this share of its line, so that no pinch of a new flour is asked for. Own choice. */
export const LEAST_USE = 0.1;

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

function weightOf(dish: Dish, part: Part): number {
  const same = dish.parts.filter((p) => p.role === part.role);
  const total = same.reduce((sum, p) => sum + p.grams, 0);
  return ((ROLE_WEIGHT[part.role] ?? 0.3) * part.grams) / Math.max(total, 1e-9);
}

/** Sweeteners that the EU and the UK do not authorise as a food cost more there, so others come first. */
const UNAUTHORISED_IN_EU = new Set(['allulose', 'allulose-syrup']);

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
    },
    ...to.map(({ food, ratio }) => ({
      food,
      grams: part.grams * ratio,
      eaten: part.eaten,
      base: part.base,
      role: part.role,
      key: part.key,
    })),
  ];
  const unauthorised =
    dish.goals.rule.region === 'eu' && to.some(({ food }) => UNAUTHORISED_IN_EU.has(food.id));
  return {
    id: `swap ${part.key} ${rule.id}`,
    kind: 'swap',
    changes,
    cost: (rule.cost + (unauthorised ? 0.3 : 0)) * weightOf(dish, part),
    part: PART_OF_ROLE[part.role] ?? 'flavour',
    max: cap,
    candidate,
    cut: null,
    food: null,
  };
}

interface Addition {
  ids: readonly string[];
  role: Role;
  /** Grams per unit. */
  unit: number;
  max: number;
  cost: number;
  part: ClosenessPart;
}

function addition(dish: Dish, wish: Addition): Choice[] {
  const food = wish.ids
    .map((id) => dish.foods.byId(id))
    .find((f) => f !== null && mayAdd(f, dish.goals));
  if (!food) return [];
  const change: Change = {
    food,
    grams: wish.unit,
    eaten: 1,
    base: false,
    role: wish.role,
    key: null,
  };
  return [
    {
      id: `add ${food.id}`,
      kind: 'add',
      changes: [change],
      cost: wish.cost,
      part: wish.part,
      max: wish.max,
      candidate: null,
      cut: null,
      food,
    },
  ];
}

function cutChoice(part: Part, max: number, cost: number, of: ClosenessPart): Choice {
  const { food, grams, eaten, base, role, key } = part;
  return {
    id: `cut ${key}`,
    kind: 'cut',
    changes: [{ food, grams: -grams, eaten, base, role, key }],
    cost,
    part: of,
    max,
    candidate: null,
    cut: part,
    food: null,
  };
}

/** Fixed cost of using a swap: one more change, and allergens the original did not have. */
export function fixedCost(dish: Dish, candidate: Candidate): number {
  const had = new Set(dish.parts.flatMap((part) => part.food.allergens));
  const brought = new Set(candidate.to.flatMap(({ food }) => food.allergens));
  const fresh = [...brought].filter((allergen) => !had.has(allergen)).length;
  return SWAP_COST + ALLERGEN_COST * fresh;
}

const largest = (parts: readonly Part[]): Part | undefined =>
  [...parts].sort((a, b) => b.grams - a.grams)[0];

function doughAdditions(dish: Dish): Choice[] {
  const { limits, flourBase } = dish;
  const percent = flourBase / 100;
  const binders = Object.entries(limits.binder);
  const binder = binders.flatMap(([id, [, , cap]]) =>
    addition(dish, {
      ids: [id],
      role: 'binder',
      unit: percent,
      max: cap,
      cost: 0.002,
      part: 'structure',
    }),
  )[0];
  const eggs =
    limits.eggStructure > 0
      ? addition(dish, {
          ids: ['egg'],
          role: 'egg',
          unit: percent,
          max: 40,
          cost: 0.003,
          part: 'structure',
        })
      : [];
  const yeastFood =
    limits.yeastFood > 0
      ? addition(dish, {
          ids: ['sugar', 'honey'],
          role: 'yeast-food',
          unit: percent,
          max: 3,
          cost: 0.004,
          part: 'sweetness',
        })
      : [];
  return [...(binder ? [binder] : []), ...eggs, ...yeastFood];
}

function cuts(dish: Dish): Choice[] {
  const free = dish.parts.filter((part) => !part.fixed);
  // The dough's own fat: a frosting's or filling's balances no flour.
  const groups = new Set(dish.parts.flatMap((p) => (p.base ? [p.group] : [])));
  const fats = largest(
    free.filter((p) => p.role === 'fat' && fat(p.food) > 0.5 && groups.has(p.group)),
  );
  const salts = largest(free.filter((p) => p.role === 'salt'));
  const list: Choice[] = [];
  if (fats) list.push(cutChoice(fats, 0.6, 0.03, 'fat'));
  const floor = dish.limits.saltPct?.[0] ?? 0;
  if (salts && dish.limits.yeast && floor > 0) {
    const room = 1 - (floor * dish.flourBase) / 100 / salts.grams;
    if (room > 0) list.push(cutChoice(salts, room, 0.02, 'flavour'));
  }
  return list;
}

/** Intense sweetener makes up what weaker sweeteners lack; grams are small, so the unit is what replaces 1 % of the sugar. */
function intense(dish: Dish): Choice[] {
  const sugar = dish.parts.reduce((sum, p) => sum + (p.role === 'sweetness' ? p.grams : 0), 0);
  const swapped = dish.candidates.some((c) => c.part.role === 'sweetness');
  if (sugar === 0 || !swapped) return [];
  for (const id of ['monk-fruit-extract', 'steviol-glycosides']) {
    const food = dish.foods.byId(id);
    const strength = food?.function?.sweetness ?? 0;
    if (!food || strength <= 0) continue;
    const unit = sugar / 100 / strength;
    const found = addition(dish, {
      ids: [id],
      role: 'sweetness',
      unit,
      max: 60,
      cost: 0.001,
      part: 'flavour',
    });
    if (found.length > 0) return found;
  }
  return [];
}

/** Every choice open for this dish, in a fixed order. */
export function choicesFor(dish: Dish): Choice[] {
  const swaps = dish.candidates.map((candidate) => swapChoice(dish, candidate));
  if (swaps.length === 0) return [];
  const flourMoves = dish.dough && swaps.some((s) => s.candidate?.part.base);
  return [
    ...swaps,
    ...intense(dish),
    ...(flourMoves ? [...doughAdditions(dish), ...cuts(dish)] : []),
  ];
}

export const isEgg = (food: Food): boolean => isClass(food, 'eggs');
