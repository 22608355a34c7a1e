/** Makes the visible lines of a page out of its copied tree. */
import { headWithColon, ingredientsHeading, stepsHeading } from '../visible/heading-kinds.ts';
import { MAX_HEADING } from '../visible/heading-phrases.ts';
import { startsWithFigure } from '../visible/line-shapes.ts';
import { type Block, HEAD_ROW } from './block.ts';
import { isBlock } from './block-tags.ts';
import { cleanLines } from './clean-text.ts';
import { isUnseen, TextRun, textOf } from './element-text.ts';
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

type Context = {
  tag: string;
  level: number;
  list: number;
  ordered: boolean;
  depth: number;
  classes: string;
  aside: boolean;
  /** Inner blocks do not break the line: an entry or row made of several blocks. */
  joined: boolean;
};

function isAside(node: Leaf): boolean {
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

/** True when an entry or row holds no lists, tables or headings and is short: then it is one line. */
function isRow(node: Leaf): boolean {
  let length = 0;
  let paragraphs = 0;
  const stack = [...node.kids];
  while (stack.length > 0) {
    const kid = stack.pop() as Leaf;
    if (STRUCTURE.has(kid.tag)) return false;
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
function isStack(node: Leaf): boolean {
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
function isHeadRow(node: Leaf): boolean {
  const cells = node.kids.filter((kid) => kid.tag !== '');
  return node.tag === 'tr' && cells.length >= 2 && cells.every((cell) => cell.tag === 'th');
}

/** How many cells of a row hold text: a row of one is read as that cell. */
function filledCells(row: Leaf): number {
  return row.kids.filter((kid) => kid.tag !== '' && textOf(kid) !== '').length;
}

/** True when each cell of a row is a line by itself: two ingredients beside each other. */
function isRowOfLines(row: Leaf): boolean {
  const cells = row.kids.filter((kid) => kid.tag !== '').map(textOf);
  const filled = cells.filter((text) => text !== '');
  return (
    filled.length >= 2 && filled.every((text) => startsWithFigure(text) && /\s\p{L}{3}/u.test(text))
  );
}

/** The number shown in a field ('Servings: [4]'), else ''. */
function inputNumber(node: Leaf): string {
  const value = attribute(node, 'value').trim();
  return /^(?:number|text|)$/.test(attribute(node, 'type')) &&
    /^\d{1,3}(?:[.,]\d{1,2})?$/.test(value)
    ? ` ${value} `
    : '';
}

class Writer {
  readonly blocks: Block[] = [];
  private lists = 0;
  private run = new TextRun();
  private plain = 0;
  private boldText = 0;
  /** Characters of bold text the line starts with. */
  private lead = 0;
  private linkText = 0;
  private visits = 0;
  private late = false;

  constructor(private readonly spent: () => boolean) {}

  /** Ends the line and keeps it when it has text. */
  flush(context: Context): void {
    const lines = this.run.text === '' ? [] : cleanLines(this.run.text.replace(/</g, '\ue000'));
    const bold = this.boldText > 0 && this.plain === 0;
    const link = this.linkText > 0 && this.linkText >= this.plain + this.boldText;
    for (const line of lines) {
      // A drawn bullet before a figure is no part of the line.
      const text = line.replace(/\ue000/g, '<').replace(/^[-–—•·*▢□☐○●]\s+(?=[\d¼½¾⅓⅔])/, '');
      const { tag, level, list, ordered, depth, aside, classes: names } = context;
      const block = { text, tag, level, bold, list, ordered, depth, classes: names, link, aside };
      // 'Ingredients: 250 g flour' is a heading and a line, and so is 'Tip: ...' with the word in bold.
      const head = list < 0 && level === 0 ? headWithColon(text, this.lead > 2) : '';
      if (head !== '') this.blocks.push({ ...block, text: head, bold: true });
      this.blocks.push({ ...block, text: text.slice(head.length).trim() });
    }
    this.run.clear();
    this.plain = 0;
    this.boldText = 0;
    this.lead = 0;
    this.linkText = 0;
  }

  private addText(text: string, bold: boolean, link: boolean, kept = false): void {
    const piece = kept ? text : text.replace(/[\r\n\t]+/g, ' ');
    const length = piece.trim().length;
    if (bold) {
      this.boldText += length;
      if (this.plain === 0) this.lead = this.boldText;
    } else this.plain += length;
    if (link) this.linkText += length;
    this.run.add(piece);
  }

  /** Buttons are left out, but for those that open the ingredients or the method. */
  private addButton(node: Leaf, context: Context): void {
    const text = node.kids
      .map((kid) => (kid.tag === '' ? kid.text : textOf(kid)))
      .join(' ')
      .trim();
    if (text === '' || text.length > MAX_HEADING) return;
    const { list, depth, aside } = context;
    const block: Block = {
      text,
      tag: 'button',
      level: 0,
      bold: true,
      list,
      ordered: false,
      depth,
      classes: '',
      link: false,
      aside,
    };
    if (ingredientsHeading(block) < 3 && stepsHeading(block) < 3) return;
    this.flush(context);
    this.blocks.push(block);
  }

  walk(node: Leaf, context: Context, bold: boolean, link: boolean): void {
    this.visits += 1;
    if (this.visits % 256 === 0 && this.spent()) this.late = true;
    if (this.late) return;
    if (node.tag === '') {
      // Only there do the source's line breaks break lines.
      this.addText(node.text, bold, link, context.tag === 'pre');
      return;
    }
    if (node.tag === 'button' && !context.joined) this.addButton(node, context);
    if (node.tag === 'input') this.addText(inputNumber(node), bold, link);
    if (isUnseen(node)) return;
    if (!isBlock(node.tag)) {
      const strong = bold || node.tag === 'b' || node.tag === 'strong';
      this.run.edge();
      for (const kid of node.kids) this.walk(kid, context, strong, link || node.tag === 'a');
      this.run.edge();
      return;
    }
    if (context.joined) {
      this.run.add(' ');
      for (const kid of node.kids) this.walk(kid, context, bold, link);
      this.run.add(' ');
      return;
    }
    this.flush(context);
    const inner = this.enter(node, context);
    const stack = !inner.joined && node.kids.length >= 3 && isStack(node);
    for (const kid of node.kids) {
      this.walk(kid, inner, bold, link);
      if (stack) this.flush(inner);
    }
    this.flush(inner);
  }

  /** The context inside a block element. */
  private enter(node: Leaf, context: Context): Context {
    const { tag } = node;
    const own = classes(node);
    const next: Context = {
      ...context,
      tag: tag === 'br' ? context.tag : tag,
      level: /^h[1-6]$/.test(tag) ? Number(tag[1]) : tag === 'br' ? context.level : 0,
      classes: `${own}${node.parent ? classes(node.parent) : ''}`,
      aside: context.aside || isAside(node),
    };
    if (tag === 'ul' || tag === 'ol' || tag === 'table' || tag === 'dl') {
      this.lists += 1;
      next.list = this.lists;
      next.depth += 1;
      next.ordered = tag === 'ol';
    } else if (tag === 'li' || tag === 'tr') {
      next.joined = isRow(node) && !(tag === 'tr' && isRowOfLines(node));
      if (isHeadRow(node)) next.tag = HEAD_ROW;
      else if (tag === 'tr' && filledCells(node) < 2) next.tag = 'td';
    } else if (next.level > 0 || tag === 'section' || tag === 'article') {
      next.list = -1;
      next.ordered = false;
    }
    return next;
  }
}

/** The page's visible lines in reading order; `spent` ends the work early when it answers true. */
export function blocksOf(root: Leaf, spent: () => boolean): Block[] {
  const writer = new Writer(spent);
  const context: Context = {
    tag: 'body',
    level: 0,
    list: -1,
    ordered: false,
    depth: 0,
    classes: '',
    aside: false,
    joined: false,
  };
  writer.walk(root, context, false, false);
  writer.flush(context);
  return writer.blocks;
}
