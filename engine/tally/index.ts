/** Grams times composition: nutrients of the whole recipe, a serving and 100 g of the finished dish. */
import type { FoodTable } from '../foods/index.ts';
import { scale } from '../interval.ts';
import {
  type Family,
  type Ingredient,
  type Interval,
  type MissingLine,
  type NetCarbRule,
  NUTRIENTS,
  type Nutrient,
  type Nutrients,
  type Tally,
} from '../model.ts';
import { alcoholRetained } from './alcohol.ts';
import { type FoodNumbers, foodNumbers } from './composition.ts';
import { cookedWeight } from './cooked.ts';
import { type CountedLine, selectCounted } from './counted.ts';
import { dishChecks } from './dish-checks.ts';
import { showGrams } from './displayed-figures.ts';
import { COVERAGE, type Part, withUncertainty } from './propagate.ts';
import { ruleNotes } from './tally-notes.ts';

export interface TallyOptions {
  foods: FoodTable;
  /** Number of servings; anything not above zero is taken as one. */
  servings: number;
  rule: NetCarbRule;
  family: Family;
  /** Weight of the finished dish, g, when the user weighed it. */
  cookedGrams?: number | null;
  /** What such dishes weighed after cooking, as a share of what goes in, when bakes have told. */
  cookedShare?: { share: Interval; source: string } | null;
  title?: string;
  /** Cooking minutes, for the alcohol that stays. */
  minutes?: number | null;
  /** What the method uses and no line has. */
  methodOnly?: readonly MissingLine[];
  /** Nobody says how many servings it makes: `servings` is a guess by weight. */
  servingsGuessed?: boolean;
  /** The page gives no number at all, not even of pieces. */
  servingsAssumed?: boolean;
}

/** A counted line with the figures of its food. */
export interface NumberedLine extends CountedLine {
  numbers: FoodNumbers;
}

const positive = (servings: number): number =>
  Number.isFinite(servings) && servings > 0 ? servings : 1;

function polyolsPerServing(lines: readonly CountedLine[], servings: number): number {
  const perLine = lines.map(({ food, grams }) => {
    const kinds = Object.values(food.per100g.polyolsG ?? {});
    return (kinds.reduce((sum, g) => sum + g, 0) * grams) / 100;
  });
  return perLine.reduce((sum, g) => sum + g, 0) / servings;
}

/** Rectangular parts of one line's share of a nutrient: its amount, the share eaten, its composition. */
function partsOf(line: NumberedLine, figure: Interval): Part[] {
  const { food, amount, share, grams } = line;
  const perGram = figure.best / 100;
  const byMatch = (figure.best * line.matchWidth * grams) / 100;
  const below = ((figure.best - figure.low) * grams) / 100;
  const above = ((figure.high - figure.best) * grams) / 100;
  return [
    {
      cause: `amount ${food.id}`,
      minus: (amount.best - amount.low) * share.best * perGram,
      plus: (amount.high - amount.best) * share.best * perGram,
    },
    {
      cause: `share ${food.id}`,
      minus: (share.best - share.low) * amount.best * perGram,
      plus: (share.high - share.best) * amount.best * perGram,
    },
    {
      cause: `composition ${food.id}`,
      minus: Math.max(byMatch, below),
      plus: Math.max(byMatch, above),
    },
  ];
}

/** One line's own nutrient with its bounds, or null when the food lacks the figure. */
export function lineNutrient(line: NumberedLine, nutrient: Nutrient): Interval | null {
  const figure = line.numbers.figures[nutrient];
  if (figure === null) return null;
  return withUncertainty((figure.best * line.grams) / 100, partsOf(line, figure));
}

function sumNutrient(lines: readonly NumberedLine[], nutrient: Nutrient): Interval | null {
  const parts: Part[] = [];
  let best = 0;
  let known = false;
  for (const line of lines) {
    const figure = line.numbers.figures[nutrient];
    if (figure === null) continue;
    known = true;
    best += (figure.best * line.grams) / 100;
    parts.push(...partsOf(line, figure));
  }
  return known ? withUncertainty(best, parts) : null;
}

const mapNutrients = (of: (nutrient: Nutrient) => Interval | null): Nutrients =>
  Object.fromEntries(NUTRIENTS.map((nutrient) => [nutrient, of(nutrient)])) as Nutrients;

/** Whole-dish figures over the finished weight; the unsure loss is one more independent part. */
function per100gOf(whole: Nutrients, cooked: Interval): Nutrients {
  return mapNutrients((nutrient) => {
    const total = whole[nutrient];
    if (total === null) return null;
    const best = total.best / cooked.best;
    const widen = (side: number, loss: number): number =>
      Math.hypot(side / cooked.best, COVERAGE * loss) * 100;
    return {
      low: Math.max(0, best * 100 - widen(total.best - total.low, best - total.best / cooked.high)),
      best: best * 100,
      high: best * 100 + widen(total.high - total.best, total.best / cooked.low - best),
    };
  });
}

