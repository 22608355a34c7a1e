/** Checks of a whole dish: figures outside the usual say 'look at the amounts', never 'wrong'. */
import { hasTag } from '../foods/tags.ts';
import {
  type Family,
  type Interval,
  isDough,
  type Note,
  type Nutrients,
  type Tally,
} from '../model.ts';
import type { CountedLine } from './counted.ts';

export interface DishCheckInput {
  lines: readonly CountedLine[];
  perServing: Nutrients;
  cooked: Interval | null;
  servings: number;
  family: Family;
  contributions: Tally['contributions'];
  title: string;
}

/** Usual grams of a serving; common practice, no source. */
const WINDOWS = {
  main: [150, 900],
  soup: [150, 700],
  slice: [20, 120],
  cookie: [8, 120],
  sauce: [10, 250],
} as const;

const BREADS: readonly Family[] = ['lean-yeast-bread', 'enriched-yeast-bread', 'flatbread'];
/** Fillings and icings of enriched breads would blur the figure. */
const LEAN_BREADS: readonly Family[] = ['lean-yeast-bread', 'flatbread'];
const MAINS: readonly Family[] = ['pasta-dish', 'rice-dish'];
function windowOf(family: Family, title: string): readonly [number, number] | null {
  if (/\b(soup|chowder|bisque)\b/i.test(title)) return WINDOWS.soup;
  if (BREADS.includes(family) && !/pizza|calzone/i.test(title)) return WINDOWS.slice;
  if (family === 'cookie') return WINDOWS.cookie;
  if (family === 'thickened-sauce' || family === 'sweet-sauce') return WINDOWS.sauce;
  return MAINS.includes(family) ? WINDOWS.main : null;
}

const note = (code: string, text: string, key: string | null = null): Note => ({ code, text, key });

function servingNotes(input: DishCheckInput, grams: number | null): Note[] {
  const { perServing } = input;
  const notes: Note[] = [];
  const usual = windowOf(input.family, input.title);
  if (grams !== null && usual !== null && (grams < usual[0] || grams > usual[1]))
    notes.push(
      note(
        'SERVING_SIZE_UNUSUAL',
        `One serving weighs about ${Math.round(grams)} g; ${usual[0]}-${usual[1]} g is usual. Check the number of servings.`,
      ),
    );
  const carbs = perServing.carbohydrateG?.best ?? 0;
  if (carbs > 150 || (grams !== null && grams > 0 && carbs > 0.95 * grams))
    notes.push(
      note(
        'CARBS_UNUSUAL',
        `One serving has about ${Math.round(carbs)} g carbohydrate. Check amounts and servings.`,
      ),
    );
  const kcal = perServing.energyKcal?.best;
  const allKnown = input.lines.every(({ food }) => food.per100g.energyKcal !== null);
  if (kcal !== undefined && ((kcal < 20 && allKnown) || kcal > 2000))
    notes.push(
      note(
        'ENERGY_UNUSUAL',
        `One serving has about ${Math.round(kcal)} kcal. Check amounts and servings.`,
      ),
    );
  const sodium = perServing.sodiumMg?.best ?? 0;
  if (sodium > 3000)
    notes.push(
      note(
        'SODIUM_UNUSUAL',
        `One serving has about ${Math.round(sodium / 10) * 10} mg sodium. Is salt of cooking water, stock or brine counted?`,
      ),
    );
  return notes;
}

function dominanceNotes(input: DishCheckInput): Note[] {
  const first = input.contributions[0];
  if (first === undefined || input.contributions.length < 3) return [];
  if (isDough(input.family) || first.share <= 0.6) return [];
  const line = input.lines.find(({ ingredient }) => ingredient.key === first.key);
  const name = line?.food.name ?? 'one line';
  return [
    note(
      'ONE_LINE_DOMINATES',
      `${Math.round(first.share * 100)} % of the net carbs come from ${name}: check its amount first.`,
      first.key,
    ),
  ];
}

/** Flour, or what takes its place in a dough. */
const isFlour = ({ food }: CountedLine): boolean =>
  hasTag(food, 'flour-like') || (food.function?.absorption ?? null) !== null;

/** Largest share of the flour; powder goes to 6.8 % in a published white cake (TM 10-412, 2003), the rest is common practice, no source. */
const LEAVENER_LIMITS: Record<string, number> = {
  'baking-powder': 0.09,
  'baking-soda': 0.03,
  'dry-yeast': 0.06,
  'instant-yeast': 0.06,
  'fresh-yeast': 0.12,
};

function unitNotes(input: DishCheckInput): Note[] {
  const { lines, family } = input;
  const total = lines.reduce((sum, line) => sum + line.grams, 0);
  const flour = lines.reduce((sum, l) => sum + (isFlour(l) ? l.grams : 0), 0);
  const notes: Note[] = [];
  for (const { food, grams, ingredient } of lines) {
    const limit = LEAVENER_LIMITS[food.id];
    if (limit !== undefined && flour > 0 && grams > limit * flour)
      notes.push(unitNote(food.name, grams, ingredient.key));
    if (food.id === 'egg' && grams > 20 * 50)
      notes.push(unitNote(food.name, grams, ingredient.key));
    if (hasTag(food, 'salt') && total > 0 && grams > 0.04 * total && grams > 20)
      notes.push(unitNote(food.name, grams, ingredient.key));
    const isOil = (food.per100g.fatG ?? 0) >= 99;
    if (family === 'breaded-food' && isOil && grams > 0.15 * total)
      notes.push(
        note(
          'FRYING_OIL',
          `${food.name}: is that the oil in the pan? Only what the food takes up is eaten.`,
          ingredient.key,
        ),
      );
  }
  return notes;
}

const unitNote = (name: string, grams: number, key: string): Note =>
  note(
    'AMOUNT_UNUSUAL',
    `${Math.round(grams)} g of ${name} is unusual for this recipe. Check the unit.`,
    key,
  );

/** Usual water of a finished loaf, percent; common practice, no source. */
const BREAD_MOISTURE = [30, 48] as const;

/** Water of the finished bread, when the foods' own water is known; the loss in the oven is all water. */
function moistureNotes({ lines, cooked, family }: DishCheckInput): Note[] {
  if (cooked === null || cooked.best <= 0 || !LEAN_BREADS.includes(family)) return [];
  if (lines.some(({ food, grams }) => food.per100g.waterG === null && grams > 20)) return [];
  const raw = lines.reduce((sum, { grams }) => sum + grams, 0);
  const water = lines.reduce((sum, l) => sum + ((l.food.per100g.waterG ?? 0) * l.grams) / 100, 0);
  const percent = (100 * (water - (raw - cooked.best))) / cooked.best;
  const [low, high] = BREAD_MOISTURE;
  if (percent >= low && percent <= high) return [];
  return [
    note(
      'MOISTURE_UNUSUAL',
      `The finished bread would be about ${Math.round(percent)} % water; ${low}-${high} % is usual. Check flour and water.`,
    ),
  ];
}

/** Notes about serving size, carbohydrate, energy, sodium, a dominating line, moisture of bread and unlikely units. */
export function dishChecks(input: DishCheckInput): Note[] {
  const grams = input.cooked === null ? null : input.cooked.best / input.servings;
  return [
    ...servingNotes(input, grams),
    ...dominanceNotes(input),
    ...moistureNotes(input),
    ...unitNotes(input),
  ];
}
