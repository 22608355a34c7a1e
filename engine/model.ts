/**
 * The nouns of the engine, as zod schemas with inferred types. Every stage takes and returns plain
 * JSON data of these shapes, so any value can be printed, saved, replayed or posted.
 *
 * Masses are grams, composition is per 100 g of the edible part, energy is kcal, sodium is mg,
 * temperatures are degrees Celsius. A value that is not known is `null`, never 0.
 */
import * as z from 'zod';

// Extension pages forbid building code from strings, so zod must not probe for it.
z.config({ jitless: true });

/** A quantity with its bounds: `low <= best <= high`. */
export const Interval = z.object({ low: z.number(), best: z.number(), high: z.number() });
export type Interval = z.infer<typeof Interval>;

/** Something a reader of the result should know; `code` is stable, `text` is for the screen. */
export const Note = z.object({
  code: z.string(),
  text: z.string(),
  /** Key of the ingredient it is about, when it is about one. */
  key: z.string().nullable().default(null),
});
export type Note = z.infer<typeof Note>;

// ---------------------------------------------------------------- read: page -> Recipe

export const Markup = z.enum(['json-ld', 'microdata', 'rdfa', 'h-recipe', 'page-text', 'pasted']);
export type Markup = z.infer<typeof Markup>;

export const IngredientGroup = z.object({
  title: z.string().nullable(),
  lines: z.array(z.string()),
});
export type IngredientGroup = z.infer<typeof IngredientGroup>;

export const Step = z.object({ section: z.string().nullable(), text: z.string() });
export type Step = z.infer<typeof Step>;

/** What a yield statement says. At most one of the counts is servings; the other counts pieces. */
export const Yield = z.object({
  /** The page's own words, or null when it states no yield. */
  text: z.string().nullable(),
  servings: z.object({ low: z.number().positive(), high: z.number().positive() }).nullable(),
  pieces: z.object({ count: z.number().positive(), noun: z.string() }).nullable(),
});
export type Yield = z.infer<typeof Yield>;

export const Recipe = z.object({
  title: z.string(),
  url: z.string().nullable(),
  /** BCP 47 tag, from the page, or guessed from the words when the page gives none. */
  language: z.string().nullable(),
  author: z.string().nullable(),
  markup: Markup,
  yield: Yield,
  groups: z.array(IngredientGroup),
  steps: z.array(Step),
  minutes: z.object({
    prep: z.number().nullable(),
    cook: z.number().nullable(),
    total: z.number().nullable(),
  }),
  /** Address of a picture; kept for credit, never fetched. */
  image: z.string().nullable(),
  /** The publisher's own figures, word for word, kept apart from ours. */
  statedNutrition: z.record(z.string(), z.string()).nullable(),
  notes: z.array(Note),
});
export type Recipe = z.infer<typeof Recipe>;

/** Result of reading a page: the reader never throws. `why` tells the user what to do. */
export type ReadResult = { ok: true; recipes: Recipe[] } | { ok: false; why: string };

// ---------------------------------------------------------------- parse: line -> Line

/**
 * One stated amount. `kind` tells how it relates to the one before it:
 * `stated` the leading amount; `same` the same quantity in another measure ('1 cup (120 g)');
 * `plus` to be added ('1 cup plus 2 tbsp'); `each` the size of one unit of the leading count
 * ('2 (14 oz) cans').
 */
export const Amount = z.object({
  quantity: z.number().nonnegative(),
  /** Upper end of a stated range, else null. */
  max: z.number().nullable(),
  /** Canonical short form (g kg ml l oz lb 'fl oz' cup tbsp tsp pint quart gallon), else a singular word, else null. */
  unit: z.string().nullable(),
  kind: z.enum(['stated', 'same', 'plus', 'each']),
  /** 'about 200 g', 'scant cup': the figure is said to be rough. */
  approximate: z.boolean(),
});
export type Amount = z.infer<typeof Amount>;

