/** Lines outside the totals that may hold starch or sugar, with a rough span of what they would add. */
import type { Food, Ingredient, Interval, MissingLine } from '../../model.ts';
import { foodNumbers } from '../composition.ts';
import { isKeptBack } from '../counted.ts';
import data from '../data/missing-kinds.json' with { type: 'json' };
import { lineNutrient, type NumberedLine, numberedLines, type TallyOptions } from '../index.ts';
import {
  type Bounds,
  between,
  bounds,
  type Kind,
  kindOf,
  plainText,
  STARCH_OR_SUGAR,
  STARCHY,
  servingOf,
  times,
} from './missing-kinds.ts';
import { servedWith } from './served-with.ts';

/** Net carbs a serving from which a missing line matters, g. Own choice. */
const MATTERS_FROM_G = 1;

const PORTIONS = new Map(data.portions.map(({ group, serving }) => [group, bounds(serving)]));

/** The same of what swells as it cooks. */
const DRY_PORTIONS = new Map(
  data.dryPortions.map(({ group, serving }) => [group, bounds(serving)]),
);

/** Foods that are taken by the pinch or strewn where a line gives no amount. */
const SEASONINGS = new Map(
  data.seasonings.flatMap(({ foods, serving }) => foods.map((id) => [id, bounds(serving)])),
);

/** Foods that are dusted or strewn over a plate, however the line says that they are served. */
const STREWN: ReadonlySet<string> = new Set(
  data.seasonings.filter((row) => row.strewn).flatMap(({ foods }) => foods),
);

const GARNISH = /\b(garnish|decorat|sprinkl|topping)/i;
/** Flour for the board, sugar over a cake, in the words of several languages. */
const DUSTING =
  /\b(?:dust|for rolling|for kneading|zum (?:bearbeiten|bestauben|ausrollen|bemehlen)|bestuiven|saupoudrer|fariner|espolvorear|spolverare|polvilhar)/;
/** Eaten beside the dish, and by choice. */
const BESIDE =
  /\b(?:(?:to|for) (?:serve|serving|garnish|decorate)|garnish|served with|zum servieren|zum garnieren|pour servir|para servir|per servire|voor erbij|til servering|till servering)\b/;

/** 'Toppings: shredded cheese, chips': each eats what they like. */
const TOPPINGS = /^(?:optional )?(?:toppings?|garnish(?:es)?)\s*:/;
/** Dishes that are nothing without the bread or wrap they are served in. */
const HELD =
  /\b(?:tacos?|tostadas?|burritos?|fajitas?|quesadillas?|wraps?|sandwich(?:es)?|burgers?|sliders?|gyros|kebabs?|toasts?)\b/;
const HOLDERS: ReadonlySet<string> = new Set(['tortillas or wraps', 'bread or rolls']);

/** Whether a line is eaten beside the dish, and by choice: not the tortillas of tacos. */
function isBeside({ line }: Ingredient, title: string, kind: string | null): boolean {
  const text = plainText(line.text);
  if (line.optional || TOPPINGS.test(text)) return true;
  const holds = HELD.test(plainText(title)) && (kindOf(kind ?? '') ?? { kind }).kind;
  return BESIDE.test(text) && !(typeof holds === 'string' && HOLDERS.has(holds));
}

/** Grams of a serving, where the line has an amount that could be weighed. */
function gramsOf({ weight }: Ingredient, servings: number): Bounds | null {
  if (weight === null) return null;
  return [weight.grams.low / servings, weight.grams.high / servings];
}

const wordsOf = ({ line, item }: Ingredient): string =>
  line.items.length > 1 ? item.name : line.text;

/** Herbs, lemon and seasonings are eaten by the sprig and the wedge, whatever their group. */
const SMALL_KINDS: ReadonlySet<string> = new Set([
  'nothing to count',
  'lemon or lime',
  'herb or leaf',
  'hot pepper',
  'spice or seasoning',
]);

const isStarchy = ({ kind }: Kind): boolean => STARCH_OR_SUGAR.has(kind);

