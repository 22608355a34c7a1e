/** How one food of a line is written: amount, name and what follows it. */
import type { FoodTable } from '../../foods/index.ts';
import type { Food, Ingredient, Plan, PlannedItem } from '../../model.ts';
import type { Region } from '../../units.ts';
import { decimals } from '../languages/language-tags.ts';
import { localFoodName, localUnits, type MethodWords, withOf } from '../languages/method-words.ts';
import { LINE_MARK } from '../languages/unworded.ts';
import { partOfCount } from './part-of-count.ts';
import { countOfRest, countOfStandIn, type PieceCount, standInText } from './piece-counts.ts';
import { breadTail, inCups, rootTail, shapeTail } from './stand-in-tails.ts';
import { amountText, kitchenGrams, liquidText, pieceText } from './written-amounts.ts';

export interface LineContext {
  plan: Plan;
  foods: FoodTable;
  region: Region;
  /** Words of the recipe's language, where it is another than English. */
  local?: MethodWords | null;
  /** The language is another than English and has no words: lines have grams and no spoons. */
  unworded?: boolean;
}

/** How many pieces the old amount came to: 'sliced, approx. 7 apples'. */
const COUNTED_BESIDE =
  /^\(?(?:approx(?:imately)?|about|around|roughly|ca|circa|etwa|environ|ongeveer)\.? \d/i;

/** What the page says of its own line elsewhere, or of another season: 'see notes', 'frozen if not in season'. */
const OF_THE_PAGE = /\bsee (?:the )?(?:recipe )?notes?\b|\bif (?:not )?in season\b/i;
const ofThePage = (words: string | null): boolean => words !== null && OF_THE_PAGE.test(words);

const withoutCounts = (preparation: string | null): string | undefined =>
  preparation
    ?.split(', ')
    .filter((part) => !COUNTED_BESIDE.test(part) && !ofThePage(part))
    .join(', ');

/** Fruit of which a line weighs the juice alone: 'juice of 1 lemon', 'lemon, zest and juiced'. */
const isJuiced = ({ item, match }: Ingredient): boolean =>
  /-juice$/.test(match?.foodId ?? '') &&
  !/juice/i.test(item.name) &&
  /\bjuiced?\b/i.test(item.preparation ?? '');

/** A preparation that the page has within the name: 'Straight Cut' of 'Straight Cut Fries'; null where it stands beside. */
function nameAround({ item, line }: Ingredient): string | null {
  const { name, preparation } = item;
  const words = name.trim().split(/\s+/);
  if (preparation === null || /[\s,]/.test(preparation) || words.length < 2) return null;
  const places = words
    .slice(1)
    .map((_, at) => [...words.slice(0, at + 1), preparation, ...words.slice(at + 1)]);
  const text = line.text.replace(/\s+/g, ' ');
  return places.map((place) => place.join(' ')).find((place) => text.includes(place)) ?? null;
}

/** How the page prepares an ingredient, where that stands behind the name. */
function preparationOf(ingredient: Ingredient): string | null {
  const { preparation } = ingredient.item;
  if (nameAround(ingredient) !== null) return null;
  if (!isJuiced(ingredient)) return preparation;
  return /\bzest/i.test(preparation ?? '') ? 'and the zest' : null;
}

/** What follows the name on the original line and still holds: preparation, purpose, note. */
export function tailOf(ingredient: Ingredient, local: MethodWords | null = null): string {
  const { line } = ingredient;
  const note = line.note !== null && !/\d/.test(line.note) ? line.note : null;
  const words = [withoutCounts(preparationOf(ingredient)), line.purpose, note].filter(
    (word) => word && !ofThePage(word),
  );
  const tail = words.length > 0 ? `, ${words.join(', ')}` : '';
  const { optional = 'optional' } = local?.lines ?? {};
  const said = tail.toLowerCase().includes(optional) || /optional/i.test(tail);
  return line.optional && !said ? `${tail} (${optional})` : tail;
}

const CONTAINERS: ReadonlySet<string> = new Set(['can', 'tin', 'jar', 'carton', 'bottle']);
/** A spoon of 'tomato puree' is paste, two 'peppers' are no spice: in grams the name alone must tell. */
const NAMED_BY_AMOUNT = /^(tomato pur[ée]e|peppers?|jelly|coriander)$/i;

/** Nouns that the first of two names shares with the second: 'palm or coconut sugar'. */
const SHARED_HEAD = /\s(sugar|syrup|vinegar|beans|rice|flour|milk|bread|noodles)$/i;

/** The name of an item, with the noun that it leaves to its alternative and its food has: 'honey or maple syrup' leaves none. */
function withHead({ name, alternatives }: Ingredient['item'], food: Food | null): string {
  const head = SHARED_HEAD.exec(alternatives[0]?.name ?? '')?.[1];
  const leaves =
    head !== undefined &&
    !/\s/.test(name.trim()) &&
    !name.toLowerCase().includes(head) &&
    food?.name.toLowerCase().includes(head.toLowerCase());
  return leaves ? `${name} ${head}` : name;
}

/** A flavour of which the line leaves the choice: 'almond or vanilla extract'. */
const CHOICE = /\p{L}+ or \p{L}+ (?:extract|essence|aroma)\b/iu;

/** An ingredient's name on a line in grams: its own words, or the food's where the amount told what it is. */
export function ownName(ingredient: Ingredient, food: Food | null): string {
  const { item, line } = ingredient;
  const [choice] = CHOICE.exec(line.text) ?? [];
  if (choice !== undefined && item.alternatives.length > 0) return choice;
  const around = nameAround(ingredient);
  if (around !== null) return around;
  if (isJuiced(ingredient)) return `${item.name} juice`;
  const contained = item.amounts.some(({ unit }) => unit !== null && CONTAINERS.has(unit));
  const unclear = contained || NAMED_BY_AMOUNT.test(item.name.trim());
  return unclear && food !== null ? food.name : withHead(item, food);
}

/** A food's name in the recipe's language; the English one where it has none there. */
export const foodName = (item: PlannedItem, local: MethodWords | null): string =>
  (local === null ? null : localFoodName(item.foodId, local)) ?? item.foodName;

/** What stands behind the amount on a line, and what is counted of it. */
export interface LineWords {
  name: string;
  tail: string;
  count?: PieceCount | null;
  /** What stands beside the grams in place of cups and spoons; '' for nothing. */
  beside?: string | null;
}

/** A planned item as a line of its own: '350 g (2⅓ cups) high-fibre wheat flour blend, sifted'. */
export function itemText(item: PlannedItem, context: LineContext, words?: LineWords): string {
  const text = itemWords(item, context, words);
  const isEnglish = (words?.name ?? item.foodName) === item.foodName;
  return context.unworded === true && isEnglish ? `${text}${LINE_MARK}` : text;
}

function itemWords(item: PlannedItem, context: LineContext, words?: LineWords): string {
  const food = context.foods.byId(item.foodId);
  const local = context.local ?? null;
  const name = words?.name ?? foodName(item, local);
  const tail = words?.tail ?? '';
  if (food === null) return `${Math.round(item.grams * 10) / 10} g ${name}${tail}`;
  const grams = kitchenGrams(food, item.grams, item.role);
  const pieces = pieceText(food, grams, local);
  if (pieces !== null) return `${pieces}${tail}`;
  const counted = words?.count && standInText(words.count, name, grams, local);
  if (counted) return `${counted}${tail}${edibleTail(food, name + tail, local)}`;
  const amount = writtenAmount(food, grams, context, words?.beside ?? null);
  return `${amount} ${calledThere(name, context)}${tail}${edibleTail(food, name + tail, local)}`;
}

/** '350 g (2 EL)' in the recipe's language; `beside` is what stands in the brackets instead. */
export function writtenAmount(
  food: Food,
  grams: number,
  context: LineContext,
  beside: string | null = null,
): string {
  if (context.unworded === true) return `${Math.round(grams * 10) / 10} g`;
  const amount =
    beside === null ? amountText(food, grams, context.region) : besideGrams(grams, beside);
  return context.local ? localUnits(decimals(amount), context.local) : amount;
}

const besideGrams = (grams: number, beside: string): string =>
  beside === '' ? `${grams} g` : `${grams} g (${beside})`;

/** A name behind its amount: 'de sucre'. */
export const calledThere = (name: string, { local }: LineContext): string =>
  local ? withOf(name, local) : name;

const SAID_EDIBLE = /\b(boneless|shelled|florets?|fillets?|pitted)\b/i;

/** Planned grams are edible ones; a food bought with peel or bone says so, or it would be weighed whole. */
export function edibleTail(food: Food, said: string, local: MethodWords | null = null): string {
  const whole = food.state === 'raw' && (food.refuseShare ?? 0) > 0;
  if (!whole || SAID_EDIBLE.test(said)) return '';
  const { shelled = 'shelled', trimmed = 'trimmed weight' } = local?.lines ?? {};
  return food.group === 'eggs' ? `, ${shelled}` : `, ${trimmed}`;
}

const CRUMBS = /crumb|panko|cornflake|cracker/i;

/** What a coating that is not all eaten says, so that the line is read like the plan again. */
function coatingTail(item: PlannedItem, ingredient: Ingredient, local: MethodWords | null): string {
  if (local !== null) return '';
  if (item.role !== 'coating' || item.eaten.best >= 1) return '';
  const crumbs = CRUMBS.test(`${ingredient.item.name} ${ingredient.match?.foodName ?? ''}`);
  const own = item.foodId === ingredient.match?.foodId;
  return crumbs && !own ? ', for coating in place of breadcrumbs' : ', for coating';
}

const MILLILITRES: ReadonlySet<string> = new Set(['ml', 'cl', 'dl', 'l']);
const SPOONS: ReadonlySet<string> = new Set(['cup', 'tbsp', 'tsp']);

/** '375 ml', where the page's line measures what is poured in millilitres and in no cups; null elsewhere. */
function millilitres(
  { grams, role }: PlannedItem,
  { item }: Ingredient,
  food: Food | null,
): string | null {
  const inMl = item.amounts.some(({ unit }) => unit !== null && MILLILITRES.has(unit));
  const inSpoons = item.amounts.some(({ unit }) => unit !== null && SPOONS.has(unit));
  return inMl && !inSpoons && food !== null ? liquidText(food, grams, role) : null;
}

/** A stand-in keeps what the original was for ('for dusting'), not how the original was cut. */
export function tailOnly(
  item: PlannedItem,
  ingredient: Ingredient,
  local: MethodWords | null,
  food: Food | null = null,
): LineWords {
  const { purpose } = ingredient.line;
  const purposeTail =
    purpose === null || ofThePage(purpose) ? coatingTail(item, ingredient, local) : `, ${purpose}`;
  const shape = shapeTail(item, ingredient, local !== null);
  const cut = shape ?? breadTail(item, ingredient, local !== null);
  const tail = `${cut}${rootTail(item, ingredient, local !== null)}${purposeTail}`;
  const unmeasured = shape !== null && !inCups(ingredient) ? '' : null;
  const beside = unmeasured ?? millilitres(item, ingredient, food);
  return { name: foodName(item, local), tail, count: countOfStandIn(item, ingredient), beside };
}

/** The line's own food in a new amount. */
export function ownWords(
  item: PlannedItem,
  ingredient: Ingredient,
  food: Food | null,
  local: MethodWords | null,
): LineWords {
  const said = tailOf(ingredient, local);
  const coats = ingredient.line.purpose === null ? coatingTail(item, ingredient, local) : '';
  const count = food === null || local !== null ? null : countOfRest(item, ingredient, food);
  const beside =
    food === null
      ? null
      : (partOfCount(item, ingredient, food, local !== null) ??
        millilitres(item, ingredient, food));
  const name = ownName(ingredient, food);
  // the table's English name, where a pot or can measured it: the page's language has a word of its own
  const called =
    local !== null && name === food?.name
      ? (localFoodName(item.foodId, local) ?? ingredient.item.name)
      : name;
  return { name: called, tail: `${said}${coats}`, count, beside };
}
