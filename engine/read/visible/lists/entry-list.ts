/** Reads an ingredient list whose lines are entries of lists or rows of tables. */
import { type Block, HEAD_ROW, isEntry, type Spot, spots } from '../../document/block.ts';
import { isHeadingLine } from '../../markup/ingredient-values.ts';
import { statedServings } from '../../values/stated-servings.ts';
import { ingredientsHeading, isButton } from '../heading-kinds.ts';
import { MAX_HEADING } from '../heading-phrases.ts';
import { isOnlyAmount, isSentence, looksLikeIngredient, startsWithFigure } from '../line-shapes.ts';
import { type FoundList, GroupBuilder, MAX_LINE, MAX_LINES, rowLine } from './group-builder.ts';
import { GROUP_WORDS, hasPeer, headsNested, mayHeadGroup } from './group-titles.ts';
import { endsList, isServingsCell, nextContent } from './list-ends.ts';

/** Blocks passed over between entries, and before the first entry, at most. */
const MOST_BETWEEN = 2;
const MOST_BEFORE = 6;
/** Entries of a list that states facts of the recipe, at most. */
const MOST_FACTS = 6;

/** A list of sentences: the method has begun though no heading said so. */
function isMethodList(blocks: readonly Block[], at: number): boolean {
  const list = blocks[at]?.list;
  let entries = 0;
  let sentences = 0;
  for (const { block } of spots(blocks, at)) {
    if (block.list !== list) break;
    entries += 1;
    if (isSentence(block.text) && !startsWithFigure(block.text)) sentences += 1;
  }
  return sentences * 2 > entries;
}

/** An entry in bold before a plain one heads a group. */
function isBoldHead(block: Block, next: Block | undefined): boolean {
  return block.bold && !startsWithFigure(block.text) && isEntry(next) && next?.bold === false;
}

/** A nested entry below a line with an amount: 'roughly 1 large onion' below '150 g onion'. */
function isNoteOn(before: Block | undefined, block: Block): boolean {
  if (!before || !isEntry(before) || block.depth <= before.depth) return false;
  return startsWithFigure(before.text) && /note|remark|comment/.test(block.classes);
}

/** Takes the blocks below a heading, one after the other. */
class EntryReader {
  readonly builder = new GroupBuilder();
  private passed = 0;

  constructor(
    private readonly blocks: readonly Block[],
    private readonly head: Block,
  ) {}

  /** Takes a block; false when the list ends before it. */
  take(spot: Spot): boolean {
    const { block } = spot;
    if ((isButton(block.text) && block.level === 0) || isServingsCell(spot)) return true;
    if (endsList(block, this.head, this.builder.count)) return false;
    if (this.builder.count > 0 && ingredientsHeading(block) === 3 && block.level > 0) return false;
    if (block.tag === HEAD_ROW && !/\d/.test(block.text)) return true;
    return isEntry(block) ? this.takeEntry(spot) : this.takeBetween(spot);
  }

  private takeEntry({ at, block, before, next }: Spot): boolean {
    const { text } = block;
    if (text.length > MAX_LINE) return false;
    if (this.builder.count === 0 && this.isFactsList(at)) return true;
    if (isNoteOn(before, block)) {
      this.builder.addNote(text);
      return true;
    }
    const isNewList = before?.list !== block.list;
    // A new list without a heading goes on with the foods, unless it is the method or links.
    if (isNewList && this.builder.count > 0 && !this.builder.isHeaded)
      if (isMethodList(this.blocks, at) || (block.link && !looksLikeIngredient(text))) return false;
    const isHead =
      (isHeadingLine(text) && /:$/.test(text)) ||
      headsNested(block, next) ||
      isBoldHead(block, next);
    if (isHead) this.builder.head(text);
    else if (block.tag === 'dd' && isOnlyAmount(text) && before?.tag === 'dt')
      this.builder.giveAmount(text);
    else this.builder.addCell(rowLine(block));
    this.passed = 0;
    return true;
  }

  /** A list of what is said of the recipe, above its lines: servings, time, how hard it is. */
  private isFactsList(at: number): boolean {
    const list = this.blocks[at]?.list;
    const near = this.blocks.slice(Math.max(0, at - MOST_FACTS), at + MOST_FACTS);
    const entries = near.filter((block) => block.list === list);
    return (
      entries.length <= MOST_FACTS &&
      entries.some(({ text }) => statedServings(text) !== null) &&
      entries.every(({ text }) => statedServings(text) || !looksLikeIngredient(text))
    );
  }

  /** A block between lists: a group's heading, or one that is passed over. */
  private takeBetween({ at, block }: Spot): boolean {
    const { text } = block;
    const lines = this.builder.count;
    const next = nextContent(this.blocks, at + 1);
    if (lines === 0 && statedServings(text)) return true;
    // Advertised products stand between the entries.
    if (lines > 0 && block.link && block.level > 0 && next && isEntry(next)) return true;
    if (startsWithFigure(text) && !isSentence(text) && next && isEntry(next)) {
      this.builder.add(text);
      return true;
    }
    if (text.length <= MAX_HEADING && !isSentence(text) && next && isEntry(next)) {
      const isPeer = block.level > 0 && block.level === this.head.level && lines > 0;
      const isGroup = GROUP_WORDS.test(text);
      if (isPeer && !isGroup && !looksLikeIngredient(next.text)) return false;
      if (mayHeadGroup(block) || isGroup || lines > 0 || hasPeer(this.blocks, at))
        this.builder.head(text);
      return true;
    }
    this.passed += 1;
    if (lines === 0) return this.passed <= MOST_BEFORE;
    return this.passed <= MOST_BETWEEN && block.level === 0 && !isSentence(text);
  }
}

/** The entries below the heading at a block; short headings between lists start groups. */
export function readEntryList(blocks: readonly Block[], at: number): FoundList {
  const reader = new EntryReader(blocks, blocks[at] as Block);
  const { builder } = reader;
  for (const spot of spots(blocks, at + 1)) {
    if (builder.count >= MAX_LINES || !reader.take(spot))
      return { groups: builder.groups, end: spot.at };
  }
  return { groups: builder.groups, end: Math.max(at + 1, blocks.length) };
}
