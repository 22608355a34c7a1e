import type { IngredientGroup } from '../../model.ts';
import { type Block, HEAD_ROW } from '../document/blocks.ts';
import { textKey } from '../document/clean-text.ts';
import { groupTitle, isHeadingLine, tidyLine } from '../markup/ingredient-values.ts';
import { statedServings } from '../values/yield.ts';
import {
  ingredientsHeading,
  isButton,
  isStop,
  MAX_HEADING,
  stepsHeading,
} from './heading-kinds.ts';
import {
  foodWords,
  isOnlyAmount,
  isOnlyUnit,
  isSentence,
  looksLikeIngredient,
  startsWithAmount,
  startsWithFigure,
} from './line-shapes.ts';

type Collected = { groups: IngredientGroup[]; end: number };

const MAX_LINES = 200;
/** Blocks within which the titles of two groups stand. */
const PEER_REACH = 60;
/** Longest line of an ingredient list (characters); real ones stay below it. */
const MAX_LINE = 300;

/** Groups being filled. */
class Basket {
  readonly groups: IngredientGroup[] = [];
  private title: string | null = null;
  private held = '';

  get count(): number {
    return this.groups.reduce((sum, group) => sum + group.lines.length, 0);
  }

  /** True right after a heading, before its first line. */
  get open(): boolean {
    return this.title !== null;
  }

  head(text: string): void {
    this.title = groupTitle(text);
  }

  add(text: string): void {
    const line = tidyLine(text);
    if (line === '') return;
    const last = this.groups.at(-1);
    if (!last || this.title !== null) this.groups.push({ title: this.title, lines: [line] });
    else last.lines.push(line);
    this.title = null;
  }

  /** Adds a cell of a row: amounts and units wait for the name that follows. */
  addCell(text: string): void {
    const line = tidyLine(text);
    if (isOnlyAmount(line) || (this.held !== '' && isOnlyUnit(line))) {
      this.held = this.held === '' ? line : `${this.held} ${line}`;
      return;
    }
    this.add(this.held === '' ? text : `${this.held} ${line}`);
    this.held = '';
  }

  /** Takes a line as it comes: a heading, a line or a cell of one. */
  take(block: Block, next: Block | undefined): void {
    if (isButton(block.text)) return;
    if (mayHead(block) || headsNested(block, next)) this.head(block.text);
    else this.addCell(rowLine(block));
  }

  /** Puts an amount before the name added last. */
  giveAmount(amount: string): void {
    const lines = this.groups.at(-1)?.lines;
    const name = lines?.pop();
    if (lines && name !== undefined) lines.push(`${amount} ${name}`);
  }
}

/** 'Flour 200 g' in a table row: the amount's cell comes after the name's; amount goes first. */
function rowLine(block: Block): string {
  if (block.tag !== 'tr' || /^\d/.test(block.text)) return block.text;
  const found = /^(\D*?\p{L}[^\d]*?)\s+(\d[\d.,/]*(?:\s?[-–]\s?\d+)?\s?\p{L}{0,10}\.?)$/u.exec(
    block.text,
  );
  return found ? `${found[2]} ${found[1]}` : block.text;
}

