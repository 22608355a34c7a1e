/** Makes the visible lines of a page out of its copied tree. */
import { headWithColon, ingredientsHeading, stepsHeading } from '../visible/heading-kinds.ts';
import { MAX_HEADING } from '../visible/heading-phrases.ts';
import { type Block, HEAD_ROW } from './block.ts';
import { isBlock } from './block-tags.ts';
import { cleanLines } from './clean-text.ts';
import {
  filledCells,
  inputNumber,
  isAside,
  isHeadRow,
  isRow,
  isRowOfLines,
  isStack,
} from './element-roles.ts';
import { isUnseen, TextRun, textOf } from './element-text.ts';
import { classes, type Leaf } from './tree.ts';

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

/** Writes lines while it walks the tree. */
class BlockWriter {
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
    if (!isBlock(node.tag)) this.walkInline(node, context, bold, link);
    else if (context.joined) {
      this.run.add(' ');
      for (const kid of node.kids) this.walk(kid, context, bold, link);
      this.run.add(' ');
    } else this.walkBlock(node, context, bold, link);
  }

  private walkInline(node: Leaf, context: Context, bold: boolean, link: boolean): void {
    const strong = bold || node.tag === 'b' || node.tag === 'strong';
    this.run.edge();
    for (const kid of node.kids) this.walk(kid, context, strong, link || node.tag === 'a');
    this.run.edge();
  }

  private walkBlock(node: Leaf, context: Context, bold: boolean, link: boolean): void {
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
  const writer = new BlockWriter(spent);
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
