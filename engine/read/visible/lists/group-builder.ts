/** Groups of ingredient lines being filled, line by line and cell by cell. */
import type { IngredientGroup } from '../../../model.ts';
import type { Block } from '../../document/block.ts';
import { groupTitle, tidyLine } from '../../markup/ingredient-values.ts';
import { isServingsLine } from '../../values/stated-servings.ts';
import { isButton } from '../heading-kinds.ts';
import { isOnlyAmount, isOnlyUnit } from '../line-shapes.ts';
import { headsNested, mayHeadGroup } from './group-titles.ts';

/** Lines read of one list, at most. */
export const MAX_LINES = 200;
/** Longest line of an ingredient list (characters); real ones stay below it. */
export const MAX_LINE = 300;

/** An ingredient list found among the blocks, and the place of the block that ends it. */
export type FoundList = { groups: IngredientGroup[]; end: number };

/** 'Flour 200 g' in a table row: the amount's cell comes after the name's; the amount goes first. */
export function rowLine(block: Block): string {
  if (block.tag !== 'tr' || /^\d/.test(block.text)) return block.text;
  const found = /^(\D*?\p{L}[^\d]*?)\s+(\d[\d.,/]*(?:\s?[-–]\s?\d+)?\s?\p{L}{0,10}\.?)$/u.exec(
    block.text,
  );
  return found ? `${found[2]} ${found[1]}` : block.text;
}

/** Fills groups with the lines given to it. */
export class GroupBuilder {
  readonly groups: IngredientGroup[] = [];
  private title: string | null = null;
  /** Amounts and units of cells that wait for the name's. */
  private waiting = '';

  get count(): number {
    return this.groups.reduce((sum, group) => sum + group.lines.length, 0);
  }

  /** True right after a heading, before its first line. */
  get isHeaded(): boolean {
    return this.title !== null;
  }

  head(text: string): void {
    this.title = groupTitle(text);
  }

  add(text: string): void {
    const line = tidyLine(text);
    if (line === '' || isServingsLine(line)) return;
    const last = this.groups.at(-1);
    if (!last || this.title !== null) this.groups.push({ title: this.title, lines: [line] });
    else last.lines.push(line);
    this.title = null;
  }

  /** Adds a remark to the line added last. */
  addNote(text: string): void {
    const lines = this.groups.at(-1)?.lines;
    const line = lines?.pop();
    if (lines && line !== undefined) lines.push(`${line}, ${text}`);
  }

  /** Adds a cell of a row: amounts and units wait for the name that follows. */
  addCell(text: string): void {
    const line = tidyLine(text);
    if (isOnlyAmount(line) || (this.waiting !== '' && isOnlyUnit(line))) {
      this.waiting = this.waiting === '' ? line : `${this.waiting} ${line}`;
      return;
    }
    this.add(this.waiting === '' ? text : `${this.waiting} ${line}`);
    this.waiting = '';
  }

  /** Takes a block as it comes: a heading, a line or a cell of one. */
  take(block: Block, next: Block | undefined): void {
    if (isButton(block.text)) return;
    if (mayHeadGroup(block) || headsNested(block, next)) this.head(block.text);
    else this.addCell(rowLine(block));
  }

  /** Puts an amount before the name added last. */
  giveAmount(amount: string): void {
    const lines = this.groups.at(-1)?.lines;
    const name = lines?.pop();
    if (lines && name !== undefined) lines.push(`${amount} ${name}`);
  }
}
