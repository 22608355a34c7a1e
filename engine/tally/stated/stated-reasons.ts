/** Patterns in how a page's figures and ours are apart, and what is likely behind each. */
import type { Note, Nutrient, Tally } from '../../model.ts';
import { type Column, nearnessOf } from './nearness.ts';

export interface Reason extends Note {
  /** Figures it accounts for. */
  explains: readonly Nutrient[];
}

export interface Facts {
  /** Best figures for one column: the same serving on both sides. */
  theirs: Column;
  ours: Column;
  tally: Tally;
  servings: number;
  /** Grams of that serving by our estimate and by the page, where known. */
  oursG: number | null;
  theirsG: number | null;
}

/** Figures that follow one another when only the serving differs. */
const SCALED: readonly Nutrient[] = [
  'energyKcal',
  'carbohydrateG',
  'fatG',
  'proteinG',
  'sugarsG',
  'saturatedG',
];
/** Limits of the patterns. Own choice. */
const SAME_RATIO = 1.25;
const LEAST_RATIO = 1.2;
const LEAST_FIGURES = 3;
/** Below this a printed whole gram says nothing of a ratio. */
const LEAST_GRAMS = 2;
const NEAR_SHARE = 0.05;
const NEAR_G = 0.6;
const KJ_PER_KCAL = 4.184;
const SALT_PER_SODIUM = 2.5;
const RATIO_WIDTH = 1.08;

const reason = (
  code: string,
  text: string,
  explains: readonly Nutrient[],
  key: string | null = null,
): Reason => ({ code, text, explains, key });

/** Printed grams are whole ones, so half of one is near whatever the share. */
const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= Math.max(NEAR_G, NEAR_SHARE * Math.max(a, b));

const isTimes = (ratio: number, factor: number): boolean =>
  ratio > factor / RATIO_WIDTH && ratio < factor * RATIO_WIDTH;

const ratioOf = ({ theirs, ours }: Facts, nutrient: Nutrient): number | null => {
  const [a, b] = [theirs[nutrient], ours[nutrient]];
  return a === undefined || b === undefined || b <= 0 ? null : a / b;
};

const isClose = ({ theirs, ours }: Facts, nutrient: Nutrient): boolean => {
  const [a, b] = [theirs[nutrient], ours[nutrient]];
  return a === undefined || b === undefined || nearnessOf(nutrient, a, b) === 'close';
};

const isHigher = (facts: Facts, nutrient: Nutrient): boolean =>
  !isClose(facts, nutrient) && (ratioOf(facts, nutrient) ?? 2) > 1;

const isLower = (facts: Facts, nutrient: Nutrient): boolean =>
  !isClose(facts, nutrient) && (ratioOf(facts, nutrient) ?? 2) < 1;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 1;
};

const count = (value: number): string => String(Number(value.toPrecision(2)));

/** All figures times one number: another serving. */
function otherServing(facts: Facts): Reason[] {
  const known = SCALED.filter(
    (n) => Math.max(facts.theirs[n] ?? 0, facts.ours[n] ?? 0) >= LEAST_GRAMS,
  );
  const ratios = known.flatMap((nutrient) => ratioOf(facts, nutrient) ?? []);
  if (ratios.length < LEAST_FIGURES || Math.min(...ratios) <= 0) return [];
  const ratio = median(ratios);
  const apart = ratio > LEAST_RATIO || ratio < 1 / LEAST_RATIO;
  if (!apart || Math.max(...ratios) / Math.min(...ratios) > SAME_RATIO) return [];
  const servings = facts.servings / ratio;
  const text = `All figures of the page are about ${count(ratio)} times ours: its number or size of servings is likely another (as if the recipe made ${count(servings)} instead of ${count(facts.servings)}).`;
  return [reason('STATED_OTHER_SERVING', text, [...SCALED, 'fiberG', 'sodiumMg'])];
}

/** The page's own serving weight is far from ours. */
function otherSize({ oursG, theirsG }: Facts): Reason[] {
  if (oursG === null || theirsG === null || theirsG === 100) return [];
  if (Math.max(oursG / theirsG, theirsG / oursG) <= SAME_RATIO) return [];
  const text = `The page's serving weighs ${Math.round(theirsG)} g; by our estimate one of its servings is about ${Math.round(oursG)} g.`;
  return [reason('STATED_SERVING_WEIGHT', text, [...SCALED, 'fiberG', 'sodiumMg'])];
}

/** Carbohydrate with fibre inside, whatever the rule of the tally. */
function totalCarbs({ ours, tally }: Facts): number | null {
  if (ours.carbohydrateG === undefined) return null;
  return ours.carbohydrateG + (tally.rule.region === 'eu' ? (ours.fiberG ?? 0) : 0);
}

function netCarbsPrinted(facts: Facts): Reason[] {
  const { theirs, ours } = facts;
  const total = totalCarbs(facts);
  const fibre = ours.fiberG ?? 0;
  if (theirs.carbohydrateG === undefined || total === null || fibre < 2 * NEAR_G) return [];
  const available = total - fibre;
  const net = ours.netCarbsG ?? available;
  if (near(theirs.carbohydrateG, total)) return [];
  if (!near(theirs.carbohydrateG, net) && !near(theirs.carbohydrateG, available)) return [];
  const text = 'The page likely prints carbohydrate without fibre (net, or as European labels do).';
  return [reason('STATED_IS_NET', text, ['carbohydrateG'])];
}

