/** The recipe as the planner sees it: weighed foods with roles, the parts they belong to, and what may be changed. */
import type { FoodTable } from '../../foods/index.ts';
import type { Family, Food, Goals, Ingredient, Role } from '../../model.ts';
import { type Candidate, candidatesOf, type Refused } from './candidates.ts';
import { netPerGram } from './food-figures.ts';
import { FAMILY_LIMITS, type FamilyLimits } from './knowledge.ts';
import { alsoCoats, type FoodRole, roleIn } from './roles.ts';
import { type DishSection, sectionsOf } from './sections.ts';

/** A counted ingredient of the dish. */
export interface Part {
  key: string;
  food: Food;
  grams: number;
  /** Grams with their bounds. */
  gramsRange: { low: number; best: number; high: number };
  /** How sure the food is, 0..1. */
  sure: number;
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
  /** The line as written. */
  text: string;
  /** Number of the dish's section it belongs to. */
  section: number;
}

/** A part of the dish with a family of its own, such as crust or filling. */
export interface Section {
  /** Its place among the sections; the main one is 0. */
  id: number;
  /** Heading, or null when the dish is one part. */
  title: string | null;
  family: Family;
  confidence: number;
  why: string;
  keys: string[];
  limits: FamilyLimits;
  /** A dough with flour in it. */
  dough: boolean;
  /** g of flours and what counts as such; 0 outside doughs. */
  flourBase: number;
  /** g of everything in it. */
  mass: number;
}

export interface Dish {
  /** At least one; the first is the main part. */
  sections: Section[];
  main: Section;
  servings: number;
  goals: Goals;
  foods: FoodTable;
  title: string;
  method: string;
  parts: Part[];
  candidates: Candidate[];
  refused: Refused[];
}

const NO_LIMITS: FamilyLimits = {
  kind: 'dish',
  yeast: false,
  starch: { min: 0, strong: 0, atGluten: 99 },
  yeastFood: 0,
  inertFibre: 100,
  binder: {},
  binderLift: 0,
  fat: {},
  bulkFloor: 0,
  eggStructure: 0,
  erythritolPct: 6,
  alluloseShare: 1,
  erythritolOfSweet: 1,
  flourCaps: {},
  source: 'common practice, no source',
};

export const limitsOf = (family: Family): FamilyLimits => FAMILY_LIMITS.get(family) ?? NO_LIMITS;

const ASIDE = /\b(to serve|for serving|to garnish|for garnish|garnish|to decorate)\b/i;

/** Optional, or served beside: not in the totals, so not worth a change. */
const isAside = ({ line }: Ingredient): boolean =>
  line.optional || (line.purpose !== null && ASIDE.test(line.purpose));

function partOf(
  ingredient: Ingredient,
  role: FoodRole,
  food: Food,
  dish: { section: Section; goals: Goals; keep: boolean },
): Part | null {
  const { weight } = ingredient;
  if (!weight || !(weight.grams.best > 0) || !Number.isFinite(weight.grams.best)) return null;
  const net = netPerGram(food, dish.goals.rule);
  const aside = isAside(ingredient);
  return {
    key: ingredient.key,
    food,
    grams: weight.grams.best,
    gramsRange: weight.grams,
    sure: ingredient.match?.confidence ?? 0,
    eaten: aside ? 0 : weight.eaten.best,
    eatenRange: weight.eaten,
    class: role.class,
    role: role.role,
    base: dish.section.limits.kind === 'dough' && role.role === 'structure',
    net: net ?? 0,
    fixed: dish.keep || aside || dish.goals.pinned.includes(ingredient.key) || net === null,
    group: ingredient.line.group,
    text: ingredient.line.text,
    section: dish.section.id,
  };
}

/** Sections in the dish's order with the main one first; its family may be the user's word. */
function sectionList(found: readonly DishSection[], family: Family | null): Section[] {
  const ordered = [...found.filter((s) => s.main), ...found.filter((s) => !s.main)];
  return ordered.map((section, id): Section => {
    const chosen = id === 0 && family !== null;
    const own = chosen ? family : section.id;
    return {
      id,
      title: section.title,
      family: own,
      confidence: chosen ? 1 : section.confidence,
      why: chosen ? 'chosen by you' : section.why,
      keys: section.keys,
      limits: limitsOf(own),
      dough: false,
      flourBase: 0,
      mass: 0,
    };
  });
}

/** Collects the parts of a dish and every swap that fits them. `servings` that is not a positive number counts as 1. */
export function readDish(
  ingredients: readonly Ingredient[],
  options: {
    /** Family of the main part, or null to tell it from the ingredients. */
    family: Family | null;
    servings: number;
    goals: Goals;
    foods: FoodTable;
    title?: string;
    steps?: readonly string[];
  },
): Dish {
  const { goals, foods } = options;
  const title = options.title ?? '';
  const steps = options.steps ?? [];
  const found = sectionsOf(ingredients, { title, steps }, foods);
  const sections = sectionList(
    found.length > 0
      ? found
      : [
          {
            title: null,
            keys: [],
            main: true,
            id: 'other',
            confidence: 0.5,
            why: 'nothing to go by',
          },
        ],
    options.family,
  );
  const main = sections[0] as Section;
  const sectionOf = new Map(sections.flatMap((s) => s.keys.map((key) => [key, s] as const)));
  const parts = ingredients.flatMap((ingredient): Part[] => {
    const food = ingredient.match ? foods.byId(ingredient.match.foodId) : null;
    if (!food) return [];
    const section = sectionOf.get(ingredient.key) ?? main;
    const role = roleIn(food, ingredient, section.family);
    const keep = alsoCoats(role, section.family, steps);
    const part = partOf(ingredient, role, food, { section, goals, keep });
    return part ? [part] : [];
  });
  for (const section of sections) {
    const own = parts.filter((p) => p.section === section.id);
    section.mass = own.reduce((sum, p) => sum + p.grams, 0);
    section.flourBase = own.reduce((sum, p) => sum + (p.base ? p.grams : 0), 0);
    section.dough = section.limits.kind === 'dough' && section.flourBase > 0;
  }
  const dish: Dish = {
    sections,
    main,
    servings: options.servings > 0 && Number.isFinite(options.servings) ? options.servings : 1,
    goals,
    foods,
    title,
    method: steps.join('\n'),
    parts,
    candidates: [],
    refused: [],
  };
  return { ...dish, ...candidatesOf(dish) };
}