/** Usual grams a serving of a known food without an amount: the smaller of its kind's and its group's. */
function portionOf(text: string, food: Food): Bounds {
  if (DUSTING.test(plainText(text))) return bounds(data.dusting.serving);
  if (GARNISH.test(text)) return bounds(data.garnish.serving);
  const seasoning = SEASONINGS.get(food.id);
  if (seasoning) return seasoning;
  const dry = food.state === 'dry' ? DRY_PORTIONS.get(food.group) : undefined;
  const group = dry ?? PORTIONS.get(food.group) ?? bounds(data.anyPortion.serving);
  const named = kindOf(food.name);
  const usual = [kindOf(text), named].filter(
    (kind) => kind !== null && (SMALL_KINDS.has(kind.kind) || (kind === named && isStarchy(kind))),
  );
  return usual.reduce(
    (least, kind) => (kind !== null && kind.serving[1] < least[1] ? kind.serving : least),
    group,
  );
}

/** Where what is kept back was made: its own lines are counted there. */
const SAYS_WHENCE = /\bfrom\b|\babove\)/i;

/** Lines that bring nothing, or what other lines bring. */
const OF_NO_ACCOUNT: ReadonlySet<string> = new Set(['made-here', 'other-version', 'tool']);

/** A part that the page makes, or that one buys with its sugar in it: 'syrup (store-bought or recipe below)'. */
const OR_BOUGHT = /\b(?:store|shop)[- ]?bought\b|\bready[- ]?made\b|\bpurchased\b/;

/** What the bought part would bring; null for any other line. */
function ifBought(ingredient: Ingredient, servings: number): MissingLine | null {
  const { key, line } = ingredient;
  if (line.kind !== 'made-here' || !OR_BOUGHT.test(plainText(line.text))) return null;
  if (!isStarchOrSugar(ingredient)) return null;
  const { kind, span } = ofUnknown(ingredient, servings);
  if (span !== null && span[1] <= MATTERS_FROM_G) return null;
  const why = 'counted as this page makes it: a bought one has its own sugar or starch';
  return { key, text: line.text, why, kind, netCarbsG: span && between(span), beside: true };
}

/** 'peppers' and nothing else is what stands beside the salt. */
const BARE_PEPPER = /^peppers?$/;

const ofKnownFood = (ingredient: Ingredient, figure: Interval, food: Food): Bounds =>
  times(portionOf(wordsOf(ingredient), food), [figure.low, figure.high]);

interface Span {
  kind: string | null;
  span: Bounds | null;
}

/** An unknown food: its kind by its words, times its own amount or a usual portion. */
function ofUnknown(ingredient: Ingredient, servings: number): Span {
  const name = kindOf(ingredient.item.name) ?? kindOf(wordsOf(ingredient));
  const grams = gramsOf(ingredient, servings);
  if (name !== null) {
    const dusted = DUSTING.test(plainText(ingredient.line.text));
    const serving = dusted ? bounds(data.dusting.serving) : servingOf(name, servings);
    const span = grams === null ? servedBeside(ingredient) : null;
    return { kind: name.kind, span: span ?? times(grams ?? serving, name.per100) };
  }
  // Of a gram or less of anything no more than a gram can be carbohydrate.
  return { kind: null, span: grams !== null && grams[1] <= MATTERS_FROM_G ? [0, grams[1]] : null };
}

/** Parts from which on a line without an amount is a list of foods. Own choice. */
const LIST_FROM = 3;

/** 'Toppings: shredded cheese, tortilla chips, olives': the starchy part of a list read as one food. */
function starchyOfList({ line, weight }: Ingredient): Span | null {
  const parts = line.text.split(/[,;:]/);
  if (weight !== null || line.items.length > 1 || parts.length < LIST_FROM) return null;
  const found = parts.map(kindOf).find((one) => one !== null && STARCHY.has(one.kind));
  return found ? { kind: found.kind, span: times(found.serving, found.per100) } : null;
}

/** Eaten by the plateful whatever the line says of serving: 'oven fries' are no pinch. */
const PLATEFUL = /\b(?:potato(?:es)?|fries|chips|wedges|mash)$/;
const isPlateful = (food: Food | null): boolean =>
  food !== null && food.state !== 'dry' && PLATEFUL.test(plainText(food.name));

/** Starch to serve with, of no amount: what one takes of it, cooked. */
function servedBeside(ingredient: Ingredient, food: Food | null = null): Bounds | null {
  const text = plainText(ingredient.line.text);
  if (ingredient.weight !== null || GARNISH.test(text)) return null;
  if (isPlateful(food)) return kindOf(food?.name ?? '')?.beside ?? null;
  return BESIDE.test(text) ? (kindOf(wordsOf(ingredient))?.beside ?? null) : null;
}

