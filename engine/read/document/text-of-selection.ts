/** The selected part of a page as plain text that keeps lines, headings and list entries. */
import { isBlock } from './block-tags.ts';

/** Longest text taken (characters). */
const MOST = 400_000;
const UNREAD = /^(?:script|style|noscript|template|button|svg|select|video|audio)$/;
/** Elements read at most. */
const MOST_NODES = 100_000;
/** Elements in one another read at most, so that the walk may recurse. */
const MOST_DEPTH = 500;

/** Text selected in a field that is being typed in, which no range of the page covers. */
function inField(document: Document): string {
  const field = document.activeElement as HTMLTextAreaElement | null;
  if (field?.localName !== 'textarea') return '';
  return field.value.slice(field.selectionStart ?? 0, field.selectionEnd ?? 0);
}

/** What a line starts with, so that the reader of plain text knows headings and entries. */
function markOf(element: Element): string {
  const tag = element.localName;
  if (/^h[1-6]$/.test(tag)) return '## ';
  if (tag !== 'li') return '';
  return element.parentElement?.localName === 'ol' ? `${place(element)}. ` : '- ';
}

/** Place of an entry among the entries of its list, from 1. */
function place(element: Element): number {
  let n = 1;
  for (let at = element.previousElementSibling; at; at = at.previousElementSibling)
    if (at.localName === 'li') n += 1;
  return n;
}

function isHidden(element: Element): boolean {
  const view = element.ownerDocument.defaultView;
  return view?.getComputedStyle(element).display === 'none';
}

/** Lines of one range, in page order. Only reads: nothing is cloned, so no page code runs. */
class Lines {
  private readonly done: string[] = [];
  private line = '';
  private mark = '';
  private length = 0;
  private nodes = 0;

  constructor(private readonly range: Range) {}

  private end(): void {
    const text = this.line.replace(/\s+/g, ' ').trim();
    if (text !== '') {
      this.done.push(this.mark + text);
      this.length += text.length;
      this.mark = '';
    }
    this.line = '';
  }

  private add(text: Text): void {
    const { range } = this;
    const from = text === range.startContainer ? range.startOffset : 0;
    const to = text === range.endContainer ? range.endOffset : text.length;
    this.line += text.data.slice(from, to);
  }

  walk(node: Node, depth: number): void {
    this.nodes += 1;
    if (this.length > MOST || this.nodes > MOST_NODES || depth > MOST_DEPTH) return;
    if (!this.range.intersectsNode(node)) return;
    if (node.nodeType === 3) this.add(node as Text);
    if (node.nodeType !== 1) return;
    const element = node as Element;
    const tag = element.localName;
    if (UNREAD.test(tag) || isHidden(element)) return;
    // Cells of a row stay on its line.
    const cell = tag === 'td' || tag === 'th';
    const breaks = isBlock(tag) && !cell;
    if (breaks) {
      this.end();
      this.mark = markOf(element) || this.mark;
    }
    if (cell) this.line += ' ';
    for (let kid = node.firstChild; kid; kid = kid.nextSibling) this.walk(kid, depth + 1);
    if (breaks) {
      this.end();
      this.mark = '';
    }
  }

  text(): string {
    this.end();
    return this.done.join('\n').slice(0, MOST);
  }
}

/**
 * The text selected in a document: a line for each block, '## ' before headings, '- ' or '1. ' before
 * entries of lists. '' when nothing is selected.
 */
export function selectedText(document: Document): string {
  const selection = document.getSelection();
  const parts: string[] = [];
  for (let i = 0; i < (selection?.rangeCount ?? 0); i += 1) {
    const range = selection?.getRangeAt(i);
    if (!range || range.collapsed) continue;
    const lines = new Lines(range);
    lines.walk(range.commonAncestorContainer, 0);
    parts.push(lines.text());
  }
  return parts.filter((part) => part !== '').join('\n') || inField(document);
}
