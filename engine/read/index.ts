/**
 * Reads recipes from a page or from pasted text. Sources in order: JSON-LD, microdata, RDFa, h-recipe,
 * the visible page; each field a source lacks is taken from the next. Nothing here changes the page,
 * and nothing throws.
 */
import type { ReadResult } from '../model.ts';
import { finishReading } from './finish.ts';
import { gatherPage } from './gather.ts';
import { readPasted } from './pasted/pasted-text.ts';
import { withLanguage } from './values/language.ts';

export { mayHoldRecipe } from './document/recipe-signs.ts';
export { finishReading } from './finish.ts';
export type { Gathered, NothingFound } from './gather.ts';

/**
 * Reads every recipe of a page, the one the page is about first.
 * @param document the page; only read, never changed
 * @param options.url address of the page, used when it names no canonical one
 * @param options.elapsedMs milliseconds since reading began; when given, reading ends after 400
 * @returns the recipes, or `ok: false` with what the user can do
 */
export function readPage(
  document: Document,
  options: { url?: string; elapsedMs?: () => number } = {},
): ReadResult {
  return finishReading(gatherPage(document, options));
}

/**
 * Reads a recipe from plain text: a paste or a selection.
 * @param options.url address it was taken from, for credit
 * @param options.language BCP 47 tag, when known
 * @param options.title the page's title, used when the text has none
 */
export function readText(
  text: string,
  options: { url?: string; language?: string; title?: string } = {},
): ReadResult {
  try {
    const { url = null, language = null, title = null } = options;
    const recipe = readPasted(text, { url, language, title: title || null });
    if (recipe) return { ok: true, recipes: [withLanguage(recipe)] };
  } catch {
    // Falls through: unreadable text is no recipe.
  }
  return {
    ok: false,
    why: 'No ingredients found in this text. Paste one ingredient a line, then the method.',
  };
}
