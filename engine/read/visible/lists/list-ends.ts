/** Tells where an ingredient list ends. */
import type { Block, Spot } from '../../document/block.ts';
import { isServingsLabel } from '../../values/stated-servings.ts';
import { isButton, isStop, stepsHeading } from '../heading-kinds.ts';

/** Blocks looked ahead for the next line that is no button. */
const AHEAD = 6;

/** The first block from a place on that is no button. */
export function nextContent(blocks: readonly Block[], from: number): Block | undefined {
  return blocks.slice(from, from + AHEAD).find((block) => !isButton(block.text));
}

const isCount = (block: Block | undefined): boolean => /^\d{1,2}$/.test(block?.text ?? '');
const isLabel = (block: Block | undefined): boolean => isServingsLabel(block?.text ?? '');

/** 'Number of people' and '12' in blocks of their own, in either order: no part of the list. */
export function isServingsCell({ block, before, next }: Spot): boolean {
  if (isLabel(block)) return isCount(before) || isCount(next);
  return isCount(block) && (isLabel(before) || isLabel(next));
}

/** True when a block ends the list under a heading, of which so many lines are read. */
export function endsList(block: Block, head: Block, lines: number): boolean {
  const steps = stepsHeading(block);
  if (steps >= 2 || (steps === 1 && lines > 0 && block.level > 0)) return true;
  if (isStop(block) || (block.aside && !head.aside)) return true;
  return block.level > 0 && head.level > 0 && block.level < head.level;
}
