/** Reads an ingredient list whose amounts and names stand in elements of two makes, one after the other. */
import { type Block, isMadeLike, spots } from '../../document/block.ts';
import { isButton, isStop, stepsHeading } from '../heading-kinds.ts';
import { MAX_HEADING } from '../heading-phrases.ts';
import { isOnlyUnit, isSentence, isShortAmount, startsWithUnit } from '../line-shapes.ts';
import { type FoundList, GroupBuilder, MAX_LINE, MAX_LINES } from './group-builder.ts';
import { endsList } from './list-ends.ts';

/** Fewest amounts of one make, and the share of that make's blocks that must be amounts. Own choice. */
const FEWEST = 3;
const MOSTLY = 0.75;
/** Blocks below the ingredients' heading in which the method's heading is the label of a tab. */
const TABS = 2;
/** Amounts side by side at most, kilograms and per cent: more of them are a list of whole lines. */
const MOST_IN_A_ROW = 2;
/** Blocks between two amounts at most in one list. */
const APART = 5;

type Columns = { amount: Block; first: number; last: number };

/** Amounts below a heading that are tried as the first of the column: that of the servings is none. */
const TRIES = 2;

/** The make of blocks below a heading that hold nothing but amounts, with where they stand. */
function amountColumn(blocks: readonly Block[], at: number, head: Block): Columns | null {
  let from = at;
  for (let n = 0; n < TRIES; n += 1) {
    const column = columnFrom(blocks, at, from, head);
    if (typeof column !== 'number') return column;
    from = column;
  }
  return null;
}

/** The column whose first amount is the first after a place; that amount's place when it begins none. */
function columnFrom(
  blocks: readonly Block[],
  at: number,
  from: number,
  head: Block,
): Columns | number | null {
  const places: number[] = [];
  let amount: Block | null = null;
  let seen = 0;
  let lastSeen = 0;
  let inARow = 0;
  for (const { at: i, block } of spots(blocks, from + 1)) {
    if (isStop(block) || (block.aside && !head.aside)) break;
    if (stepsHeading(block) >= 2 && i > at + TABS) break;
    if (amount !== null && (i - lastSeen > APART || !isMadeLike(block, amount))) {
      if (i - lastSeen > APART) break;
      continue;
    }
    const isAmount = isShortAmount(block.text);
    if (isAmount) {
      amount ??= block;
      places.push(i);
    }
    if (amount === null) continue;
    inARow = i === lastSeen + 1 ? inARow + 1 : 1;
    if (inARow > MOST_IN_A_ROW) return null;
    seen += 1;
    lastSeen = i;
  }
  const [first] = places;
  if (amount === null || first === undefined) return null;
  if (places.length < FEWEST || places.length < seen * MOSTLY) return first;
  return { amount, first, last: places.at(-1) ?? first };
}

/** The make of the names: what most often stands beside an amount. Null when the amounts stand alone. */
function nameMake(blocks: readonly Block[], { amount, first, last }: Columns): Block | null {
  const beside = blocks.slice(Math.max(0, first - 1), last + 2);
  const names = beside.filter(
    (block) =>
      !isMadeLike(block, amount) &&
      block.level === 0 &&
      /^\P{N}*\p{L}/u.test(block.text) &&
      !isSentence(block.text),
  );
  const count = (make: Block) => names.filter((block) => isMadeLike(block, make)).length;
  const best = names.reduce<Block | null>(
    (top, block) => (top && count(top) >= count(block) ? top : block),
    null,
  );
  return best && count(best) >= FEWEST ? best : null;
}

/** Takes the blocks of a list in columns, one after the other. */
class ColumnReader {
  readonly builder = new GroupBuilder();
  /** An amount that waits for its name, or a name for its amount. */
  private held = '';
  /** The unit that heads the column of amounts: 'kg'. */
  private unit = '';

  constructor(
    private readonly amount: Block,
    private readonly name: Block,
    private readonly nameFirst: boolean,
  ) {}

  isPart(block: Block): boolean {
    return isMadeLike(block, this.amount) || this.isName(block);
  }

  take(block: Block): void {
    const { text } = block;
    if (isButton(text)) return;
    if (isMadeLike(block, this.amount)) this.takeAmount(text);
    else if (this.isName(block)) this.takeName(text);
    else this.takeTitle(text);
  }

  /** The make of names, also with a further class: 'label without-amount'. */
  private isName(block: Block): boolean {
    if (isMadeLike(block, this.name)) return true;
    const first = (make: Block) => make.classes.trim().split(' ')[0];
    return block.tag === this.name.tag && first(block) !== '' && first(block) === first(this.name);
  }

  private takeAmount(text: string): void {
    if (isOnlyUnit(text) && this.builder.count === 0 && this.held === '') {
      this.unit ||= ` ${text}`;
      return;
    }
    if (!isShortAmount(text)) return;
    const amount = /\p{L}/u.test(text) ? text : text + this.unit;
    if (!this.nameFirst) this.held = this.held === '' ? amount : `${this.held} ${amount}`;
    else if (this.held !== '') {
      this.builder.add(`${amount} ${this.held}`);
      this.held = '';
    }
  }

  private takeName(text: string): void {
    if (this.nameFirst) {
      this.close();
      this.held = text;
    } else {
      this.builder.add(this.held === '' ? text : `${this.held} ${text}`);
      this.held = '';
    }
  }

  private takeTitle(text: string): void {
    this.close();
    if (/\p{L}/u.test(text) && !/\d/.test(text)) this.builder.head(text);
  }

  /** Adds the name that waits for an amount which does not come. */
  close(): void {
    if (this.held !== '' && this.nameFirst) this.builder.add(this.held);
    this.held = '';
  }
}

/**
 * The list in columns below the heading at a block, or null when it is none. A heading of the method right
 * below is the label of a tab and no end.
 */
export function readColumnList(blocks: readonly Block[], at: number): FoundList | null {
  const head = blocks[at] as Block;
  const columns = amountColumn(blocks, at, head);
  const name = columns && nameMake(blocks, columns);
  if (!columns || !name) return null;
  const before = blocks[columns.first - 1];
  // 'g' before a food's name: its amount stands above it.
  const led = blocks.filter((one) => isMadeLike(one, name) && startsWithUnit(one.text)).length;
  const nameFirst = before !== undefined && isMadeLike(before, name) && led < FEWEST;
  const reader = new ColumnReader(columns.amount, name, nameFirst);
  let end = columns.last + 1;
  for (const { at: i, block, next } of spots(blocks, at + 1)) {
    if (i < columns.first - 1 && stepsHeading(block) > 0) continue;
    if (endsList(block, head, reader.builder.count)) break;
    if (reader.builder.count >= MAX_LINES || block.text.length > MAX_LINE) break;
    if (reader.isPart(block)) end = i + 1;
    // After the last amount a title counts only where a name follows it.
    else if (i > columns.last && !(next && reader.isPart(next) && block.text.length <= MAX_HEADING))
      break;
    reader.take(block);
  }
  reader.close();
  return { groups: reader.builder.groups, end };
}
