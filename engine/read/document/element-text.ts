/** The visible text of elements of the copied tree. */
import { isBlock } from './block-tags.ts';
import { cleanLines, cleanText, needsBlank } from './clean-text.ts';
import { attribute, classes, type Leaf } from './tree.ts';

/** True for text meant for screen readers or scripts only, names of drawn signs, and controls. */
export function isUnseen(node: Leaf): boolean {
  if (node.tag === 'button' || node.tag === 'head' || node.tag === 'title') return true;
  if (node.attributes === null) return false;
  if (attribute(node, 'style') !== '' && /display\s*:\s*none/i.test(attribute(node, 'style')))
    return node.tag === 'span' || node.tag === 'label' || node.tag === 'small';
  return / (?:sr-only|visually-?hidden|screen-reader-(?:text|only)|screenreader-text|material-(?:icons|symbols)\S*) /.test(
    classes(node),
  );
}

/** Collects the text of inline content. */
export class TextRun {
  text = '';
  private edges = 0;

  /** Notes that an inline tag opens or closes here. */
  edge(): void {
    this.edges += 1;
  }

  add(piece: string): void {
    if (piece === '') return;
    if (this.edges > 0 && needsBlank(this.text, piece, this.edges > 1)) this.text += ' ';
    this.text += piece;
    this.edges = 0;
  }

  break(): void {
    this.text += '\n';
    this.edges = 0;
  }

  clear(): void {
    this.text = '';
    this.edges = 0;
  }
}

function gather(node: Leaf, run: TextRun): void {
  if (node.tag === '') {
    // A line break in the source is a blank; only tags break lines.
    run.add(node.text.replace(/[\r\n\t]+/g, ' '));
    return;
  }
  if (isUnseen(node)) return;
  const block = isBlock(node.tag);
  if (block) run.break();
  else run.edge();
  for (const kid of node.kids) gather(kid, run);
  if (block) run.break();
  else run.edge();
}

/** The text below a node, one entry per visible line. */
export function linesOf(node: Leaf): string[] {
  const run = new TextRun();
  gather(node, run);
  // The page's text is decoded already; a stray '&amp;' left in it is decoded by cleaning.
  return cleanLines(run.text.replace(/</g, '\ue000')).map((line) => line.replace(/\ue000/g, '<'));
}

/** The text below a node on one line. */
export function textOf(node: Leaf): string {
  return linesOf(node).join(' ');
}

/** Cleans text that came from the page as text (never as markup). */
export function cleanPlain(text: string): string {
  return cleanText(text.replace(/</g, '\ue000')).replace(/\ue000/g, '<');
}