function spanOf(
  ingredient: Ingredient,
  food: Food | null,
  besides: readonly NumberedLine[],
  figureOf: (food: Food) => Interval | null,
  servings: number,
): Span {
  const beside = besides.find((line) => line.ingredient.key === ingredient.key);
  const known = beside ? lineNutrient(beside, 'netCarbsG') : null;
  if (known)
    return { kind: food?.name ?? null, span: [known.low / servings, known.high / servings] };
  if (food === null || ingredient.line.kind === 'reference') return ofUnknown(ingredient, servings);
  const plateful = STREWN.has(food.id) ? null : servedBeside(ingredient, food);
  if (plateful) return { kind: food.name, span: plateful };
  const listed = starchyOfList(ingredient);
  if (listed) return listed;
  const figure = figureOf(food);
  if (figure === null) return { kind: food.name, span: null };
  return { kind: food.name, span: ofKnownFood(ingredient, figure, food) };
}

const isStarchOrSugar = (ingredient: Ingredient): boolean =>
  STARCH_OR_SUGAR.has(kindOf(wordsOf(ingredient))?.kind ?? '');

/** Net carbs of 100 g, for a food that stands in no total. */
const figuresOf = (food: Food, { rule }: TallyOptions): Interval | null =>
  foodNumbers(food, rule, { polyolsPerServingG: 0, alcoholRetained: 1 }).figures.netCarbsG;

/** Counted foods that lack a figure for carbohydrate. */
function withoutFigure(lines: readonly NumberedLine[], servings: number): MissingLine[] {
  const lacking = lines.filter(
    ({ numbers, grams }) => numbers.figures.netCarbsG === null && grams / servings > MATTERS_FROM_G,
  );
  return lacking.map(({ ingredient, food }) => ({
    key: ingredient.key,
    text: wordsOf(ingredient),
    why: `the carbohydrate of ${food.name} is not known`,
    kind: food.name,
    netCarbsG: null,
  }));
}

/**
 * What the totals lack: lines without a food, without an amount, of another recipe or served beside,
 * that may hold more than 1 g net carbs a serving, optional ones where they are starch, sugar or weighed;
 * counted foods whose carbohydrate is unknown; starch that a line says to eat with; and what stands in the method only.
 * Never throws.
 */
export function missingLines(
  ingredients: readonly Ingredient[],
  options: TallyOptions,
): MissingLine[] {
  const { lines, besides, uncounted, servings } = numberedLines(ingredients, options);
  const byKey = new Map(ingredients.map((ingredient) => [ingredient.key, ingredient]));
  const figureOf = (food: Food): Interval | null => figuresOf(food, options);
  const rows = uncounted.flatMap(({ key, text, why }): MissingLine[] => {
    const ingredient = byKey.get(key);
    if (ingredient === undefined) return [];
    const { line } = ingredient;
    if (OF_NO_ACCOUNT.has(line.kind))
      return [ifBought(ingredient, servings)].filter((row) => row !== null);
    const known = besides.some((one) => one.ingredient.key === key);
    if (line.optional && !known && !isStarchOrSugar(ingredient)) return [];
    const food = ingredient.match ? options.foods.byId(ingredient.match.foodId) : null;
    if (
      isKeptBack(ingredient) &&
      (SAYS_WHENCE.test(text) || lines.some((one) => one.food === food))
    )
      return [];
    if (BARE_PEPPER.test(plainText(line.text).trim())) return [];
    const { kind, span } = spanOf(ingredient, food, besides, figureOf, servings);
    if (span !== null && span[1] <= MATTERS_FROM_G) return [];
    const beside = isBeside(ingredient, options.title ?? '', kind) ? { beside: true } : {};
    return [{ key, text, why, kind, netCarbsG: span && between(span), ...beside }];
  });
  const foods = lines.map(({ food }) => food);
  const firsts = ingredients.filter(({ key, line }) => !key.includes('.') && !line.optional);
  return [
    ...rows,
    ...withoutFigure(lines, servings),
    ...firsts.flatMap((first) => servedWith(first, foods) ?? []),
    ...(options.methodOnly ?? []),
  ];
}