/** One food on a line, with its amounts. */
export const Item = z.object({
  amounts: z.array(Amount),
  /** 'small', 'large' ..., when the line sizes a count. */
  size: z.string().nullable(),
  name: z.string(),
  preparation: z.string().nullable(),
  /** 'butter or oil': what may stand in, with its own amounts when stated. */
  alternatives: z.array(z.object({ amounts: z.array(Amount), name: z.string() })),
});
export type Item = z.infer<typeof Item>;

/** An ingredient line, understood. `items` has one entry unless the line names several foods. */
export const Line = z.object({
  text: z.string(),
  group: z.string().nullable(),
  kind: z.enum(['ingredient', 'heading', 'reference']),
  items: z.array(Item),
  /** The whole name as written, also when it covers several items ('salt and pepper'). */
  name: z.string(),
  note: z.string().nullable(),
  /** 'for frying', 'for dusting', 'to serve', 'to taste' ... in the line's words. */
  purpose: z.string().nullable(),
  optional: z.boolean(),
});
export type Line = z.infer<typeof Line>;

// ---------------------------------------------------------------- foods

/** Allergens named by US or EU law, plus coconut, which some people must avoid. */
export const Allergen = z.enum([
  'celery',
  'coconut',
  'crustaceans',
  'egg',
  'fish',
  'gluten',
  'lupin',
  'milk',
  'molluscs',
  'mustard',
  'peanut',
  'sesame',
  'soy',
  'sulphites',
  'tree nuts',
  'wheat',
]);
export type Allergen = z.infer<typeof Allergen>;

/** Where a figure comes from. `SR`/`FF`: USDA FoodData Central (SR Legacy id with release 28 values, Foundation Foods). */
export const Source = z.object({
  kind: z.enum(['SR', 'FF', 'published', 'calculated', 'label', 'memory', 'practice', 'user']),
  id: z.string().nullable(),
  note: z.string().nullable(),
});
export type Source = z.infer<typeof Source>;

export const CarbohydrateBasis = z.enum(['total', 'available', 'available_mse', 'unknown']);
export type CarbohydrateBasis = z.infer<typeof CarbohydrateBasis>;

const Figure = z.number().nonnegative().nullable();

/** Composition of 100 g of the edible part, as the source gives it. */
export const Composition = z.object({
  waterG: Figure,
  energyKcal: Figure,
  proteinG: Figure,
  fatG: Figure,
  saturatedG: Figure,
  carbohydrateG: Figure,
  fiberG: Figure,
  sugarsG: Figure,
  starchG: Figure,
  /** Polyols by kind, e.g. `{ erythritol: 100 }`; empty when the food has none. */
  polyolsG: z.record(z.string(), z.number().nonnegative()).nullable(),
  alluloseG: Figure,
  alcoholG: Figure,
  sodiumMg: Figure,
  potassiumMg: Figure,
});
export type Composition = z.infer<typeof Composition>;

/** Grams of one household measure of a food ('cup', 'cup packed', 'clove', 'large', 'can drained'). */
export const Measure = z.object({ unit: z.string(), grams: z.number().positive(), source: Source });
export type Measure = z.infer<typeof Measure>;

/** How a food acts in a dough, batter, sauce or sweetening; shares are grams per gram of the food. */
export const FoodFunction = z.object({
  /** Water (g) held by 1 g at workable consistency. */
  absorption: Interval.nullable(),
  /** Gluten-forming protein, g per 100 g. */
  glutenProtein: z.number(),
  /** Digestible starch, g per 100 g. */
  digestibleStarch: z.number().nullable(),
  /** Isolated insoluble fibre counted per gram: 1 for oat or wheat fibre and bran, 0.3 for RS4, else 0. */
  insolubleFibre: z.number(),
  /** Sweetness against sucrose by mass; 0 when not sweet. */
  sweetness: z.number(),
  /** Bulk against sucrose by mass, 0..1. */
  bulk: z.number(),
  browning: z.enum(['none', 'mild', 'strong']),
  /** Freezing-point depression per gram against sucrose. */
  freezing: z.number().nullable(),
  /** Largest amount per serving before stomach upset is likely, g (adult). */
  doseCapG: z.number().nullable(),
  /** Largest share of the flour base, percent, by family group (YB FT QB CK CO PA). */
  maxShare: z.partialRecord(z.enum(['YB', 'FT', 'QB', 'CK', 'CO', 'PA']), z.number()),
  /** Flavour and colour cost, 0 none to 3 dominant. */
  flavour: z.number(),
  colour: z.number(),
  source: z.string(),
});
export type FoodFunction = z.infer<typeof FoodFunction>;