/** A short line that may head a group. */
function mayHead(block: Block): boolean {
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

function nextContent(blocks: readonly Block[], from: number): Block | undefined {
  for (let i = from; i < Math.min(blocks.length, from + 6); i += 1) {
    const block = blocks[i] as Block;
    if (!isButton(block.text)) return block;
  }
  return undefined;
}

function isEntry(block: Block | undefined): boolean {
  return block !== undefined && block.list >= 0 && block.level === 0;
}

/** Whether the list is one of entries ('li', 'tr') or of plain lines. */
function hasEntries(blocks: readonly Block[], at: number): boolean {
  let seen = 0;
  for (let i = at + 1; i < blocks.length && seen < 5; i += 1) {
    const block = blocks[i] as Block;
    if (isButton(block.text)) continue;
    if (isEntry(block)) return true;
    if (looksLikeIngredient(block.text) && !statedServings(block.text)) return false;
    if (stepsHeading(block) >= 2) return false;
    seen += 1;
  }
  return false;
}

function endsList(block: Block, head: Block, lines: number): boolean {
  if (stepsHeading(block) >= 2 || (stepsHeading(block) === 1 && lines > 0 && block.level > 0))
    return true;
  if (isStop(block)) return true;
  return block.level > 0 && head.level > 0 && block.level < head.level;
}

/** Lines of lists: entries are lines, short headings between lists start groups. */
function fromEntries(blocks: readonly Block[], at: number): Collected {
  const head = blocks[at] as Block;
  const basket = new Basket();
  let skipped = 0;
  let i = at + 1;
  for (; i < blocks.length && basket.count < MAX_LINES; i += 1) {
    const block = blocks[i] as Block;
    if (isButton(block.text) && block.level === 0) continue;
    if (endsList(block, head, basket.count) || (block.aside && !head.aside)) break;
    if (basket.count > 0 && ingredientsHeading(block) === 3 && block.level > 0) break;
    if (block.tag === HEAD_ROW && !/\d/.test(block.text)) continue;
    if (isEntry(block)) {
      if (block.text.length > MAX_LINE) break;
      const fresh = blocks[i - 1]?.list !== block.list;
      if (fresh && basket.count > 0 && !basket.open) {
        // A new list without a heading goes on with the foods, unless it is the method or links.
        if (isMethodList(blocks, i) || (block.link && !looksLikeIngredient(block.text))) break;
      }
      if (isHeadingLine(block.text) && /:$/.test(block.text)) basket.head(block.text);
      else if (headsNested(block, blocks[i + 1])) basket.head(block.text);
      else if (
        block.bold &&
        !startsWithFigure(block.text) &&
        isEntry(blocks[i + 1]) &&
        !blocks[i + 1]?.bold
      )
        basket.head(block.text);
      else if (block.tag === 'dd' && isOnlyAmount(block.text) && blocks[i - 1]?.tag === 'dt')
        basket.giveAmount(block.text);
      else basket.addCell(rowLine(block));
      skipped = 0;
      continue;
    }
    const next = nextContent(blocks, i + 1);
    if (statedServings(block.text) && basket.count === 0) continue;
    if (block.text.length <= MAX_HEADING && !isSentence(block.text) && next && isEntry(next)) {
      const peer = block.level > 0 && block.level === head.level && basket.count > 0;
      const groupLike = /^(?:for|für|voor|pour|para|per|til|till|för)\b|:$/i.test(block.text);
      if (peer && !groupLike && !looksLikeIngredient(next.text)) break;
      if (mayHead(block) || groupLike || basket.count > 0 || hasPeer(blocks, i))
        basket.head(block.text);
      continue;
    }
    skipped += 1;
    if (basket.count > 0 && (skipped > 2 || block.level > 0 || isSentence(block.text))) break;
    if (basket.count === 0 && skipped > 6) break;
  }
  return { groups: basket.groups, end: i };
}

/** An entry that holds a list of its own: 'For the topping' with the lines inside. */
function headsNested(block: Block, next: Block | undefined): boolean {
  return isEntry(next) && (next?.depth ?? 0) > block.depth && !startsWithFigure(block.text);
}

/** True when a line made like this one stands before another list further on: both name groups. */
function hasPeer(blocks: readonly Block[], at: number): boolean {
  const block = blocks[at] as Block;
  if (block.text.length > 40 || /\d/.test(block.text)) return false;
  for (let i = at + 2; i < Math.min(blocks.length, at + PEER_REACH); i += 1) {
    const other = blocks[i] as Block;
    if (stepsHeading(other) >= 2 || isStop(other)) return false;
    const alike = other.tag === block.tag && other.classes === block.classes;
    if (alike && !isEntry(other) && other.text.length <= 40 && isEntry(blocks[i + 1])) return true;
  }
  return false;
}

/** A list of sentences: the method has begun though no heading said so. */
function isMethodList(blocks: readonly Block[], at: number): boolean {
  const list = blocks[at]?.list;
  let entries = 0;
  let sentences = 0;
  for (let i = at; i < blocks.length && blocks[i]?.list === list; i += 1) {
    entries += 1;
    const text = blocks[i]?.text ?? '';
    if (isSentence(text) && !startsWithFigure(text)) sentences += 1;
  }
  return sentences * 2 > entries;
}

/** Lines that are no list entries: paragraphs, broken lines, rows of cells. */
function fromLines(blocks: readonly Block[], at: number): Collected {
  const head = blocks[at] as Block;
  const basket = new Basket();
  let i = at + 1;
  let prose = 0;
  let nameFirst: boolean | null = null;
  for (; i < blocks.length && basket.count < MAX_LINES; i += 1) {
    const block = blocks[i] as Block;
    const { text } = block;
    if ((isButton(text) && block.level === 0) || (block.link && !looksLikeIngredient(text)))
      continue;
    if (endsList(block, head, basket.count) || (block.aside && !head.aside)) break;
    if (stepsHeading(block) > 0 && basket.count > 0) break;
    const next = nextContent(blocks, i + 1);
    if (basket.count === 0 && statedServings(text) && !looksLikeIngredient(next?.text ?? 'x'))
      continue;
    if (basket.count === 0 && statedServings(text) && !startsWithAmount(text)) continue;
    if (block.level > 0 && basket.count > 0 && !looksLikeIngredient(next?.text ?? '')) break;
    if (mayHead(block) && next && !isOnlyAmount(next.text)) {
      basket.head(text);
      continue;
    }
    const sentence = isSentence(text) && !startsWithFigure(text);
    if (sentence) {
      prose += 1;
      if (basket.count > 0 || prose > 2) break;
      continue;
    }
    if (text.length > MAX_LINE) break;
    if (nameFirst === null)
      nameFirst = !/\d/.test(text) && next !== undefined && isOnlyAmount(next.text);
    if (nameFirst && isOnlyAmount(text)) basket.giveAmount(text);
    else basket.addCell(text);
  }
  return { groups: basket.groups, end: i };
}

/**
 * Drops later copies when the whole sequence of lines is there twice or more: a print copy, other
 * serving sizes, or the same foods in other measures.
 */
function withoutCopies(groups: IngredientGroup[]): IngredientGroup[] {
  const lines = groups.flatMap((group) => group.lines);
  const keys = lines.map(textKey);
  const foods = lines.map(foodWords);
  for (let size = Math.max(3, Math.ceil(lines.length / 4)); size * 2 <= lines.length; size += 1) {
    if (lines.length % size !== 0) continue;
    const same = keys.every((key, i) => i < size || key === keys[i - size]);
    const agreeing = foods.filter(
      (food, i) => i >= size && food !== '' && food === foods[i - size],
    ).length;
    if (same || agreeing >= (lines.length - size) * 0.75) return firstLines(groups, size);
  }
  return groups;
}

function firstLines(groups: readonly IngredientGroup[], count: number): IngredientGroup[] {
  let left = count;
  return groups
    .map((group) => {
      const lines = group.lines.slice(0, left);
      left -= lines.length;
      return { title: group.title, lines };
    })
    .filter((group) => group.lines.length > 0);
}

/** Cuts one line that lists several foods at the commas before amounts: '250 g flour, 2 eggs, salt'. */
function cutAtAmounts(line: string): string[] {
  const parts = line.split(/\s*[,;]\s+/);
  const amounts = parts.filter(startsWithAmount).length;
  if (parts.length < 3 || amounts < 3) return [line];
  if (parts.every((part) => part.split(' ').length <= 5) && amounts * 3 > parts.length * 2)
    return parts;
  const lines: string[] = [];
  for (const part of parts) {
    const last = lines.pop();
    if (last === undefined) lines.push(part);
    else if (startsWithAmount(part)) lines.push(last, part);
    else lines.push(`${last}, ${part}`);
  }
  return lines;
}

/** The ingredient list under the heading at a block, with the index of the block that ends it. */
export function collectIngredients(blocks: readonly Block[], at: number): Collected {
  const found = hasEntries(blocks, at) ? fromEntries(blocks, at) : fromLines(blocks, at);
  const [first, second] = found.groups;
  if (first?.lines.length === 1 && !second) first.lines = cutAtAmounts(first.lines[0] ?? '');
  return { groups: withoutCopies(found.groups), end: found.end };
}

/** Class names of ingredient lists and their lines, in the languages where they are common. */
const INGREDIENT_CLASS = /ingr[eé]dient|zutat|sk[lł]adnik|hozzavalo|suroviny/;

/**
 * The longest run of lines whose element or its parent is named after ingredients, for pages that head
 * their list with no known word.
 */
export function classRun(
  blocks: readonly Block[],
): { at: number; groups: IngredientGroup[]; end: number } | null {
  let best: { at: number; end: number; measured: number } | null = null;
  for (let at = 0; at < blocks.length; at += 1) {
    if (!isClassed(blocks[at])) continue;
    let end = at;
    let measured = 0;
    for (; isClassed(blocks[end]) || headsClassed(blocks, end); end += 1)
      if (looksLikeIngredient(blocks[end]?.text ?? '')) measured += 1;
    if (measured >= 2 && measured > (best?.measured ?? 0)) best = { at, end, measured };
    at = end;
  }
  if (!best) return null;
  const basket = new Basket();
  for (let i = best.at; i < best.end; i += 1) basket.take(blocks[i] as Block, blocks[i + 1]);
  return { at: best.at, groups: withoutCopies(basket.groups), end: best.end };
}

/** A group's heading between two runs of such lines. */
function headsClassed(blocks: readonly Block[], at: number): boolean {
  const block = blocks[at];
  return block !== undefined && mayHead(block) && !isStop(block) && isClassed(blocks[at + 1]);
}

function isClassed(block: Block | undefined): block is Block {
  return (
    block !== undefined &&
    !block.aside &&
    block.text.length <= MAX_LINE &&
    INGREDIENT_CLASS.test(block.classes) &&
    stepsHeading(block) < 2 &&
    !isStop(block)
  );
}

/** Lines without amounts that a run may hold in a row, where they are like the line before, or not. */
const MAX_GAP = 2.5;
const LIKE = 0.5;
/** Longest line without an amount in a run (characters). */
const MAX_BARE = 80;

/** How far a line without an amount leads away from a run: not at all in the list it goes on. */
function gapAt(block: Block, before: Block): number {
  if (block.list >= 0 && block.list === before.list) return 0;
  const like = block.tag === before.tag && block.classes === before.classes;
  return like || mayHead(block) ? LIKE : 1;
}

/** True when the next block is one more short line of the same make: 'Butter for the dish' at a list's end. */
function isLikeLine(blocks: readonly Block[], at: number): boolean {
  const block = blocks[at];
  const next = blocks[at + 1];
  return (
    block !== undefined &&
    next !== undefined &&
    block.list < 0 &&
    next.tag === block.tag &&
    next.classes === block.classes &&
    next.level === 0 &&
    !next.link &&
    !next.aside &&
    !next.bold &&
    next.text.length <= MAX_BARE &&
    !/[.!?:]$/.test(next.text) &&
    !isSentence(next.text) &&
    stepsHeading(next) === 0 &&
    !isStop(next)
  );
}

/** The longest run of lines with amounts, for pages that head their list with no known word. */
export function amountRun(
  blocks: readonly Block[],
): { at: number; groups: IngredientGroup[]; end: number } | null {
  let best: { from: number; to: number; count: number } | null = null;
  let from = -1;
  let last = -1;
  let count = 0;
  let gap = 0;
  for (let i = 0; i <= blocks.length; i += 1) {
    const block = blocks[i];
    const usable =
      block !== undefined && !block.aside && block.text.length <= 160 && !isStop(block);
    const line = usable && !block.link && block.level === 0 && looksLikeIngredient(block.text);
    if (line && !statedServings(block.text)) {
      if (from < 0) from = i;
      count += 1;
      gap = 0;
      last = i;
      continue;
    }
    if (from < 0) continue;
    if (usable) gap += gapAt(block, blocks[i - 1] as Block);
    const bare =
      usable &&
      block.text.length <= MAX_BARE &&
      !isSentence(block.text) &&
      stepsHeading(block) === 0 &&
      gap <= MAX_GAP;
    if (bare) continue;
    if (count >= 2 && (best === null || count > best.count)) best = { from, to: last, count };
    from = -1;
    count = 0;
    gap = 0;
  }
  if (!best) return null;
  let { from: start, to: end } = best;
  const inList = (i: number, list: number | undefined) =>
    list !== undefined &&
    list >= 0 &&
    blocks[i]?.list === list &&
    (blocks[i]?.text.length ?? 999) < 100;
  while (start > 0 && inList(start - 1, blocks[start]?.list)) start -= 1;
  while (inList(end + 1, blocks[end]?.list) || isLikeLine(blocks, end)) end += 1;
  const basket = new Basket();
  // 'For the cake' above the first line names the first group.
  const above = blocks[start - 1];
  if (
    above &&
    above.level > 1 &&
    !statedServings(above.text) &&
    ingredientsHeading(above) === 0 &&
    /^(?:for|für|voor|pour|para|per|til|till|för)\b|:$/i.test(above.text)
  )
    basket.take(above, blocks[start]);
  for (let i = start; i <= end; i += 1) basket.take(blocks[i] as Block, blocks[i + 1]);
  return { at: start, groups: withoutCopies(basket.groups), end: end + 1 };
}
