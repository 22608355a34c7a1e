/** Cautions that go with the numbers, and what a change does to the allergens. */
import type { FoodTable } from '../foods/index.ts';
import type { Allergen, Family, Food, Note, Nutrient, Plan, Tally } from '../model.ts';
import data from './data/cautions.json' with { type: 'json' };

/** A food of the reworked recipe and the grams of it that are eaten with one serving. */
interface ServedFood {
  food: Food;
  gramsPerServing: number;
  /** True when the plan brought it. */
  added: boolean;
}

export interface CautionInput {
  before: Tally;
  after: Tally;
  plan: Plan;
  foods: FoodTable;
  /** Title and method, to see frying, slow cooking and the like. */
  words?: string;
  /** What the user has stated about themselves; left out when unknown. */
  person?: { kidneyDisease?: boolean; sglt2?: boolean; needsCarePlan?: boolean };
}

/** Cautions shown beside the first one. */
const MOST_SHOWN = 3;

interface Facts extends CautionInput {
  served: ServedFood[];
  family: Family;
  words: string;
  change: (nutrient: Nutrient) => number;
  after1: (nutrient: Nutrient) => number;
  has: (pattern: RegExp, addedOnly?: boolean) => boolean;
}

const bestOf = (tally: Tally, nutrient: Nutrient): number => tally.perServing[nutrient]?.best ?? 0;

function servedFoods({ plan, foods, after }: CautionInput): ServedFood[] {
  return plan.items.flatMap(({ key, foodId, grams, eaten }) => {
    const food = foods.byId(foodId);
    if (food === null || grams <= 0) return [];
    const brings = plan.swaps.some(
      (swap) => swap.key === key && swap.to.some((to) => to.foodId === foodId),
    );
    const gramsPerServing = (grams * eaten.best) / after.servings;
    return [{ food, gramsPerServing, added: brings || key.startsWith('new.') }];
  });
}

function factsOf(input: CautionInput): Facts {
  const { before, after } = input;
  const served = servedFoods(input);
  return {
    ...input,
    served,
    family: input.plan.family.id,
    words: input.words ?? '',
    after1: (nutrient) => bestOf(after, nutrient),
    change: (nutrient) => bestOf(after, nutrient) - bestOf(before, nutrient),
    has: (pattern, addedOnly = false) =>
      served.some(({ food, gramsPerServing, added }) => {
        const counts = gramsPerServing > 0 && (added || !addedOnly);
        return counts && pattern.test(`${food.id} ${food.name.toLowerCase()}`);
      }),
  };
}

const cutsCarbs = ({ before, change }: Facts): boolean => {
  const start = bestOf(before, 'netCarbsG');
  const cut = -change('netCarbsG');
  return cut >= 15 || (start > 0 && cut / start >= 0.3);
};

const polyolsMatter = ({ after, after1 }: Facts): boolean => {
  const per100 = after.per100gCooked?.polyolsG?.best ?? 0;
  return after1('polyolsG') > 10 || per100 > 10;
};

const addsGluten = ({ served }: Facts): boolean =>
  served.some(({ food, added }) => added && food.allergens.includes('gluten'));

/** The original had it too, so the reader is warned later in the order. */
const hadGluten = ({ served, plan, foods }: Facts): boolean => {
  const replaced = plan.swaps.map(({ from }) => (from === null ? null : foods.byId(from.foodId)));
  const kept = served.filter(({ added }) => !added).map(({ food }) => food);
  return [...replaced, ...kept].some((food) => food?.allergens.includes('gluten') === true);
};

const DOUGHS: readonly Family[] = [
  'lean-yeast-bread',
  'enriched-yeast-bread',
  'flatbread',
  'tortilla',
  'quick-bread',
  'pancake',
  'biscuit',
  'cookie',
  'cake',
  'brownie',
  'pie-crust',
  'cracker',
  'fresh-pasta',
];

