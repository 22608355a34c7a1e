/** Finds the longest run of lines with amounts, for pages that name their ingredients nowhere. */
import { type Block, isMadeLike, spots } from '../../document/block.ts';
import { statedServings } from '../../values/stated-servings.ts';
import { ingredientsHeading, isStop, stepsHeading } from '../heading-kinds.ts';
import { isMeasured, isSentence, looksLikeIngredient } from '../line-shapes.ts';
import { type FoundList, GroupBuilder } from './group-builder.ts';
import { GROUP_WORDS, mayHeadGroup } from './group-titles.ts';
import { withoutCopies } from './repeated-lines.ts';

/** Lines without amounts that a run may hold in a row, where they are like the line before, or not. */
const MAX_GAP = 2.5;
const LIKE = 0.5;
/** Longest line of a run with an amount, without one, and of an entry added at its ends (characters). */
const MAX_MEASURED = 160;
const MAX_BARE = 80;
const MAX_ADDED = 100;
/** Words of a sentence that begins with a figure and is no line. */
const STEP_WORDS = 8;
/** Fewest lines with amounts in a run. */
const FEWEST = 2;

/** A run of lines: its first and last block with an amount, and how many have one. */
type Run = { from: number; to: number; count: number };

/** How far a line without an amount leads away from a run: not at all in the list it goes on. */
function gapAt(block: Block, before: Block | undefined): number {
  if (!before) return 1;
  if (block.list >= 0 && block.list === before.list) return 0;
  return isMadeLike(block, before) || mayHeadGroup(block) ? LIKE : 1;
}

function mayStandInRun(block: Block): boolean {
  return !block.aside && block.text.length <= MAX_MEASURED && !isStop(block);
}

/** '2 Boil the lentils in plenty of water until they are soft.' */
function isNumberedStep(text: string): boolean {
  return isSentence(text) && text.split(' ').length > STEP_WORDS && !isMeasured(text);
}

function isMeasuredLine(block: Block): boolean {
  if (block.link || block.level > 0 || /[:：]$/.test(block.text)) return false;
  if (!looksLikeIngredient(block.text) || isNumberedStep(block.text)) return false;
  return statedServings(block.text) === null;
}

function isBareLine(block: Block): boolean {
  return block.text.length <= MAX_BARE && !isSentence(block.text) && stepsHeading(block) === 0;
}

/** Every run of the page, in its order. */
function runsOf(blocks: readonly Block[]): Run[] {
  const runs: Run[] = [];
  let open: Run | null = null;
  let gap = 0;
  for (const { at, block, before } of spots(blocks, 0)) {
    const usable = mayStandInRun(block);
    if (usable && isMeasuredLine(block)) {
      if (open === null) {
        open = { from: at, to: at, count: 0 };
        runs.push(open);
      }
      open.to = at;
      open.count += 1;
      gap = 0;
    } else if (open) {
      if (usable) gap += gapAt(block, before);
      if (!usable || !isBareLine(block) || gap > MAX_GAP) {
        open = null;
        gap = 0;
      }
    }
  }
  return runs;
}

/** The run with most amounts, the first of equals. */
function longestRun(blocks: readonly Block[]): Run | null {
  const runs = runsOf(blocks).filter((run) => run.count >= FEWEST);
  const most = Math.max(...runs.map((run) => run.count));
  return runs.find((run) => run.count === most) ?? null;
}

/** True when the next block is one more short line of the same make: 'Butter for the dish' at a list's end. */
function isLikeLine(block: Block | undefined, next: Block | undefined): boolean {
  if (!block || !next || block.list >= 0 || !isMadeLike(next, block)) return false;
  if (next.level > 0 || next.link || next.aside || next.bold) return false;
  if (next.text.length > MAX_BARE || /[.!?:]$/.test(next.text) || isSentence(next.text))
    return false;
  return stepsHeading(next) === 0 && !isStop(next);
}

/** Stretches a run over the entries of the lists it begins and ends in, and lines like its last. */
function stretch(blocks: readonly Block[], run: Run): { from: number; to: number } {
  let { from, to } = run;
  const inList = (block: Block | undefined, list: number | undefined) =>
    block !== undefined && block.list >= 0 && block.list === list && block.text.length < MAX_ADDED;
  while (inList(blocks[from - 1], blocks[from]?.list)) from -= 1;
  while (inList(blocks[to + 1], blocks[to]?.list) || isLikeLine(blocks[to], blocks[to + 1]))
    to += 1;
  return { from, to };
}

/** 'For the cake' above the first line names the first group. */
function headsRun(above: Block | undefined): above is Block {
  if (!above || above.level <= 1 || statedServings(above.text)) return false;
  return ingredientsHeading(above) === 0 && GROUP_WORDS.test(above.text);
}

/** The longest run of lines with amounts, with the index of its first block and of the one that ends it. */
export function findUnnamedList(blocks: readonly Block[]): (FoundList & { at: number }) | null {
  const run = longestRun(blocks);
  if (!run) return null;
  const { from, to } = stretch(blocks, run);
  const builder = new GroupBuilder();
  const above = blocks[from - 1];
  if (headsRun(above)) builder.take(above, blocks[from]);
  for (const { block, next } of spots(blocks, from, to + 1)) builder.take(block, next);
  return { at: from, groups: withoutCopies(builder.groups), end: to + 1 };
}
