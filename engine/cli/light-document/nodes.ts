/** Nodes of a parsed page that only hold what the reader asks of a document: far lighter than a browser's. */
import { parseSelector, type Test } from './selectors.ts';

export interface Attribute {
  name: string;
  value: string;
}

const ELEMENT_NODE = 1;
export const TEXT_NODE = 3;
export const COMMENT_NODE = 8;
const DOCUMENT_NODE = 9;
export const DOCTYPE_NODE = 10;
export const FRAGMENT_NODE = 11;

/** A node in a linked tree; `nodeValue` is the text of texts and comments. */
export class LightNode {
  parentNode: LightNode | null = null;
  firstChild: LightNode | null = null;
  lastChild: LightNode | null = null;
  previousSibling: LightNode | null = null;
  nextSibling: LightNode | null = null;

  constructor(
    readonly nodeType: number,
    public nodeValue: string | null = null,
  ) {}

  /** Puts a node that has no parent before `next`, or last when that is null. */
  insert(node: LightNode, next: LightNode | null): void {
    const previous = next === null ? this.lastChild : next.previousSibling;
    node.parentNode = this;
    node.previousSibling = previous;
    node.nextSibling = next;
    if (previous === null) this.firstChild = node;
    else previous.nextSibling = node;
    if (next === null) this.lastChild = node;
    else next.previousSibling = node;
  }

  detach(): void {
    const { parentNode, previousSibling, nextSibling } = this;
    if (parentNode === null) return;
    if (previousSibling === null) parentNode.firstChild = nextSibling;
    else previousSibling.nextSibling = nextSibling;
    if (nextSibling === null) parentNode.lastChild = previousSibling;
    else nextSibling.previousSibling = previousSibling;
    this.parentNode = null;
    this.previousSibling = null;
    this.nextSibling = null;
  }

  /** The node after this one in document order within `top`, or null. */
  following(top: LightNode): LightNode | null {
    if (this.firstChild !== null) return this.firstChild;
    let node: LightNode | null = this;
    while (node !== null && node !== top && node.nextSibling === null) node = node.parentNode;
    return node === null || node === top ? null : node.nextSibling;
  }

  get textContent(): string {
    let text = '';
    for (let node = this.following(this); node !== null; node = node.following(this))
      if (node.nodeType === TEXT_NODE) text += node.nodeValue ?? '';
    return text;
  }

  private elements(test: Test, most = Number.POSITIVE_INFINITY): LightElement[] {
    const found: LightElement[] = [];
    for (let node = this.following(this); node !== null; node = node.following(this)) {
      if (!(node instanceof LightElement) || !test(node)) continue;
      found.push(node);
      if (found.length >= most) break;
    }
    return found;
  }

  getElementsByTagName(name: string): LightElement[] {
    return this.elements(({ localName }) => localName === name);
  }

  getElementsByClassName(name: string): LightElement[] {
    return this.elements(parseSelector(`.${name}`));
  }

  querySelectorAll(selector: string): LightElement[] {
    return this.elements(parseSelector(selector));
  }

  querySelector(selector: string): LightElement | null {
    return this.elements(parseSelector(selector), 1)[0] ?? null;
  }
}

/** An element; no page has shadow trees or frames of its own before a browser has run it. */
export class LightElement extends LightNode {
  /** What a template element holds, which is no child of it. */
  content: LightNode | null = null;
  readonly shadowRoot = null;
  readonly contentDocument = null;

  constructor(
    readonly localName: string,
    readonly namespaceURI: string,
    readonly attributes: Attribute[],
  ) {
    super(ELEMENT_NODE);
  }

  getAttribute(name: string): string | null {
    return this.attributes.find((attribute) => attribute.name === name)?.value ?? null;
  }

  getAttributeNames(): string[] {
    return this.attributes.map(({ name }) => name);
  }

  get id(): string {
    return this.getAttribute('id') ?? '';
  }

  closest(selector: string): LightElement | null {
    const test = parseSelector(selector);
    for (let node: LightNode | null = this; node instanceof LightElement; node = node.parentNode)
      if (test(node)) return node;
    return null;
  }
}

/** The whole page. */
export class LightDocument extends LightNode {
  /** 'no-quirks', 'limited-quirks' or 'quirks': in the last a table may stand in a paragraph. */
  mode = 'no-quirks';

  constructor() {
    super(DOCUMENT_NODE);
  }

  get documentElement(): LightElement | null {
    for (let node = this.firstChild; node !== null; node = node.nextSibling)
      if (node instanceof LightElement) return node;
    return null;
  }
}
