/** Kinds of food that may be missing, told by words, with what a serving of them may hold. */
import { withoutAccents } from '../../accents.ts';
import type { Interval } from '../../model.ts';
import data from '../data/missing-kinds.json' with { type: 'json' };

export type Bounds = readonly [low: number, high: number];

export interface Kind {
  kind: string;
  per100: Bounds;
  serving: Bounds;
  /** The most of it in one recipe, g, however many servings it gives; null where there is no such bound. */
  whole: number | null;
  /** Net carbs of what one takes of it beside a dish, g; null for what is no plateful. */
  beside: Bounds | null;
}

export const bounds = ([low = 0, high = 0]: readonly number[]): Bounds => [low, high];

export const times = (grams: Bounds, per100: Bounds): Bounds => [
  (grams[0] * per100[0]) / 100,
  (grams[1] * per100[1]) / 100,
];

const KINDS: readonly (Kind & { words: RegExp })[] = data.kinds.map((row) => ({
  kind: row.kind,
  words: new RegExp(`(?:^|[^a-z])(?:${row.words})`),
  per100: bounds(row.per100),
  serving: bounds(row.serving),
  whole: row.whole ?? null,
  beside: row.beside ? times(bounds(row.beside.serving), bounds(row.beside.per100)) : null,
}));

/** Usual grams a serving of a kind: of one crust for two dozen tartlets each has little. */
export function servingOf({ serving, whole }: Kind, servings: number): Bounds {
  const most = whole === null ? serving[1] : whole / servings;
  return [Math.min(serving[0], most / 2), Math.min(serving[1], most)];
}

export const plainText = (text: string): string => withoutAccents(text.slice(0, 500)).toLowerCase();

/** The first kind whose words begin a word of the text; the starchy ones are asked first. */
export function kindOf(text: string): Kind | null {
  const plain = plainText(text);
  return KINDS.find(({ words }) => words.test(plain)) ?? null;
}

/** The word by which the first kind of a text is told, as the text has it; null where it names no kind. */
export function kindWord(text: string): string | null {
  const plain = plainText(text);
  const found = KINDS.find(({ words }) => words.test(plain))?.words.exec(plain)?.[0];
  return found?.replace(/^[^a-z]+|[^a-z]+$/g, '') ?? null;
}

export const between = ([low, high]: Bounds): Interval => ({ low, best: (low + high) / 2, high });

/** Eaten by the plateful beside a dish. */
export const STARCHY: ReadonlySet<string> = new Set([
  'tortillas or wraps',
  'bread or rolls',
  'chips or fries',
  'pasta, noodles or dumplings',
  'rice or grain',
  'potatoes or starchy vegetable',
]);

/** Starch and sugar of any kind: named even where the cook may leave it out. */
export const STARCH_OR_SUGAR: ReadonlySet<string> = new Set([
  ...STARCHY,
  'gelling sugar',
  'pie crust or pastry',
  'dough',
  'crumbs or croutons',
  'cake, cookies or sweets',
  'flour, starch or mix',
  'sugar or syrup',
  'jam or sweet spread',
  'chocolate',
  'ice cream or sweet cream',
  'dried fruit',
]);
