/** Finds the groups of a flat list of lines again by walking the visible page beside it. */
import type { IngredientGroup } from '../../model.ts';
import type { Block } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import { groupTitle } from '../markup/ingredient-values.ts';
import { statedServings } from '../values/yield.ts';
import { ingredientsHeading, isButton, stepsHeading } from './heading-kinds.ts';
import { MAX_HEADING } from './heading-phrases.ts';
import { isSentence, startsWithAmount } from './line-shapes.ts';

/** Blocks one marked-up line may be spread over, and blocks passed over between two lines. */
const SPREAD = 4;
const REACH = 6;
/** Share of the lines that must be found for the page's order to count (common practice, no source). */
const FOUND = 0.8;

type Match = { line: number; from: number; to: number };

/** The last block of a line that starts at a block, or -1 when the line is not there. */
function matchAt(keys: readonly string[], at: number, line: string): number {
  let joined = '';
  for (let n = 0; n < SPREAD && at + n < keys.length; n += 1) {
    joined += keys[at + n] ?? '';
    if (joined === line) return at + n;
    if (!line.startsWith(joined)) return -1;
  }
  return -1;
}

/** Follows the lines through the page from one block on. */
function follow(keys: readonly string[], lines: readonly string[], at: number): Match[] {
  const matches: Match[] = [];
  let next = at;
  for (let line = 0; line < lines.length; line += 1) {
    const wanted = lines[line] ?? '';
    if (wanted === '') continue;
    for (let i = next; i < Math.min(keys.length, next + REACH); i += 1) {
      const to = keys[i] === '' ? -1 : matchAt(keys, i, wanted);
      if (to < 0) continue;
      matches.push({ line, from: i, to });
      next = to + 1;
      break;
    }
  }
  return matches;
}

/** The best walk of the page beside the lines, or null when too few lines are found in order. */
function align(blocks: readonly Block[], lines: readonly string[]): Match[] | null {
  // A block much longer than the longest line holds none of them.
  const most = Math.min(400, Math.max(...lines.map((line) => line.length)) + 40);
  const keys = blocks.map((block) => (block.text.length > most ? '' : textKey(block.text)));
  const wanted = lines.map(textKey);
  const first = wanted[0] ?? '';
  if (first === '') return null;
  let best: Match[] = [];
  let tries = 0;
  for (let at = 0; at < keys.length && tries < 12; at += 1) {
    if (keys[at] === '' || matchAt(keys, at, first) < 0) continue;
    tries += 1;
    const found = follow(keys, wanted, at);
    if (found.length > best.length) best = found;
    if (best.length === lines.length) break;
  }
  return best.length >= lines.length * FOUND && best.length >= 2 ? best : null;
}

/** How much a block looks like a group's heading: 0 not at all, 2 by its make or words. */
function headingLook(block: Block): number {
  const { text } = block;
  if (block.tag === 'figcaption' || text.length > MAX_HEADING) return 0;
  if (isButton(text) || isSentence(text)) return 0;
  if (startsWithAmount(text) || ingredientsHeading(block) >= 2 || stepsHeading(block) >= 2)
    return 0;
  if (statedServings(text) || /^(?:serves|makes|yield|prep|cook|total)\b/i.test(text)) return 0;
  if (/^\p{Ll}|^[(*+]/u.test(text) && !/:$/.test(text)) return 0;
  if (block.level > 0 || block.bold || /:$/.test(text)) return 2;
  if (/group|head|title|name|section/.test(block.classes)) return 2;
  return block.list >= 0 || /\d/.test(text) ? 0 : 1;
}

/** Element and classes: titles of one list are made alike. */
function makeOf(block: Block): string {
  return `${block.tag} ${block.level} ${block.classes}`;
}

/** The block of the title among blocks passed over, nearest to the line that follows; null when none. */
function titleBetween(
  blocks: readonly Block[],
  from: number,
  to: number,
  looks: (block: Block) => boolean,
): Block | null {
  for (let i = to - 1; i >= Math.max(0, from); i -= 1) {
    const block = blocks[i] as Block;
    if (block.level === 1 || ingredientsHeading(block) >= 2) return null;
    if (looks(block)) return block;
    if (isSentence(block.text)) return null;
  }
  return null;
}

/**
 * Wins back the groups ('For the filling') that a flat list of lines has lost, by walking the visible
 * page beside the lines. Lines and their order stay; null when the page shows no groups or does not
 * hold the lines.
 */
export function regainGroups(
  blocks: readonly Block[],
  lines: readonly string[],
): IngredientGroup[] | null {
  if (lines.length < 2) return null;
  const matches = align(blocks, lines);
  if (!matches) return null;
  const titles = new Map<number, string>();
  const makes = new Set<string>();
  for (let m = 1; m < matches.length; m += 1) {
    const before = matches[m - 1] as Match;
    const now = matches[m] as Match;
    // A line that was not found in between may be what was passed over.
    if (now.line !== before.line + 1) continue;
    const block = titleBetween(blocks, before.to + 1, now.from, (one) => headingLook(one) >= 1);
    const title = block && groupTitle(block.text);
    if (!title) continue;
    titles.set(now.line, title);
    makes.add(makeOf(block));
  }
  // A line of the markup that is a heading on the page heads a group.
  const headings = new Set<number>();
  for (const { line, from } of matches) {
    const block = blocks[from] as Block;
    const text = lines[line] ?? '';
    if (/\d/.test(text) || (block.level === 0 && !(block.bold && block.list < 0))) continue;
    headings.add(line);
    const title = groupTitle(text);
    if (title && line + 1 < lines.length) titles.set(line + 1, title);
  }
  const start = matches[0] as Match;
  // Above the first line a plain line counts only when other groups have their titles in such lines.
  const first = titleBetween(
    blocks,
    start.from - 2,
    start.from,
    (one) => headingLook(one) === 2 || (headingLook(one) === 1 && makes.has(makeOf(one))),
  );
  const leading = first && groupTitle(first.text);
  const named = leading !== null && (titles.size > 0 || /^for\b|:$/i.test(leading));
  if (titles.size === 0 && !named) return null;
  const groups: IngredientGroup[] = [{ title: named ? leading : null, lines: [] }];
  lines.forEach((line, i) => {
    const title = titles.get(i);
    if (title !== undefined) groups.push({ title, lines: [] });
    if (!headings.has(i)) groups.at(-1)?.lines.push(line);
  });
  return groups.filter((group) => group.lines.length > 0);
}
