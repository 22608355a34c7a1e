/** Reads recipes marked by attributes: microdata, and what RDFa Lite shares with it. */
import { cleanLines, isLeftover } from '../document/clean-text.ts';
import { cleanPlain, linesOf, textOf } from '../document/element-text.ts';
import { attribute, elements, type Leaf, type Tree } from '../document/tree.ts';
import { type Draft, emptyDraft, statementsOf } from '../draft.ts';
import { groupLines } from './ingredient-values.ts';
import { splitMethod, stepsOf } from './instruction-values.ts';
import { isRecipeType, NUTRITION_KEYS } from './json-ld-recipes.ts';

/** Which attributes carry the markup: microdata's or RDFa Lite's. */
export type Vocabulary = { scope: string; type: string; property: string };
const MICRODATA: Vocabulary = { scope: 'itemscope', type: 'itemtype', property: 'itemprop' };
export const RDFA: Vocabulary = { scope: 'typeof', type: 'typeof', property: 'property' };

/** Properties of an item by name, values in page order. */
export type Properties = Map<string, Leaf[]>;

/** Most properties gathered for one item. */
const MAX_PROPERTIES = 2_000;

function has(node: Leaf, name: string): boolean {
  return node.attributes?.has(name) ?? false;
}

/** Names in a property attribute, without prefix or address: 'schema:name' gives 'name'. */
function names(value: string): string[] {
  return value
    .split(/\s+/)
    .map((name) => name.replace(/^.*[/#:]/, ''))
    .filter((name) => name !== '');
}

/**
 * The properties of an item, by the WHATWG algorithm: the item's own descendants and those of the
 * elements its `itemref` names, not looking inside nested items. Cycles end, because no element is
 * taken twice.
 */
function propertiesOf(item: Leaf, tree: Tree, vocabulary: Vocabulary): Properties {
  const found: Properties = new Map();
  const seen = new Set<Leaf>([item]);
  const pending: Leaf[] = [];
  const references = vocabulary === MICRODATA ? attribute(item, 'itemref').split(/\s+/) : [];
  for (const id of references.reverse()) {
    const target = id === '' ? undefined : tree.ids.get(id);
    if (target) pending.push(target);
  }
  for (let i = item.kids.length - 1; i >= 0; i -= 1) pending.push(item.kids[i] as Leaf);
  let count = 0;
  while (pending.length > 0 && count < MAX_PROPERTIES) {
    const node = pending.pop() as Leaf;
    if (node.tag === '' || seen.has(node)) continue;
    seen.add(node);
    if (has(node, vocabulary.property)) {
      for (const name of names(attribute(node, vocabulary.property))) {
        count += 1;
        const list = found.get(name);
        if (list) list.push(node);
        else found.set(name, [node]);
      }
    }
    if (has(node, vocabulary.scope)) continue;
    for (let i = node.kids.length - 1; i >= 0; i -= 1) pending.push(node.kids[i] as Leaf);
  }
  return found;
}

const ADDRESS_TAGS: Record<string, string> = {
  a: 'href',
  area: 'href',
  link: 'href',
  img: 'src',
  embed: 'src',
  source: 'src',
  track: 'src',
};

/** The value of a property's element. Source: WHATWG HTML, values of microdata properties. */
function propertyValue(node: Leaf): string {
  if (node.tag === 'meta' || has(node, 'content')) return cleanPlain(attribute(node, 'content'));
  const address = ADDRESS_TAGS[node.tag];
  if (address) return attribute(node, address).trim();
  if ((node.tag === 'data' || node.tag === 'meter') && has(node, 'value'))
    return cleanPlain(attribute(node, 'value'));
  if (node.tag === 'time' && has(node, 'datetime')) return attribute(node, 'datetime').trim();
  return textOf(node);
}

/** The visible text of a property's element; links and `content` give way to what is read. */
function shownText(node: Leaf): string {
  const shown = textOf(node);
  return shown === '' ? propertyValue(node) : shown;
}

function first(found: Properties, ...keys: string[]): Leaf | null {
  for (const key of keys) {
    for (const node of found.get(key) ?? []) {
      if (propertyValue(node) !== '' || node.kids.length > 0) return node;
    }
  }
  return null;
}

/** Ingredient lines of property elements: each one line, or the lines of one element holding all. */
function ingredientLines(nodes: readonly Leaf[]): string[] {
  if (nodes.length === 1 && nodes[0]) {
    const items = entriesOf(nodes[0]);
    if (items.length > 1) return items;
    const lines = linesOf(nodes[0]);
    return lines.length > 1 ? lines : [shownText(nodes[0])];
  }
  return nodes.map(shownText);
}

/** Elements that do not stand inside another of the same list. */
export function outermost(nodes: readonly Leaf[]): Leaf[] {
  const set = new Set(nodes);
  return nodes.filter((node) => {
    for (let up = node.parent; up; up = up.parent) if (set.has(up)) return false;
    return true;
  });
}

const lengthOf = (texts: readonly string[]): number => texts.join('').length;

/** Share of the text of entries which those within them must hold to be the steps. Own choice. */
const HELD = 0.8;

/** Texts of the entries below an element: of lists within lists the inner ones, where they hold all. */
function entriesOf(node: Leaf): string[] {
  const all = [...elements(node)].filter((kid) => kid !== node && kid.tag === 'li');
  const outer = outermost(all).map(textOf);
  const inner = all
    .filter((kid) => ![...elements(kid)].some((one) => one !== kid && one.tag === 'li'))
    .map(textOf);
  return lengthOf(inner) > lengthOf(outer) * HELD ? inner : outer;
}

/** Method texts below an element: its list items, else its lines. */
export function methodTexts(node: Leaf): string[] {
  if (node.tag === 'meta' || (node.kids.length === 0 && has(node, 'content')))
    return splitMethod(attribute(node, 'content'));
  const items = entriesOf(node);
  const lines = linesOf(node);
  // Lists in a method that stands in paragraphs hold something else.
  if (items.length > 1 && lengthOf(items) * 2 > lengthOf(lines)) return items;
  return lines.length === 1 ? splitMethod((lines[0] ?? '').replace(/</g, '‹')) : lines;
}

/** What a property's element says of a time, to a program and to a reader. */
export function timeTexts(node: Leaf | null | undefined): string[] {
  return node ? [propertyValue(node), textOf(node)] : [];
}

function nutritionOf(found: Properties, tree: Tree, vocabulary: Vocabulary) {
  const node = first(found, 'nutrition');
  if (!node) return null;
  const inner = propertiesOf(node, tree, vocabulary);
  const out: Record<string, string> = {};
  for (const key of NUTRITION_KEYS) {
    const figure = first(inner, key);
    const text = figure ? shownText(figure).slice(0, 200) : '';
    if (!isLeftover(text)) out[key] = text;
  }
  return Object.keys(out).length === 0 ? null : out;
}

function authorOf(found: Properties, tree: Tree, vocabulary: Vocabulary): string | null {
  const node = first(found, 'author', 'creator');
  if (!node) return null;
  const name = first(propertiesOf(node, tree, vocabulary), 'name');
  const text = cleanLines(name ? shownText(name) : shownText(node)).join(' ');
  return text === '' ? null : text.slice(0, 200);
}

/** A draft from an item's properties; shared by microdata and RDFa Lite. */
export function draftOfItem(item: Leaf, tree: Tree, vocabulary: Vocabulary): Draft {
  const draft = emptyDraft(vocabulary === MICRODATA ? 'microdata' : 'rdfa');
  const found = propertiesOf(item, tree, vocabulary);
  const newer = found.get('recipeIngredient') ?? [];
  const older = found.get('ingredients') ?? found.get('ingredient') ?? [];
  const nodes = newer.length >= older.length ? newer : older;
  draft.groups = groupLines(ingredientLines(nodes));
  draft.glued =
    nodes.length === 1 && draft.groups.length === 1 && draft.groups[0]?.lines.length === 1;
  const method = found.get('recipeInstructions') ?? found.get('instructions') ?? [];
  draft.steps = stepsOf(outermost(method).flatMap(methodTexts));
  const title = first(found, 'name', 'headline');
  draft.title = title ? shownText(title) : null;
  const yields = found.get('recipeYield') ?? found.get('yield') ?? [];
  draft.yields = statementsOf(yields.map(shownText), 'markup');
  draft.author = authorOf(found, tree, vocabulary);
  const image = first(found, 'image', 'photo');
  draft.image = image ? propertyValue(image) || null : null;
  draft.times = {
    prep: timeTexts(first(found, 'prepTime')),
    cook: timeTexts(first(found, 'cookTime', 'performTime')),
    total: timeTexts(first(found, 'totalTime', 'duration')),
  };
  draft.nutrition = nutritionOf(found, tree, vocabulary);
  return draft;
}

/** Recipe items of the page in microdata, page order. */
export function readMicrodata(tree: Tree): Draft[] {
  return tree.marked
    .filter(
      (node) => has(node, 'itemscope') && isRecipeType(attribute(node, 'itemtype').split(/\s+/)),
    )
    .slice(0, 30)
    .map((item) => draftOfItem(item, tree, MICRODATA));
}

/**
 * Ingredients and steps marked with `itemprop` though no Recipe scope holds them: a hint, used when
 * nothing better is there. Null when there are none.
 */
export function readLooseProperties(tree: Tree): Draft | null {
  const marked = tree.marked.some((node) =>
    /(?:^|\s)(?:recipeIngredient|ingredients|recipeInstructions)(?:\s|$)/.test(
      attribute(node, 'itemprop'),
    ),
  );
  if (!marked) return null;
  const whole: Leaf = { ...tree.root, attributes: null };
  const draft = draftOfItem({ ...whole, kids: openScopes(whole) }, tree, MICRODATA);
  draft.title = null;
  draft.author = null;
  draft.image = null;
  return draft.groups.length > 0 || draft.steps.length > 0 ? draft : null;
}

/** The elements with `itemprop` ingredients or method, whichever scope they stand in. */
function openScopes(root: Leaf): Leaf[] {
  return [...elements(root)].filter((node) =>
    /(?:^|\s)(?:recipeIngredient|ingredients|recipeInstructions|recipeYield)(?:\s|$)/.test(
      attribute(node, 'itemprop'),
    ),
  );
}
