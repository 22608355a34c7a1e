import type { Note, Recipe } from '../model.ts';
import { type Draft, linesIn } from './draft.ts';
import { languageTag } from './values/language-tag.ts';
import { readYield } from './values/yield.ts';

/** What is known of the page as a whole. */
export type Frame = {
  url: string | null;
  language: string | null;
  title: string | null;
  author: string | null;
  image: string | null;
};

/** An absolute http(s) address, or null. */
export function webAddress(value: string | null, base: string | null): string | null {
  if (value === null || value.trim() === '' || value.length > 4_000) return null;
  try {
    const url = base ? new URL(value.trim(), base) : new URL(value.trim());
    return url.protocol === 'http:' || url.protocol === 'https:' ? url.href : null;
  } catch {
    return null;
  }
}

/** A note of the reader. */
export function readNote(code: string, text: string): Note {
  return { code, text, key: null };
}

const short = (text: string | null, most: number) => (text === null ? null : text.slice(0, most));

/** Finishes a draft: yield, stated language, addresses, and what the page as a whole supplies. */
export function recipeOf(draft: Draft, frame: Frame, notes: readonly Note[]): Recipe {
  const lines = linesIn(draft);
  const all = [...notes];
  const title = draft.title ?? frame.title;
  if (title === null) all.push(readNote('no-title', 'The page gives the recipe no name.'));
  if (lines.length === 0) all.push(readNote('no-ingredients', 'No ingredients were found.'));
  if (draft.steps.length === 0) all.push(readNote('no-method', 'No method was found.'));
  const made = readYield(draft.yields);
  if (made.text === null)
    all.push(readNote('no-yield', 'The page does not say how much it makes.'));
  return {
    title: (title ?? 'Recipe without a name').slice(0, 300),
    url: frame.url,
    language: languageTag(draft.language ?? frame.language),
    author: short(draft.author ?? frame.author, 200),
    markup: draft.markup,
    yield: made,
    groups: draft.groups,
    steps: draft.steps,
    minutes: draft.minutes,
    image: webAddress(draft.image ?? frame.image, frame.url),
    statedNutrition: draft.nutrition,
    notes: all,
  };
}
