/** Ingredient lines of the reworked recipe. */
import { lineOfKey } from '../../ingredient-keys.ts';
import type { Ingredient, PlannedItem, Recipe, RewrittenLine, Role } from '../../model.ts';
import { partOfItem, partOfKey } from '../parts/part-of.ts';
import { additionsFor, isDropped, isSame, itemsFor, whyOf } from './line-items.ts';
import {
  calledThere,
  itemText,
  type LineContext,
  type LineWords,
  ownName,
  ownWords,
  tailOf,
  tailOnly,
  writtenAmount,
} from './line-wording.ts';
import { kitchenGrams } from './written-amounts.ts';

/** A line of the result with what it was made from. */
export interface LineRow {
  line: RewrittenLine;
  /** The planned food the line states; null when the line is the original's own, or is gone. */
  item: PlannedItem | null;
  /** The original ingredient the line belongs to; null for additions and lines without a food. */
  ingredient: Ingredient | null;
  /** What stands for the food's name, and behind it. */
  words: LineWords | null;
}

function additionLine(item: PlannedItem, context: LineContext, group: string | null): LineRow {
  const swap = context.plan.swaps.find(({ to }) => to.some((to1) => to1.foodId === item.foodId));
  const line: RewrittenLine = {
    key: item.key,
    before: null,
    after: itemText(item, context),
    change: 'added',
    group,
    why: swap?.why ?? null,
  };
  return { line, item, ingredient: null, words: null };
}

/** What an unchanged item of a line that names several foods reads as, once the line is split. */
function splitText(ingredient: Ingredient, context: LineContext): string {
  const { match, weight, item } = ingredient;
  const food = match === null ? null : context.foods.byId(match.foodId);
  const tail = tailOf(ingredient, context.local);
  if (food === null || weight === null) return `${item.name}${tail}`;
  const grams = kitchenGrams(food, weight.grams.best, 'other');
  return `${writtenAmount(food, grams, context)} ${calledThere(ownName(ingredient, food), context)}${tail}`;
}

function ingredientLines(
  ingredient: Ingredient,
  context: LineContext,
  group: string | null,
  before: string,
  alone: boolean,
): LineRow[] {
  const { plan } = context;
  const untouched = (line: RewrittenLine): LineRow => ({
    line,
    item: null,
    ingredient,
    words: null,
  });
  const { key } = ingredient;
  const items = itemsFor(plan, ingredient);
  const first = items[0];
  const why = whyOf(plan, key, first?.foodId ?? null);
  if (first === undefined && isDropped(plan, ingredient))
    return [untouched({ key, before, after: null, change: 'removed', group, why })];
  if (first === undefined || (items.length === 1 && isSame(first, ingredient))) {
    const after = alone ? before : splitText(ingredient, context);
    return [untouched({ key, before, after, change: 'kept', group, why: null })];
  }
  return items.map((item, at): LineRow => {
    const own = item.foodId === ingredient.match?.foodId;
    const food = context.foods.byId(item.foodId);
    const words = own
      ? ownWords(item, ingredient, food, context.local ?? null)
      : tailOnly(item, ingredient, context.local ?? null, food);
    const itemWhy = whyOf(plan, key, own ? (items[1]?.foodId ?? item.foodId) : item.foodId);
    const after = itemText(item, context, words);
    const change = own ? 'amount' : 'replaced';
    const line: RewrittenLine =
      at > 0
        ? {
            key: `${key}>${item.foodId}`,
            before: null,
            after,
            change: 'added',
            group,
            why: itemWhy,
          }
        : withReserve({ key, before, after, change, group, why: itemWhy }, item, context);
    return { line, item, ingredient, words };
  });
}

/** Water held back is no part of the line's grams; the line says so beside. */
function withReserve(
  row: RewrittenLine,
  item: PlannedItem,
  { plan, local }: LineContext,
): RewrittenLine {
  const reserve = plan.reserveWaterG ?? 0;
  if (item.foodId !== 'water' || reserve < 1) return row;
  const text = local?.lines.held ?? 'Up to {grams} g more by feel after the rest.';
  const held = text.replace('{grams}', String(Math.round(reserve)));
  return { ...row, why: row.why === null ? held : `${row.why} ${held}` };
}

