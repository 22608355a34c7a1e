/** The publisher's own figures beside ours: how far apart they are, and what may be behind it. */
import type { Note, Nutrient, Nutrients, Recipe, Tally } from '../../model.ts';
import { type Column, type Nearness, nearnessOf } from './nearness.ts';
import { isPer100, readStated, type StatedFigure, servingGrams } from './stated-figures.ts';
import { likelyReasons, type Reason } from './stated-reasons.ts';

export interface StatedRow {
  nutrient: Nutrient;
  theirs: StatedFigure;
  /** Our best estimate in the same unit, for the same serving; null when we know none. */
  ours: number | null;
  /** Null when we have no figure to compare with. */
  verdict: Nearness | null;
  /** Why the two may be apart, in plain words; null when they are close or nothing is known. */
  likelyReason: string | null;
}

export interface StatedComparison {
  /** What one column is for: a serving as the page counts them, or 100 g of the finished dish. */
  per: 'serving' | '100 g';
  /** The page's own words for its serving, or null. */
  servingText: string | null;
  rows: StatedRow[];
  /** Do energy, protein, fat and carbohydrate of the page agree? Null when one of them lacks. */
  addsUp: boolean | null;
  /** The page's carbohydrate less its fibre, g; null unless its carbohydrate is known to hold the fibre. */
  theirNetCarbsG: number | null;
  /** Likely reasons, then what the reader should know of the page's figures. */
  notes: Note[];
}

function columnOf(nutrients: Nutrients, share: number): Column {
  const column: Column = {};
  for (const [nutrient, value] of Object.entries(nutrients)) {
    if (value) column[nutrient as Nutrient] = value.best * share;
  }
  return column;
}

/** Servings as the page counts them; ours where it does not say. */
function pageServings({ yield: made }: Pick<Recipe, 'yield'>, tally: Tally): number {
  const { servings } = made;
  return servings ? (servings.low + servings.high) / 2 : tally.servings;
}

/** Energy tables scatter this much round the general factors, checked on USDA SR 28; slack a 100 g. */
const ENERGY_BAND = { low: 0.85, high: 1.1, slackKcal: 10 };

/**
 * Can the page's energy come from its protein, fat and carbohydrate (4, 9 and 4 kcal/g)? What our
 * own estimate has beyond them (alcohol) or takes away (polyols, allulose) is allowed for.
 */
function energyAddsUp(theirs: Column, ours: Column, grams: number | null): boolean | null {
  const { energyKcal, proteinG, fatG, carbohydrateG } = theirs;
  if (energyKcal === undefined || proteinG === undefined) return null;
  if (fatG === undefined || carbohydrateG === undefined) return null;
  const fromParts = (column: Column, carbohydrate: number): number =>
    4 * (column.proteinG ?? 0) + 9 * (column.fatG ?? 0) + 4 * carbohydrate;
  const bulk = (theirs.fiberG ?? ours.fiberG ?? 0) + (ours.polyolsG ?? 0) + (ours.alluloseG ?? 0);
  const alcohol = Math.max(0, (ours.energyKcal ?? 0) - fromParts(ours, ours.carbohydrateG ?? 0));
  const slack = (ENERGY_BAND.slackKcal * Math.max(100, grams ?? 0)) / 100;
  const low = fromParts(theirs, Math.max(0, carbohydrateG - bulk));
  const high = fromParts(theirs, carbohydrateG) + 2 * (theirs.fiberG ?? 0) + alcohol;
  return (
    energyKcal >= ENERGY_BAND.low * low - slack && energyKcal <= ENERGY_BAND.high * high + slack
  );
}

/**
 * Carbohydrate with fibre inside, as US labels print it: fibre is listed, and sodium or cholesterol
 * in milligrams. Anything else is of an unknown basis, from which no fibre is taken.
 */
