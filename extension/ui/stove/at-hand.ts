/** The ingredients that one step takes, as rows to tick. */
import type { RewrittenStep } from '../../../engine/model.ts';
import type { IngredientRow } from '../recipe/lines/ingredient-rows.ts';

/** Words of a name that do not tell it from others. */
const SHORTEST_WORD = 3;

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .match(/\p{L}+/gu)
    ?.filter((word) => word.length >= SHORTEST_WORD) ?? [];

/** 'flours' and 'flour' are one word. */
const stem = (word: string): string =>
  word.length > 4 ? word.replace(/(?:es|s|n|en)$/, '') : word;

/** The noun of a name: its last word before a comma. */
const nounOf = (name: string): string | undefined => wordsOf(name.split(',')[0] ?? '').at(-1);

/** Nouns that say nothing alone: 'blend' may be of flours or of sweeteners. */
const VAGUE = new Set(['blend', 'mix', 'mixture', 'powder', 'mischung', 'pulver'].map(stem));

function isNamed(row: IngredientRow, words: ReadonlySet<string>): boolean {
  const name = row.now?.name ?? '';
  const noun = nounOf(name);
  if (noun === undefined || !words.has(stem(noun))) return false;
  if (!VAGUE.has(stem(noun))) return true;
  const others = wordsOf(name.split(',')[0] ?? '').slice(0, -1);
  return others.length === 0 || others.some((word) => words.has(stem(word)));
}

/** 'filling' in the list is 'fill' over the steps: words are one that begin alike. Own choice of length. */
const BEGINS_ALIKE = 4;

/** Whether a part of the list and a part of the method have the same name. */
function samePart(group: string | null, section: string | null): boolean {
  const begins = (text: string | null) =>
    wordsOf(text ?? '')
      .filter((word) => word.length >= BEGINS_ALIKE)
      .map((word) => word.slice(0, BEGINS_ALIKE));
  const wanted = begins(section);
  return begins(group).some((one) => wanted.includes(one));
}

/** A step of one part says 'the sugar' of its own: the sugars of other parts stay away. */
function ofItsPart(rows: readonly IngredientRow[], section: string | null): IngredientRow[] {
  const nouns = new Set(
    rows.flatMap(({ line, now }) =>
      samePart(line.group, section) ? (nounOf(now?.name ?? '') ?? []) : [],
    ),
  );
  return rows.filter(
    ({ line, now }) => samePart(line.group, section) || !nouns.has(nounOf(now?.name ?? '') ?? ''),
  );
}

/** Rows the step names, in the order of the list; what is left out of the recipe never comes. */
export function atHand(rows: readonly IngredientRow[], step: RewrittenStep): IngredientRow[] {
  const words = new Set(wordsOf(step.after).map(stem));
  const named = rows.filter((row) => !row.heading && row.now !== null && isNamed(row, words));
  return ofItsPart(named, step.section);
}
