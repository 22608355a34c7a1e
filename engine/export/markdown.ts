/** Markdown, for notes and recipe keepers that read it. */
import type { Adaptation } from '../model.ts';
import type { ExportOptions } from './scaled-adaptation.ts';
import { ESTIMATES, type ExportParts, exportParts, seen, servingsText } from './shared-parts.ts';

/** Page text must not turn into markup: neither marks nor what starts a list, a rule or a number. */
export const plain = (text: string): string =>
  seen(text.replace(/\s+/g, ' '))
    .trim()
    .replace(/[\\`*_[\]<>|#~&]/g, (mark) => `\\${mark}`)
    .replace(/^([-+=])/, '\\$1')
    .replace(/^(\d+)([.)])(?=\s)/, '$1\\$2');

export const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [`## ${title}`, '', ...lines, ''];

const list = (texts: readonly string[]): string[] => texts.map((text) => `- ${plain(text)}`);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function nutrientTable({ nutrients, heads, rule, lowerBounds }: ExportParts): string[] {
  return [
    `| Per serving | ${capital(heads.before)} | ${capital(heads.after)} |`,
    '| --- | ---: | ---: |',
    ...nutrients.map(
      ({ name, beforeText, afterText }) =>
        `| ${name} | ${plain(beforeText)} | ${plain(afterText)} |`,
    ),
    '',
    `${plain(rule)}${lowerBounds.length > 0 ? ` At least, since a food lacks the figure: ${lowerBounds.join(', ')}.` : ''}`,
    '',
    `**${ESTIMATES}**`,
  ];
}

function ingredientList({ groups }: ExportParts): string[] {
  return groups.flatMap(({ title, rows }, at) => [
    ...(at > 0 ? [''] : []),
    ...(title === null ? [] : [`### ${plain(title)}`, '']),
    ...list(rows),
  ]);
}

function stepList({ steps }: ExportParts): string[] {
  let number = 0;
  return steps.flatMap(({ title, rows }, at) => [
    ...(at > 0 ? [''] : []),
    ...(title === null ? [] : [`### ${plain(title)}`, '']),
    ...rows.map(({ after, change, why }) => {
      number += 1;
      const mark =
        change === 'kept'
          ? ''
          : ` *(${change === 'inserted' ? 'new' : 'changed'}${why === null ? '' : `: ${plain(why)}`})*`;
      return `${number}. ${plain(after)}${mark}`;
    }),
  ]);
}

/** The reworked recipe as Markdown, with figures before and after, ranges and what is uncounted. */
export function toMarkdown(adaptation: Adaptation, options: ExportOptions = {}): string {
  const parts = exportParts(adaptation, options);
  const lines = [
    `# ${plain(parts.title)}`,
    '',
    `${plain(parts.credit)}. ${servingsText(parts.servings)}.`,
    '',
    ...section('A serving', [plain(parts.verdict), '', ...nutrientTable(parts)]),
    ...section('Not counted', list(parts.uncounted.map(({ text, why }) => `${text} (${why})`))),
    ...section('Ingredients', ingredientList(parts)),
    ...section('Method', stepList(parts)),
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
  return `${lines.join('\n').trimEnd()}\n`;
}
