/** Reads the ingredient list below a heading, whatever its lines are made of. */
import { type Block, isEntry } from '../../document/block.ts';
import { statedServings } from '../../values/stated-servings.ts';
import { isButton, stepsHeading } from '../heading-kinds.ts';
import { looksLikeIngredient, startsWithAmount } from '../line-shapes.ts';
import { readColumnList } from './column-list.ts';
import { readEntryList } from './entry-list.ts';
import type { FoundList } from './group-builder.ts';
import { readPlainList } from './plain-list.ts';
import { withoutCopies } from './repeated-lines.ts';

/** Blocks below a heading that may stand before the list's first entry. */
const BEFORE_ENTRIES = 5;

/** Whether the list is one of entries ('li', 'tr') or of plain lines. */
function hasEntries(blocks: readonly Block[], at: number): boolean {
  let seen = 0;
  for (const block of blocks.slice(at + 1)) {
    if (isButton(block.text)) continue;
    if (isEntry(block)) return true;
    if (looksLikeIngredient(block.text) && !statedServings(block.text)) return false;
    if (stepsHeading(block) >= 2) return false;
    seen += 1;
    if (seen >= BEFORE_ENTRIES) return false;
  }
  return false;
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
export function readHeadedList(blocks: readonly Block[], at: number): FoundList {
  const found =
    readColumnList(blocks, at) ??
    (hasEntries(blocks, at) ? readEntryList(blocks, at) : readPlainList(blocks, at));
  const [first, second] = found.groups;
  if (first?.lines.length === 1 && !second) first.lines = cutAtAmounts(first.lines[0] ?? '');
  return { groups: withoutCopies(found.groups), end: found.end };
}
