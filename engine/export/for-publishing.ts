/** What of a reworked recipe may be put on a page of one's own: everything but the source's words. */
import type { Adaptation, PlannedItem } from '../model.ts';
import { plain, section } from './markdown.ts';
import { type ExportOptions, scaledAdaptation } from './scaled-adaptation.ts';
import { ESTIMATES, exportParts, piecesOf, servingsText } from './shared-parts.ts';

/** Why the method is not there, and where it is. */
const WHY_NO_METHOD =
  'The method is left out on purpose: amounts are facts, but how the author tells the steps is theirs. Read it there, and cook it with this list.';
const WHY_NO_METHOD_PASTED =
  'The method is left out on purpose: amounts are facts, but how an author tells the steps is theirs.';

/** Tenths below ten, as a kitchen scale shows them. */
const shown = (grams: number): string =>
  String(grams < 10 ? Math.round(grams * 10) / 10 : Math.round(grams));

function itemLine({ grams, foodName }: PlannedItem, factor: number): string {
  return `- ${shown(grams * factor)} g ${plain(foodName)}`;
}

/** The own list, part by part, in grams and in the food table's names; no line of the page is repeated. */
function ownList({ plan }: Adaptation, factor: number): string[] {
  const items = plan.items.filter(({ grams }) => grams > 0);
  if (plan.parts.length < 2) return items.map((item) => itemLine(item, factor));
  return plan.parts.flatMap(({ keys }, at) => {
    const own = items.filter(({ key, part }) => keys.includes(key) || part === at);
    if (own.length === 0) return [];
    return [`Part ${at + 1}:`, '', ...own.map((item) => itemLine(item, factor)), ''];
  });
}

/** Page addresses go in as links only when they are web addresses. */
const linkOf = (url: string | null): string | null =>
  url !== null && /^https?:\/\/[^\s<>]+$/i.test(url) ? url : null;

/** Own words of a version, as the cook wrote them. */
const notesOf = (note: string): string[] =>
  note
    .split('\n')
    .map((line) => plain(line))
    .filter((line) => line !== '')
    .flatMap((line) => [line, '']);

/**
 * The reworked recipe as Markdown for publishing: the own list in grams, the figures, the cook's own notes,
 * credit and link; without a line or step as the source words it, and with a sentence why.
 */
export function toPublishing(
  adaptation: Adaptation,
  { note, ...options }: ExportOptions & { note: string },
): string {
  const { factor = 1 } = options;
  const scaled = scaledAdaptation(adaptation, { factor });
  const parts = exportParts(scaled);
  const link = linkOf(parts.url);
  const uncounted = parts.uncounted.length;
  const { before, after } = scaled;
  const lines = [
    `# ${plain(parts.title)}`,
    '',
    `${plain(parts.credit)}.`,
    '',
    `${servingsText(parts.servings)}.`,
    '',
    ...section('What goes in', [
      ...ownList(adaptation, factor),
      ...(uncounted === 0 ? [] : ['', `${uncounted} more as the original says, not counted.`]),
    ]),
    ...section('A serving', [
      `| | Original, 1 of ${piecesOf(before.servings)} | Here, 1 of ${piecesOf(after.servings)} |`,
      '| --- | ---: | ---: |',
      ...parts.nutrients.map(
        ({ name, beforeText, afterText }) =>
          `| ${name} | ${plain(beforeText)} | ${plain(afterText)} |`,
      ),
      '',
      plain(parts.rule),
      '',
      `**${ESTIMATES}**`,
    ]),
    ...section('My notes', notesOf(note)),
    ...section('Method', [
      link === null ? WHY_NO_METHOD_PASTED : WHY_NO_METHOD,
      ...(link === null ? [] : ['', `<${link}>`]),
    ]),
    ...section(
      'Take note',
      [...parts.allergens, ...parts.cautions].map((text) => `- ${plain(text)}`),
    ),
  ];
  return `${lines
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trimEnd()}\n`;
}
