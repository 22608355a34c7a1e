/** Finds ingredients in the method's words and puts their new names and amounts there. */
import type { FoodTable } from '../../foods/index.ts';
import type { PlannedItem } from '../../model.ts';
import { amountText, kitchenGrams, pieceText, type Region } from '../lines/written-amounts.ts';
import { namesOther } from '../steps/boiling.ts';
import { boiledOf } from '../steps/boils-as.ts';
import type { Ledger } from '../steps/used-so-far.ts';
import { asList, joined } from './joined-lists.ts';
import type { Mention } from './mentions.ts';
import {
  COLLECTIVES,
  isSweetener,
  itemName,
  listOf,
  newNameOf,
  shortName,
} from './method-names.ts';
import { END, literal, namePattern, START } from './name-patterns.ts';
import { ownerOf, ownersOf, sentenceAt } from './owners.ts';
import { numberOf, REST, SHARE, shareOf, unitOf } from './shares.ts';

export interface RenameContext {
  foods: FoodTable;
  region: Region;
  ledger: Ledger;
}

const AMOUNT = String.raw`(?:(?<quantity>\d+[¼½¾⅓⅔]|\d+\s+\d\/\d|\d+\/\d|\d+(?:[.,]\d+)?|[¼½¾⅓⅔])\s*(?<unit>g|grams?|kg|ml|cups?|tbsp|tablespoons?|tsp|teaspoons?|oz|ounces?|lbs?|pounds?)?\.?\s+(?:of\s+)?(?:the\s+)?)`;

/** Share of the whole line that an amount in a step names, or null when it cannot be told. */
function shareNamed(mention: Mention, quantity: number, unit: string | null): number | null {
  const { item, weight } = mention.ingredient;
  const like = item.amounts.find((amount) => amount.unit === unit && amount.quantity > 0);
  const spoons = like === undefined ? spoonShare(mention, quantity, unit) : null;
  const grams = weight?.grams.best ?? 0;
  const inGrams = unit === 'kg' ? quantity * 1000 : unit === 'g' ? quantity : null;
  const share = like
    ? quantity / like.quantity
    : inGrams !== null && grams > 0
      ? inGrams / grams
      : spoons;
  return share !== null && share > 0 && share <= 1.02 ? Math.min(1, share) : null;
}

/** Teaspoons in each measure: 3 to the tablespoon, 16 tablespoons to the cup. */
const TEASPOONS: Readonly<Record<string, number>> = { tsp: 1, tbsp: 3, cup: 48 };

/** '2 tbsp of the sugar' of a line in cups. */
function spoonShare({ ingredient }: Mention, quantity: number, unit: string | null): number | null {
  const each = TEASPOONS[unit ?? ''];
  const [stated] = ingredient.item.amounts;
  const whole = TEASPOONS[stated?.unit ?? ''];
  if (each === undefined || whole === undefined || !stated || stated.quantity <= 0) return null;
  return (quantity * each) / (stated.quantity * whole);
}

function itemAmount(item: PlannedItem, share: number, { foods, region }: RenameContext): string {
  const food = foods.byId(item.foodId);
  if (food === null) return `${Math.round(item.grams * share)} g`;
  const grams = kitchenGrams(food, item.grams * share, item.role);
  return amountText(food, grams, region);
}

/** Grams alone, for lists: '70 g erythritol', '2 large eggs (100 g shelled)'. */
function withGrams(
  item: PlannedItem,
  name: string,
  share: number,
  { foods }: RenameContext,
): string {
  const food = foods.byId(item.foodId);
  const grams =
    food === null ? item.grams * share : kitchenGrams(food, item.grams * share, item.role);
  const pieces = food === null ? null : pieceText(food, grams);
  return pieces ?? `${Math.round(grams * 100) / 100} g ${name}`;
}

const total = ({ items }: Mention): number => items.reduce((sum, { grams }) => sum + grams, 0);

/** '75 g', or '75 g allulose and 35 g erythritol' where one word stands for several foods but flours. */
function shareAmount(mention: Mention, share: number, context: RenameContext): string {
  const { items, newName, ingredient } = mention;
  if (newName === 'flours') return `${Math.round(total(mention) * share)} g`;
  return listOf(items.map((item) => withGrams(item, itemName(item, ingredient), share, context)));
}

interface Found {
  name: string;
  quantity: string | undefined;
  unit: string | undefined;
  share: string | undefined;
  rest: string | undefined;
  whole: string;
}

/** The mention's name now, with amounts where the same food stands in elsewhere too. */
function calledNow(mention: Mention, found: Found, context: RenameContext): string {
  const { newName, items, twice, ingredient } = mention;
  if (newName === null) return found.name;
  if (twice.size === 0) return newName;
  return listOf(
    items.map((item) => {
      const name = itemName(item, ingredient);
      return twice.has(item.foodId) ? withGrams(item, name, 1, context) : name;
    }),
  );
}

