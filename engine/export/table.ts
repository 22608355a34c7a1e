/** Comma-separated values after RFC 4180. */
import type { Adaptation, Interval } from '../model.ts';
import { type ExportOptions, scaledAdaptation } from './scaled-adaptation.ts';
import { ESTIMATES, exportParts, ruleText, seen, unrun } from './shared-parts.ts';

export type Cell = string | number | null;

/** Columns of every row; `kind` is recipe, nutrient, ingredient, step, change, uncounted or note. */
export const CSV_COLUMNS = [
  'kind',
  'name',
  'before',
  'before_low',
  'before_high',
  'after',
  'after_low',
  'after_high',
  'unit',
  'note',
] as const;

function cell(value: Cell): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(Math.round(value * 1000) / 1000);
  const text = unrun(seen(value));
  // Some spreadsheets part cells at semicolons or tabs.
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows as text, each ended by CRLF. */
export const csvOf = (rows: readonly (readonly Cell[])[]): string =>
  `${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;

const bounds = (value: Interval | null): Cell[] =>
  value === null ? [null, null, null] : [value.best, value.low, value.high];

/** A row without figures: kind, name, before, after, note. */
const words = (
  kind: string,
  name: string,
  before: string | null,
  after: string | null,
  note: string | null,
): Cell[] => [kind, name, before, null, null, after, null, null, null, note];

/**
 * The adaptation as one table: figures per serving with bounds, ingredients and steps before and
 * after, uncounted lines and notes. Rows end in CRLF; an unknown figure is an empty cell.
 */
export function toCsv(whole: Adaptation, options: ExportOptions = {}): string {
  const adaptation = scaledAdaptation(whole, options);
  const parts = exportParts(adaptation);
  const samePiece = adaptation.before.servings === adaptation.after.servings;
  const rows: Cell[][] = [
    [...CSV_COLUMNS],
    words('recipe', parts.title, null, null, parts.credit),
    [
      'recipe',
      'servings',
      adaptation.before.servings,
      null,
      null,
      parts.servings,
      null,
      null,
      null,
      null,
    ],
    ...parts.nutrients.map(({ name, before, after, unit }): Cell[] => [
      'nutrient',
      name,
      ...bounds(before),
      ...bounds(after),
      `${unit} per serving`,
      samePiece ? null : `${parts.heads.before}; ${parts.heads.after}`,
    ]),
    ...adaptation.lines.map(({ key, before, after, change, why }) =>
      words('ingredient', `${key} ${change}`, before, after, why),
    ),
    ...adaptation.steps.map(({ before, after, change, why }, at) =>
      words('step', `${at + 1} ${change}`, before, after, why),
    ),
    ...parts.adjustments.map(({ text, why }) => words('change', text, null, null, why)),
    ...parts.uncounted.map(({ text, why }) => words('uncounted', text, null, null, why)),
    ...[
      parts.verdict,
      ESTIMATES,
      ruleText(adaptation.after.rule),
      ...parts.allergens,
      ...parts.cautions,
    ].map((text) => words('note', text, null, null, null)),
  ];
  return csvOf(rows);
}
