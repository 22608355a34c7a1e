/** Finishes what was read into a recipe, with notes on what is missing. */
import type { Note, Recipe } from '../model.ts';
import type { PageFacts } from './document/page-facts.ts';
import { type Draft, linesIn } from './draft.ts';
import { languageTag } from './values/language-tag.ts';
import { webAddress } from './values/web-address.ts';
import { readYield } from './values/yield.ts';

/** A note of the reader. */
export function readNote(code: string, text: string): Note {
  return { code, text, key: null };
}

const cutAt = (text: string | null, most: number) => (text === null ? null : text.slice(0, most));

/** Finishes a draft: yield, stated language, addresses, and what the page as a whole supplies. */
export function recipeOf(draft: Draft, facts: PageFacts, notes: readonly Note[]): Recipe {
  const lines = linesIn(draft);
  const all = [...notes];
  const title = draft.title ?? facts.title;
  if (title === null) all.push(readNote('no-title', 'The page gives the recipe no name.'));
  if (lines.length === 0) all.push(readNote('no-ingredients', 'No ingredients were found.'));
  if (draft.steps.length === 0) all.push(readNote('no-method', 'No method was found.'));
  const made = readYield(draft.yields);
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
    minutes: draft.minutes,
    image: webAddress(draft.image ?? facts.image, facts.url),
    statedNutrition: draft.nutrition,
    notes: all,
  };
}
