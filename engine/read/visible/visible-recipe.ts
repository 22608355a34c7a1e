/** Finds the recipe in the visible lines of a page. */
import type { IngredientGroup, Step } from '../../model.ts';
import type { Block } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import {
  type Draft,
  emptyDraft,
  linesIn,
  noTimes,
  type Times,
  type YieldStatement,
} from '../draft.ts';
import { hasAmount, tidyLine } from '../markup/ingredient-values.ts';
import { ingredientsHeading, isNeedsHeading } from './heading-kinds.ts';
import { foodWords, isMeasured, looksLikeIngredient } from './line-shapes.ts';
import { readHeadedList } from './lists/headed-list.ts';
import { linesBeside } from './lists/lines-beside.ts';
import { findNamedList } from './lists/named-list.ts';
import { findUnnamedList } from './lists/unnamed-list.ts';
import { findSteps } from './visible-steps.ts';
import { timesNear } from './visible-times.ts';
import { yieldsNear } from './visible-yields.ts';

/** Ingredients and steps found in the visible page, with where the ingredients stand. */
export type PageRecipe = {
  groups: IngredientGroup[];
  steps: Step[];
  /** The steps are entries of lists or have numbers beside them. */
  listed: boolean;
  yields: YieldStatement[];
  times: Times;
  /** The ingredients stand under a heading that says so, or in elements named after them. */
  headed: boolean;
  /** That heading may as well list tools ('What you need'). */
  needs: boolean;
};

type Candidate = { at: number; groups: IngredientGroup[]; end: number; score: number };

function score(groups: readonly IngredientGroup[], block: Block, fit: number): number {
  const lines = linesIn({ groups });
  const measured = lines.filter(hasAmount).length;
  const value = measured + 0.4 * (lines.length - measured) + 0.5 * fit;
  return lines.length < 2 ? value * 0.1 : block.aside ? value * 0.3 : value;
}

/** The ingredient list under the best heading; of near equals the first (copies, other sizes). */
function underHeading(blocks: readonly Block[]): Candidate | null {
  const candidates: Candidate[] = [];
  for (let at = 0; at < blocks.length && candidates.length < 40; at += 1) {
    const block = blocks[at] as Block;
    const fit = ingredientsHeading(block);
    // 'Ingredients 12' in a link is a fact of the recipe.
    if (fit === 0 || (block.link && fit < 3)) continue;
    const { groups, end } = readHeadedList(blocks, at);
    if (groups.length > 0) candidates.push({ at, groups, end, score: score(groups, block, fit) });
  }
  const best = Math.max(0, ...candidates.map((one) => one.score));
  return candidates.find((one) => one.score >= best * 0.7 && one.score > 1) ?? null;
}

/** Groups with lines that go on after their last one, without its title. */
function withMore(groups: readonly IngredientGroup[], more: readonly string[]): IngredientGroup[] {
  const last = groups.at(-1);
  if (more.length === 0 || last?.title !== null) return [...groups, ...asGroup(more)];
  return [...groups.slice(0, -1), ...asGroup([...last.lines, ...more])];
}

const asGroup = (lines: readonly string[]): IngredientGroup[] =>
  lines.length > 0 ? [{ title: null, lines: [...lines] }] : [];

/**
 * Finds a recipe in the page's visible lines: the list under an ingredient heading, else the longest
 * run of lines with amounts; then the method under its heading, else what follows the list. Null
 * when what is found is too thin to be a recipe.
 */
export function findInPage(blocks: readonly Block[]): PageRecipe | null {
  const headed = underHeading(blocks);
  const named = headed ?? findNamedList(blocks);
  const found = named ?? findUnnamedList(blocks);
  if (!found) {
    const { steps, listed } = findSteps(blocks, null);
    const nothing = { groups: [], yields: [], times: noTimes(), headed: false, needs: false };
    return steps.length > 1 ? { ...nothing, steps, listed } : null;
  }
  const beside = linesBeside(blocks, found.at, found.end);
  const groups = withMore(
    found.groups,
    beside.map((at) => tidyLine(blocks[at]?.text ?? '')),
  );
  const lines = linesIn({ groups });
  const { steps, listed } = findSteps(blocks, {
    from: found.at,
    end: found.end,
    lines: new Set(lines.map(textKey)),
    foods: lines.map((line) => textKey(foodWords(line))).filter((food) => food !== ''),
    beside: new Set(beside),
  });
  return {
    groups,
    steps,
    listed,
    yields: yieldsNear(blocks, found.at),
    times: timesNear(blocks, found.at),
    headed: named !== null,
    needs: headed !== null && isNeedsHeading(blocks[headed.at] as Block),
  };
}

/**
 * True when a page without any markup holds the figures of a recipe. Soap has ingredients and directions
 * too, a repair needs things, and tables give amounts: where no heading says so, the words decide as well.
 */
export function hasFigures(found: PageRecipe): boolean {
  const lines = linesIn(found);
  if (lines.length < 2) return false;
  const measured = lines.filter(isMeasured).length;
  const figures = lines.filter(looksLikeIngredient).length;
  if (!isUnsure(found)) return figures >= 2 || (figures > 0 && found.steps.length > 0);
  if (found.needs) return measured > 0;
  return measured >= 2 && figures >= 3 && measured >= lines.length * 0.3;
}

function isUnsure({ headed, needs }: PageRecipe): boolean {
  return !headed || needs;
}

/** What the visible page says, as a draft. */
export function draftOfPage(found: PageRecipe): Draft {
  const { groups, steps, yields, times } = found;
  return { ...emptyDraft('page-text'), groups, steps, yields, times, unsure: isUnsure(found) };
}
