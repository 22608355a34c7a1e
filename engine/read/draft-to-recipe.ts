/** Finishes what was read into a recipe, with notes on what is missing. */
import type { Note, Recipe } from '../model.ts';
import type { PageFacts } from './document/page-facts.ts';
import { type Draft, linesIn, readNote, type YieldStatement } from './draft.ts';
import { MAX_LINES as MOST_MARKED_LINES } from './markup/ingredient-values.ts';
import { MAX_STEPS as MOST_MARKED_STEPS } from './markup/instruction-values.ts';
import { minutesOf } from './values/duration.ts';
import { languageTag } from './values/language-tag.ts';
import { statedServings } from './values/stated-servings.ts';
import { chooseYield } from './values/stated-yields.ts';
import { webAddress } from './values/web-address.ts';
import { MAX_LINES as MOST_SHOWN_LINES } from './visible/lists/group-builder.ts';
import { MAX_STEPS as MOST_SHOWN_STEPS } from './visible/visible-steps.ts';

const cutAt = (text: string | null, most: number) => (text === null ? null : text.slice(0, most));

/** Servings that the nutrition panel's serving size tells: '1/8 of the cake', 'serves 8'. */
function panelYields({ nutrition }: Draft): YieldStatement[] {
  const size = nutrition?.servingSize ?? '';
  const share = /(?:^|\D)1\/(\d{1,2})(?!\d)/.exec(size)?.[1];
  if (share !== undefined) return [{ text: `${share} servings`, from: 'nutrition' }];
  return (statedServings(size)?.low ?? 1) > 1 ? [{ text: size, from: 'nutrition' }] : [];
}

/** Says where a list was as long as any that is read: what came after it is not in the recipe. */
function cutNotes({ markup, groups, steps }: Draft): Note[] {
  const shown = markup === 'page-text' || markup === 'pasted';
  const mostLines = shown ? MOST_SHOWN_LINES : MOST_MARKED_LINES;
  const mostSteps = shown ? MOST_SHOWN_STEPS : MOST_MARKED_STEPS;
  const notes: Note[] = [];
  if (linesIn({ groups }).length >= mostLines) {
    const text = `Only the first ${mostLines} ingredient lines were read; the figures leave out any after them.`;
    notes.push(readNote('lines-cut', text));
  }
  if (steps.length >= mostSteps)
    notes.push(readNote('steps-cut', `Only the first ${mostSteps} steps were read.`));
  return notes;
}

/** Finishes a draft: yield, stated language, addresses, and what the page as a whole supplies. */
export function recipeOf(draft: Draft, facts: PageFacts, notes: readonly Note[]): Recipe {
  const lines = linesIn(draft);
  const all = [...notes, ...cutNotes(draft)];
  const title = draft.title ?? facts.title;
  if (title === null) all.push(readNote('no-title', 'The page gives the recipe no name.'));
  if (lines.length === 0) all.push(readNote('no-ingredients', 'No ingredients were found.'));
  if (draft.steps.length === 0) all.push(readNote('no-method', 'No method was found.'));
  const made = chooseYield(draft.yields, [...draft.otherYields, ...panelYields(draft)]);
  if (made.text === null)
    all.push(readNote('no-yield', 'The page does not say how much it makes.'));
  return {
    title: (title ?? 'Recipe without a name').slice(0, 300),
    url: facts.url,
    language: languageTag(draft.language ?? facts.language),
    author: cutAt(draft.author ?? facts.author, 200),
    markup: draft.markup,
    yield: made,
    groups: draft.groups,
    steps: draft.steps,
    minutes: minutesOf(draft.times),
    image: webAddress(draft.image ?? facts.image, facts.url),
    statedNutrition: draft.nutrition,
    notes: all,
  };
}
