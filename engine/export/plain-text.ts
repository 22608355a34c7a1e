/** Plain text, for printing and messages. */
import type { Adaptation } from '../model.ts';
import type { ExportOptions } from './scaled-adaptation.ts';
import {
  ESTIMATES,
  type ExportParts,
  exportParts,
  seen,
  servingsText,
  unrun,
} from './shared-parts.ts';

const oneLine = (text: string): string => seen(text.replace(/\s+/g, ' ')).trim();

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [title.toUpperCase(), ...lines, ''];

const list = (texts: readonly string[]): string[] => texts.map((text) => `• ${oneLine(text)}`);

function nutrientLines({ nutrients, heads, rule, lowerBounds }: ExportParts): string[] {
  const width = Math.max(...nutrients.map(({ name }) => name.length)) + 2;
  const column =
    Math.max(...nutrients.map(({ beforeText }) => beforeText.length), heads.before.length) + 2;
  return [
    `${''.padEnd(width)}${heads.before.padEnd(column)}${heads.after}`,
    ...nutrients.map(
      ({ name, beforeText, afterText }) =>
        `${name.padEnd(width)}${beforeText.padEnd(column)}${afterText}`,
    ),
    oneLine(rule),
    ...(lowerBounds.length > 0
      ? [`At least, since a food lacks the figure: ${lowerBounds.join(', ')}.`]
      : []),
    ESTIMATES,
  ];
}

const titled = <Row>(
  title: string | null,
  rows: readonly Row[],
  show: (row: Row) => string,
): string[] => [...(title === null ? [] : [`${oneLine(title)}:`]), ...rows.map(show)];

function stepLines({ steps }: ExportParts): string[] {
  let number = 0;
  return steps.flatMap(({ title, rows }) =>
    titled(title, rows, ({ after, change, why }) => {
      number += 1;
      const mark =
        change === 'kept'
          ? ''
          : ` [${change === 'inserted' ? 'new' : 'changed'}${why === null ? '' : `: ${why}`}]`;
      return `${number}. ${oneLine(after)}${oneLine(mark) === '' ? '' : ` ${oneLine(mark)}`}`;
    }),
  );
}

/** The reworked recipe as plain text, with figures before and after, ranges and what is uncounted. */
export function toText(adaptation: Adaptation, options: ExportOptions = {}): string {
  const parts = exportParts(adaptation, options);
  const lines = [
    oneLine(parts.title),
    `${oneLine(parts.credit)}`,
    servingsText(parts.servings),
    '',
    ...section('A serving', [oneLine(parts.verdict), ...nutrientLines(parts)]),
    ...section('Not counted', list(parts.uncounted.map(({ text, why }) => `${text} (${why})`))),
    ...section(
      'Ingredients',
      parts.groups.flatMap(({ title, rows }) => titled(title, rows, (row) => `• ${oneLine(row)}`)),
    ),
    ...section('Method', stepLines(parts)),
    ...section(
      'What changed',
      list(parts.changes.map(({ from, to, why }) => `${from}: ${to}. ${why}`)),
    ),
    ...section(
      'Changed after a bake',
      list(parts.adjustments.map(({ text, why }) => `${text} ${why}`)),
    ),
    ...section('Take note', list([...parts.allergens, ...parts.cautions])),
  ];
  return `${lines.map(unrun).join('\n').trimEnd()}\n`;
}
