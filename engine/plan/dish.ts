/** The recipe as the planner sees it: weighed foods with roles, and what may be changed. */
import type { FoodTable } from '../foods/index.ts';
import type { Family, Food, Goals, Ingredient, Role } from '../model.ts';
import { netPerGram } from './figures.ts';
import {
  classOf,
  FAMILY_LIMITS,
  type FamilyLimits,
  SWAP_RULES,
  type SwapRule,
  suits,
} from './knowledge.ts';
import { alsoCoats, type FoodRole, roleIn } from './roles.ts';

/** A counted ingredient of the dish. */
export interface Part {
  key: string;
  food: Food;
  grams: number;
  /** Share that is eaten, 0..1. */
  eaten: number;
  eatenRange: { low: number; best: number; high: number };
  class: string;
  role: Role;
  /** Belongs to the flour base of a dough. */
  base: boolean;
  /** g net carbs per g; 0 when unknown (such parts are never swapped). */
  net: number;
  fixed: boolean;
  /** Heading the line stands under, or null. */
  group: string | null;
}

export interface Candidate {
  rule: SwapRule;
  part: Part;
  to: { food: Food; ratio: number }[];
  cap: number;
}

/** A swap that fits the ingredient but may not be used, and why. */
export interface Refused {
  rule: SwapRule;
  key: string;
  why: string;
}

export interface Dish {
  family: Family;
  limits: FamilyLimits;
  dough: boolean;
  servings: number;
  goals: Goals;
  foods: FoodTable;
  parts: Part[];
  flourBase: number;
  candidates: Candidate[];
  refused: Refused[];
}

/** Why the user's wishes forbid a food, or null when they do not. */
export function forbidden(food: Food, goals: Goals): string | null {
  const allergen = food.allergens.find((a) => goals.avoid.includes(a));
  if (allergen) return `${food.name} contains ${allergen}, which you avoid`;
  return goals.excludedFoods.includes(food.id) ? `you excluded ${food.name}` : null;
}

/** Whether a food may be added of its own accord, such as a binder. */
export const mayAdd = (food: Food, goals: Goals): boolean =>
  forbidden(food, goals) === null && !goals.excludedSwaps.includes(`add-${food.id}`);

function candidateFor(
  rule: SwapRule,
  part: Part,
  dish: Pick<Dish, 'family' | 'goals' | 'foods' | 'limits'> & { title: string },
): Candidate | Refused | null {
  const { family, goals, foods, limits } = dish;
  const refuse = (why: string): Refused => ({ rule, key: part.key, why });
  if (!rule.replaces.includes(part.class)) return null;
  if (rule.role !== undefined && rule.role !== part.role) return null;
  if (rule.role === undefined && part.role === 'coating' && part.class.endsWith('flours'))
    return null;
  if (!suits(rule, family)) return null;
  const to = rule.to.map(({ food: id, ratio }) => ({ id, food: foods.byId(id), ratio }));
  if (to.some(({ food, id }) => food === null || id === part.food.id)) return null;
  const known = to.flatMap(({ food, ratio }) => (food ? [{ food, ratio }] : []));
  if (goals.excludedSwaps.includes(rule.id)) return refuse('you excluded it');
  if (rule.unless !== undefined && new RegExp(rule.unless, 'i').test(dish.title)) {
    return refuse('it would spoil this kind of dish');
  }
  for (const { food } of known) {
    const why = forbidden(food, goals);
    if (why) return refuse(why);
  }
  const nets = known.map(({ food, ratio }) => (netPerGram(food, goals.rule) ?? 1) * ratio);
  const added = nets.reduce((sum, net) => sum + net, 0);
  if (added >= part.net * 0.9) return refuse('it would not lower the net carbs');
  const cap = rule.capBy?.[family] ?? rule.cap;
  if (part.base && limits.share) {
    const column = limits.share;
    const none = known.find(({ food }) => food.function?.maxShare[column] === 0);
    if (none) return refuse(`${none.food.name} does not suit this dish`);
  }
  return { rule, part, to: known, cap };
}

function partOf(
  ingredient: Ingredient,
  role: FoodRole,
  food: Food,
  dish: { dough: boolean; goals: Goals; keep: boolean },
): Part | null {
  const { weight } = ingredient;
  if (!weight || !(weight.grams.best > 0) || !Number.isFinite(weight.grams.best)) return null;
  const net = netPerGram(food, dish.goals.rule);
  return {
    key: ingredient.key,
    food,
    grams: weight.grams.best,
    eaten: weight.eaten.best,
    eatenRange: weight.eaten,
    class: role.class,
    role: role.role,
    base: dish.dough && role.role === 'structure',
    net: net ?? 0,
    fixed: dish.keep || dish.goals.pinned.includes(ingredient.key) || net === null,
    group: ingredient.line.group,
  };
}

/** Collects the parts of a dish and every swap that fits them. `servings` that is not a positive number counts as 1. */
export function readDish(
  ingredients: readonly Ingredient[],
  options: {
    family: Family;
    servings: number;
    goals: Goals;
    foods: FoodTable;
    title?: string;
    steps?: readonly string[];
  },
): Dish {
  const { family, goals, foods } = options;
  const limits = FAMILY_LIMITS.get(family) ?? { kind: 'dish', bulkFloor: 0, erythritolPct: 6 };
  const full = limits as FamilyLimits;
  const dough = full.kind === 'dough';
  const parts = ingredients.flatMap((ingredient): Part[] => {
    const food = ingredient.match ? foods.byId(ingredient.match.foodId) : null;
    if (!food) return [];
    const role = roleIn(food, ingredient, family);
    const keep = alsoCoats(role, family, options.steps ?? []);
    const part = partOf(ingredient, role, food, { dough, goals, keep });
    return part ? [part] : [];
  });
  const flourBase = parts.reduce((sum, part) => sum + (part.base ? part.grams : 0), 0);
  const candidates: Candidate[] = [];
  const refused: Refused[] = [];
  const context = { family, goals, foods, limits: full, title: options.title ?? '' };
  for (const part of parts) {
    if (part.fixed || part.net < 0.02 || part.eaten <= 0) continue;
    for (const rule of SWAP_RULES) {
      const found = candidateFor(rule, part, context);
      if (found === null) continue;
      if ('to' in found) candidates.push(found);
      else refused.push(found);
    }
  }
  return {
    family,
    limits: full,
    dough: dough && flourBase > 0,
    servings: options.servings > 0 && Number.isFinite(options.servings) ? options.servings : 1,
    goals,
    foods,
    parts,
    flourBase,
    candidates: worthwhile(candidates),
    refused,
  };
}

/** Lines with a negligible share of the dish's carbohydrate are left alone. */
function worthwhile(candidates: Candidate[]): Candidate[] {
  const carbs = (c: Candidate): number => c.part.grams * c.part.net * c.part.eaten;
  const most = Math.max(0, ...candidates.map(carbs));
  return candidates.filter((c) => carbs(c) >= 0.03 * most);
}

export const isClass = (food: Food, cls: string): boolean => classOf(food.id)?.class === cls;
