/** Collects what the planner needs of a recipe: its parts with roles, their sections, and every swap that fits. */
import type { FoodTable } from '../../foods/index.ts';
import type { Adjustment, Family, Food, Goals, Ingredient } from '../../model.ts';
import { candidatesOf } from './candidates.ts';
import type { Dish, Part, Section } from './dish.ts';
import { limitsOf } from './family/family-limits.ts';
import { netPerGram } from './food-figures.ts';
import { whyLeftAlone } from './left-alone.ts';
import { promisesOf } from './promises.ts';
import { alsoCoats, type FoodRole, roleIn } from './roles.ts';
import { type DishSection, sectionsOf } from './sections.ts';
import { withThinIcing } from './sugars/icing.ts';
import { shapingFlours, thickeningFlours } from './thickening-flour.ts';

const ASIDE = /\b(to serve|for serving|to garnish|for garnish|garnish|to decorate)\b/i;

/** Optional, or served beside: not in the totals, so not worth a change. */
const isAside = ({ line }: Ingredient): boolean =>
  line.optional || (line.purpose !== null && ASIDE.test(line.purpose));

/** The last word of a name, without a plural's ending: tomatoes, Kartoffeln, aardappelen. */
const nounOf = (name: string): string =>
  (/(\p{L}{3,})\P{L}*$/u.exec(name.replace(/[,(].*/, ''))?.[1] ?? '')
    .toLowerCase()
    .replace(/(?<=\p{L}{3})(?:es|s)$|(?<=\p{L}{2}el)e?n$/u, '');

/** The steps that name a food by the last word of what the line or the table calls it. */
function stepsNaming(name: string, food: Food, steps: readonly string[]): string {
  const nouns = [nounOf(name), nounOf(food.name)].filter((noun) => noun !== '');
  return steps.filter((step) => nouns.some((noun) => step.toLowerCase().includes(noun))).join('\n');
}

/** Of what is poured away less than this is eaten; the fat of a frying bath is told apart. Own choice. */
const POURED_AWAY = 0.15;

/** What is boiled in, such as the water and honey around bagels, is no part of the dough. */
const ownRole = (usual: FoodRole, { weight }: Ingredient): FoodRole =>
  weight !== null && weight.eaten.high <= POURED_AWAY && usual.role !== 'fat'
    ? { class: '', role: 'other' }
    : usual;

function partOf(
  ingredient: Ingredient,
  role: FoodRole,
  food: Food,
  dish: { section: Section; goals: Goals; sparing: boolean; steps: readonly string[] },
): Part | null {
  const { weight } = ingredient;
  if (!weight || !(weight.grams.best > 0) || !Number.isFinite(weight.grams.best)) return null;
  const net = netPerGram(food, dish.goals.rule);
  const aside = isAside(ingredient);
  return {
    key: ingredient.key,
    food,
    grams: weight.grams.best,
    written: weight.grams.best,
    gramsRange: weight.grams,
    sure: ingredient.match?.confidence ?? 0,
    eaten: aside ? 0 : weight.eaten.best,
    eatenRange: weight.eaten,
    class: role.class,
    role: role.role,
    base: dish.section.limits.kind === 'dough' && role.role === 'structure',
    net: net ?? 0,
    sparing: dish.sparing,
    fixed: aside || dish.goals.pinned.includes(ingredient.key) || net === null,
    group: ingredient.line.group,
    text: ingredient.line.text,
    name: ingredient.item.name,
    steps: stepsNaming(ingredient.item.name, food, dish.steps),
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

/** What a recipe is when nothing tells. */
const UNKNOWN: DishSection = {
  title: null,
  keys: [],
  main: true,
  id: 'other',
  confidence: 0.5,
  why: 'nothing to go by',
};

export interface DishOptions {
  /** Family of the main part, or null to tell it from the ingredients. */
  family: Family | null;
  servings: number;
  goals: Goals;
  foods: FoodTable;
  taught?: readonly Adjustment[];
  title?: string;
  steps?: readonly string[];
  /** All of an icing, even where half would do. */
  whole?: boolean;
}

/** The parts of the dish with their roles; lines without a known food or weight are left out. */
function partsOf(
  ingredients: readonly Ingredient[],
  sections: readonly Section[],
  main: Section,
  { goals, foods, steps = [] }: DishOptions,
): Part[] {
  const sectionOf = new Map(sections.flatMap((s) => s.keys.map((key) => [key, s] as const)));
  return ingredients.flatMap((ingredient): Part[] => {
    const food = ingredient.match ? foods.byId(ingredient.match.foodId) : null;
    if (!food) return [];
    const section = sectionOf.get(ingredient.key) ?? main;
    const usual = ownRole(roleIn(food, ingredient, section.family), ingredient);
    const sparing = alsoCoats(usual, section.family, steps);
    const role: FoodRole = sparing ? { ...usual, role: 'coating' } : usual;
    const part = partOf(ingredient, role, food, { section, goals, sparing, steps });
    return part ? [part] : [];
  });
}

/** What only thickens a sauce beside a dough is a little flour, which stays as it is. */
function withThickeners(parts: readonly Part[], steps: readonly string[], title: string): Part[] {
  const keys = new Set([...thickeningFlours(parts, steps), ...shapingFlours(parts, title)]);
  return parts.map((part) =>
    keys.has(part.key) ? { ...part, role: 'thickener', base: false, fixed: true } : part,
  );
}

/** The section with the masses of its parts. */
function weighed(section: Section, parts: readonly Part[]): void {
  const own = parts.filter((part) => part.section === section.id);
  section.mass = own.reduce((sum, part) => sum + part.grams, 0);
  section.flourBase = own.reduce((sum, part) => sum + (part.base ? part.grams : 0), 0);
  section.dough = section.limits.kind === 'dough' && section.flourBase > 0;
}

/** Collects the parts of a dish and every swap that fits them. `servings` that is not a positive number counts as 1. */
export function readDish(ingredients: readonly Ingredient[], options: DishOptions): Dish {
  const { goals, foods, taught = [], title = '', steps = [], servings } = options;
  const found = sectionsOf(ingredients, { title, steps }, foods);
  const sections = sectionList(found.length > 0 ? found : [UNKNOWN], options.family);
  const main = sections[0] as Section;
  const parts = withThickeners(partsOf(ingredients, sections, main, options), steps, title);
  const dish: Dish = {
    promises: promisesOf(
      title,
      ingredients,
      ({ match }) => (match ? foods.byId(match.foodId) : null),
      goals.liftedPromises,
    ),
    notReworked: whyLeftAlone(title, steps),
    sections,
    main,
    servings: servings > 0 && Number.isFinite(servings) ? servings : 1,
    goals,
    taught,
    foods,
    title,
    method: steps.join('\n'),
    parts,
    candidates: [],
    refused: [],
  };
  if (dish.notReworked !== null) dish.parts = parts.map((part) => ({ ...part, fixed: true }));
  else if (!options.whole) dish.parts = withThinIcing(dish);
  for (const section of sections) weighed(section, dish.parts);
  return dish.notReworked !== null ? dish : { ...dish, ...candidatesOf(dish) };
}