/** 'half the sugar' -> 'half the allulose (75 g)'; 'remaining' takes what earlier steps left. */
function sharedOut(mention: Mention, found: Found, context: RenameContext): string | null {
  const { ledger } = context;
  const lead = found.whole.slice(0, found.whole.length - found.name.length);
  const share = found.share === undefined ? ledger.left(mention) : shareOf(found.share);
  if (share === null) return null;
  if (mention.changed === false) {
    ledger.use(mention, share);
    return found.whole;
  }
  ledger.use(mention, share);
  if (mention.items.length === 0) return found.whole;
  const [only] = mention.items;
  const amount =
    mention.items.length === 1 && only !== undefined
      ? withGrams(only, '', share, context).trim()
      : shareAmount(mention, share, context);
  return `${lead}${mention.newName ?? found.name} (${amount})`;
}

function replacement(mention: Mention, found: Found, context: RenameContext): string {
  const { ledger } = context;
  if (found.share !== undefined || found.rest !== undefined) {
    const parted = sharedOut(mention, found, context);
    if (parted !== null) return parted;
  }
  const lead = found.whole.slice(0, found.whole.length - found.name.length);
  if (found.quantity === undefined) return `${lead}${calledNow(mention, found, context)}`;
  const share = shareNamed(mention, numberOf(found.quantity), unitOf(found.unit));
  const called = mention.newName ?? found.name;
  if (share === null || mention.items.length === 0) return `${lead}${called}`;
  ledger.use(mention, share);
  const [only] = mention.items;
  if (mention.items.length === 1 && only !== undefined) {
    const food = context.foods.byId(only.foodId);
    const pieces =
      food === null ? null : pieceText(food, kitchenGrams(food, only.grams * share, only.role));
    return pieces ?? `${itemAmount(only, share, context)} ${called}`;
  }
  const amount = shareAmount(mention, share, context);
  return COLLECTIVES.has(called) && called === 'flours' ? `${amount} ${called}` : amount;
}

/** 'the rest' without a name: followed by no noun. */
const BARE_REST =
  /\bthe (?:rest|remainder|other half)(?=[.,;!]|$|\s+(?:and|then|in|into|to|on|over|with|at|for|while|when|until|a little|gradually|slowly)\b)/i;

/** The one changed ingredient of which earlier words used a known part; null when none or several did. */
function partlyUsed(mentions: readonly Mention[], ledger: Ledger): Mention | null {
  const open = new Map(
    mentions
      .filter((mention) => ledger.left(mention) !== null)
      .map((mention) => [mention.ingredient.key, mention]),
  );
  const [only] = open.values();
  return open.size === 1 && only?.changed && only.items.length > 0 ? only : null;
}

/** 'add the rest' with what is left of the one ingredient that it can mean. */
function bareRest(whole: string, mentions: readonly Mention[], context: RenameContext): string {
  const mention = partlyUsed(mentions, context.ledger);
  const left = mention === null ? null : context.ledger.left(mention);
  if (mention === null || left === null) return whole;
  context.ledger.use(mention, left);
  const called = mention.newName === 'flours' ? ' flours' : '';
  return `${whole} (${shareAmount(mention, left, context)}${called})`;
}

/**
 * In a step that boils pasta, rice or potatoes, only the part of the stand-ins that is boiled is meant;
 * all of them where none is: what is boiled for its own sake is taken out before.
 */
function inBoilingStep(mention: Mention, text: string, mentions: readonly Mention[]): Mention {
  const items = boiledOf(mention);
  const called = namePattern(mention);
  const sentence = text.split(/(?<=[.;!])\s+/).find((part) => called.test(part)) ?? text;
  if (items === null || !/\b(boil|cook|simmer)\b/i.test(sentence)) return mention;
  if (items.length === 0 || items.length === mention.items.length) return mention;
  // In a dish of one pot all of them go in together.
  if (namesOther(sentence, mention, mentions)) return mention;
  return { ...mention, items, newName: newNameOf(mention.ingredient, items) };
}

/** 'flour the board', 'lightly floured', 'butter a tin': the word is a verb there. */
const VERB_AFTER =
  /^\s+(?:the|a|an|your|each)\s+(?:work|surface|board|counter|bench|table|tin|pan|dish|tray|mould|mold|ramekin|baking|inside|sides|bottom|bowl)\b/i;
/** 'no dry flour is left': what is looked at, not an amount. */
const SEEN_BEFORE =
  /(?:lightly|generously|\bdry|\braw|streaks? of|traces? of|pockets? of|patches of|specks? of) $/i;

/** True when a name in the text is put to use as a verb, or is part of another word. */
function isOtherUse(text: string, start: number, end: number): boolean {
  const before = text.slice(0, start);
  const after = text.slice(end);
  return (
    VERB_AFTER.test(after) || /^\s+(?:cooking\s+)?water\b/i.test(after) || SEEN_BEFORE.test(before)
  );
}

