/** Ingredient lines of the reworked recipe. */
import type { FoodTable } from '../foods/index.ts';
import type { Food, Ingredient, Plan, PlannedItem, Recipe, RewrittenLine, Swap } from '../model.ts';
import { amountText, kitchenGrams, pieceText, type Region } from './kitchen.ts';

export interface LineContext {
  plan: Plan;
  foods: FoodTable;
  region: Region;
}

/** Grams closer than this share are the same amount. */
const SAME = 0.005;

/** True when a plan's item is the ingredient's own food in the same amount. */
export function isSame(item: PlannedItem, ingredient: Ingredient): boolean {
  const grams = ingredient.weight?.grams.best ?? null;
  if (grams === null || item.foodId !== ingredient.match?.foodId) return false;
  return Math.abs(item.grams - grams) <= Math.max(0.05, SAME * grams);
}

/** Items of the plan that stand for an ingredient, its own food first. */
export function itemsFor(plan: Plan, ingredient: Ingredient): PlannedItem[] {
  const own = plan.items.filter(({ key, grams }) => key === ingredient.key && grams > 0);
  const isOwn = (item: PlannedItem): number => (item.foodId === ingredient.match?.foodId ? 0 : 1);
  return own.sort((a, b) => isOwn(a) - isOwn(b));
}

/** Additions that a swap of this ingredient brings. */
function additionsFor(plan: Plan, key: string): PlannedItem[] {
  const foods = plan.swaps
    .filter((swap) => swap.key === key)
    .flatMap((swap) => swap.to.map(({ foodId }) => foodId));
  return plan.items.filter(
    (item) => item.key === `new.${item.foodId}` && item.grams > 0 && foods.includes(item.foodId),
  );
}

/** What follows the name on the original line and still holds: preparation, purpose, note. */
function tailOf(ingredient: Ingredient): string {
  const { item, line } = ingredient;
  const note = line.note !== null && !/\d/.test(line.note) ? line.note : null;
  const words = [item.preparation, line.purpose, note].filter((word) => word !== null);
  const tail = words.length > 0 ? `, ${words.join(', ')}` : '';
  return line.optional && !/optional/i.test(tail) ? `${tail} (optional)` : tail;
}

/** A planned item as a line of its own: '350 g (2⅓ cups) high-fibre wheat flour blend, sifted'. */
export function itemText(
  item: PlannedItem,
  context: LineContext,
  words?: { name: string; tail: string },
): string {
  const food = context.foods.byId(item.foodId);
  const name = words?.name ?? item.foodName;
  const tail = words?.tail ?? '';
  if (food === null) return `${Math.round(item.grams * 10) / 10} g ${name}${tail}`;
  const grams = kitchenGrams(food, item.grams, item.role);
  const pieces = pieceText(food, grams);
  if (pieces !== null) return `${pieces}${tail}`;
  return `${amountText(food, grams, context.region)} ${name}${tail}${edibleTail(food, name + tail)}`;
}

const SAID_EDIBLE = /\b(boneless|shelled|florets?|fillets?|pitted)\b/i;

/** Planned grams are edible ones; a food bought with peel or bone says so, or it would be weighed whole. */
function edibleTail(food: Food, said: string): string {
  const whole = food.state === 'raw' && (food.refuseShare ?? 0) > 0;
  if (!whole || SAID_EDIBLE.test(said)) return '';
  return food.id.startsWith('egg') ? ', shelled' : ', trimmed weight';
}

function whyOf(plan: Plan, key: string, foodId: string | null): string | null {
  const swaps = plan.swaps.filter((swap) => swap.key === key);
  const brings = (swap: Swap): boolean => swap.to.some((to) => to.foodId === foodId);
  const raised = plan.swaps.find((swap) => swap.key === null && brings(swap));
  return (swaps.find(brings) ?? swaps[0] ?? raised)?.why ?? null;
}

function additionLine(
  item: PlannedItem,
  context: LineContext,
  group: string | null,
): RewrittenLine {
  const swap = context.plan.swaps.find(({ to }) => to.some((to1) => to1.foodId === item.foodId));
  return {
    key: item.key,
    before: null,
    after: itemText(item, context),
    change: 'added',
    group,
    why: swap?.why ?? null,
  };
}

/** What an unchanged item of a line that names several foods reads as, once the line is split. */
function splitText(ingredient: Ingredient, context: LineContext): string {
  const { match, weight, item } = ingredient;
  const food = match === null ? null : context.foods.byId(match.foodId);
  if (food === null || weight === null) return `${item.name}${tailOf(ingredient)}`;
  const grams = kitchenGrams(food, weight.grams.best, 'other');
  return `${amountText(food, grams, context.region)} ${item.name}${tailOf(ingredient)}`;
}

