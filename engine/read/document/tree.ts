/**
 * The light copy of a page that all reading works on: only tags, the attributes that matter and text.
 * The page itself is touched once and never changed.
 */

/** Characters of JSON-LD kept at most, over all scripts: 20 MB of it must not hang the page. */
export const MAX_SCRIPT = 6_000_000;

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

/** A tree with nothing in it. */
export function emptyTree(): Tree {
  return {
    root: { tag: 'html', text: '', attributes: null, kids: [], parent: null },
    scripts: [],
    ids: new Map(),
    marked: [],
    about: [],
    cut: false,
    late: false,
  };
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
