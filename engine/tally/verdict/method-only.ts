/** Starchy and sugary food that stands in the method only, so that no line counts it. */
import { withoutAccents } from '../../accents.ts';
import type { FoodTable } from '../../foods/index.ts';
import type { Ingredient, Interval, MissingLine } from '../../model.ts';
import data from '../data/method-only.json' with { type: 'json' };
import { madeElsewhere } from './made-elsewhere.ts';
import { servedByMethod } from './served-with.ts';

interface Kind {
  kind: string;
  method: RegExp;
  lines: RegExp;
  /** Words of a method that makes it of what the lines have. */
  made: RegExp | null;
  /** What it is mostly made of. */
  of: RegExp | null;
  netCarbsG: Interval;
  /** Taken by choice, when it is served. */
  beside: boolean;
}

const span = ([low = 0, high = 0]: readonly number[], [from = 0, to = 0]: readonly number[]) => {
  const bounds = { low: (low * from) / 100, high: (high * to) / 100 };
  return { ...bounds, best: (bounds.low + bounds.high) / 2 };
};

const KINDS: readonly Kind[] = data.kinds.map((row) => ({
  kind: row.kind,
  method: new RegExp(row.method),
  lines: new RegExp(`(?:^|[^a-z])[a-z]*(?:${row.lines})`),
  made: 'made' in row && typeof row.made === 'string' ? new RegExp(row.made) : null,
  of: 'of' in row && typeof row.of === 'string' ? new RegExp(row.of, 'g') : null,
  netCarbsG: span(row.per100, row.serving),
  beside: 'beside' in row && row.beside === true,
}));

const NOT_MEANT = new RegExp(data.notMeant);
/** What is served with a dish is by choice anyway: only a refusal takes it back. */
const REFUSED = /\b(?:without|instead|avoid|skip|not|no|never|leftover)\b/;
/** Sentences of a method that are looked at; the rest of a longer one says nothing new. */
const MOST_SENTENCES = 200;

const plain = (text: string): string => withoutAccents(text).toLowerCase();

/** Sentences of the method in plain letters. */
const sentencesOf = (steps: readonly string[]): string[] =>
  steps
    .flatMap((step) => step.split(/(?<=[.;!?])\s+|\n/))
    .slice(0, MOST_SENTENCES)
    .map((sentence) => plain(sentence.slice(0, 400)));

const wordsOf = (ingredients: readonly Ingredient[], foods: FoodTable): string[] =>
  ingredients.flatMap(({ line, match }) => [
    line.text,
    (match ? foods.byId(match.foodId) : null)?.name ?? '',
  ]);

/** Sentences in which a thing goes on being made, behind the one that begins. Own choice. */
const GOES_ON = 2;

/** Whether the method makes it of what is on the lines: not of cashews and syrup that no line has. */
function isMadeOfLines({ made, of }: Kind, every: readonly string[], lines: string): boolean {
  const at = every.findIndex((text) => made?.test(text));
  if (at < 0) return false;
  const said = every.slice(at, at + 1 + GOES_ON).join(' ');
  const foods = of === null ? [] : (said.match(of) ?? []);
  return foods.length === 0 || foods.some((food) => lines.includes(food.replace(/s$/, '')));
}

/** Foods by name; a line whose food is not known by its own words. */
const namesOf = (ingredients: readonly Ingredient[], foods: FoodTable): string[] =>
  ingredients.map(
    ({ line, match }) => (match ? foods.byId(match.foodId)?.name : null) ?? line.text,
  );

/**
 * What the method uses in bulk and no line holds, nor anything it could be made of: flour for a dough,
 * icing, syrup, pasta; and what it is to be served with, but for what the `title` calls the dish itself. The `key` is of no line. Empty for a recipe
 * without a method or lines.
 */
export function methodOnly(
  steps: readonly string[],
  ingredients: readonly Ingredient[],
  foods: FoodTable,
  title = '',
): MissingLine[] {
  if (ingredients.length === 0) return [];
  const words = wordsOf(ingredients, foods);
  const lines = plain(words.join(' | '));
  const every = sentencesOf(steps);
  // A choice or another time is no use of it.
  const sentences = every.filter((sentence) => !NOT_MEANT.test(sentence));
  const own = {
    title,
    lines: ingredients.map(({ line }) => `${line.text} ${line.group ?? ''}`.trim()),
  };
  const served = servedByMethod(every, namesOf(ingredients, foods), `method.${KINDS.length}`, own);
  const sauce = madeElsewhere(every, lines, `method.${KINDS.length + 1}`);
  const offered = every.filter((sentence) => !REFUSED.test(sentence));
  const used = KINDS.flatMap((row, at): MissingLine[] => {
    const { kind, method, lines: known, netCarbsG, beside } = row;
    const among = beside ? offered : sentences;
    const sentence = known.test(lines) ? undefined : among.find((text) => method.test(text));
    if (sentence === undefined || isMadeOfLines(row, every, lines)) return [];
    const text = `${kind}: “${sentence.trim().slice(0, 80)}”`;
    return [
      {
        key: `method.${at}`,
        text,
        why: 'the method uses it and no line has it',
        kind,
        netCarbsG,
        ...(beside ? { beside } : {}),
      },
    ];
  });
  return [...used, ...[served, sauce].filter((row) => row !== null)];
}
