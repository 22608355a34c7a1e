/** Finds the groups of a flat list of lines again by walking the visible page beside it. */
import type { IngredientGroup } from '../../model.ts';
import { type Block, isMadeLike } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import type { Draft } from '../draft.ts';
import { groupTitle, hasAmount, isVersionTitle } from '../markup/ingredient-values.ts';
import { statedServings } from '../values/stated-servings.ts';
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

/** A block is looked at for each draft; its key is made once. */
function keyOf(block: Block): string {
  block.key ??= textKey(block.text);
  return block.key;
}

/** The best walk of the page beside the lines, or null when too few lines are found in order. */
function align(blocks: readonly Block[], lines: readonly string[]): Match[] | null {
  // A block much longer than the longest line holds none of them.
  const most = Math.min(400, Math.max(...lines.map((line) => line.length)) + 40);
  const keys = blocks.map((block) => (block.text.length > most ? '' : keyOf(block)));
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

/** Titles of one list are made alike. */
function isTitledLike(one: Block, other: Block): boolean {
  return one.level === other.level && isMadeLike(one, other);
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

/** Titles found between two lines that follow each other, by the number of the line below. */
function titlesBetween(blocks: readonly Block[], matches: readonly Match[]): Map<number, Block> {
  const titles = new Map<number, Block>();
  matches.forEach((now, m) => {
    const before = matches[m - 1];
    // A line that was not found in between may be what was passed over.
    if (!before || now.line !== before.line + 1) return;
    const block = titleBetween(blocks, before.to + 1, now.from, (one) => headingLook(one) >= 1);
    if (block && groupTitle(block.text)) titles.set(now.line, block);
  });
  return titles;
}

/** Numbers of the lines of the markup that are headings on the page. */
function linesThatHead(
  blocks: readonly Block[],
  lines: readonly string[],
  matches: readonly Match[],
): Set<number> {
  const isHead = ({ line, from }: Match) => {
    const block = blocks[from] as Block;
    if (hasAmount(lines[line] ?? '')) return false;
    return block.level > 0 || (block.bold && block.list < 0);
  };
  return new Set(matches.filter(isHead).map(({ line }) => line));
}

/**
 * The title above the first line. A plain line counts only when other groups have their titles in such
 * lines; alone it counts when its words say that it heads a group.
 */
function leadingTitle(
  blocks: readonly Block[],
  first: Match,
  titles: ReadonlyMap<number, Block>,
  grouped: boolean,
): string | null {
  const others = [...titles.values()];
  const block = titleBetween(blocks, first.from - 2, first.from, (one) => {
    const look = headingLook(one);
    return look === 2 || (look === 1 && others.some((title) => isTitledLike(one, title)));
  });
  const title = block && groupTitle(block.text);
  return title && (grouped || /^for\b|:$/i.test(title)) ? title : null;
}

/**
 * Wins back the groups ('For the filling') that a flat list of lines has lost, by walking the visible
 * page beside the lines. Lines and their order stay; null when the page shows no groups or does not
 * hold the lines.
 */
function regainGroups(
  blocks: readonly Block[],
  lines: readonly string[],
): IngredientGroup[] | null {
  if (lines.length < 2) return null;
  const matches = align(blocks, lines);
  const first = matches?.[0];
  if (!matches || !first) return null;
  const found = titlesBetween(blocks, matches);
  const titles = new Map([...found].map(([line, { text }]) => [line, groupTitle(text)]));
  const headings = linesThatHead(blocks, lines, matches);
  for (const line of headings) {
    const title = groupTitle(lines[line] ?? '');
    if (title && line + 1 < lines.length) titles.set(line + 1, title);
  }
  const leading = leadingTitle(blocks, first, found, titles.size > 0);
  if (titles.size === 0 && leading === null) return null;
  const groups: IngredientGroup[] = [{ title: leading, lines: [] }];
  lines.forEach((line, i) => {
    const title = titles.get(i);
    const last = groups.at(-1);
    // The title of a version goes on over the titles of its parts.
    const over =
      last?.lines.length === 0 && isVersionTitle(last.title ?? '') ? `${last.title}: ` : '';
    if (title !== undefined) groups.push({ title: title && `${over}${title}`, lines: [] });
    if (!headings.has(i)) groups.at(-1)?.lines.push(line);
  });
  return groups.filter((group) => group.lines.length > 0);
}

/** Groups that the page shows beyond those of the markup, at least, to take the page's (own choice). */
const FURTHER = 2;

/** The page's groups have all titles of the markup's, and several more where the markup has any. */
function goFurther(shown: readonly IngredientGroup[], marked: readonly IngredientGroup[]): boolean {
  const titles = shown.map(({ title }) => textKey(title ?? ''));
  const known = marked.flatMap(({ title }) => title ?? []);
  return (
    known.every((title) => titles.includes(textKey(title))) &&
    (known.length === 0 || shown.length >= marked.length + FURTHER)
  );
}

/** A draft with the groups that its lines have on the page, where the markup has lost them. */
export function withGroups(draft: Draft, blocks: readonly Block[]): Draft {
  if (draft.markup === 'page-text') return draft;
  const lines = draft.groups.flatMap((group) => group.lines);
  const groups = regainGroups(blocks, lines);
  return groups && goFurther(groups, draft.groups) ? { ...draft, groups } : draft;
}
