/** A food's own measures: which one fits the unit, the size and the form on the line. */
import type { Food, Measure } from '../../model.ts';
import { millilitresOf } from '../../units.ts';
import { plain } from '../line-words.ts';

export interface VolumeMeasure {
  measure: Measure;
  /** 'cup', 'tbsp', 'tsp', 'fl oz' ... */
  unit: string;
  /** Words after the unit: 'chopped', 'packed'. */
  form: string[];
  /** Grams per millilitre; the table's cups are US cups of 236.6 ml. */
  density: number;
}

const VOLUME = /^(cup|tbsp|tsp|fl oz|pint|quart|gallon|ml|l|dl)\b/;

/** Forms that are packed to much the same density; a line that says one may use the other. */
const SAME_FORMS: readonly (readonly string[])[] = [
  ['chopped', 'diced', 'cubed', 'cubes', 'pieces', 'minced', 'chunks'],
  ['grated', 'shredded'],
  ['sliced', 'slices'],
  ['mashed', 'pureed', 'puree'],
  ['crushed', 'crumbs', 'crumbled'],
  ['ground', 'powdered', 'milled'],
  ['halves', 'halved'],
];

const stem = (word: string): string => word.replace(/(?:ed|es|s)$/, '');

const forms = new Map<string, RegExp>();

/** The form or its verb as a word of its own: 'whipping cream' is not whipped, a package not packed. */
function patternOf(form: string): RegExp {
  let pattern = forms.get(form);
  if (!pattern) {
    const like = SAME_FORMS.find((list) => list.includes(form)) ?? [form];
    const words = like.map((word) => `${word}|${stem(word)}(?:ed|es|e|s)?`);
    pattern = new RegExp(`\\b(?:${words.join('|')})\\b`);
    forms.set(form, pattern);
  }
  return pattern;
}

const says = (text: string, form: string): boolean => patternOf(form).test(text);

const parsed = new WeakMap<Food, VolumeMeasure[]>();

/** All volume measures of a food with their densities. */
export function volumeMeasures(food: Food): VolumeMeasure[] {
  let found = parsed.get(food);
  if (!found) {
    found = food.measures.flatMap((measure): VolumeMeasure[] => {
      const text = plain(measure.unit)
        .replace(/[^a-z ]+/g, ' ')
        .trim();
      const unit = VOLUME.exec(text)?.[1];
      const ml = unit === undefined ? null : millilitresOf(unit, 'us');
      if (unit === undefined || ml === null) return [];
      const form = text
        .slice(unit.length)
        .split(' ')
        .filter((word) => word !== '');
      return [{ measure, unit, form, density: measure.grams / ml }];
    });
    parsed.set(food, found);
  }
  return found;
}

function formScore(measure: VolumeMeasure, text: string): number {
  if (measure.form.length === 0) return 0;
  return measure.form.reduce((sum, form) => sum + (says(text, form) ? 2 : -3), 0);
}

/** The food's volume measure nearest to the unit and the form the line speaks of, or null. */
export function chooseVolume(food: Food, unit: string, text: string): VolumeMeasure | null {
  let best: VolumeMeasure | null = null;
  let bestScore = Number.NEGATIVE_INFINITY;
  for (const measure of volumeMeasures(food)) {
    const same = measure.unit === unit ? 1 : 0;
    const cup = measure.unit === 'cup' ? 0.5 : 0;
    const score = formScore(measure, text) + same + cup;
    if (score > bestScore) {
      best = measure;
      bestScore = score;
    }
  }
  return best;
}

const PACKAGE: ReadonlySet<string> = new Set(['package', 'packet', 'pack', 'envelope', 'sachet']);
const BUNCH: ReadonlySet<string> = new Set(['bunch', 'bundle']);
const CAN: ReadonlySet<string> = new Set(['can', 'tin']);
/** A slice of bacon under its other names. */
const RASHER: ReadonlySet<string> = new Set(['slice', 'rasher', 'strip']);
/** Celery, rhubarb and lemongrass come in either. */
const STALK: ReadonlySet<string> = new Set(['stalk', 'stick', 'rib']);

