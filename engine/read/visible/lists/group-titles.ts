/** Tells which lines head a group of ingredients: 'For the filling', 'Topping:'. */
import { type Block, isEntry, isMadeLike } from '../../document/block.ts';
import { isHeadingLine } from '../../markup/ingredient-values.ts';
import { isStop, stepsHeading } from '../heading-kinds.ts';
import { MAX_HEADING } from '../heading-phrases.ts';
import { startsWithAmount, startsWithFigure } from '../line-shapes.ts';

/** Blocks within which the titles of two groups stand. */
const PEER_REACH = 60;

/** 'For the dough', 'Für den Teig', or a line with a colon at its end. */
export const GROUP_WORDS = /^(?:for|für|voor|pour|para|per|til|till|för)\b|:$/i;

/** A short line that may head a group. */
export function mayHeadGroup(block: Block): boolean {
  const { text } = block;
  if (text.length > MAX_HEADING || /[.!?]$/.test(text) || startsWithFigure(text)) return false;
  // 'A morzsához:' is no 'a pinch of salt'.
  if (startsWithAmount(text) && block.level === 0 && !block.bold && !/:$/.test(text)) return false;
  return (
    block.level > 0 ||
    block.bold ||
    isHeadingLine(text) ||
    /group|head|title|name/.test(block.classes)
  );
}

/** An entry that holds a list of its own: 'For the topping' with the lines inside. */
export function headsNested(block: Block, next: Block | undefined): boolean {
  return isEntry(next) && (next?.depth ?? 0) > block.depth && !startsWithFigure(block.text);
}

/** True when a line made like this one stands before another list further on: both name groups. */
export function hasPeer(blocks: readonly Block[], at: number): boolean {
  const block = blocks[at];
  if (!block || block.text.length > 40 || /\d/.test(block.text)) return false;
  for (const [i, other] of blocks.slice(at + 2, at + PEER_REACH).entries()) {
    if (stepsHeading(other) >= 2 || isStop(other)) return false;
    const short = !isEntry(other) && other.text.length <= 40;
    if (short && isMadeLike(other, block) && isEntry(blocks[at + 3 + i])) return true;
  }
  return false;
}