export const Food = z.object({
  /** Stable kebab-case id of our own. */
  id: z.string(),
  name: z.string(),
  aliases: z.array(z.string()),
  group: z.string(),
  state: z.enum(['raw', 'cooked', 'dry', 'canned', 'frozen', 'as-is']),
  source: Source,
  per100g: Composition,
  /** Published or label scatter of a figure, [low, high] per 100 g, where it is known to matter. */
  spread: z.partialRecord(
    z.enum(['carbohydrateG', 'fiberG', 'proteinG', 'energyKcal', 'netCarbsG']),
    z.tuple([z.number(), z.number()]),
  ),
  carbohydrateBasis: CarbohydrateBasis,
  /** True where the stated carbohydrate includes polyols (US, CA, EU, UK); false for AU, NZ, ZA. */
  polyolsInCarbohydrate: z.boolean(),
  fiberMethod: z.string().nullable(),
  /** Share of the food as bought that is thrown away, 0..1. */
  refuseShare: z.number().nullable(),
  measures: z.array(Measure),
  allergens: z.array(Allergen),
  function: FoodFunction.nullable(),
});
export type Food = z.infer<typeof Food>;

// ---------------------------------------------------------------- match and weigh

/** A food chosen for an item, with how sure we are (0..1), why, and what else it might be. */
export const Match = z.object({
  foodId: z.string(),
  foodName: z.string(),
  confidence: z.number().min(0).max(1),
  reason: z.string(),
  others: z.array(z.object({ foodId: z.string(), foodName: z.string(), confidence: z.number() })),
});
export type Match = z.infer<typeof Match>;

/** Grams of an item, and the share of them that is eaten (frying oil, marinade, dusting flour). */
export const Weight = z.object({
  grams: Interval,
  eaten: Interval,
  /** What the grams rest on. */
  basis: z.enum(['mass', 'volume', 'count', 'assumed', 'corrected']),
  /** Plain words for the screen: 'US cup of 125 g', 'assumed fine salt; coarse would be 14 g'. */
  assumptions: z.array(z.string()),
  /** Set when two stated amounts disagree beyond the food's scatter: both readings, in grams. */
  disagreement: z.object({ stated: z.number(), other: z.number(), text: z.string() }).nullable(),
});
export type Weight = z.infer<typeof Weight>;

/** One food of a recipe after reading, matching and weighing. */
export const Ingredient = z.object({
  /** 'line' or 'line.item', counted over all groups: '0', '3', '3.1'. Stable for one recipe. */
  key: z.string(),
  line: Line,
  item: Item,
  match: Match.nullable(),
  weight: Weight.nullable(),
});
export type Ingredient = z.infer<typeof Ingredient>;

/** What the user put right, by ingredient key. */
export const Corrections = z.record(
  z.string(),
  z.object({ foodId: z.string().optional(), grams: z.number().nonnegative().optional() }),
);
export type Corrections = z.infer<typeof Corrections>;

// ---------------------------------------------------------------- tally

export const NUTRIENTS = [
  'energyKcal',
  'fatG',
  'saturatedG',
  'carbohydrateG',
  'fiberG',
  'sugarsG',
  'polyolsG',
  'alluloseG',
  'netCarbsG',
  'proteinG',
  'sodiumMg',
] as const;
export const Nutrient = z.enum(NUTRIENTS);
export type Nutrient = z.infer<typeof Nutrient>;