const isTotalBasis = (stated: Readonly<Record<string, string>>): boolean =>
  stated.fiberContent !== undefined &&
  /\d\s*(?:mg|milligrams?)\b/i.test(
    `${stated.sodiumContent ?? ''} ${stated.cholesterolContent ?? ''}`,
  );

const EXPLAINED: ReadonlySet<Nearness | null> = new Set<Nearness | null>(['somewhat', 'differs']);

function rowsOf(
  figures: Partial<Record<Nutrient, StatedFigure>>,
  ours: Column,
  reasons: readonly Reason[],
): StatedRow[] {
  return Object.entries(figures).map(([key, theirs]) => {
    const nutrient = key as Nutrient;
    const own = ours[nutrient] ?? null;
    const verdict = own === null ? null : nearnessOf(nutrient, theirs.value, own);
    const reason = reasons.find(({ explains }) => explains.includes(nutrient));
    return {
      nutrient,
      theirs,
      ours: own,
      verdict,
      likelyReason: EXPLAINED.has(verdict) ? (reason?.text ?? null) : null,
    };
  });
}

const NOT_ADDING_UP: Note = {
  code: 'STATED_DOES_NOT_ADD_UP',
  text: "The page's own figures do not add up: its energy does not follow from its protein, fat and carbohydrate.",
  key: null,
};

function higherCarbs(theirs: Column, ours: Column): Note[] {
  const [stated, own] = [theirs.carbohydrateG, ours.carbohydrateG];
  if (stated === undefined || own === undefined || stated <= own) return [];
  if (nearnessOf('carbohydrateG', stated, own) === 'close') return [];
  const text =
    'The page states more carbohydrate than we find. The budget is judged by our estimate; check the lines that are not counted.';
  return [{ code: 'STATED_CARBS_HIGHER', text, key: null }];
}

/**
 * The page's stated nutrition beside our tally, one row a figure it gives; null when it gives none
 * that can be read. Compared at the page's own number of servings, or per 100 g of the finished dish
 * when the page says so. Theirs stay word for word; nothing of ours is changed by them. Never throws.
 */
export function compareStated(
  recipe: Pick<Recipe, 'statedNutrition' | 'yield'>,
  tally: Tally,
): StatedComparison | null {
  const stated = recipe.statedNutrition;
  const figures = stated === null ? {} : readStated(stated);
  if (stated === null || Object.keys(figures).length === 0) return null;
  const servings = pageServings(recipe, tally);
  const per100 = isPer100(stated);
  const ours = per100
    ? columnOf(tally.per100gCooked ?? ({} as Nutrients), 1)
    : columnOf(tally.whole, 1 / servings);
  const theirs: Column = {};
  for (const [nutrient, figure] of Object.entries(figures)) {
    theirs[nutrient as Nutrient] = figure.value;
  }
  const cooked = tally.cookedGrams?.best ?? null;
  const grams = per100 ? 100 : cooked === null ? null : cooked / servings;
  const addsUp = energyAddsUp(theirs, ours, grams);
  const reasons = likelyReasons({
    theirs,
    ours,
    tally,
    servings,
    oursG: grams,
    theirsG: servingGrams(stated),
  });
  const { carbohydrateG, fiberG } = theirs;
  const saysTotal = isTotalBasis(stated) && !reasons.some(({ code }) => code === 'STATED_IS_NET');
  const net =
    saysTotal && carbohydrateG !== undefined && fiberG !== undefined
      ? Math.max(0, carbohydrateG - fiberG)
      : null;
  return {
    per: per100 ? '100 g' : 'serving',
    servingText: stated.servingSize ?? null,
    rows: rowsOf(figures, ours, reasons),
    addsUp,
    theirNetCarbsG: net,
    notes: [
      ...(addsUp === false ? [NOT_ADDING_UP] : []),
      ...reasons.map(({ code, text, key }) => ({ code, text, key })),
      ...(addsUp === false ? [] : higherCarbs(theirs, ours)),
    ],
  };
}
