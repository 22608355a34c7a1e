/** Reads a recipe from plain text with line breaks. */
import type { Recipe } from '../../model.ts';
import type { Block } from '../document/block.ts';
import { cleanLines } from '../document/clean-text.ts';
import { statementsOf } from '../draft.ts';
import { recipeOf } from '../draft-to-recipe.ts';
import { groupTitle, isHeadingLine } from '../markup/ingredient-values.ts';
import { statedServings } from '../values/stated-servings.ts';
import { readYield } from '../values/yield.ts';
import { ingredientsHeading, stepsHeading } from '../visible/heading-kinds.ts';
import { isSentence, startsWithAmount } from '../visible/line-shapes.ts';
import { draftOfPage, findInPage } from '../visible/visible-recipe.ts';
import { isYieldLine, mayHeadPart } from './pasted-lines.ts';

/** Most lines of a paste that are read. */
const MAX_LINES = 2_000;

const BULLET = /^\s*(?:[-–—*•▢□☐]|\d{1,2}[.)])\s+/;

/** A line of plain text as the page reader sees one: lines with bullets are list entries. */
function blockOf(raw: string, text: string): Block {
  const bullet = BULLET.test(raw);
  const ordered = bullet && /^\s*\d/.test(raw);
  const heading = /^#{1,6}\s/.test(raw);
  return {
    text: text.replace(/^(?:#{1,6}|[-–—*•▢□☐])\s+/, ''),
    tag: 'p',
    level: heading ? 2 : 0,
    bold: /^\*\*.+\*\*:?$/.test(text) || isHeadingLine(text),
    list: ordered ? 2 : bullet ? 1 : -1,
    ordered,
    depth: bullet ? 1 : 0,
    classes: '',
    link: false,
    aside: false,
  };
}

/** The first line that can be a title: short, no amount, no heading word. */
function titleOf(blocks: readonly Block[]): string | null {
  const first = blocks[0];
  if (!first || first.text.length > 120 || startsWithAmount(first.text)) return null;
  if (ingredientsHeading(first) > 0 || stepsHeading(first) > 0 || isSentence(first.text))
    return null;
  if (first.list >= 0 || statedServings(first.text)) return null;
  return first.text.replace(/^\*+|\*+$/g, '').trim() || null;
}

/** A heading of a part without its colon, made one that the page reader knows: lines with amounts follow it. */
function marked(block: Block, next: Block | undefined): Block {
  if (!next || !startsWithAmount(next.text) || !mayHeadPart(block.text)) return block;
  return { ...block, text: `${groupTitle(block.text)}:`, bold: true };
}

/** The heading right above the first ingredient line; null when another line stands there. */
function firstTitle(blocks: readonly Block[], line: string | undefined): string | null {
  const at = blocks.findIndex(({ text }) => text === line);
  const above = blocks[at - 1];
  if (!above || !isHeadingLine(above.text)) return null;
  return ingredientsHeading(above) > 0 || stepsHeading(above) > 0 ? null : groupTitle(above.text);
}

/**
 * Reads a recipe from plain text with line breaks: headings by their words, ingredient lines by
 * their amounts, the rest as the method. Null when it holds no ingredient lines.
 */
export function readPasted(
  text: string,
  page: { url: string | null; language: string | null; title: string | null },
): Recipe | null {
  const blocks: Block[] = [];
  for (const raw of text.slice(0, 400_000).split(/\r\n?|\n/)) {
    if (blocks.length >= MAX_LINES) break;
    const line = cleanLines(raw.replace(/</g, '\ue000'))
      .join(' ')
      .replace(/\ue000/g, '<');
    if (line !== '') blocks.push(blockOf(raw, line.replace(/^[*_]{2}(.+?)[*_]{2}(:?)$/, '$1$2')));
  }
  const title = titleOf(blocks);
  const below = title === null ? blocks : blocks.slice(1);
  const yields = below.filter(({ text }) => isYieldLine(text)).map(({ text }) => text);
  const body = below
    .filter(({ text }) => !isYieldLine(text))
    .map((block, at, all) => marked(block, all[at + 1]));
  const found = findInPage(body);
  if (!found || found.groups.length === 0) return null;
  const draft = draftOfPage(found);
  const [first] = draft.groups;
  if (first?.title === null) first.title = firstTitle(body, first.lines[0]);
  draft.markup = 'pasted';
  draft.title = title;
  if (yields.length > 0) draft.yields = statementsOf(yields, 'page');
  if (draft.yields.length === 0) {
    const line = blocks.find(
      (block) => statedServings(block.text) !== null && block.text.length < 120,
    );
    if (line && readYield([line.text]).servings) draft.yields = statementsOf([line.text], 'page');
  }
  return recipeOf(draft, { ...page, author: null, image: null }, []);
}
