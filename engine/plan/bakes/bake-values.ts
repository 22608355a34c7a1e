/** The figures of a reworked recipe that tell why a bake went wrong. */
import type { FoodTable } from '../../foods/index.ts';
import { hasTag, type Tag } from '../../foods/tags.ts';
import type { Adaptation, Food, Nutrient, PlannedItem, Tally } from '../../model.ts';
import type { FamilyLimits } from '../data/schemas.ts';
import { limitsOf } from '../dish/family/family-limits.ts';
import { absorption, fat, functionOf, sweetness } from '../dish/food-figures.ts';
import { hydrating } from '../kitchen/water.ts';
import type { BakeFigures } from './value-names.ts';

/** What the baker measured; null or absent when not. */
export interface BakeMeasures {
  /** Temperature of the centre when it came out, °C. */
  innerC?: number | null;
  /** Hours it cooled before it was cut. */
  cooledHours?: number | null;
}

/** A food of a dish with its grams and what it does there. */
interface Portion {
  food: Food;
  grams: number;
  role: PlannedItem['role'];
}

const plannedPortions = ({ plan }: Adaptation, foods: FoodTable): Portion[] =>
  plan.items.flatMap(({ foodId, grams, role, eaten }) => {
    const food = foods.byId(foodId);
    return food === null || grams <= 0 ? [] : [{ food, grams: grams * eaten.best, role }];
  });

const originalPortions = ({ ingredients, plan }: Adaptation, foods: FoodTable): Portion[] =>
  ingredients.flatMap(({ key, match, weight }) => {
    const food = match === null ? null : foods.byId(match.foodId);
    const role = plan.roles[key]?.[0];
    if (food === null || weight === null || role === undefined) return [];
    return [{ food, grams: weight.grams.best * weight.eaten.best, role }];
  });

const sum = (portions: readonly Portion[], of: (portion: Portion) => number): number =>
  portions.reduce((total, portion) => total + portion.grams * of(portion), 0);

const where =
  (tag: Tag) =>
  ({ food }: Portion): number =>
    hasTag(food, tag) ? 1 : 0;

const is =
  (id: string) =>
  ({ food }: Portion): number =>
    food.id === id ? 1 : 0;

const inBase = ({ role }: Portion): boolean => role === 'structure';
const isSweet = ({ role, food }: Portion): boolean =>
  (role === 'sweetness' || role === 'yeast-food') && functionOf(food).sweetness <= 2;

const ratioPct = (part: number, whole: number): number | null =>
  whole > 0 ? (100 * part) / whole : null;

/** Water for each gram that the flours and binders hold. */
function wetness(portions: readonly Portion[]): number | null {
  const held = sum(portions, ({ food, role }) =>
    role === 'structure' || hasTag(food, 'binder') ? Math.max(0, absorption(food)) : 0,
  );
  const water = sum(portions, ({ food, role }) =>
    // Only food and role decide, so the rest of an amount is of no account.
    hydrating({ food, role } as Parameters<typeof hydrating>[0]),
  );
  return held > 0 && water > 0 ? water / held : null;
}