/** Totals; null when no counted ingredient knows the figure. */
export const Nutrients = z.record(Nutrient, Interval.nullable());
export type Nutrients = z.infer<typeof Nutrients>;

/** How net carbohydrate is counted. `eu` states carbohydrate without fibre; polyol policies as in common teaching. */
export const NetCarbRule = z.object({
  region: z.enum(['us', 'eu']),
  polyols: z.enum(['half', 'half_over_5g', 'energy', 'none', 'all']),
});
export type NetCarbRule = z.infer<typeof NetCarbRule>;

export const Tally = z.object({
  rule: NetCarbRule,
  servings: z.number().positive(),
  whole: Nutrients,
  perServing: Nutrients,
  /** Per 100 g of the finished dish; needs a cooked weight, so null when that is unknown. */
  per100gCooked: Nutrients.nullable(),
  rawGrams: Interval,
  cookedGrams: Interval.nullable(),
  /** Where the cooked weight comes from. */
  cookedSource: z.string(),
  /** Each counted ingredient's net carbs in one serving and its share of the total, largest first. */
  contributions: z.array(
    z.object({ key: z.string(), netCarbsG: Interval.nullable(), share: z.number() }),
  ),
  /** Lines that are not in the totals, and why. */
  uncounted: z.array(z.object({ key: z.string(), text: z.string(), why: z.string() })),
  /** Nutrients whose total is only a lower bound, because these ingredients lack the figure. */
  incomplete: z.partialRecord(Nutrient, z.array(z.string())),
  notes: z.array(Note),
});
export type Tally = z.infer<typeof Tally>;

// ---------------------------------------------------------------- goals and plan

export const FAMILIES = [
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
  'choux',
  'cracker',
  'fresh-pasta',
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'breaded-food',
  'thickened-sauce',
  'sweet-sauce',
  'frozen-dessert',
  'other',
] as const;
export const Family = z.enum(FAMILIES);
export type Family = z.infer<typeof Family>;

export const ROLES = [
  'structure',
  'starch-bulk',
  'sweetness',
  'liquid',
  'fat',
  'egg',
  'leavening',
  'yeast',
  'yeast-food',
  'thickener',
  'binder',
  'coating',
  'wrapper',
  'salt',
  'acid',
  'protein',
  'vegetable',
  'fruit',
  'flavour',
  'other',
] as const;
export const Role = z.enum(ROLES);
export type Role = z.infer<typeof Role>;

/** What the user asks for. */
export const Goals = z.object({
  /** Net carbohydrate budget of one serving, g. */
  budgetG: z.number().nonnegative(),
  /** Servings to reckon with; null takes the recipe's own or a proposal. */
  servings: z.number().positive().nullable(),
  rule: NetCarbRule,
  avoid: z.array(Allergen),
  /** Ingredient keys that must stay as they are. */
  pinned: z.array(z.string()),
  /** Swap ids that must not be used. */
  excludedSwaps: z.array(z.string()),
  /** Food ids that must not be added. */
  excludedFoods: z.array(z.string()),
  /** Wanted sweetness against the original, 0..1; 1 keeps it. */
  sweetness: z.number().min(0).max(1),
  /** The user's own word on the dish family, else null. */
  family: Family.nullable(),
});
export type Goals = z.infer<typeof Goals>;

export const DEFAULT_GOALS: Goals = {
  budgetG: 15,
  servings: null,
  rule: { region: 'us', polyols: 'half' },
  avoid: [],
  pinned: [],
  excludedSwaps: [],
  excludedFoods: [],
  sweetness: 1,
  family: null,
};

/** A mass of a food in the reworked recipe. `key` is the original ingredient's, or 'new.foodId' for an addition. */
export const PlannedItem = z.object({
  key: z.string(),
  foodId: z.string(),
  foodName: z.string(),
  grams: z.number().nonnegative(),
  eaten: Interval,
  role: Role,
});
export type PlannedItem = z.infer<typeof PlannedItem>;

