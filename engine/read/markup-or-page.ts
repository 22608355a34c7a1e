/** Decides, field by field, whether the visible page should stand in for the markup. */
import type { IngredientGroup, Step } from '../model.ts';
import { textKey } from './document/clean-text.ts';
import { linesIn } from './draft.ts';
import { hasAmount } from './markup/ingredient-values.ts';
import { foodWords, looksLikeIngredient } from './visible/line-shapes.ts';

/** Words and figures of a line, in order. */
function tokens(line: string): string[] {
  return (
    line
      .normalize('NFKC')
      .toLowerCase()
      .match(/\p{L}+|\d+(?:[.,/]\d+)?/gu) ?? []
  );
}

/** True when all of `part` stands in `whole` in the same order. */
function holds(whole: readonly string[], part: readonly string[]): boolean {
  let at = 0;
  for (const token of whole) if (token === part[at]) at += 1;
  return at === part.length;
}

/** True when the page shows every marked-up line and, among them, more lines of other foods. */
function leavesOut(own: readonly string[], shown: readonly string[]): boolean {
  if (own.length < 3 || shown.length > own.length * 2) return false;
  const keys = new Set(own.map(textKey));
  const foods = new Set(own.map(foodWords));
  const extra = shown.filter((line) => !keys.has(textKey(line)));
  return (
    shown.length - extra.length >= own.length &&
    extra.every((line) => looksLikeIngredient(line) && !foods.has(foodWords(line)))
  );
}

/**
 * Whether the page's list should stand in for the marked-up one: that one is empty, a glued text or a
 * summary, has no amounts where the page has them, or is the page's list with words cut off.
 */
export function pageListIsFuller(
  marked: { groups: readonly IngredientGroup[]; glued: boolean },
  page: { groups: readonly IngredientGroup[]; headed: boolean },
): string | null {
  const own = linesIn(marked);
  const shown = linesIn(page);
  if (shown.length === 0) return null;
  if (own.length === 0) return 'the markup lists none';
  if (marked.glued && shown.length > 1) return 'the markup runs them together';
  if (!own.some(hasAmount) && shown.length >= own.length && shown.some(hasAmount))
    return 'the markup leaves the amounts out';
  // Finer differences count only under a heading that says these are the ingredients.
  if (!page.headed) return null;
  if (own.length < shown.length && leavesOut(own, shown)) return 'the markup lists fewer';
  if (own.length !== shown.length) return null;
  const same = own.every((line, i) => holds(tokens(shown[i] ?? ''), tokens(line)));
  const length = (lines: readonly string[]) =>
    lines.reduce((sum, line) => sum + textKey(line).length, 0);
  if (same && length(shown) > length(own) && length(shown) < length(own) * 2)
    return 'the markup cuts the lines short';
  return null;
}

/** Lines whose figures differ between markup and page though their words agree. */
export function differingAmounts(
  marked: readonly IngredientGroup[],
  page: readonly IngredientGroup[],
): { marked: string; page: string }[] {
  const own = linesIn({ groups: marked });
  const shown = linesIn({ groups: page });
  if (own.length !== shown.length) return [];
  const words = (line: string) =>
    tokens(line)
      .filter((token) => !/^\d/.test(token))
      .join(' ');
  const figures = (line: string) =>
    tokens(line)
      .filter((token) => /^\d/.test(token))
      .join(' ');
  const out: { marked: string; page: string }[] = [];
  own.forEach((line, i) => {
    const other = shown[i] ?? '';
    if (words(line) === words(other) && figures(line) !== figures(other) && figures(line) !== '')
      out.push({ marked: line, page: other });
  });
  return out;
}

function joined(steps: readonly Step[]): string {
  return textKey(steps.map((step) => step.text).join(' '));
}

/**
 * Whether the page's method should stand in for the marked-up one: that one is empty, one long text
 * that the page shows in steps, or an article several times the length of the page's own list.
 */
export function pageStepsAreBetter(marked: readonly Step[], page: readonly Step[]): string | null {
  if (page.length === 0) return null;
  if (marked.length === 0) return 'the markup gives none';
  const own = joined(marked);
  const shown = joined(page);
  if (
    marked.length === 1 &&
    page.length > 1 &&
    own.length < shown.length * 1.3 &&
    shown.length < own.length * 1.3
  )
    return 'the markup gives one text';
  if (page.length >= 3 && own.length > shown.length * 3 && shown.length > 150)
    return 'the markup gives an article';
  return null;
}