function doughPart(
  adaptation: Adaptation,
  portions: readonly Portion[],
  before: readonly Portion[],
): Partial<BakeFigures> {
  const dough = adaptation.plan.dough?.after ?? null;
  const base = sum(portions.filter(inBase), () => 1);
  if (dough === null || base <= 0) return {};
  const limits = limitsOf(adaptation.plan.family.id);
  const of = (count: (portion: Portion) => number): number => (100 * sum(portions, count)) / base;
  const now = wetness(portions);
  const was = wetness(before);
  const egg = portions.some(({ food }) => food.id === 'egg');
  return {
    flourBaseG: dough.flourBaseG,
    hydrationPct: dough.hydrationPct,
    wetnessPct: now === null || was === null ? null : (100 * now) / was,
    glutenPct: dough.glutenProteinPct,
    ...glutenRoom(dough.glutenProteinPct, limits),
    starchPct: dough.digestibleStarchPct,
    ...binderRoom(portions, base, limits),
    psylliumPct: of(where('psyllium')),
    saltPct: dough.saltPct,
    yeastPct: dough.yeastPct,
    leaveningPct: of(({ role }) => (role === 'leavening' ? 1 : 0)),
    sodaPct: of(is('baking-soda')),
    sugarPct: dough.sugarPct,
    resistantPct: of(where('resistant-starch')),
    browningPct: of((p) => (functionOf(p.food).browning !== 'none' && isSweet(p) ? 1 : 0)),
    fatPct: dough.fatPct,
    addedFatPct: of(({ food, role }) => (role === 'fat' ? fat(food) : 0)),
    nutPct: of(where('nut-flour')),
    coconutPct: of(is('coconut-flour')),
    sunflowerPct: of(where('green-with-soda')),
    insolubleFibrePct: of((p) => (inBase(p) ? functionOf(p.food).insolubleFibre : 0)),
    dustyPct: of(where('dry-fibre')),
    thirstyPct: of(where('thirsty-fibre')),
    inulinPct: of(where('inulin')),
    flavourPct: of((p) => (inBase(p) && functionOf(p.food).flavour >= 2 ? 1 : 0)),
    eggPct: of(({ food, role }) => (role === 'egg' && food.id !== 'egg-white' ? 1 : 0)),
    oneEggPct: egg ? (100 * LARGE_EGG_G) / base : 0,
    eggPowderPct: of(is('egg-white-powder')),
    proteinPowderPct: of(where('protein-powder')),
    allulosePct: of(where('allulose')),
    erythritolPct: of(where('erythritol')),
  };
}

/** Edible grams of a large egg: SR 171287. */
const LARGE_EGG_G = 50;

function glutenRoom(gluten: number, limits: FamilyLimits | undefined): Partial<BakeFigures> {
  const window = limits?.gluten;
  if (window === undefined) return {};
  return {
    glutenMinPct: window.min,
    glutenMaxPct: window.max,
    glutenOfMinPct: window.min > 0 ? (100 * gluten) / window.min : null,
    glutenOfMaxPct: (100 * gluten) / window.max,
  };
}

/** Gums and husk against what the dish takes of each. */
function binderRoom(
  portions: readonly Portion[],
  base: number,
  limits: FamilyLimits | undefined,
): Partial<BakeFigures> {
  const binders = portions.filter(({ food, role }) => role === 'binder' || hasTag(food, 'binder'));
  const pct = (100 * sum(binders, () => 1)) / base;
  const main = [...binders].sort((a, b) => b.grams - a.grams)[0];
  const usual = limits?.binder['xanthan-gum']?.cap ?? null;
  const cap = (main === undefined ? usual : (limits?.binder[main.food.id]?.cap ?? null)) ?? null;
  const used = binders.reduce((share, { food, grams }) => {
    const most = limits?.binder[food.id]?.cap;
    return most === undefined || most <= 0 ? share : share + (100 * grams) / base / most;
  }, 0);
  return { binderPct: pct, binderCapPct: cap, binderOfCapPct: cap === null ? null : 100 * used };
}

function sweetPart(portions: readonly Portion[], before: readonly Portion[]): Partial<BakeFigures> {
  const sweets = portions.filter(isSweet);
  const bulk = sum(sweets, () => 1);
  const role = (p: Portion): boolean => p.role === 'sweetness' || p.role === 'yeast-food';
  const tasteNow = sum(portions.filter(role), ({ food }) => sweetness(food));
  const tasteWas = sum(before.filter(role), ({ food }) => sweetness(food));
  const intense = sum(portions.filter(where('intense-sweetener')), ({ food }) => sweetness(food));
  const freezing = (list: readonly Portion[]): number =>
    sum(list.filter(role), ({ food }) => functionOf(food).freezing ?? 0);
  const sugar = (list: readonly Portion[]): number =>
    sum(list.filter(role), ({ food }) => (food.per100g.sugarsG ?? 0) / 100);
  return {
    alluloseSharePct: ratioPct(sum(sweets, where('allulose')), bulk),
    erythritolSharePct: ratioPct(sum(sweets, where('erythritol')), bulk),
    intenseSharePct: ratioPct(intense, tasteNow),
    sweetG: sum(
      portions.filter(({ role: one }) => one === 'sweetness'),
      () => 1,
    ),
    sweetnessPct: ratioPct(tasteNow, tasteWas),
    freezingPct: ratioPct(freezing(portions), freezing(before)),
    sugarLeftPct: ratioPct(sugar(portions), sugar(before)),
  };
}