/** Units that mean the same container or part. */
function sameUnit(a: string, b: string): boolean {
  if (a === b) return true;
  if (PACKAGE.has(a) && PACKAGE.has(b)) return true;
  if (CAN.has(a) && CAN.has(b)) return true;
  if (BUNCH.has(a) && BUNCH.has(b)) return true;
  if (RASHER.has(a) && RASHER.has(b)) return true;
  return STALK.has(a) && STALK.has(b);
}

const pieceWords = (measure: Measure): string[] => plain(measure.unit).split(/[^a-z]+/);

const SIZES = ['extra large', 'jumbo', 'large', 'medium', 'small'] as const;

const LARGEST: ReadonlySet<string> = new Set(['extra large', 'jumbo']);

/** Size words of other languages, without accents. */
const OTHER_SIZES: readonly (readonly [RegExp, string])[] = [
  [/^(?:kl$|klein|petit|pequen|chic|piccol|liten|litet|lita$|sma|lille)/, 'small'],
  [/^(?:mittel|mittler|moyen|median|medi[oa]|middel|mellan|mellom|mellem)/, 'medium'],
  [/^(?:gr$|gro(?:ss|ß|te|ot|s)|grand|stor)/, 'large'],
];

/** Canonical size from the line's word ('lg', 'good-sized', 'big'), or null. */
export function sizeOf(word: string | null): string | null {
  if (word === null) return null;
  const text = plain(word).replaceAll('-', ' ');
  if (/jumbo/.test(text)) return 'jumbo';
  if (/extra large|very large|xl\b/.test(text)) return 'extra large';
  if (/^(small|tiny|little|baby|mini|sm)/.test(text) || /very small/.test(text)) return 'small';
  if (/medium|^med/.test(text)) return 'medium';
  if (/large|^lg|big|good|fat|plump/.test(text)) return 'large';
  return OTHER_SIZES.find(([words]) => words.test(text))?.[1] ?? null;
}

function unitScore(words: string[], unit: string | null): number | null {
  if (unit !== null && words.includes(unit)) return 11;
  if (unit !== null) return words.some((word) => sameUnit(word, unit)) ? 10 : null;
  const first = words[0] ?? '';
  // A piece is the usual one; it goes before a medium one of a record of another kind.
  if (first === 'piece' || first === 'whole' || first === 'each') return 6.5;
  return SIZES.some((size) => words.join(' ').startsWith(size)) ? 5 : null;
}

function sizeScore(words: string[], size: string | null, egg: boolean): number {
  const own = SIZES.find((known) => words.join(' ').includes(known)) ?? null;
  if (own === null) return size === null ? 3 : 0;
  const wanted = size ?? (egg ? 'large' : 'medium');
  if (own === wanted) return size === null ? 4 : 5;
  const largest = LARGEST.has(wanted) && LARGEST.has(own);
  return largest ? 1 : -6;
}

/**
 * The food's measure for a counted unit ('clove', 'can', or null for pieces) of a size, or null.
 * Without a size an egg is large, all else medium (USDA's own convention for recipes).
 */
export function choosePiece(
  food: Food,
  unit: string | null,
  size: string | null,
  text: string,
): Measure | null {
  const egg = /\beggs?\b/.test(plain(food.name));
  const drained = /\b(drained|rinsed)\b/.test(text);
  let best: Measure | null = null;
  let bestScore = 0;
  for (const measure of food.measures) {
    const words = pieceWords(measure);
    if (VOLUME.test(plain(measure.unit))) continue;
    const base = unitScore(words, unit);
    if (base === null) continue;
    const drain = words.includes('drained') ? (drained ? 3 : -1) : 0;
    const score = base + sizeScore(words, size, egg) + drain;
    if (score > bestScore) {
      best = measure;
      bestScore = score;
    }
  }
  return best;
}