/** Thresholds are common practice, no source, unless the caution's own source gives the number. */
const TRIGGERS: readonly (readonly [code: string, applies: (facts: Facts) => boolean])[] = [
  // Ordered by what may harm most: the first ones are the ones shown.
  ['XYLITOL_DOGS', ({ has }) => has(/xylitol/)],
  ['BITTER_KERNELS', ({ has }) => has(/bitter almond|apricot.kernel|raw cassava/)],
  ['FEWER_CARBS_HYPO', cutsCarbs],
  [
    'SGLT2_KETOACIDOSIS',
    (f) => f.person?.sglt2 !== false && cutsCarbs(f) && f.after1('netCarbsG') < 10,
  ],
  ['NOT_WITHOUT_CARE_TEAM', ({ person }) => person?.needsCarePlan === true],
  ['MORE_PROTEIN', (f) => f.person?.kidneyDisease === true || f.change('proteinG') > 15],
  ['GLUTEN', (f) => addsGluten(f) && !hadGluten(f)],
  ['SWELLING_FIBRE', ({ has }) => has(/psyllium|glucomannan|konjac/, true)],
  [
    'POTASSIUM',
    ({ served }) => served.some((s) => (s.food.per100g.potassiumMg ?? 0) > 5000 && s.added),
  ],
  [
    'DRY_BEANS',
    ({ has, words }) => has(/(kidney|white|cannellini) beans?.*dry/) && /slow cooker/i.test(words),
  ],
  ['ALLULOSE', ({ after1 }) => after1('alluloseG') > 10],
  ['POLYOLS', polyolsMatter],
  ['MORE_FIBRE', ({ change }) => change('fiberG') >= 8],
  [
    'CHECK_WITH_METER',
    ({ has }) => has(/resistant|high-amylose|low-carb-wheat|maltitol|isomalt/, true),
  ],
  [
    'CENTRE_TEMPERATURE',
    ({ has }) =>
      has(/^(?!.*(stock|broth|bouillon)).*(chicken|turkey|pork|beef|lamb|veal|fish|salmon)/),
  ],
  [
    'ALCOHOL',
    ({ served }) =>
      served.some((s) => ((s.food.per100g.alcoholG ?? 0) * s.gramsPerServing) / 100 > 1),
  ],
  [
    'ACRYLAMIDE',
    ({ words, family }) =>
      family === 'breaded-food' ||
      (family === 'potato-dish' && /fr(y|ied)|roast|toast/i.test(words)),
  ],
  ['LABEL_CARBS', ({ has }) => has(/sweetener blend|sugar-free|allulose-syrup/, true)],
  ['GLUTEN', (f) => addsGluten(f) && hadGluten(f)],
  ['XANTHAN_INFANTS', ({ has }) => has(/xanthan/, true)],
  ['RAW_DOUGH', ({ family }) => DOUGHS.includes(family)],
];

const WORDS = new Map(data.map(({ code, words }) => [code, words]));
const note = (code: string): Note => ({ code, text: WORDS.get(code) ?? code, key: null });

/** Every caution that applies, most serious first, without the cut to the few that are shown. */
export function allCautions(input: CautionInput): Note[] {
  const facts = factsOf(input);
  return TRIGGERS.filter(([, applies]) => applies(facts)).map(([code]) => note(code));
}

/**
 * The cautions to show: always 'Estimates. Not for working out insulin doses.', then at most three,
 * most serious first. Words and the source of each: `data/cautions.json`.
 */
export function cautionsFor(input: CautionInput): Note[] {
  return [note('ESTIMATES'), ...allCautions(input).slice(0, MOST_SHOWN)];
}

/** Allergens that came in and went out, each in alphabetical order. */
export function allergenChange(
  before: readonly Food[],
  after: readonly Food[],
): { added: Allergen[]; removed: Allergen[] } {
  const had = new Set(before.flatMap((food) => food.allergens));
  const has = new Set(after.flatMap((food) => food.allergens));
  return {
    added: [...has].filter((allergen) => !had.has(allergen)).sort(),
    removed: [...had].filter((allergen) => !has.has(allergen)).sort(),
  };
}
