/** Reads a page without the words of all languages, for the script that runs in pages and has to stay small. */
import type { ReadResult } from '../model.ts';
import { readDocument } from './read-page.ts';

const NOT_FOUND =
  'No recipe found on this page. Select the recipe’s text and read the selection, or paste it.';

/** Milliseconds after which reading stops and returns what it has, when a clock is given. */
const TIME_BOX = 400;

/** As `readPage`, but each recipe's language is what the page states, which `withLanguage` sets right. */
export function readAsStated(
  document: Document,
  options: { url?: string; elapsedMs?: () => number } = {},
): ReadResult {
  const { elapsedMs } = options;
  const spent = elapsedMs ? (share = 1) => elapsedMs() > TIME_BOX * share : () => false;
  try {
    const recipes = readDocument(document, options.url ?? null, spent);
    return recipes.length > 0 ? { ok: true, recipes } : { ok: false, why: NOT_FOUND };
  } catch {
    return { ok: false, why: NOT_FOUND };
  }
}
