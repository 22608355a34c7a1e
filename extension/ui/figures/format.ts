/** Figures as they stand on the screen. Rounding happens here and nowhere earlier. */
import type { Interval, Nutrient } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import { locale, type MessageKey } from '../words/say.ts';

const writers = new Map<string, Intl.NumberFormat>();

/** A number with so many decimals, written as the language writes it; never grouped. */
export function digitsOf(value: number, least: number, most: number = least): string {
  const key = `${locale()} ${least} ${most}`;
  let writer = writers.get(key);
  if (!writer) {
    writer = new Intl.NumberFormat(locale(), {
      minimumFractionDigits: least,
      maximumFractionDigits: most,
      useGrouping: false,
    });
    writers.set(key, writer);
  }
  return writer.format(value);
}

/** One decimal below 100, none from there on; a true minus sign is never needed. */
export function amount(value: number): string {
  if (value === 0) return '0';
  if (value > 0 && value < 0.05) return `<${digitsOf(0.1, 1)}`;
  return digitsOf(value, Math.abs(value) >= 99.95 ? 0 : 1);
}

/** At most one decimal: a number the user has typed. */
export const short = (value: number): string => digitsOf(Math.round(value * 10) / 10, 0, 1);

/** A figure that is told in passing: whole from 20 on. */
export const about = (value: number): string =>
  value >= 19.95 ? digitsOf(value, 0) : short(value);

/** '15 g' */
export const gramsWords = (grams: number): string => `${short(grams)} g`;

/** '27–31 g' with whole grams, or '' when the interval is narrower than its own rounding. */
export function rangeText(value: Interval | null | undefined): string {
  if (!value || value.high - value.low < 0.1) return '';
  if (value.high < 10) return `${digitsOf(value.low, 1)}–${digitsOf(value.high, 1)} g`;
  return `${Math.floor(value.low)}–${Math.ceil(value.high)} g`;
}

/** kJ in one kcal (EU Regulation 1169/2011, Annex XIV rounding; thermochemical calorie). */
export const KJ_PER_KCAL = 4.184;
/** Salt as sodium x 2.5 (EU Regulation 1169/2011, Annex I). */
export const SALT_PER_SODIUM = 2.5;

export interface NutrientRow {
  nutrient: Nutrient;
  word: MessageKey;
  unit: string;
  /** Stored figure to shown figure. */
  scale: number;
  /** The budget rests on it. */
  counted: boolean;
  digits: number;
}

const row = (nutrient: Nutrient, word: MessageKey, counted = false): NutrientRow => ({
  nutrient,
  word,
  unit: 'g',
  scale: 1,
  counted,
  digits: 1,
});

/** Net carbs of a serving, as they stand outside the table. */
export const NET_CARBS: NutrientRow = row('netCarbsG', 'netCarbs', true);

/** What is told of a serving: first what the budget rests on, then the rest, in the units the user prefers. */
export function nutrientRows({
  energy,
  sodium,
}: Pick<Preferences, 'energy' | 'sodium'>): NutrientRow[] {
  return [
    NET_CARBS,
    row('carbohydrateG', 'carbohydrate', true),
    row('sugarsG', 'innerSugars', true),
    row('fiberG', 'innerFibre', true),
    row('alluloseG', 'innerAllulose', true),
    row('polyolsG', 'innerPolyols', true),
    row('proteinG', 'protein'),
    {
      ...row('energyKcal', 'energy'),
      unit: energy,
      scale: energy === 'kJ' ? KJ_PER_KCAL : 1,
      digits: 0,
    },
    row('fatG', 'fat'),
    row('saturatedG', 'innerSaturated'),
    sodium === 'salt'
      ? { ...row('sodiumMg', 'salt'), scale: SALT_PER_SODIUM / 1000, digits: 2 }
      : { ...row('sodiumMg', 'sodium'), unit: 'mg', digits: 0 },
  ];
}

/** A nutrient's best figure in its row's unit, without the unit. */
export function figureText(
  value: Interval | null | undefined,
  { scale, digits }: NutrientRow,
): string {
  return value ? digitsOf(value.best * scale, digits) : '–';
}

/** Low to high of a nutrient in its row's unit, or '' when both round to the same. */
export function figureRange(
  value: Interval | null | undefined,
  { scale, digits }: NutrientRow,
): string {
  if (!value) return '';
  const [low, high] = [value.low, value.high].map((one) => digitsOf(one * scale, digits));
  return low === high ? '' : `(${low}–${high})`;
}

/** '12.8–15.9', or '' when both round to the same. */
export function likelyText(
  value: Interval | null | undefined,
  { scale, digits }: NutrientRow,
): string {
  if (!value) return '';
  const [low = '', high = ''] = [value.low, value.high].map((one) => digitsOf(one * scale, digits));
  return low === high ? '' : `${low}–${high}`;
}

/** '25 Nov 2026, 13:05' in the browser's own order. */
export function momentText(at: number): string {
  return new Date(at).toLocaleString(locale(), { dateStyle: 'medium', timeStyle: 'short' });
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
  return new Date(`${day}T12:00:00`).toLocaleDateString(locale(), { dateStyle: 'medium' });
}
