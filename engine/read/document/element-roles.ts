/** Tells what an element is by its name, classes and shape: a side part, a row, a list drawn with styles. */
import { isSentence, startsWithFigure } from '../visible/line-shapes.ts';
import { textOf } from './element-text.ts';
import { attribute, classes, type Leaf } from './tree.ts';

const ASIDE_TAGS = new Set(['nav', 'footer', 'aside']);
/** Class or id words of parts that are not the recipe (common practice, no source). */
const COMMENT_WORDS =
  /(?:^|[\s_-])(?:comments?|comment-?list|commentlist|respond|reviews?-?list)(?:$|[\s_-])/;
const ASIDE_WORDS =
  /(?:^|[\s_-])(?:related|sidebar|breadcrumbs?|cookie-?(?:banner|consent|notice)|newsletter|share|social|menu|navbar|navigation|footer)(?:$|[\s_-])/;

/** Characters above which a part named like a side part is looked into before it is set aside. */
const LARGE = 3_000;

/** True when a part holds the page's main heading or a good deal of text: then it is the page. */
function holdsPage(node: Leaf): boolean {
  let length = 0;
  const stack = [node];
  while (stack.length > 0) {
    const now = stack.pop() as Leaf;
    if (now.tag === 'h1') return true;
    length += now.text.trim().length;
    if (length > LARGE) return true;
    for (const kid of now.kids) stack.push(kid);
  }
  return false;
}

/** Longest text of one row or entry whose inner blocks are read as one line (characters). */
const MAX_ROW = 4_000;

/** True for navigation, footers, comments and boxes of related pages. */
export function isAside(node: Leaf): boolean {
  if (ASIDE_TAGS.has(node.tag)) return true;
  if (
    node.attributes === null ||
    node.tag === 'body' ||
    node.tag === 'main' ||
    node.tag === 'article'
  )
    return node.tag === 'article' && /\bcomment\b/.test(classes(node));
  const name = `${classes(node)} ${attribute(node, 'id').toLowerCase()}`;
  if (name.length <= 1) return false;
  return COMMENT_WORDS.test(name) || (ASIDE_WORDS.test(name) && !holdsPage(node));
}

const STRUCTURE = new Set(['ul', 'ol', 'table', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'dl']);

/** True for the heading of one step within its entry: 'To serve:' before a single paragraph. */
function isRunIn(heading: Leaf, entry: Leaf): boolean {
  if (entry.tag !== 'li' || heading.parent !== entry || !/[:：]$/.test(textOf(heading)))
    return false;
  const rest = entry.kids.filter((kid) => kid !== heading && textOf(kid) !== '');
  return rest.length === 1 && rest[0]?.tag === 'p' && isSentence(textOf(rest[0]));
}

/** True when an entry or row holds no lists, tables or headings and is short: then it is one line. */
export function isRow(node: Leaf): boolean {
  let length = 0;
  let paragraphs = 0;
  const stack = [...node.kids];
  while (stack.length > 0) {
    const kid = stack.pop() as Leaf;
    if (STRUCTURE.has(kid.tag) && !isRunIn(kid, node)) return false;
    if (kid.tag === 'p') paragraphs += 1;
    length += kid.text.length;
    if (length > MAX_ROW || (node.tag === 'tr' && paragraphs > 4)) return false;
    for (const next of kid.kids) stack.push(next);
  }
  return true;
}

/**
 * True when an element holds nothing but three or more like inline elements (labels, or spans of one
 * class): a list drawn with styles, each of them a line.
 */
export function isStack(node: Leaf): boolean {
  let first: Leaf | null = null;
  let count = 0;
  for (const kid of node.kids) {
    if (kid.tag === '') {
      if (kid.text.trim() !== '') return false;
      continue;
    }
    if (kid.tag !== 'label' && (kid.tag !== 'span' || !kid.attributes?.has('class'))) return false;
    first ??= kid;
    if (kid.tag !== first.tag || attribute(kid, 'class') !== attribute(first, 'class'))
      return false;
    count += 1;
  }
  return count >= 3;
}

/** True for a table row of nothing but two or more heading cells: it names the columns. */
export function isHeadRow(node: Leaf): boolean {
  const cells = node.kids.filter((kid) => kid.tag !== '');
  return node.tag === 'tr' && cells.length >= 2 && cells.every((cell) => cell.tag === 'th');
}

/** How many cells of a row hold text: a row of one is read as that cell. */
export function filledCells(row: Leaf): number {
  return row.kids.filter((kid) => kid.tag !== '' && textOf(kid) !== '').length;
}

/** True when each cell of a row is a line by itself: two ingredients beside each other. */
export function isRowOfLines(row: Leaf): boolean {
  const cells = row.kids.filter((kid) => kid.tag !== '').map(textOf);
  const filled = cells.filter((text) => text !== '');
  return (
    filled.length >= 2 && filled.every((text) => startsWithFigure(text) && /\s\p{L}{3}/u.test(text))
  );
}

/** The number shown in a field ('Servings: [4]'), else ''. */
export function inputNumber(node: Leaf): string {
  const value = attribute(node, 'value').trim();
  return /^(?:number|text|)$/.test(attribute(node, 'type')) &&
    /^\d{1,3}(?:[.,]\d{1,2})?$/.test(value)
    ? ` ${value} `
    : '';
}
