/** A line of the visible page, and a cursor that goes over such lines in reading order. */

/** What a line's words say it heads; kept on the block once it has been asked for. */
export type HeadingReading = { ingredients: number; needs: boolean; steps: number; stop: boolean };

/** A line of the visible page, in reading order. */
export type Block = {
  text: string;
  /** The block element the line stands in: 'li', 'p', 'h2', 'tr' ... */
  tag: string;
  /** 1..6 in a heading, else 0. */
  level: number;
  /** All of the line is in bold. */
  bold: boolean;
  /** Number of the list or table the line is an entry of, -1 outside; entries of one list share it. */
  list: number;
  ordered: boolean;
  /** Lists and tables the line stands in, one in the other. */
  depth: number;
  /** Class names of the element and its parent, lower case. */
  classes: string;
  /** All of the line is link text. */
  link: boolean;
  /** In navigation, a footer, comments, a box of related pages or the like. */
  aside: boolean;
  reading?: HeadingReading;
  /** The text's key, kept once it has been asked for. */
  key?: string;
};

/** The `tag` of a block that names a table's columns. */
export const HEAD_ROW = 'head-row';

/** An entry of a list or a row of a table, not a heading in it. */
export function isEntry(block: Block | undefined): boolean {
  return block !== undefined && block.list >= 0 && block.level === 0;
}

/** Element and classes are alike: lines of one list, or titles of its groups. */
export function isMadeLike(one: Block, other: Block): boolean {
  return one.tag === other.tag && one.classes === other.classes;
}

/** A block with its place, and the blocks beside it. */
export type Spot = { at: number; block: Block; before: Block | undefined; next: Block | undefined };

/** Goes over the blocks from one place to before another. */
export function* spots(
  blocks: readonly Block[],
  from: number,
  to = blocks.length,
): Generator<Spot, void> {
  for (let at = Math.max(0, from); at < to; at += 1) {
    const block = blocks[at];
    if (!block) return;
    yield { at, block, before: blocks[at - 1], next: blocks[at + 1] };
  }
}
