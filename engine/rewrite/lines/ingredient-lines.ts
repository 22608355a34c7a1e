/** Ingredient lines of the reworked recipe. */
import type { FoodTable } from '../../foods/index.ts';
import type {
  Food,
  Ingredient,
  Plan,
  PlannedItem,
  Recipe,
  RewrittenLine,
  Swap,
} from '../../model.ts';
import { localUnits, type MethodWords } from '../languages/method-words.ts';
import { amountText, kitchenGrams, pieceText, type Region } from './written-amounts.ts';

export interface LineContext {
  plan: Plan;
  foods: FoodTable;
  region: Region;
  /** Words of the recipe's language, where it is another than English. */
  local?: MethodWords | null;
}

/** A line of the result with what it was made from. */
export interface LineRow {
  line: RewrittenLine;
  /** The planned food the line states; null when the line is the original's own, or is gone. */
  item: PlannedItem | null;
  /** The original ingredient the line belongs to; null for additions and lines without a food. */
  ingredient: Ingredient | null;
  /** What stands for the food's name, and behind it. */
  words: { name: string; tail: string } | null;
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
export function tailOf(ingredient: Ingredient): string {
  const { item, line } = ingredient;
  const note = line.note !== null && !/\d/.test(line.note) ? line.note : null;
  const words = [item.preparation, line.purpose, note].filter((word) => word !== null);
  const tail = words.length > 0 ? `, ${words.join(', ')}` : '';
  return line.optional && !/optional/i.test(tail) ? `${tail} (optional)` : tail;
}

const CONTAINERS: ReadonlySet<string> = new Set(['can', 'tin', 'jar', 'carton', 'bottle']);
/** A spoon of 'tomato puree' is paste, two 'peppers' are no spice: in grams the name alone must tell. */
const NAMED_BY_AMOUNT = /^(tomato pur[ée]e|peppers?|jelly)$/i;

/** An ingredient's name on a line in grams: its own words, or the food's where the amount told what it is. */
export function ownName({ item }: Ingredient, food: Food | null): string {
  const contained = item.amounts.some(({ unit }) => unit !== null && CONTAINERS.has(unit));
  const unclear = contained || NAMED_BY_AMOUNT.test(item.name.trim());
  return unclear && food !== null ? food.name : item.name;
}

/** Names that are told by the recipe's own word, or read the same everywhere. */
const NO_LOCAL_NAME = /^(egg|butter|gelatin|water|sugar)/;

/** A food's name, with what it is called in the recipe's language in brackets. */
export function foodName(item: PlannedItem, local: MethodWords | null): string {
  const word = NO_LOCAL_NAME.test(item.foodId) ? undefined : local?.foods[item.foodId];
  if (word === undefined) return item.foodName;
  return local?.alone.includes(item.foodId) ? word : `${item.foodName} (${word})`;
}

/** A planned item as a line of its own: '350 g (2⅓ cups) high-fibre wheat flour blend, sifted'. */
export function itemText(
  item: PlannedItem,
  context: LineContext,
  words?: { name: string; tail: string },
): string {
  const food = context.foods.byId(item.foodId);
  const local = context.local ?? null;
  const name = words?.name ?? foodName(item, local);
  const tail = words?.tail ?? '';
  if (food === null) return `${Math.round(item.grams * 10) / 10} g ${name}${tail}`;
  const grams = kitchenGrams(food, item.grams, item.role);
  const pieces = pieceText(food, grams);
  if (pieces !== null) return `${pieces}${tail}`;
  const amount = amountText(food, grams, context.region);
  const said = local === null ? amount : localUnits(amount, local);
  return `${said} ${name}${tail}${edibleTail(food, name + tail)}`;
}

const SAID_EDIBLE = /\b(boneless|shelled|florets?|fillets?|pitted)\b/i;

/** Planned grams are edible ones; a food bought with peel or bone says so, or it would be weighed whole. */
export function edibleTail(food: Food, said: string): string {
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
  if (food === null || weight === null) return `${item.name}${tailOf(ingredient)}`;
  const grams = kitchenGrams(food, weight.grams.best, 'other');
  return `${amountText(food, grams, context.region)} ${ownName(ingredient, food)}${tailOf(ingredient)}`;
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
    const words = own
      ? ownWords(item, ingredient, context.foods.byId(item.foodId))
      : tailOnly(item, ingredient, context.local ?? null);
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
        : withReserve({ key, before, after, change, group, why: itemWhy }, item, plan);
    return { line, item, ingredient, words };
  });
}

const CRUMBS = /crumb|panko|cornflake|cracker/i;

/** What a coating that is not all eaten says, so that the line is read like the plan again. */
function coatingTail(item: PlannedItem, ingredient: Ingredient): string {
  if (item.role !== 'coating' || item.eaten.best >= 1) return '';
  const crumbs = CRUMBS.test(`${ingredient.item.name} ${ingredient.match?.foodName ?? ''}`);
  const own = item.foodId === ingredient.match?.foodId;
  return crumbs && !own ? ', for coating in place of breadcrumbs' : ', for coating';
}

/** A stand-in keeps what the original was for ('for dusting'), not how the original was cut. */
function tailOnly(
  item: PlannedItem,
  ingredient: Ingredient,
  local: MethodWords | null,
): { name: string; tail: string } {
  const { purpose } = ingredient.line;
  const tail = purpose === null ? coatingTail(item, ingredient) : `, ${purpose}`;
  return { name: foodName(item, local), tail };
}

/** The line's own food in a new amount. */
function ownWords(
  item: PlannedItem,
  ingredient: Ingredient,
  food: Food | null,
): { name: string; tail: string } {
  const said = tailOf(ingredient);
  const coats = ingredient.line.purpose === null ? coatingTail(item, ingredient) : '';
  return { name: ownName(ingredient, food), tail: `${said}${coats}` };
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
function joinReplacement(own: LineRow[], added: LineRow[]): LineRow[] {
  const [gone] = own;
  const [first, ...rest] = added;
  if (own.length !== 1 || gone?.line.change !== 'removed' || first === undefined)
    return [...own, ...added];
  const { after, why } = first.line;
  const line: RewrittenLine = {
    ...gone.line,
    after,
    change: 'replaced',
    why: why ?? gone.line.why,
  };
  return [{ ...first, line, ingredient: gone.ingredient }, ...rest];
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