function ingredientLines(
  ingredient: Ingredient,
  context: LineContext,
  group: string | null,
  before: string,
  alone: boolean,
): RewrittenLine[] {
  const { plan } = context;
  const { key } = ingredient;
  const items = itemsFor(plan, ingredient);
  const first = items[0];
  const why = whyOf(plan, key, first?.foodId ?? null);
  if (first === undefined && isDropped(plan, ingredient))
    return [{ key, before, after: null, change: 'removed', group, why }];
  if (first === undefined || (items.length === 1 && isSame(first, ingredient))) {
    const after = alone ? before : splitText(ingredient, context);
    return [{ key, before, after, change: 'kept', group, why: null }];
  }
  return items.map((item, at): RewrittenLine => {
    const own = item.foodId === ingredient.match?.foodId;
    const words = own
      ? { name: ingredient.item.name, tail: tailOf(ingredient) }
      : tailOnly(item, ingredient);
    const itemWhy = whyOf(plan, key, own ? (items[1]?.foodId ?? item.foodId) : item.foodId);
    const after = itemText(item, context, words);
    if (at > 0)
      return {
        key: `${key}>${item.foodId}`,
        before: null,
        after,
        change: 'added',
        group,
        why: itemWhy,
      };
    const change = own ? 'amount' : 'replaced';
    return withReserve({ key, before, after, change, group, why: itemWhy }, item, plan);
  });
}

/** A stand-in keeps what the original was for ('for dusting'), not how the original was cut. */
function tailOnly(item: PlannedItem, ingredient: Ingredient): { name: string; tail: string } {
  const { purpose } = ingredient.line;
  return { name: item.foodName, tail: purpose === null ? '' : `, ${purpose}` };
}

/** The plan speaks of this ingredient and leaves nothing of it. */
function isDropped(plan: Plan, ingredient: Ingredient): boolean {
  const { key } = ingredient;
  const zeroed = plan.items.some((item) => item.key === key && item.grams <= 0);
  return zeroed || plan.swaps.some((swap) => swap.key === key && swap.keptGrams <= 0);
}

/** Water held back is no part of the line's grams; the line says so beside. */
function withReserve(row: RewrittenLine, item: PlannedItem, plan: Plan): RewrittenLine {
  const reserve = plan.reserveWaterG ?? 0;
  if (item.foodId !== 'water' || reserve < 1) return row;
  const held = `Up to ${Math.round(reserve)} g more by feel after the rest.`;
  return { ...row, why: row.why === null ? held : `${row.why} ${held}` };
}

const lineOf = (key: string): string => key.split('.')[0] ?? key;

/** A removal whose stand-ins come as additions reads as a replacement. */
function joinReplacement(own: RewrittenLine[], added: RewrittenLine[]): RewrittenLine[] {
  const [gone] = own;
  const [first, ...rest] = added;
  if (own.length !== 1 || gone?.change !== 'removed' || first === undefined)
    return [...own, ...added];
  return [{ ...gone, after: first.after, change: 'replaced', why: first.why ?? gone.why }, ...rest];
}

/**
 * One entry per line of the original, in its order and group, with the plan's additions behind the
 * line they stand for, the others at the end of the first group. Unchanged lines stay verbatim.
 */
export function rewriteLines(
  recipe: Recipe,
  ingredients: readonly Ingredient[],
  context: LineContext,
): RewrittenLine[] {
  const lines: RewrittenLine[] = [];
  const placed = new Set<string>();
  let index = 0;
  let firstGroupEnd: number | null = null;
  for (const { title, lines: texts } of recipe.groups) {
    for (const text of texts) {
      const own = ingredients.filter(({ key }) => lineOf(key) === String(index));
      lines.push(...linesOf(text, String(index), own, context, title, placed));
      index += 1;
    }
    firstGroupEnd ??= lines.length;
  }
  const group = recipe.groups[0]?.title ?? null;
  const rest = context.plan.items.filter(
    (item) => item.key.startsWith('new.') && item.grams > 0 && !placed.has(item.key),
  );
  lines.splice(firstGroupEnd ?? 0, 0, ...rest.map((item) => additionLine(item, context, group)));
  return lines;
}

function linesOf(
  text: string,
  key: string,
  own: readonly Ingredient[],
  context: LineContext,
  group: string | null,
  placed: Set<string>,
): RewrittenLine[] {
  if (own.length === 0)
    return [{ key, before: text, after: text, change: 'kept', group, why: null }];
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
  if (!alone && rows.every(({ change }) => change === 'kept'))
    return [{ key, before: text, after: text, change: 'kept', group, why: null }];
  return rows;
}
