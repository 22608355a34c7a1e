/** Parts a page without markup that holds several recipes. */
import type { Block } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import { type Draft, linesIn } from '../draft.ts';
import { groupTitle } from '../markup/ingredient-values.ts';
import { ingredientsHeading, isStop, stepsHeading } from './heading-kinds.ts';
import { MAX_HEADING } from './heading-phrases.ts';
import { looksLikeIngredient, startsWithFigure } from './line-shapes.ts';
import { draftOfPage, findInPage, hasFigures, type PageRecipe } from './visible-recipe.ts';

/** Blocks between a recipe's title and its first ingredient, at most. */
const REACH = 25;
/** Recipes of one page that are listed, at most. */
const MOST = 20;
/** A recipe among others has lines and steps of its own, and is not shown a second time. */
const FEWEST_LINES = 3;
const SAME_LINES = 0.5;

/** A short line that may name a dish: a heading, or a bold line, that no part of a recipe bears. */
function mayTitle(block: Block): boolean {
  if (block.aside || block.list >= 0 || block.text.length > MAX_HEADING) return false;
  if (block.level === 0 && !block.bold) return false;
  if (/^(?:for|für|voor|pour|para|per|til|till|för)\b|:$|^\d+\s*[.:)]?\s*$/i.test(block.text))
    return false;
  return !(
    ingredientsHeading(block) > 0 ||
    stepsHeading(block) > 0 ||
    isStop(block) ||
    startsWithFigure(block.text)
  );
}

/** Blocks at which an ingredient list begins: below its heading, or at its first line with an amount. */
function listStarts(blocks: readonly Block[]): number[] {
  const headed = blocks.flatMap((block, i) =>
    !block.aside && ingredientsHeading(block) >= 2 && !block.link ? [i] : [],
  );
  if (headed.length > 0) return headed;
  const isLine = (block: Block | undefined) =>
    block !== undefined && !block.aside && block.level === 0 && looksLikeIngredient(block.text);
  return blocks.flatMap((block, i) =>
    isLine(block) && !isLine(blocks[i - 1]) && isLine(blocks[i + 1]) && isLine(blocks[i + 2])
      ? [i]
      : [],
  );
}

/** Where the title of the recipe stands whose list starts at a block; -1 when none is near. */
function titleAbove(blocks: readonly Block[], start: number, after: number): number {
  for (let i = start - 1; i > after && i >= start - REACH; i -= 1)
    if (mayTitle(blocks[i] as Block)) return i;
  return -1;
}

/**
 * The drafts of a page without markup: what was found in all of it, or each of several recipes that
 * stand under titles of their own.
 */
export function pageDrafts(blocks: readonly Block[], whole: PageRecipe | null): Draft[] {
  if (!whole || !hasFigures(whole)) return [];
  const several = separateDrafts(blocks);
  return several.length > 1 ? several : [draftOfPage(whole)];
}

function separateDrafts(blocks: readonly Block[]): Draft[] {
  const starts = listStarts(blocks).slice(0, MOST * 2);
  if (starts.length < 2) return [];
  const titles: number[] = [];
  starts.forEach((start, i) => {
    const title = titleAbove(blocks, start, i === 0 ? -1 : (starts[i - 1] as number));
    if (title >= 0 && title !== titles.at(-1)) titles.push(title);
  });
  const drafts: Draft[] = [];
  titles.slice(0, MOST).forEach((from, i) => {
    const part = blocks.slice(from, titles[i + 1]);
    const found = findInPage(part.slice(1));
    if (!found || !hasFigures(found) || found.steps.length === 0) return;
    if (linesIn(found).length < FEWEST_LINES) return;
    if (drafts.some((draft) => isSame(draft, found))) return;
    drafts.push({ ...draftOfPage(found), title: groupTitle((part[0] as Block).text) });
  });
  return drafts;
}

/** True when two lists share most lines: a print copy, or other measures. */
function isSame(a: Pick<Draft, 'groups'>, b: Pick<Draft, 'groups'>): boolean {
  const one = new Set(linesIn(a).map(textKey));
  const two = linesIn(b).map(textKey);
  const shared = two.filter((key) => one.has(key)).length;
  return shared >= Math.min(one.size, two.length) * SAME_LINES;
}
