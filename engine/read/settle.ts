/** Lets the visible page settle what the markup of a recipe leaves out or damages. */
import type { Note } from '../model.ts';
import { type Draft, readNote } from './draft.ts';
import {
  amountsFirst,
  differingAmounts,
  pageListIsFuller,
  pageStepsAreBetter,
} from './markup-or-page.ts';
import { minutesOf } from './values/duration.ts';
import { readYield } from './values/yield.ts';
import type { PageRecipe } from './visible/visible-recipe.ts';

/** A draft and the notes on what the page settled. */
export type Settled = { draft: Draft; notes: Note[] };

/** Lines whose amounts differ that are told, at most. */
const MOST_DIFFERING = 10;

function fromPage(code: string, field: string, why: string | null): Note {
  return readNote(code, `Taken from the visible page: ${field}${why ? ` (${why})` : ''}.`);
}

function settleLines(draft: Draft, page: PageRecipe): Settled {
  const why = pageListIsFuller(draft, page);
  if (why) {
    const settled = { ...draft, groups: page.groups, glued: false };
    return { draft: settled, notes: [fromPage('ingredients-from-page', 'ingredients', why)] };
  }
  const turned = amountsFirst(draft.groups, page);
  if (turned) {
    const note = fromPage('ingredients-from-page', 'ingredients', 'the markup puts amounts last');
    return { draft: { ...draft, groups: turned }, notes: [note] };
  }
  const pairs = differingAmounts(draft.groups, page.groups).slice(0, MOST_DIFFERING);
  const notes = pairs.map(({ marked, page: shown }) =>
    readNote('amounts-differ', `Markup says ‘${marked}’, the page shows ‘${shown}’.`),
  );
  return { draft, notes };
}

function settleSteps(draft: Draft, page: PageRecipe): Settled {
  const why = pageStepsAreBetter(draft.steps, page);
  if (!why) return { draft, notes: [] };
  const settled = { ...draft, steps: page.steps };
  return { draft: settled, notes: [fromPage('method-from-page', 'method', why)] };
}

function settleYield(draft: Draft, page: PageRecipe): Settled {
  const yields = page.yields.filter(({ text }) => {
    const { servings, pieces } = readYield([text]);
    return servings !== null || pieces !== null;
  });
  if (draft.yields.length > 0)
    return { draft: { ...draft, otherYields: [...draft.otherYields, ...yields] }, notes: [] };
  if (yields.length === 0) return { draft, notes: [] };
  return { draft: { ...draft, yields }, notes: [fromPage('yield-from-page', 'yield', null)] };
}

function settleTimes(draft: Draft, { times }: PageRecipe): Settled {
  const { prep, cook, total } = minutesOf(draft.times);
  const none = prep === null && cook === null && total === null;
  return { draft: none ? { ...draft, times } : draft, notes: [] };
}

/** The draft, settled field by field; each choice that changes it is told in a note. */
export function settleWithPage(draft: Draft, page: PageRecipe): Settled {
  let settled = draft;
  const notes: Note[] = [];
  for (const settle of [settleLines, settleSteps, settleYield, settleTimes]) {
    const one = settle(settled, page);
    settled = one.draft;
    notes.push(...one.notes);
  }
  return { draft: settled, notes };
}
