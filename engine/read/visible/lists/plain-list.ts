/** Reads an ingredient list whose lines are no entries: paragraphs, broken lines, rows of cells. */
import { type Block, isMadeLike, type Spot, spots } from '../../document/block.ts';
import { statedServings } from '../../values/stated-servings.ts';
import { isButton, stepsHeading } from '../heading-kinds.ts';
import {
  isOnlyAmount,
  isSentence,
  looksLikeIngredient,
  startsWithAmount,
  startsWithFigure,
} from '../line-shapes.ts';
import { type FoundList, GroupBuilder, MAX_LINE, MAX_LINES } from './group-builder.ts';
import { mayHeadGroup } from './group-titles.ts';
import { endsList, isServingsCell, nextContent } from './list-ends.ts';

/** Sentences passed over before the first line, at most. */
const MOST_PROSE = 2;

/** Takes the blocks below a heading, one after the other. */
class LineReader {
  readonly builder = new GroupBuilder();
  private prose = 0;
  /** Names stand before their amounts; null until the first line tells. */
  private nameFirst: boolean | null = null;

  constructor(
    private readonly blocks: readonly Block[],
    private readonly head: Block,
  ) {}

  /** Takes a block; false when the list ends before it. */
  take(spot: Spot): boolean {
    const { at, block } = spot;
    const { text } = block;
    const lines = this.builder.count;
    if ((isButton(text) && block.level === 0) || isServingsCell(spot)) return true;
    if (block.link && !looksLikeIngredient(text) && !this.isBetweenLines(at)) return true;
    if (endsList(block, this.head, lines) || (stepsHeading(block) > 0 && lines > 0)) return false;
    const next = nextContent(this.blocks, at + 1);
    if (lines === 0 && this.isYield(text, next)) return true;
    if (block.level > 0 && lines > 0 && !looksLikeIngredient(next?.text ?? '')) return false;
    if (mayHeadGroup(block) && next && !isOnlyAmount(next.text)) {
      this.builder.head(text);
      return true;
    }
    if (isSentence(text) && !startsWithFigure(text)) {
      this.prose += 1;
      return lines === 0 && this.prose <= MOST_PROSE;
    }
    if (text.length > MAX_LINE) return false;
    this.takeLine(text, next);
    return true;
  }

  /** A link of the make of the lines round it, of which one is plain text: a food with a page of its own. */
  private isBetweenLines(at: number): boolean {
    const block = this.blocks[at] as Block;
    return [this.blocks[at - 1], this.blocks[at + 1]].some(
      (beside) => beside !== undefined && !beside.link && isMadeLike(beside, block),
    );
  }

  /** A statement of servings above the first line. */
  private isYield(text: string, next: Block | undefined): boolean {
    if (!statedServings(text)) return false;
    return !looksLikeIngredient(next?.text ?? 'x') || !startsWithAmount(text);
  }

  private takeLine(text: string, next: Block | undefined): void {
    this.nameFirst ??= !/\d/.test(text) && next !== undefined && isOnlyAmount(next.text);
    if (this.nameFirst && isOnlyAmount(text)) this.builder.giveAmount(text);
    else this.builder.addCell(text);
  }
}

/** The lines below the heading at a block. */
export function readPlainList(blocks: readonly Block[], at: number): FoundList {
  const reader = new LineReader(blocks, blocks[at] as Block);
  const { builder } = reader;
  for (const spot of spots(blocks, at + 1)) {
    if (builder.count >= MAX_LINES || !reader.take(spot))
      return { groups: builder.groups, end: spot.at };
  }
  return { groups: builder.groups, end: Math.max(at + 1, blocks.length) };
}
