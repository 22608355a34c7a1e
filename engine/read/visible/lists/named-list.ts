/** Finds lines whose elements are named after ingredients, for pages that head their list with no known word. */
import { type Block, spots } from '../../document/block.ts';
import { isStop, stepsHeading } from '../heading-kinds.ts';
import { looksLikeIngredient } from '../line-shapes.ts';
import { type FoundList, GroupBuilder, MAX_LINE } from './group-builder.ts';
import { mayHeadGroup } from './group-titles.ts';
import { withoutCopies } from './repeated-lines.ts';

/** Class names of ingredient lists and their lines, in the languages where they are common. */
const INGREDIENT_CLASS = /ingr[eé]dient|zutat|sk[lł]adnik|hozzavalo|suroviny/;
/** Fewest lines with amounts that make a list. */
const FEWEST = 2;

function isNamed(block: Block | undefined): block is Block {
  return (
    block !== undefined &&
    !block.aside &&
    block.text.length <= MAX_LINE &&
    INGREDIENT_CLASS.test(block.classes) &&
    stepsHeading(block) < 2 &&
    !isStop(block)
  );
}

/** A group's heading between two runs of such lines. */
function headsNamed(blocks: readonly Block[], at: number): boolean {
  const block = blocks[at];
  return block !== undefined && mayHeadGroup(block) && !isStop(block) && isNamed(blocks[at + 1]);
}

/** The longest run of lines whose element or its parent is named after ingredients. */
export function findNamedList(blocks: readonly Block[]): (FoundList & { at: number }) | null {
  let best = { at: 0, end: 0, measured: FEWEST - 1 };
  for (let at = 0; at < blocks.length; at += 1) {
    if (!isNamed(blocks[at])) continue;
    let end = at;
    let measured = 0;
    for (; isNamed(blocks[end]) || headsNamed(blocks, end); end += 1)
      if (looksLikeIngredient(blocks[end]?.text ?? '')) measured += 1;
    if (measured > best.measured) best = { at, end, measured };
    at = end;
  }
  if (best.end === 0) return null;
  const builder = new GroupBuilder();
  for (const { block, next } of spots(blocks, best.at, best.end)) builder.take(block, next);
  return { at: best.at, groups: withoutCopies(builder.groups), end: best.end };
}
