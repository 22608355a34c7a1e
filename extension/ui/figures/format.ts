/** Figures as they stand on the screen. Rounding happens here and nowhere earlier. */
import type { Interval, Nutrient } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';

/** One decimal below 100, none from there on; a true minus sign is never needed. */
export function amount(value: number): string {
  if (value === 0) return '0';
  if (value > 0 && value < 0.05) return '<0.1';
  return Math.abs(value) >= 99.95 ? value.toFixed(0) : value.toFixed(1);
}

/** At most one decimal: a number the user has typed. */
export function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** '29.2 g', or 'not known' for a missing figure. */
export function gramsText(value: Interval | null | undefined): string {
  return value ? `${amount(value.best)} g` : 'not known';
}

/** '27–31 g' with whole grams, or '' when the interval is narrower than its own rounding. */
export function rangeText(value: Interval | null | undefined): string {
  if (!value || value.high - value.low < 0.1) return '';
  if (value.high < 10) return `${value.low.toFixed(1)}–${value.high.toFixed(1)} g`;
  return `${Math.floor(value.low)}–${Math.ceil(value.high)} g`;
}

/** kJ in one kcal (EU Regulation 1169/2011, Annex XIV rounding; thermochemical calorie). */
export const KJ_PER_KCAL = 4.184;
/** Salt as sodium x 2.5 (EU Regulation 1169/2011, Annex I). */
export const SALT_PER_SODIUM = 2.5;

export interface NutrientRow {
  nutrient: Nutrient;
  label: string;
  unit: string;
  /** Stored figure to shown figure. */
  scale: number;
  /** Part of the row above it. */
  inner: boolean;
  digits: number;
}

const row = (nutrient: Nutrient, label: string, inner = false): NutrientRow => ({
  nutrient,
  label,
  unit: 'g',
  scale: 1,
  inner,
  digits: 1,
});

/** Net carbs of a serving, as they stand outside the table. */
export const NET_CARBS: NutrientRow = row('netCarbsG', 'Net carbs');

/** The rows of the nutrient table, in the order of a label, in the units the user prefers. */
export function nutrientRows({
  energy,
  sodium,
}: Pick<Preferences, 'energy' | 'sodium'>): NutrientRow[] {
  return [
    NET_CARBS,
    {
      ...row('energyKcal', 'Energy'),
      unit: energy,
      scale: energy === 'kJ' ? KJ_PER_KCAL : 1,
      digits: 0,
    },
    row('fatG', 'Fat'),
    row('saturatedG', 'of which saturated', true),
    row('carbohydrateG', 'Carbohydrate'),
    row('fiberG', 'of which fibre', true),
    row('sugarsG', 'of which sugars', true),
    row('polyolsG', 'of which polyols', true),
    row('alluloseG', 'of which allulose', true),
    row('proteinG', 'Protein'),
    sodium === 'salt'
      ? { ...row('sodiumMg', 'Salt'), scale: SALT_PER_SODIUM / 1000, digits: 2 }
      : { ...row('sodiumMg', 'Sodium'), unit: 'mg', digits: 0 },
  ];
}

/** A nutrient's best figure in its row's unit, without the unit. */
export function figureText(
  value: Interval | null | undefined,
  { scale, digits }: NutrientRow,
): string {
  return value ? (value.best * scale).toFixed(digits) : '–';
}

/** Low to high of a nutrient in its row's unit, or '' when both round to the same. */
export function figureRange(
  value: Interval | null | undefined,
  { scale, digits }: NutrientRow,
): string {
  if (!value) return '';
  const [low, high] = [(value.low * scale).toFixed(digits), (value.high * scale).toFixed(digits)];
  return low === high ? '' : `(${low}–${high})`;
}

/** '25 Nov 2026, 13:05' in the browser's own order. */
export function momentText(at: number): string {
  return new Date(at).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}

/** Recipe pages may carry any address: only web addresses become links. */
export function webAddress(url: string | null): string | null {
  if (url === null) return null;
  try {
    const { protocol, href } = new URL(url);
    return protocol === 'http:' || protocol === 'https:' ? href : null;
  } catch {
    return null;
  }
}

/** '25 Nov 2026' for the day '2026-11-25', whatever the browser's time zone. */
export function dayText(day: string): string {
  return new Date(`${day}T12:00:00`).toLocaleDateString(undefined, { dateStyle: 'medium' });
}
