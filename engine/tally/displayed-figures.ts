/** Figures for the screen. Rounded here and nowhere else; the grid is that of the EU's rounding guidance of December 2012. */
import type { Interval, Nutrient } from '../model.ts';

/** Written when a figure is not known. */
const UNKNOWN = '–';

function grid(value: number): string {
  if (value >= 9.95) return String(Math.round(value));
  return value < 0.05 ? '0' : value.toFixed(1);
}

/** Grams: below 10 one decimal, from 10 whole, '<0.5 g' for traces, '0 g' only for a true zero. */
export function showGrams(value: number | null): string {
  if (value === null) return UNKNOWN;
  if (value === 0) return '0 g';
  return value < 0.5 ? '<0.5 g' : `${grid(value)} g`;
}

/** Energy: below 100 to the nearest 5, else to the nearest 10 kcal. */
export function showEnergy(kcal: number | null): string {
  if (kcal === null) return UNKNOWN;
  const step = kcal < 100 ? 5 : 10;
  return `${Math.round(kcal / step) * step} kcal`;
}

/** Sodium to the nearest 10 mg. */
export function showSodium(mg: number | null): string {
  return mg === null ? UNKNOWN : `${Math.round(mg / 10) * 10} mg`;
}

/** Salt equivalent of sodium, sodium x 2.5 (Reg. (EU) 1169/2011 Annex I), to 0.1 g. */
export function showSalt(sodiumMg: number | null): string {
  return sodiumMg === null ? UNKNOWN : `${(Math.round((sodiumMg * 2.5) / 100) / 10).toFixed(1)} g`;
}

const halfWidth = ({ low, high }: Interval): number => (high - low) / 2;

/** True when the scatter is worth showing: more than 1 g and 10 % to either side. */
function isWide(value: Interval): boolean {
  return halfWidth(value) > Math.max(1, 0.1 * value.best);
}

/** True above 20 %: counts within 20 % are called accurate in Deeb 2017, J Diabetes Sci Technol 11:753. */
export function isUnsure(value: Interval): boolean {
  return value.best > 0 && isWide(value) && halfWidth(value) > 0.2 * value.best;
}

export interface RangeOptions {
  /** `auto` shows the range when it is wide or when the budget lies inside it. */
  range?: 'auto' | 'always' | 'never';
  budgetG?: number;
  /** Number of counted foods that lack the figure: the total is then a lower bound. */
  lacking?: number;
}

function showsRange(value: Interval, options: RangeOptions): boolean {
  if (options.range === 'never' || value.low === value.high) return false;
  if (options.range === 'always' || isWide(value)) return true;
  const { budgetG } = options;
  return budgetG !== undefined && value.low <= budgetG && value.high > budgetG;
}

/** '29 g', '29 g (27-31)', '≥ 29 g'. Null is shown as a dash. */
export function showGramsRange(value: Interval | null, options: RangeOptions = {}): string {
  if (value === null) return UNKNOWN;
  const atLeast = (options.lacking ?? 0) > 0 ? '≥ ' : '';
  const best = value.high === 0 ? '0 g' : value.best < 0.5 ? '<0.5 g' : showGrams(value.best);
  if (!showsRange(value, options)) return `${atLeast}${best}`;
  return `${atLeast}${best} (${grid(value.low)}-${grid(value.high)})`;
}

/** Any nutrient with its unit, grid and, for grams, its range. */
export function showNutrient(
  nutrient: Nutrient,
  value: Interval | null,
  options: RangeOptions = {},
): string {
  if (nutrient === 'energyKcal') return showEnergy(value?.best ?? null);
  if (nutrient === 'sodiumMg') return showSodium(value?.best ?? null);
  return showGramsRange(value, options);
}

/** Names of the nutrients on screen and in exports, in the order they are shown. */
export const NUTRIENT_NAMES: Record<Nutrient, string> = {
  netCarbsG: 'Net carbs',
  carbohydrateG: 'Carbohydrate',
  fiberG: 'Fibre',
  sugarsG: 'Sugars',
  polyolsG: 'Polyols',
  alluloseG: 'Allulose',
  energyKcal: 'Energy',
  proteinG: 'Protein',
  fatG: 'Fat',
  saturatedG: 'Saturated fat',
  sodiumMg: 'Sodium',
};