function contributionsOf(lines: readonly NumberedLine[], servings: number) {
  const rows = lines.map((line) => {
    const net = lineNutrient(line, 'netCarbsG');
    return { key: line.ingredient.key, netCarbsG: net === null ? null : scale(net, 1 / servings) };
  });
  const total = rows.reduce((sum, row) => sum + (row.netCarbsG?.best ?? 0), 0);
  return rows
    .map((row) => ({ ...row, share: total > 0 ? (row.netCarbsG?.best ?? 0) / total : 0 }))
    .sort((a, b) => b.share - a.share);
}

function incompleteOf(lines: readonly NumberedLine[]): Tally['incomplete'] {
  const incomplete: Tally['incomplete'] = {};
  for (const nutrient of NUTRIENTS) {
    const lacking = lines
      .filter(({ numbers, grams }) => numbers.figures[nutrient] === null && grams > 0)
      .map(({ ingredient }) => ingredient.key);
    if (lacking.length > 0) incomplete[nutrient] = lacking;
  }
  return incomplete;
}

/** What is served beside, with the net carbs it would bring. */
function withAmount(
  row: Tally['uncounted'][number],
  aside: readonly NumberedLine[],
  servings: number,
): Tally['uncounted'][number] {
  const line = aside.find(({ ingredient }) => ingredient.key === row.key);
  const net = line === undefined ? null : lineNutrient(line, 'netCarbsG');
  if (net === null) return row;
  return {
    ...row,
    why: `${row.why}; ${showGrams(net.best / servings)} net carbs a serving if eaten`,
  };
}

const rawGramsOf = (lines: readonly CountedLine[]): Interval =>
  withUncertainty(
    lines.reduce((sum, line) => sum + line.grams, 0),
    lines.flatMap(({ food, amount, share }) => [
      {
        cause: `amount ${food.id}`,
        minus: (amount.best - amount.low) * share.best,
        plus: (amount.high - amount.best) * share.best,
      },
      {
        cause: `share ${food.id}`,
        minus: (share.best - share.low) * amount.best,
        plus: (share.high - share.best) * amount.best,
      },
    ]),
  );

/**
 * The counted lines of a recipe and those served beside it, each with its food's figures of 100 g
 * under the rule; and the servings the totals are divided by. Never throws.
 */
export function numberedLines(
  ingredients: readonly Ingredient[],
  options: TallyOptions,
): {
  lines: NumberedLine[];
  besides: NumberedLine[];
  uncounted: Tally['uncounted'];
  servings: number;
} {
  const { foods, rule, family } = options;
  const servings = positive(options.servings);
  const { counted, aside, uncounted } = selectCounted(ingredients, foods);
  const dish = {
    polyolsPerServingG: polyolsPerServing(counted, servings),
    alcoholRetained: alcoholRetained(family, options.minutes ?? null),
  };
  const numbered = (line: CountedLine): NumberedLine => ({
    ...line,
    numbers: foodNumbers(line.food, rule, dish),
  });
  return { lines: counted.map(numbered), besides: aside.map(numbered), uncounted, servings };
}

/**
 * Adds up a recipe. Nutrients are g (energy kcal, sodium mg) with bounds after JCGM 100:2008; lines
 * without a food or an amount, optional lines and lines served beside are listed in `uncounted`.
 * Per-serving figures need no cooked weight; per-100-g figures do (EuroFIR recipe guideline, 2015:
 * yield on the whole dish). Never throws.
 */
export function tally(ingredients: readonly Ingredient[], options: TallyOptions): Tally {
  const { rule, family } = options;
  const { lines, besides, uncounted, servings } = numberedLines(ingredients, options);
  const whole = mapNutrients((nutrient) => sumNutrient(lines, nutrient));
  const perServing = mapNutrients((nutrient) => {
    const total = whole[nutrient];
    return total === null ? null : scale(total, 1 / servings);
  });
  const cooked = cookedWeight(
    lines,
    family,
    options.cookedGrams ?? null,
    options.cookedShare ?? null,
  );
  const weighable = cooked.grams !== null && cooked.grams.low > 0 ? cooked.grams : null;
  const contributions = contributionsOf(lines, servings);
  return {
    rule,
    servings,
    whole,
    perServing,
    per100gCooked: weighable === null ? null : per100gOf(whole, weighable),
    rawGrams: rawGramsOf(lines),
    cookedGrams: cooked.grams,
    cookedSource: cooked.source,
    contributions,
    uncounted: [
      ...uncounted.map((row) => withAmount(row, besides, servings)),
      ...(options.methodOnly ?? []).map(({ key, text, why }) => ({ key: key ?? text, text, why })),
    ],
    incomplete: incompleteOf(lines),
    notes: [
      ...ruleNotes(lines, whole, rule, servings),
      ...dishChecks({
        lines,
        perServing,
        cooked: cooked.grams,
        servings,
        family,
        contributions,
        title: options.title ?? '',
      }),
    ],
  };
}
