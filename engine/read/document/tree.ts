/**
 * A light copy of the page, made in one walk: only tags, the attributes that matter and text. All
 * reading of the page works on it, so the page itself is touched once and never changed.
 */

/** An element (`tag` is its lower-case name) or a piece of text (`tag` is ''). */
export type Leaf = {
  tag: string;
  text: string;
  attributes: Map<string, string> | null;
  kids: Leaf[];
  parent: Leaf | null;
};

export type Tree = {
  root: Leaf;
  /** Texts of the JSON-LD scripts, in page order. */
  scripts: string[];
  /** Elements by `id`; the first of an id wins. */
  ids: Map<string, Leaf>;
  /** Elements with an item scope, a `typeof`, an `itemprop` or a recipe class, page order. */
  marked: Leaf[];
  /** `link`, `meta` and `title` elements, and links to the author. */
  about: Leaf[];
  /** True when something was left out because the page is too large. */
  cut: boolean;
  /** True when the time ran out before the whole page was copied. */
  late: boolean;
};

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
/** Characters of JSON-LD kept at most, over all scripts: 20 MB of it must not hang the page. */
export const MAX_SCRIPT = 6_000_000;
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

/**
 * Copies a document. `spent` is asked now and then
 * and ends the walk when it answers true. Depth, node count and text length are bounded; `cut` says
 * when a bound was met.
 */
export function copyTree(document: Document, spent: () => boolean): Tree {
  const root = leaf('html', '', null);
  const tree: Tree = {
    root,
    scripts: [],
    ids: new Map(),
    marked: [],
    about: [],
    cut: false,
    late: false,
  };
  const top = document.documentElement as Element | null;
  if (!top) return tree;
  root.attributes = copyAttributes(top);
  sort(root, tree);
  let nodes = 0;
  let frames = 0;
  let characters = 0;
  let scriptCharacters = 0;
  const open: { next: Node | null; into: Leaf }[] = [{ next: top.firstChild, into: root }];
  while (open.length > 0) {
    const frame = open[open.length - 1] as { next: Node | null; into: Leaf };
    const node = frame.next;
    if (!node) {
      open.pop();
      continue;
    }
    frame.next = node.nextSibling;
    nodes += 1;
    if (nodes > MAX_NODES || characters > MAX_CHARACTERS) tree.cut = true;
    else if (nodes % 256 === 0 && spent()) tree.late = true;
    if (nodes > MAX_NODES || characters > MAX_CHARACTERS || tree.late) break;
    const kind = node.nodeType;
    if (kind === TEXT || kind === CDATA) {
      const text = node.nodeValue ?? '';
      characters += text.length;
      frame.into.kids.push(leaf('', text, frame.into));
    } else if (kind === ELEMENT) {
      const element = node as Element;
      const tag = element.localName.toLowerCase();
      if (tag === 'script') {
        if (!/json/i.test(element.getAttribute('type') ?? '')) continue;
        if (!/ld\+json/i.test(element.getAttribute('type') ?? '')) continue;
        const text = element.textContent ?? '';
        scriptCharacters += text.length;
        if (scriptCharacters > MAX_SCRIPT) tree.cut = true;
        else tree.scripts.push(text);
        continue;
      }
      if (DROPPED.has(tag) || isPassedOver(element, tag)) continue;
      const framed = tag === 'iframe' || tag === 'frame';
      if (framed) frames += 1;
      if (framed && frames > MAX_FRAMES) continue;
      const copy = leaf(framed ? 'div' : tag, '', frame.into);
      copy.attributes = copyAttributes(element);
      frame.into.kids.push(copy);
      sort(copy, tree);
      const first = framed ? firstInFrame(element) : firstChildOf(element, tag);
      if (first) open.push({ next: first, into: open.length < MAX_DEPTH ? copy : frame.into });
    }
  }
  return tree;
}

/** Enters an element in the lists it belongs to. */
function sort(node: Leaf, tree: Tree): void {
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

/** An attribute's value, or ''. */
export function attribute(node: Leaf, name: string): string {
  return node.attributes?.get(name) ?? '';
}

/** Class names of a node, lower case, in one string with blanks around each. */
export function classes(node: Leaf): string {
  const value = node.attributes?.get('class');
  if (!value) return '';
  const lower = value.toLowerCase();
  return ` ${/[\t\r\n\f]/.test(lower) ? lower.replace(/\s+/g, ' ') : lower} `;
}

/** Every element below a node in page order, the node itself first. Recursion depth is bounded. */
export function* elements(node: Leaf): Generator<Leaf> {
  const stack: Leaf[] = [node];
  while (stack.length > 0) {
    const now = stack.pop() as Leaf;
    if (now.tag === '') continue;
    yield now;
    for (let i = now.kids.length - 1; i >= 0; i -= 1) stack.push(now.kids[i] as Leaf);
  }
}

/** First element below a node that passes a test, or null. */
export function findFirst(node: Leaf, test: (node: Leaf) => boolean): Leaf | null {
  for (const element of elements(node)) if (test(element)) return element;
  return null;
}