function dishPart(portions: readonly Portion[]): Partial<BakeFigures> {
  const mass = sum(portions, () => 1);
  const of = (count: (portion: Portion) => number): number | null =>
    ratioPct(sum(portions, count), mass);
  return {
    anyGum: sum(portions, where('gelling')) + sum(portions, where('psyllium')),
    saltG: sum(portions, ({ role }) => (role === 'salt' ? 1 : 0)),
    alluloseOfDishPct: of(where('allulose')),
    erythritolOfDishPct: of(where('erythritol')),
    coolingOfDishPct: of(where('cooling')),
    gumOfDishPct: of(where('gelling')),
    thickenerOfDishPct: of(({ role }) => (role === 'thickener' ? 1 : 0)),
    wateryPct: of(where('watery-vegetable')),
  };
}

/** The food nearest to what a serving may hold of it, and foods whose fibre is in doubt. */
export interface ServedFoods {
  doseFood: string | null;
  doubtfulFood: string | null;
}

const plainName = (food: Food): string => food.name.split(',')[0] ?? food.name;

/** Dose of a food in one serving against its cap. */
function nearestDose(
  portions: readonly Portion[],
  servings: number,
): { food: Food; grams: number; cap: number } | null {
  const doses = portions.flatMap(({ food, grams }) => {
    const cap = functionOf(food).doseCapG;
    return cap === null || cap <= 0 ? [] : [{ food, grams: grams / servings, cap }];
  });
  return doses.sort((a, b) => b.grams / b.cap - a.grams / a.cap)[0] ?? null;
}

function servingPart(
  adaptation: Adaptation,
  portions: readonly Portion[],
): { figures: Partial<BakeFigures>; foods: ServedFoods } {
  const { before, after } = adaptation;
  const best = (tally: Tally, nutrient: Nutrient): number | null =>
    tally.perServing[nutrient]?.best ?? null;
  const dose = nearestDose(portions, after.servings);
  const doubtful = portions.filter(where('label-fibre'));
  const fibre = sum(doubtful, ({ food }) => (food.per100g.fiberG ?? 0) / 100) / after.servings;
  const net = best(after, 'netCarbsG');
  const [fiberNow, fiberWas] = [best(after, 'fiberG'), best(before, 'fiberG')];
  return {
    figures: {
      doseG: dose?.grams ?? null,
      doseCapG: dose?.cap ?? null,
      doseOfCapPct: dose === null ? null : (100 * dose.grams) / dose.cap,
      doubtfulFibreG: fibre,
      addedFibreG: fiberNow === null || fiberWas === null ? null : fiberNow - fiberWas,
      polyolG: best(after, 'polyolsG'),
      netG: net,
      countedG: net === null ? null : net + fibre,
    },
    foods: {
      doseFood: dose === null ? null : plainName(dose.food),
      doubtfulFood:
        doubtful.length === 0
          ? null
          : [...new Set(doubtful.map(({ food }) => plainName(food)))].join(' and '),
    },
  };
}

const UNKNOWN = (names: readonly (keyof BakeFigures)[]): BakeFigures =>
  Object.fromEntries(names.map((name) => [name, null])) as BakeFigures;

/** Every figure of the failure table for one reworked recipe; null where it is not known. */
export function bakeFigures(
  adaptation: Adaptation,
  foods: FoodTable,
  measures: BakeMeasures,
  names: readonly (keyof BakeFigures)[],
): { figures: BakeFigures; foods: ServedFoods } {
  const portions = plannedPortions(adaptation, foods);
  const before = originalPortions(adaptation, foods);
  const served = servingPart(adaptation, portions);
  return {
    figures: {
      ...UNKNOWN(names),
      reserveG: adaptation.plan.reserveWaterG ?? 0,
      ...doughPart(adaptation, portions, before),
      ...sweetPart(portions, before),
      ...dishPart(portions),
      ...served.figures,
      innerC: measures.innerC ?? null,
      cooledHours: measures.cooledHours ?? null,
    },
    foods: served.foods,
  };
}
