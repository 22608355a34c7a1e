/** Reads recipes from a page's JSON-LD scripts. */
import { cleanText, isLeftover } from '../document/clean-text.ts';
import { type Draft, emptyDraft, linesIn, statementsOf } from '../draft.ts';
import { readIngredients } from './ingredient-values.ts';
import { readInstructions } from './instruction-values.ts';
import { type Json, parseJson, parseTolerant } from './tolerant-json.ts';

type Node = { [key: string]: Json };

/** Objects and lists visited at most in one page's JSON-LD. */
const MAX_VISITS = 300_000;
/** Depth to which nodes are looked for; real pages stay below it (common practice, no source). */
const MAX_DEPTH = 20;
const MAX_RECIPES = 30;

function isNode(value: Json | undefined): value is Node {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** True when an `@type` value names Recipe in any spelling: list, prefix, full address, lower case. */
export function isRecipeType(type: Json | undefined): boolean {
  const types = Array.isArray(type) ? type.slice(0, 20) : [type];
  return types.some((one) => typeof one === 'string' && /(?:^|[/#:])recipe$/i.test(one.trim()));
}

type Found = { recipes: Node[]; byId: Map<string, Node> };

/** Walks all values without recursion, in page order, gathering Recipe nodes and nodes by `@id`. */
function walk(values: readonly Json[], spent: () => boolean): Found {
  const found: Found = { recipes: [], byId: new Map() };
  const stack: { value: Json; depth: number }[] = [];
  for (let i = values.length - 1; i >= 0; i -= 1)
    stack.push({ value: values[i] ?? null, depth: 0 });
  for (let visits = 0; stack.length > 0 && visits < MAX_VISITS; visits += 1) {
    if (visits % 1024 === 1023 && spent()) break;
    const { value, depth } = stack.pop() as { value: Json; depth: number };
    if (typeof value !== 'object' || value === null || depth > MAX_DEPTH) continue;
    if (!Array.isArray(value)) {
      const id = value['@id'];
      if (typeof id === 'string') {
        const before = found.byId.get(id);
        if (!before || Object.keys(value).length > Object.keys(before).length)
          found.byId.set(id, value);
      }
      if (isRecipeType(value['@type']) && found.recipes.length < MAX_RECIPES)
        found.recipes.push(value);
    }
    const kids = Array.isArray(value) ? value : Object.values(value);
    for (let i = kids.length - 1; i >= 0; i -= 1) {
      const kid = kids[i];
      if (typeof kid === 'object' && kid !== null) stack.push({ value: kid, depth: depth + 1 });
    }
  }
  return found;
}

/** Follows an `@id` reference once; cycles therefore end. */
function resolve(value: Json | undefined, byId: Map<string, Node>): Json | undefined {
  if (!isNode(value)) return value;
  const id = value['@id'];
  if (typeof id !== 'string' || Object.keys(value).some((key) => key === 'name' || key === 'url'))
    return value;
  return byId.get(id) ?? value;
}

/** The first text in a value: a string, a number, a list's first, or a property of an object. */
function firstText(
  value: Json | undefined,
  byId: Map<string, Node>,
  keys: readonly string[],
  depth = 0,
): string | null {
  if (depth > 4) return null;
  if (typeof value === 'string' || typeof value === 'number') {
    const text = cleanText(String(value));
    return isLeftover(text) ? null : text;
  }
  if (Array.isArray(value)) {
    for (const part of value.slice(0, 20)) {
      const text = firstText(part, byId, keys, depth + 1);
      if (text !== null) return text;
    }
    return null;
  }
  const node = resolve(value, byId);
  if (!isNode(node)) return null;
  for (const key of keys) {
    const text = firstText(node[key], byId, keys, depth + 1);
    if (text !== null) return text;
  }
  return null;
}

function timeTexts(value: Json | undefined): string[] {
  if (Array.isArray(value)) return timeTexts(value[0]);
  if (isNode(value)) return timeTexts(value['@value'] ?? value.maxValue ?? value.value);
  if (typeof value === 'number') return [String(value)];
  return typeof value === 'string' ? [cleanText(value)] : [];
}

function yieldTexts(value: Json | undefined, depth = 0): string[] {
  if (depth > 3) return [];
  if (typeof value === 'string') return [cleanText(value)];
  if (typeof value === 'number') return [String(value)];
  if (Array.isArray(value)) return value.slice(0, 10).flatMap((one) => yieldTexts(one, depth + 1));
  if (!isNode(value)) return [];
  const amount = value.value ?? value['@value'] ?? value.minValue;
  if (amount === undefined) return yieldTexts(value.name ?? null, depth + 1);
  const unit = value.unitText ?? value.unitCode;
  return typeof unit === 'string' ? [cleanText(`${String(amount)} ${unit}`)] : [String(amount)];
}

/** Names of the nutrition properties that are kept. Source: schema.org NutritionInformation. */
export const NUTRITION_KEYS = [
  'servingSize',
  'calories',
  'fatContent',
  'saturatedFatContent',
  'unsaturatedFatContent',
  'transFatContent',
  'cholesterolContent',
  'sodiumContent',
  'carbohydrateContent',
  'fiberContent',
  'sugarContent',
  'proteinContent',
] as const;

function nutrition(
  value: Json | undefined,
  byId: Map<string, Node>,
): Record<string, string> | null {
  const one = resolve(Array.isArray(value) ? value[0] : value, byId);
  if (!isNode(one)) return null;
  const out: Record<string, string> = {};
  for (const key of NUTRITION_KEYS) {
    const figure = one[key];
    if (typeof figure !== 'string' && typeof figure !== 'number') continue;
    const text = cleanText(String(figure));
    if (!isLeftover(text)) out[key] = text.slice(0, 200);
  }
  return Object.keys(out).length === 0 ? null : out;
}

function draftOf(node: Node, byId: Map<string, Node>): Draft {
  const draft = emptyDraft('json-ld');
  const ingredients = readIngredients(node.recipeIngredient);
  const list =
    ingredients.groups.length > 0
      ? ingredients
      : readIngredients(node.ingredients ?? node.recipeIngredients);
  draft.groups = list.groups;
  draft.glued = list.glued;
  draft.title = firstText(node.name ?? node.headline, byId, ['@value', 'name']);
  draft.steps = readInstructions(node.recipeInstructions ?? node.instructions);
  const yields = yieldTexts(node.recipeYield ?? node.yield).filter((text) => !isLeftover(text));
  draft.yields = statementsOf(yields, 'markup');
  draft.author = firstText(node.author ?? node.creator, byId, ['name', '@value']);
  draft.image = firstText(node.image, byId, ['url', 'contentUrl', '@id']);
  draft.language = firstText(node.inLanguage, byId, ['alternateName', '@value', 'name']);
  draft.url = firstText(node.url, byId, ['@id', 'url']);
  draft.times = {
    prep: timeTexts(node.prepTime),
    cook: timeTexts(node.cookTime ?? node.performTime),
    total: timeTexts(node.totalTime),
  };
  draft.nutrition = nutrition(node.nutrition, byId);
  return draft;
}

/** Lines and steps of all drafts together. */
function size(drafts: readonly Draft[]): number {
  return drafts.reduce((sum, draft) => sum + linesIn(draft).length + draft.steps.length, 0);
}

function isBare(draft: Draft): boolean {
  return draft.groups.length === 0 || draft.steps.length === 0;
}

/**
 * Reads every Recipe node of the page's JSON-LD scripts, wherever it stands, in page order. A script
 * that cannot be read is left out; the others still count.
 */
export function readJsonLd(scripts: readonly string[], spent: () => boolean): Draft[] {
  const values = scripts.flatMap((script) => (/recipe/i.test(script) ? parseJson(script) : []));
  const others = scripts.filter((script) => !/recipe/i.test(script));
  let found = walk(values, spent);
  if (found.recipes.length === 0) return [];
  // Authors and pictures may be described in a script without the recipe.
  const more = walk(others.flatMap(parseJson), spent);
  for (const [id, node] of more.byId) if (!found.byId.has(id)) found.byId.set(id, node);
  let drafts = found.recipes.map((node) => draftOf(node, found.byId));
  if (drafts.every(isBare)) {
    // A doubled key whose last value is empty hides the first one from a strict parser.
    found = walk(
      scripts.flatMap((script) =>
        /recipe/i.test(script) && script.length < 1_000_000 ? parseTolerant(script) : [],
      ),
      spent,
    );
    const again = found.recipes.map((node) => draftOf(node, found.byId));
    if (size(again) > size(drafts)) drafts = again;
  }
  return drafts;
}
