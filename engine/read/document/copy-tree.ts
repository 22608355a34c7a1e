/** Copies a page's document into a light tree, in one walk that only reads. */
import { amountWithUnit } from './amount-in-attributes.ts';
import { emptyTree, type Leaf, MAX_SCRIPT, type Tree } from './tree.ts';

const KEPT = new Set(
  'alt class content data href hidden id itemid itemprop itemref itemscope itemtype lang name property rel resource src style title type typeof value vocab datetime'.split(
    ' ',
  ),
);

/** Elements that hold no text a reader of the page sees. */
const DROPPED = new Set(
  'style template svg math object canvas audio video select option textarea noscript datalist'.split(
    ' ',
  ),
);

/** Class or id of the part that holds readers' comments. */
const COMMENTS = /(?:^|\s)(?:comments?|comments-area|comment-?list|commentlist|respond)(?:\s|$)/i;
/** What a part named like one of comments holds when it is not (only) that. */
const PAGE_PARTS = 'h1,[itemprop],[typeof],.hrecipe,.h-recipe';

/** Links to other pages, and what readers said: never part of the recipe, often half of the page. */
function isPassedOver(element: Element, tag: string): boolean {
  const named =
    tag === 'nav' ||
    COMMENTS.test(element.id) ||
    COMMENTS.test(element.getAttribute('class') ?? '');
  return named && tag !== 'body' && element.querySelector(PAGE_PARTS) === null;
}

/** Nodes copied at most; a very long real page has some 30,000 (common practice, no source). */
const MAX_NODES = 200_000;
/** Elements nested deeper than this join the ancestor at this depth, so later walks may recurse. */
const MAX_DEPTH = 250;
/** Characters of text copied at most. */
const MAX_CHARACTERS = 6_000_000;
/** Frames of the page's own origin looked into at most. */
const MAX_FRAMES = 20;

const ELEMENT = 1;
const TEXT = 3;
const CDATA = 4;

function copyAttributes(element: Element): Map<string, string> | null {
  let found: Map<string, string> | null = null;
  for (const name of element.getAttributeNames()) {
    if (!KEPT.has(name)) continue;
    found ??= new Map();
    found.set(name, (element.getAttribute(name) ?? '').slice(0, 20_000));
  }
  return found;
}

function leaf(tag: string, text: string, parent: Leaf | null): Leaf {
  return { tag, text, attributes: null, kids: [], parent };
}

/** Where the children of an element start: in its open shadow tree when it has one. */
function firstChildOf(element: Element, tag: string): Node | null {
  if (tag.includes('-') && element.shadowRoot?.firstChild) return element.shadowRoot.firstChild;
  return element.firstChild;
}

/** The first node of a frame's body when the frame is of the page's own origin, else null. */
function firstInFrame(frame: Element): Node | null {
  try {
    return (frame as HTMLIFrameElement).contentDocument?.body?.firstChild ?? null;
  } catch {
    return null;
  }
}

/** Walks a document and copies it; depth, node count and text length are bounded. */
class TreeCopier {
  private nodes = 0;
  private frames = 0;
  private characters = 0;
  private scriptCharacters = 0;
  /** Elements the walk is in: the next node of each, and the copy that takes it. */
  private readonly open: { next: Node | null; into: Leaf }[] = [];

  constructor(
    private readonly tree: Tree,
    private readonly spent: () => boolean,
  ) {}

  copy(top: Element): void {
    const { root } = this.tree;
    root.attributes = copyAttributes(top);
    enlist(root, this.tree);
    this.open.push({ next: top.firstChild, into: root });
    for (let level = this.open.at(-1); level; level = this.open.at(-1)) {
      const node = level.next;
      if (!node) {
        this.open.pop();
        continue;
      }
      level.next = node.nextSibling;
      if (this.isOver()) break;
      try {
        this.take(node, level.into);
      } catch {
        // An element that cannot be asked is passed over.
        this.tree.cut = true;
      }
    }
  }

  /** Counts a node; true when a bound is met or the time is used up. */
  private isOver(): boolean {
    this.nodes += 1;
    const full = this.nodes > MAX_NODES || this.characters > MAX_CHARACTERS;
    if (full) this.tree.cut = true;
    else if (this.nodes % 256 === 0 && this.spent()) this.tree.late = true;
    return full || this.tree.late;
  }

  private take(node: Node, into: Leaf): void {
    const kind = node.nodeType;
    if (kind === TEXT || kind === CDATA) {
      const text = node.nodeValue ?? '';
      this.characters += text.length;
      into.kids.push(leaf('', text, into));
    } else if (kind === ELEMENT) this.takeElement(node as Element, into);
  }

  private takeElement(element: Element, into: Leaf): void {
    const tag = element.localName.toLowerCase();
    if (tag === 'script') {
      this.takeScript(element);
      return;
    }
    if (DROPPED.has(tag) || isPassedOver(element, tag)) return;
    const framed = tag === 'iframe' || tag === 'frame';
    if (framed) this.frames += 1;
    if (framed && this.frames > MAX_FRAMES) return;
    const copy = leaf(framed ? 'div' : tag, '', into);
    copy.attributes = copyAttributes(element);
    into.kids.push(copy);
    enlist(copy, this.tree);
    const amount = amountWithUnit(element);
    if (amount !== null) {
      copy.kids.push(leaf('', amount, copy));
      return;
    }
    const next = framed ? firstInFrame(element) : firstChildOf(element, tag);
    if (next) this.open.push({ next, into: this.open.length < MAX_DEPTH ? copy : into });
  }

  private takeScript(element: Element): void {
    if (!/ld\+json/i.test(element.getAttribute('type') ?? '')) return;
    const text = element.textContent ?? '';
    this.scriptCharacters += text.length;
    if (this.scriptCharacters > MAX_SCRIPT) this.tree.cut = true;
    else this.tree.scripts.push(text);
  }
}

/**
 * Copies a document. `spent` is asked now and then and ends the walk when it answers true; `cut` says
 * when a bound was met.
 */
export function copyTree(document: Document, spent: () => boolean): Tree {
  const tree = emptyTree();
  const top = document.documentElement as Element | null;
  if (top) new TreeCopier(tree, spent).copy(top);
  return tree;
}

/** Enters an element in the lists it belongs to. */
function enlist(node: Leaf, tree: Tree): void {
  const { attributes, tag } = node;
  if (tag === 'link' || tag === 'meta' || tag === 'title') tree.about.push(node);
  if (attributes === null) return;
  if (tag === 'a' && /(?:^|\s)author(?:\s|$)/.test(attributes.get('rel') ?? ''))
    tree.about.push(node);
  const id = attributes.get('id');
  if (id && !tree.ids.has(id)) tree.ids.set(id, node);
  const recipeClass = /(?:^|\s)h-?recipe(?:\s|$)/i.test(attributes.get('class') ?? '');
  if (
    recipeClass ||
    attributes.has('itemscope') ||
    attributes.has('itemprop') ||
    attributes.has('typeof')
  )
    tree.marked.push(node);
}
