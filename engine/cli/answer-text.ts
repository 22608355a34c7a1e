/** The records in words, for a person at a terminal. */
import { NUTRIENTS, type Nutrient } from '../model.ts';
import { asScalesRead } from '../rewrite/lines/written-amounts.ts';
import type { AdaptRecord, LineRecord, PerServing, ReadRecord, TallyRecord } from './answers.ts';

const LABELS: Record<Nutrient, string> = {
  energyKcal: 'Energy, kcal',
  fatG: 'Fat, g',
  saturatedG: '  saturated, g',
  carbohydrateG: 'Carbohydrate, g',
  fiberG: 'Fibre, g',
  sugarsG: 'Sugars, g',
  polyolsG: 'Polyols, g',
  alluloseG: 'Allulose, g',
  netCarbsG: 'Net carbs, g',
  proteinG: 'Protein, g',
  sodiumMg: 'Sodium, mg',
};

const WIDE: readonly Nutrient[] = ['energyKcal', 'sodiumMg'];

const cell = (nutrient: Nutrient, value: number | null): string =>
  (value === null ? 'unknown' : value.toFixed(WIDE.includes(nutrient) ? 0 : 1)).padStart(10);

const rows = (columns: readonly PerServing[]): string[] =>
  NUTRIENTS.map(
    (nutrient) =>
      LABELS[nutrient].padEnd(18) +
      columns.map((column) => cell(nutrient, column[nutrient])).join(''),
  );

const list = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];

/** The lines with the titles of their groups between them. */
const underHeadings = ({
  ingredients,
  headings,
}: Pick<AdaptRecord, 'ingredients' | 'headings'>): string[] =>
  ingredients.flatMap((line, at) => [
    ...headings.filter((heading) => heading.at === at).map(({ title }) => `${title}:`),
    line,
  ]);

const numbered = (lines: readonly string[]): string[] =>
  lines.map((line, at) => `${at + 1}. ${line}`);

const uncountedWords = (uncounted: readonly { line: string; why: string }[]): string[] =>
  uncounted.map(({ line, why }) => `${line}: ${why}`);

export const readText = (record: ReadRecord): string =>
  [
    record.title,
    `${record.yieldText ?? 'no yield stated'} (${record.markup}, ${record.file})`,
    ...list('Ingredients', record.ingredients),
    ...list('Method', numbered(record.steps)),
    ...list('Notes', record.notes),
  ].join('\n');

export function lineText(record: LineRecord): string {
  const { food, grams } = record;
  const weight = grams
    ? `${grams.best.toFixed(1)} g (${grams.low.toFixed(1)} to ${grams.high.toFixed(1)})`
    : 'not weighed';
  const first = `${record.line}\n  ${food ? food.name : 'no food found'}, ${weight}`;
  return [first, ...record.notes.map((note) => `  ${note}`)].join('\n');
}

export function tallyText(record: TallyRecord): string {
  const range = record.range.netCarbsG;
  return [
    `${record.title} (${record.file})`,
    ...list('Please answer first', record.questions),
    `One of ${record.servings} servings`,
    ...rows([record.perServing]),
    ...(range
      ? [`Net carbs lie between ${range[0]?.toFixed(1)} and ${range[1]?.toFixed(1)} g.`]
      : []),
    ...list('Not counted', uncountedWords(record.uncounted)),
    ...list('Notes', record.notes),
  ].join('\n');
}

type SwapRecord = AdaptRecord['swaps'][number];

/** 'add 3 g gum', 'left out: 5 g salt', 'less: 10 g salt -> 9 g', '500 g flour -> 80 g flour + 420 g blend'. */
export function changeText({ from, to, keptGrams }: SwapRecord): string {
  const came = to.map(({ food, grams }) => `${asScalesRead(grams)} g ${food}`);
  if (from === null) return `add ${came.join(' + ')}`;
  const original = `${asScalesRead(from.grams)} g ${from.food}`;
  const stays = keptGrams !== null && keptGrams > 0;
  if (came.length === 0)
    return stays ? `less: ${original} -> ${keptGrams} g` : `left out: ${original}`;
  return `${original} -> ${[...(stays ? [`${keptGrams} g ${from.food}`] : []), ...came].join(' + ')}`;
}

const swapText = (swap: SwapRecord): string => `${changeText(swap)}: ${swap.why}`;

export const adaptText = (record: AdaptRecord): string =>
  [
    `${record.title} (${record.file})`,
    ...list('Please answer first', record.questions),
    `One of ${record.servings} servings. ${record.verdictText}`,
    `${''.padEnd(18)}${'before'.padStart(10)}${'after'.padStart(10)}`,
    ...rows([record.before, record.after]),
    ...list('Changes', record.swaps.map(swapText)),
    ...list('Ingredients', underHeadings(record)),
    ...list('Method', numbered(record.steps)),
    ...list('Limits and notes', record.limits),
    ...list('Not counted', uncountedWords(record.uncounted)),
    ...list('New allergens', record.allergensAdded),
    ...list(
      'Still contains what you avoid',
      record.stillContains.map(({ allergen }) => allergen),
    ),
    ...list('Please note', record.cautions),
  ].join('\n');