/** Net carbs that take away every gram of sweetener, under a rule of ours that does not. */
function polyolsTakenAway(facts: Facts): Reason[] {
  const { theirs, ours } = facts;
  const polyols = ours.polyolsG ?? 0;
  const total = totalCarbs(facts);
  if (theirs.carbohydrateG === undefined || total === null || polyols < 2 * NEAR_G) return [];
  const rest = Math.max(0, total - (ours.fiberG ?? 0) - polyols - (ours.alluloseG ?? 0));
  if (!near(theirs.carbohydrateG, rest) || near(rest, ours.netCarbsG ?? rest)) return [];
  const text = 'The page likely takes away all sugar alcohols; our rule counts a share of them.';
  return [reason('STATED_ALL_POLYOLS', text, ['carbohydrateG'])];
}

function wholeFryingFat(facts: Facts): Reason[] {
  if (!isHigher(facts, 'energyKcal') || !isHigher(facts, 'fatG')) return [];
  if (!isClose(facts, 'carbohydrateG') || !isClose(facts, 'proteinG')) return [];
  const text =
    'Only energy and fat are higher: the page likely counts all of the oil for frying, the pan or a marinade.';
  return [reason('STATED_ALL_FAT', text, ['energyKcal', 'fatG', 'saturatedG'])];
}

function kilojoules(facts: Facts): Reason[] {
  const ratio = ratioOf(facts, 'energyKcal');
  if (ratio === null || !isTimes(ratio, KJ_PER_KCAL)) return [];
  const text = "The page's energy is about 4.2 times ours: it is likely in kilojoules.";
  return [reason('STATED_IN_KJ', text, ['energyKcal'])];
}

const OTHERS: readonly Nutrient[] = ['energyKcal', 'carbohydrateG', 'proteinG', 'fatG'];

function sodiumOnly(facts: Facts): Reason[] {
  const ratio = ratioOf(facts, 'sodiumMg');
  if (ratio === null || isClose(facts, 'sodiumMg')) return [];
  if (!OTHERS.every((nutrient) => isClose(facts, nutrient))) return [];
  if (isTimes(ratio, SALT_PER_SODIUM)) {
    const text = "The page's sodium is 2.5 times ours: it is likely salt.";
    return [reason('STATED_IS_SALT', text, ['sodiumMg'])];
  }
  const text =
    ratio > 1
      ? 'Only sodium is higher: the page likely counts all salt of cooking water or brine.'
      : 'Only sodium is lower: the page likely leaves out salt without an amount.';
  return [reason(ratio > 1 ? 'STATED_ALL_SALT' : 'STATED_NO_SALT', text, ['sodiumMg'])];
}

/** A line that brings just what is missing from the page's carbohydrate. */
function lineLeftOut(facts: Facts): Reason[] {
  const { theirs, tally, servings } = facts;
  const total = totalCarbs(facts);
  if (theirs.carbohydrateG === undefined || total === null) return [];
  if (!isLower(facts, 'carbohydrateG') || tally.contributions.length < 2) return [];
  const missing = total - theirs.carbohydrateG;
  const perServing = (best: number): number => (best * tally.servings) / servings;
  const line = tally.contributions.find(
    ({ netCarbsG }) => netCarbsG !== null && near(perServing(netCarbsG.best), missing),
  );
  if (line === undefined) return [];
  const text = `The page likely leaves one line out (a topping, a crust or something optional): this one brings the missing ${Math.round(missing)} g of carbohydrate.`;
  return [
    reason('STATED_LINE_LEFT_OUT', text, ['carbohydrateG', 'energyKcal', 'sugarsG'], line.key),
  ];
}

/** Lines of ours that are in no total may well be in theirs. */
function notCountedHere(facts: Facts): Reason[] {
  const { uncounted } = facts.tally;
  if (uncounted.length === 0) return [];
  if (!isHigher(facts, 'carbohydrateG') && !isHigher(facts, 'energyKcal')) return [];
  const lines = uncounted.length === 1 ? 'One line is' : `${uncounted.length} lines are`;
  const text = `${lines} not in our totals and may be in the page's.`;
  return [
    reason('STATED_UNCOUNTED', text, [...SCALED, 'fiberG', 'sodiumMg'], uncounted[0]?.key ?? null),
  ];
}

/** Likely reasons, the surest first; empty when all figures are close or nothing fits. */
export function likelyReasons(facts: Facts): Reason[] {
  const scaled = otherServing(facts);
  if (scaled.length > 0) return [...scaled, ...otherSize(facts)];
  const carbs = [...polyolsTakenAway(facts), ...netCarbsPrinted(facts)].slice(0, 1);
  const apart = Object.keys(facts.theirs).some((nutrient) => !isClose(facts, nutrient as Nutrient));
  if (!apart) return carbs;
  return [
    ...kilojoules(facts),
    ...carbs,
    ...(carbs.length === 0 ? lineLeftOut(facts) : []),
    ...wholeFryingFat(facts),
    ...sodiumOnly(facts),
    ...otherSize(facts),
    ...notCountedHere(facts),
  ];
}