/** 'konjac rice' is not renamed once more for its 'rice'. */
function isNamedAlready({ newName, changed }: Mention, text: string, end: number): boolean {
  if (!changed || newName === null) return false;
  return text.slice(0, end).toLowerCase().endsWith(newName.toLowerCase());
}

const MIXTURE = /^[\s-]+(?:mixture|mix|blend)\b/i;

/** 'flour mixture' stays what it is called; 'sugar mixture' is one of sweeteners. */
function mixtureName(mention: Mention, name: string): string {
  if (mention.newName === 'flours') return name;
  if (mention.newName === null) return name;
  return mention.newName === 'sweeteners' || / and |, /.test(mention.newName)
    ? isSugar(name)
      ? 'sweetener'
      : name
    : mention.newName;
}
const isSugar = (name: string): boolean => /sugar/i.test(name);

const capitalised = (text: string, like: string): string =>
  /^\p{Lu}/u.test(like) ? text.replace(/\p{L}|\d/u, (first) => first.toUpperCase()) : text;

/** What went in with an ingredient, behind its name; 'sweeteners' covers sweet additions. */
function withAlong(text: string, mention: Mention, context: RenameContext): string {
  const covered = mention.newName === 'sweeteners';
  const fresh = context.ledger
    .take(mention)
    .filter(({ foodId }) => !(covered && isSweetener(foodId)));
  if (fresh.length === 0) return text;
  const added = fresh.map((item) => withGrams(item, shortName(item.foodName), 1, context));
  // A part with its amount in brackets is no list that an addition could join.
  if (text.endsWith(')')) return `${text} and ${listOf(added)}`;
  const own = mention.items.length > 1 ? text.replace(/ and (?=[^,]*$)/, ', ') : text;
  return listOf([own, ...added]);
}

/**
 * A step's text with changed ingredients under their new names and amounts, and which of them it
 * names. Names of unchanged ingredients are never touched, also not inside longer ones.
 */
export function renameIn(
  text: string,
  mentions: readonly Mention[],
  context: RenameContext,
  section: string | null = null,
): { text: string; named: Mention[] } {
  const owners = ownersOf(mentions);
  const stems = [...new Set([...owners.named.keys(), ...owners.loose.keys()])].sort(
    (a, b) => b.length - a.length,
  );
  if (stems.length === 0) return { text, named: [] };
  const pattern = new RegExp(
    `(?<bare>${BARE_REST.source})|${START}(?:${SHARE}|${REST}|${AMOUNT})?${START}(?<name>(?:${stems.map(literal).join('|')})(?:e?s)?)${END}`,
    'giu',
  );
  const named = new Set<Mention>();
  const renamed = text.replace(pattern, (...found) => {
    const whole = found[0] as string;
    const groups = found.at(-1) as Record<
      'name' | 'quantity' | 'unit' | 'share' | 'rest' | 'bare',
      string
    >;
    if (groups.bare !== undefined) return bareRest(whole, mentions, context);
    const at = found.at(-3) as number;
    const sentence = sentenceAt(text, at);
    const mention = ownerOf(owners, groups.name, { sentence, text, section, mentions });
    if (mention === null || isOtherUse(text, at, at + whole.length)) return whole;
    if (isNamedAlready(mention, text, at + whole.length)) return whole;
    named.add(mention);
    const meant = mention.changed ? inBoilingStep(mention, text, mentions) : mention;
    const parts: Found = { ...groups, whole };
    if (MIXTURE.test(text.slice(at + whole.length)))
      return meant.changed ? whole.replace(groups.name, mixtureName(meant, groups.name)) : whole;
    const put = meant.changed
      ? replacement(meant, parts, context)
      : keptText(meant, parts, context);
    const full = withAlong(put, meant, context);
    if (full === whole) return whole;
    // A part in brackets is no list to be joined with its neighbours.
    const marked = full.endsWith(')') ? full : asList(full);
    return capitalised(marked, whole);
  });
  return { text: tidied(joined(renamed)), named: [...named] };
}

/** An unchanged ingredient keeps its words; what a step uses of it is remembered. */
function keptText(mention: Mention, found: Found, { ledger }: RenameContext): string {
  const share =
    found.share !== undefined
      ? shareOf(found.share)
      : found.quantity === undefined
        ? null
        : shareNamed(mention, numberOf(found.quantity), unitOf(found.unit));
  if (share !== null) ledger.use(mention, share);
  return found.whole;
}

/** 'the flours and the flours' -> 'the flours'. */
const tidied = (text: string): string =>
  text
    .replace(/\b(flours|sweeteners)((?:,| and|, and) (?:the )?\1)+\b/gi, '$1')
    .replace(/\b(sheets|noodles|crumbs|rice|chips) \1\b/gi, '$1')
    .replace(/\b(flours|sweeteners) is\b/gi, '$1 are')
    .replace(/\b(flours|sweeteners) has\b/gi, '$1 have');