/** One change: what goes, what comes, why this much, what it costs. `key` is null for an addition. */
export const Swap = z.object({
  id: z.string(),
  key: z.string().nullable(),
  from: z.object({ foodId: z.string(), food: z.string(), grams: z.number() }).nullable(),
  /** Grams of the original that stay. */
  keptGrams: z.number().nonnegative(),
  to: z.array(z.object({ foodId: z.string(), food: z.string(), grams: z.number() })),
  why: z.string(),
  /** What the swap does to taste or texture, and what else was considered. */
  effect: z.string(),
  considered: z.array(z.string()),
  allergens: z.array(Allergen),
  cautions: z.array(z.string()),
  source: z.string(),
});
export type Swap = z.infer<typeof Swap>;

export const ClosenessPart = z.enum(['structure', 'water', 'sweetness', 'fat', 'flavour']);
export type ClosenessPart = z.infer<typeof ClosenessPart>;

/** Figures a baker checks, before and after: percent of the flour base unless said. Null outside doughs. */
export const DoughFigures = z.object({
  flourBaseG: z.number(),
  hydrationPct: z.number(),
  saltPct: z.number(),
  yeastPct: z.number(),
  binderPct: z.number(),
  fatPct: z.number(),
  sugarPct: z.number(),
  glutenProteinPct: z.number(),
  digestibleStarchPct: z.number(),
});
export type DoughFigures = z.infer<typeof DoughFigures>;

export const Plan = z.object({
  family: z.object({ id: Family, confidence: z.number().min(0).max(1), why: z.string() }),
  roles: z.record(z.string(), z.array(Role)),
  budgetG: z.number(),
  met: z.boolean(),
  items: z.array(PlannedItem),
  swaps: z.array(Swap),
  /** Water left out at mixing, to be added by feel after the rest; g, else null. */
  reserveWaterG: z.number().nullable(),
  dough: z.object({ before: DoughFigures, after: DoughFigures }).nullable(),
  /** 1 is the original; falls as the dish moves away from it. */
  closeness: z.number().min(0).max(1),
  closenessParts: z.partialRecord(ClosenessPart, z.number()),
  frontier: z.array(z.object({ netCarbsG: z.number(), closeness: z.number() })),
  /** What holds the plan, in plain words, with what would loosen it. */
  limits: z.array(z.object({ code: z.string(), text: z.string() })),
  notes: z.array(Note),
});
export type Plan = z.infer<typeof Plan>;

// ---------------------------------------------------------------- rewrite and adaptation

export const RewrittenLine = z.object({
  key: z.string(),
  before: z.string().nullable(),
  after: z.string().nullable(),
  change: z.enum(['kept', 'amount', 'replaced', 'added', 'removed']),
  group: z.string().nullable(),
  why: z.string().nullable(),
});
export type RewrittenLine = z.infer<typeof RewrittenLine>;

export const RewrittenStep = z.object({
  section: z.string().nullable(),
  before: z.string().nullable(),
  after: z.string(),
  change: z.enum(['kept', 'changed', 'inserted']),
  why: z.string().nullable(),
});
export type RewrittenStep = z.infer<typeof RewrittenStep>;

/** The whole result for one recipe: what was read, what was asked, what came of it. */
export const Adaptation = z.object({
  recipe: Recipe,
  goals: Goals,
  corrections: Corrections,
  ingredients: z.array(Ingredient),
  before: Tally,
  plan: Plan,
  after: Tally,
  lines: z.array(RewrittenLine),
  steps: z.array(RewrittenStep),
  allergensAdded: z.array(Allergen),
  allergensRemoved: z.array(Allergen),
  cautions: z.array(Note),
  notes: z.array(Note),
});
export type Adaptation = z.infer<typeof Adaptation>;