/** A removal whose stand-ins come as additions reads as a replacement. */
function joinReplacement(own: LineRow[], added: LineRow[]): LineRow[] {
  const [removed] = own;
  const [first, ...rest] = added;
  if (own.length !== 1 || removed?.line.change !== 'removed' || first === undefined)
    return [...own, ...added];
  const { after, why } = first.line;
  const line: RewrittenLine = {
    ...removed.line,
    after,
    change: 'replaced',
    why: why ?? removed.line.why,
  };
  return [{ ...first, line, ingredient: removed.ingredient }, ...rest];
}

/**
 * One entry per line of the original, in its order and group, with the plan's additions behind the
 * line they stand for, the others behind the last line of their kind, or at the end of the first group.
 * Unchanged lines stay verbatim.
 */
export function rewriteLines(
  recipe: Recipe,
  ingredients: readonly Ingredient[],
  context: LineContext,
): RewrittenLine[] {
  return lineRows(recipe, ingredients, context).map(({ line }) => line);
}

/** The lines of {@link rewriteLines} with the food and the ingredient that each was made from. */
export function lineRows(
  recipe: Recipe,
  ingredients: readonly Ingredient[],
  context: LineContext,
): LineRow[] {
  const lines: LineRow[] = [];
  const placed = new Set<string>();
  let index = 0;
  let firstGroupEnd: number | null = null;
  for (const { title, lines: texts } of recipe.groups) {
    for (const text of texts) {
      const own = ingredients.filter(({ key }) => lineOfKey(key) === String(index));
      lines.push(...linesOf(text, String(index), own, context, title, placed));
      index += 1;
    }
    firstGroupEnd ??= lines.length;
  }
  const group = recipe.groups[0]?.title ?? null;
  const rest = context.plan.items.filter(
    (item) => item.key.startsWith('new.') && item.grams > 0 && !placed.has(item.key),
  );
  for (const item of rest.toReversed()) {
    const beside = besideKind(item, lines, context);
    const own = lines[beside]?.line.group ?? group;
    const at = beside < 0 ? (firstGroupEnd ?? 0) : beside + 1;
    lines.splice(at, 0, additionLine(item, context, beside < 0 ? group : own));
  }
  return lines;
}

/** What a food that is added stands behind on the list, by their roles: the first that the list has. */
const KINDS: Partial<Record<Role, readonly Role[]>> = {
  leavening: ['leavening', 'structure'],
  binder: ['leavening', 'structure'],
  salt: ['salt', 'structure'],
  structure: ['structure'],
  'yeast-food': ['yeast'],
  egg: ['egg'],
  liquid: ['liquid'],
};

/** Index of the last line, of the addition's part, of the first kind that the list has; -1 where it has none. */
function besideKind(item: PlannedItem, lines: readonly LineRow[], { plan }: LineContext): number {
  const part = partOfItem(plan, item);
  const kinds = KINDS[item.role] ?? [];
  const found = kinds.map((kind) =>
    lines.findLastIndex(
      ({ ingredient }) =>
        ingredient !== null &&
        plan.roles[ingredient.key]?.[0] === kind &&
        (plan.parts.length < 2 || partOfKey(plan, ingredient.key) === part),
    ),
  );
  return found.find((at) => at >= 0) ?? -1;
}

function linesOf(
  text: string,
  key: string,
  own: readonly Ingredient[],
  context: LineContext,
  group: string | null,
  placed: Set<string>,
): LineRow[] {
  const whole = (ingredient: Ingredient | null): LineRow => ({
    line: { key, before: text, after: text, change: 'kept', group, why: null },
    item: null,
    ingredient,
    words: null,
  });
  if (own.length === 0) return [whole(null)];
  const alone = own.length === 1;
  const perItem = own.map((ingredient) => {
    const rows = ingredientLines(
      ingredient,
      context,
      group,
      alone ? text : ingredient.item.name,
      alone,
    );
    const added = additionsFor(context.plan, ingredient.key)
      .filter((item) => !placed.has(item.key))
      .map((item) => {
        placed.add(item.key);
        return additionLine(item, context, group);
      });
    return joinReplacement(rows, added);
  });
  const rows = perItem.flat();
  if (!alone && rows.every(({ line }) => line.change === 'kept')) return [whole(own[0] ?? null)];
  return rows;
}
