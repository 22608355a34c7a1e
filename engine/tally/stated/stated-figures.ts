/** The publisher's own figures, read from its words: numbers in our units beside the text as printed. */
import type { Nutrient } from '../../model.ts';

export interface StatedFigure {
  /** g; kcal for energy; mg for sodium. */
  value: number;
  /** Word for word as the page has it. */
  text: string;
}

type Unit = 'kcal' | 'kj' | 'g' | 'mg' | null;

/** schema.org NutritionInformation, in the order of a label. */
const PROPERTIES: readonly (readonly [property: string, nutrient: Nutrient, unit: Unit])[] = [
  ['calories', 'energyKcal', 'kcal'],
  ['fatContent', 'fatG', 'g'],
  ['saturatedFatContent', 'saturatedG', 'g'],
  ['carbohydrateContent', 'carbohydrateG', 'g'],
  ['fiberContent', 'fiberG', 'g'],
  ['sugarContent', 'sugarsG', 'g'],
  ['proteinContent', 'proteinG', 'g'],
  ['sodiumContent', 'sodiumMg', 'mg'],
];

const NUMBER = '\\d+(?:[.,]\\d+)*';
const FIGURE = new RegExp(
  `(?<![\\d.,])(${NUMBER})(?:\\s*(?:-|–|to)\\s*(${NUMBER}))?\\s*(kilocalories|kcal|calories?|cals?|kilojoules|kj|milligrams?|mg|grams?|gr|g)?(?![a-z]|[.,]?\\d|\\s*%)`,
  'gi',
);

const KJ_PER_KCAL = 4.184;

function unitOf(word: string | undefined): Unit {
  const text = (word ?? '').toLowerCase();
  if (text === '') return null;
  if (/^(kj|kilojoule)/.test(text)) return 'kj';
  if (/^(mg|milligram)/.test(text)) return 'mg';
  return text.startsWith('g') ? 'g' : 'kcal';
}

/** Three digits after a mark are thousands in energy and milligrams: no serving has 1.234 kcal. */
const THOUSANDS = /^[1-9]\d{0,2}(?:[.,]\d{3})+$/;

function numberOf(text: string, unit: Unit): number {
  const grouped = THOUSANDS.test(text) && unit !== 'g';
  if (grouped && (text.includes(',') || Number(text) < 10))
    return Number(text.replace(/[.,]/g, ''));
  const parts = text.split(/[.,]/);
  if (parts.length < 3) return Number(parts.join('.'));
  return Number(`${parts.slice(0, -1).join('')}.${parts[parts.length - 1]}`);
}

function converted(value: number, from: Unit, to: Unit): number | null {
  if (from === to || from === null) return value;
  if (from === 'kj' && to === 'kcal') return value / KJ_PER_KCAL;
  if (from === 'g' && to === 'mg') return value * 1000;
  return from === 'mg' && to === 'g' ? value / 1000 : null;
}

const UNDER = /^\s*(?:<|≤|less than|under)/i;
const TRACE = /^\s*(?:trace|tr\.?|nil|none)\b/i;

/**
 * The number in a printed figure, in `unit`; of several measures the wanted one ('502 kJ / 120
 * kcal'). Half of the limit for 'less than 1 g', 0 for a trace; null when there is no number.
 */
export function readFigure(text: string, unit: Exclude<Unit, null>): number | null {
  if (TRACE.test(text)) return 0;
  const found = [...text.slice(0, 200).matchAll(FIGURE)].flatMap(([, first = '', last, word]) => {
    const own = unitOf(word);
    const low = numberOf(first, own ?? unit);
    const middle = last === undefined ? low : (low + numberOf(last, own ?? unit)) / 2;
    const value = converted(middle, own, unit);
    return value === null || !Number.isFinite(value) ? [] : [{ value, own }];
  });
  const [best] = [...found].sort(
    (a, b) =>
      Number(b.own === unit) - Number(a.own === unit) ||
      Number(b.own !== null) - Number(a.own !== null),
  );
  if (best === undefined) return null;
  return UNDER.test(text) ? best.value / 2 : best.value;
}

/** Every figure of the page that can be read, by nutrient. */
export function readStated(
  stated: Readonly<Record<string, string>>,
): Partial<Record<Nutrient, StatedFigure>> {
  const figures: Partial<Record<Nutrient, StatedFigure>> = {};
  for (const [property, nutrient, unit] of PROPERTIES) {
    const text = Object.hasOwn(stated, property) ? stated[property] : undefined;
    const value = text === undefined || unit === null ? null : readFigure(text, unit);
    if (text !== undefined && value !== null) figures[nutrient] = { value, text };
  }
  return figures;
}

const PER_100 = /\b100\s*(?:g|grams?|ml)\b/i;

/** Does the page print its figures for 100 g? */
export const isPer100 = (stated: Readonly<Record<string, string>>): boolean =>
  PER_100.test(stated.servingSize ?? '') && servingGrams(stated) === 100;

/** The page's energy of one serving, kcal; null when it gives none, or gives it for 100 g. */
export function statedEnergy(stated: Readonly<Record<string, string>>): number | null {
  return isPer100(stated) ? null : (readStated(stated).energyKcal?.value ?? null);
}

/** Grams of the serving the page speaks of ('1 slice (85 g)'), or null. */
export function servingGrams(stated: Readonly<Record<string, string>>): number | null {
  const text = Object.hasOwn(stated, 'servingSize') ? (stated.servingSize ?? '') : '';
  if (!/\d\s*(?:g|gr|grams?)\b/i.test(text)) return null;
  const grams = readFigure(text, 'g');
  return grams === null || grams <= 0 ? null : grams;
}
