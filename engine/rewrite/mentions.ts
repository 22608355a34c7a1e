/** Finds ingredients in the method's words and puts their new names and amounts there. */
import type { FoodTable } from '../foods/index.ts';
import type { Ingredient, Plan, PlannedItem } from '../model.ts';
import made from './data/made.json' with { type: 'json' };
import { amountText, kitchenGrams, pieceText, type Region } from './kitchen.ts';
import { isSame, itemsFor } from './lines.ts';

/** What became of one ingredient, for the words of the method. */
export interface Mention {
  ingredient: Ingredient;
  items: PlannedItem[];
  /** Words that stand for it in the method, longest first. */
  names: string[];
  /** What it is called now; null when nothing of it is left. */
  newName: string | null;
  changed: boolean;
}

const FLOUR =
  /flour|gluten|starch|fibre|bran|semolina|meal$|oats|flax|psyllium|whey-protein|egg-white-powder/;
const SWEET =
  /sugar|allulose|erythritol|xylitol|syrup|honey|monk|stev|sucralose|tagatose|maltitol|isomalt|polydextrose|inulin/;
const CALLED: Record<string, string[]> = {
  'pasta-dry': ['pasta', 'spaghetti', 'noodles'],
  'egg-noodles-dry': ['noodles', 'pasta'],
  'rice-white-dry': ['rice'],
  'breadcrumbs-dry': ['breadcrumbs', 'crumbs', 'bread crumbs'],
  panko: ['panko', 'breadcrumbs', 'crumbs'],
  'corn-kernels': ['corn', 'sweetcorn'],
  'chocolate-semisweet': ['chocolate chips', 'chocolate'],
  'chocolate-dark-70': ['chocolate'],
};

/** A food's name without what follows the first comma: 'hearts of palm, canned' -> 'hearts of palm'. */
export const shortName = (name: string): string => name.split(',')[0]?.trim() ?? name;

const singular = (name: string): string => name.replace(/oes$/i, 'o').replace(/([^s])s$/i, '$1');

/** 'a', 'a and b', 'a, b and c'. */
export function listOf(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

function newNameOf(ingredient: Ingredient, items: readonly PlannedItem[]): string | null {
  const foods = items.map(({ foodId }) => foodId);
  if (items.length === 0) return null;
  if (items.length === 1) {
    const [only] = items;
    const own = only?.foodId === ingredient.match?.foodId;
    return own ? null : shortName(only?.foodName ?? '');
  }
  if (foods.every((id) => FLOUR.test(id))) return 'flours';
  if (foods.every((id) => SWEET.test(id))) return 'sweeteners';
  const own = ingredient.match?.foodId;
  const names = items.map(({ foodId, foodName }) =>
    foodId === own ? ingredient.item.name : shortName(foodName),
  );
  return listOf([...new Set(names)]);
}

/** Name of what several foods make together in place of a bought one, when nothing of that stays. */
function madeName(
  ingredient: Ingredient,
  items: readonly PlannedItem[],
  plan: Plan,
): string | null {
  const swaps = plan.swaps.filter(({ key }) => key === ingredient.key);
  const [only] = swaps;
  if (only === undefined || swaps.length !== 1 || only.keptGrams > 0 || items.length < 2)
    return null;
  return (made as Record<string, string>)[only.id] ?? null;
}

/** Additions that stand in for this ingredient and are spoken of together with it. */
function standIns(plan: Plan, ingredient: Ingredient): PlannedItem[] {
  const foods = plan.swaps
    .filter((swap) => swap.key === ingredient.key)
    .flatMap((swap) => swap.to.map(({ foodId }) => foodId));
  return plan.items.filter(
    ({ key, foodId, grams, role }) =>
      key === `new.${foodId}` && grams > 0 && foods.includes(foodId) && role !== 'binder',
  );
}

/** 'semisweet chocolate chips' -> itself, 'chocolate chips', 'chips'. */
function endings(name: string): string[] {
  const words = name.split(/\s+/);
  return words.map((_, at) => words.slice(at).join(' '));
}

function namesOf(ingredient: Ingredient, all: readonly Ingredient[]): string[] {
  const own = ingredient.item.name.toLowerCase().trim();
  const others = new Set(
    all
      .filter(({ key }) => key !== ingredient.key)
      .flatMap(({ item }) => endings(item.name.toLowerCase().trim()).map(singular)),
  );
  const unshared = endings(own).filter((name) => name === own || !others.has(singular(name)));
  const more = CALLED[ingredient.match?.foodId ?? ''] ?? [];
  return [...new Set([...unshared, ...more])]
    .filter((word) => word.length > 2)
    .sort((a, b) => b.length - a.length);
}

/** Every ingredient with its names in the method and what became of it. */
export function mentionsOf(ingredients: readonly Ingredient[], plan: Plan): Mention[] {
  const own = ingredients
    .filter(({ match, line }) => match !== null && line.kind === 'ingredient')
    .map((ingredient) => mentionOf(ingredient, ingredients, plan));
  return [...own, ...sharedMentions(own)];
}

function mentionOf(ingredient: Ingredient, all: readonly Ingredient[], plan: Plan): Mention {
  const items = [...itemsFor(plan, ingredient), ...standIns(plan, ingredient)];
  const [only] = items;
  const touched =
    items.length > 0 || plan.swaps.some((s) => s.key === ingredient.key && s.keptGrams <= 0);
  const same = items.length === 1 && only !== undefined && isSame(only, ingredient);
  return {
    ingredient,
    items,
    names: namesOf(ingredient, all),
    newName: madeName(ingredient, items, plan) ?? newNameOf(ingredient, items),
    changed: touched && !same,
  };
}

const lastWord = ({ ingredient }: Mention): string =>
  singular(ingredient.item.name.toLowerCase().trim().split(/\s+/).at(-1) ?? '');

/** 'sugar', when a recipe has two sugars: means them all, and is renamed when all of them changed. */
function sharedMentions(mentions: readonly Mention[]): Mention[] {
  const heads = new Set(mentions.map(lastWord));
  return [...heads].flatMap((head) => {
    const sharing = mentions.filter((mention) => lastWord(mention) === head);
    const [first] = sharing;
    if (first === undefined || sharing.length < 2 || !sharing.every((m) => m.changed)) return [];
    const items = sharing.flatMap((mention) => mention.items);
    const kinds = new Set(items.map(({ foodId }) => foodId));
    const newName = kinds.size > 1 ? newNameOf(first.ingredient, items) : first.newName;
    const collective = newName === 'flours' || newName === 'sweeteners' || kinds.size === 1;
    return collective && newName !== null ? [{ ...first, items, names: [head], newName }] : [];
  });
}

const AMOUNT = String.raw`(?:(?<quantity>\d+[¼½¾⅓⅔]|\d+\s+\d\/\d|\d+\/\d|\d+(?:[.,]\d+)?|[¼½¾⅓⅔])\s*(?<unit>g|grams?|kg|ml|cups?|tbsp|tablespoons?|tsp|teaspoons?|oz|ounces?|lbs?|pounds?)?\.?\s+(?:of\s+)?(?:the\s+)?)?`;

/** Word boundaries that know letters beyond ASCII. */
const START = String.raw`(?<![\p{L}\p{N}])`;
const END = String.raw`(?![\p{L}\p{N}])`;

const UNITS: Record<string, string> = {
  gram: 'g',
  tablespoon: 'tbsp',
  teaspoon: 'tsp',
  ounce: 'oz',
  pound: 'lb',
};
const FRACTION_VALUES: Record<string, number> = {
  '¼': 0.25,
  '½': 0.5,
  '¾': 0.75,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

function numberOf(text: string): number {
  const glyph = /^(\d*)([¼½¾⅓⅔])$/.exec(text);
  if (glyph) return Number(glyph[1] || 0) + (FRACTION_VALUES[glyph[2] ?? ''] ?? 0);
  const parts = text.split(/\s+/).map((part) => {
    const [over, under] = part.split('/').map(Number);
    return under === undefined ? Number(part.replace(',', '.')) : (over ?? 0) / under;
  });
  return parts.reduce((sum, value) => sum + value, 0);
}

const unitOf = (text: string | undefined): string | null => {
  if (text === undefined) return null;
  const bare = text.toLowerCase().replace(/s$/, '');
  return UNITS[bare] ?? bare;
};

/** Share of the whole line that an amount in a step names, or null when it cannot be told. */
function shareNamed(mention: Mention, quantity: number, unit: string | null): number | null {
  const { item, weight } = mention.ingredient;
  const like = item.amounts.find((amount) => amount.unit === unit && amount.quantity > 0);
  const grams = weight?.grams.best ?? 0;
  const inGrams = unit === 'kg' ? quantity * 1000 : unit === 'g' ? quantity : null;
  const share = like
    ? quantity / like.quantity
    : inGrams !== null && grams > 0
      ? inGrams / grams
      : null;
  return share !== null && share > 0 && share <= 1.02 ? Math.min(1, share) : null;
}

function amountNow(
  mention: Mention,
  share: number,
  foods: FoodTable,
  region: Region,
): string | null {
  const [only] = mention.items;
  const total = mention.items.reduce((sum, { grams }) => sum + grams, 0) * share;
  if (mention.items.length !== 1 || only === undefined) return `${Math.round(total)} g`;
  const food = foods.byId(only.foodId);
  if (food === null) return `${Math.round(total)} g`;
  const grams = kitchenGrams(food, total, only.role);
  return pieceText(food, grams) === null ? amountText(food, grams, region) : null;
}

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
/** 'flour the board', 'lightly floured', 'butter a tin': the word is a verb there. */
const VERB_AFTER =
  /^\s+(?:the|a|an|your|each)\s+(?:work|surface|board|counter|bench|table|tin|pan|dish|tray|mould|mold|ramekin|baking|inside|sides|bottom|bowl)/i;

function replacement(
  mention: Mention,
  found: { name: string; quantity: string | undefined; unit: string | undefined; whole: string },
  foods: FoodTable,
  region: Region,
): string {
  const called = mention.newName ?? found.name;
  if (found.quantity === undefined) return called;
  const lead = found.whole.slice(0, found.whole.length - found.name.length);
  const share = shareNamed(mention, numberOf(found.quantity), unitOf(found.unit));
  const [only] = mention.items;
  const food = only === undefined ? null : foods.byId(only.foodId);
  if (share === null || mention.items.length === 0) return `${lead}${called}`;
  if (mention.items.length === 1 && food !== null && only !== undefined) {
    const pieces = pieceText(food, kitchenGrams(food, only.grams * share, only.role));
    if (pieces !== null) return pieces;
  }
  const amount = amountNow(mention, share, foods, region);
  return amount === null ? `${lead}${called}` : `${amount} ${called}`;
}

const BOILS_AS: readonly (readonly [original: RegExp, standIn: RegExp])[] = [
  [/pasta|noodles|lasagne/, /^(pasta|soybean-pasta|egg-noodles|lasagne)/],
  [/^rice-|couscous|bulgur|quinoa/, /^rice-|couscous|bulgur|quinoa|lentils/],
];

/** In a step that boils pasta or rice, only the part of the stand-ins that is boiled is meant. */
function inBoilingStep(mention: Mention, text: string): Mention | null {
  const id = mention.ingredient.match?.foodId ?? '';
  const rule = BOILS_AS.find(([original]) => original.test(id));
  const called = new RegExp(`${START}(?:${mention.names.map(literal).join('|')})`, 'iu');
  const sentence = text.split(/(?<=[.;!])\s+/).find((part) => called.test(part)) ?? text;
  if (rule === undefined || !/\b(boil|cook|simmer)\b/i.test(sentence)) return mention;
  const items = mention.items.filter(({ foodId }) => rule[1].test(foodId));
  if (items.length === mention.items.length) return mention;
  return items.length === 0
    ? null
    : { ...mention, items, newName: newNameOf(mention.ingredient, items) };
}

/** True when a name in the text is put to use as a verb, or is part of another word. */
function isOtherUse(text: string, start: number, end: number): boolean {
  const before = text.slice(0, start);
  const after = text.slice(end);
  return (
    VERB_AFTER.test(after) ||
    /^\s+(?:cooking\s+)?water\b/i.test(after) ||
    /(?:lightly|generously) $/i.test(before)
  );
}

const capitalised = (text: string, like: string): string =>
  /^\p{Lu}/u.test(like) ? text.charAt(0).toUpperCase() + text.slice(1) : text;

/**
 * A step's text with changed ingredients under their new names and amounts, and which of them it
 * names. Names of unchanged ingredients are never touched, also not inside longer ones.
 */
export function renameIn(
  text: string,
  mentions: readonly Mention[],
  foods: FoodTable,
  region: Region,
): { text: string; named: Mention[] } {
  const owners = new Map<string, Mention>();
  for (const mention of mentions)
    for (const name of mention.names) {
      const stem = singular(name);
      // The first line of a name owns it, a changed one before an unchanged one.
      if (!owners.has(stem) || (mention.changed && !owners.get(stem)?.changed))
        owners.set(stem, mention);
    }
  const stems = [...owners.keys()].sort((a, b) => b.length - a.length);
  if (stems.length === 0) return { text, named: [] };
  const pattern = new RegExp(
    `${START}${AMOUNT}${START}(?<name>(?:${stems.map(literal).join('|')})(?:e?s)?)${END}`,
    'giu',
  );
  const named = new Set<Mention>();
  const renamed = text.replace(pattern, (...found) => {
    const whole = found[0] as string;
    const groups = found.at(-1) as { name: string; quantity?: string; unit?: string };
    const at = found.at(-3) as number;
    const mention = ownerOf(owners, groups.name);
    if (mention === null || isOtherUse(text, at, at + whole.length)) return whole;
    named.add(mention);
    const meant = mention.changed ? inBoilingStep(mention, text) : null;
    if (meant === null) return whole;
    const parts = { name: groups.name, quantity: groups.quantity, unit: groups.unit, whole };
    const put = replacement(meant, parts, foods, region);
    return capitalised(put.includes(' and ') ? `${OPEN}${put}${CLOSE}` : put, whole);
  });
  return { text: tidied(joined(renamed)), named: [...named] };
}

function ownerOf(owners: ReadonlyMap<string, Mention>, name: string): Mention | null {
  const low = name.toLowerCase();
  return owners.get(low) ?? owners.get(singular(low)) ?? owners.get(low.replace(/es$/, '')) ?? null;
}

/** Marks around a list that was put in, so that it can be joined with the words beside it. */
const OPEN = '\u2060';
const CLOSE = '\u2061';

const VERBS =
  'then|add|bake|beat|blend|boil|bring|chill|combine|cook|cool|cover|cut|drain|fold|fry|heat|knead|leave|let|mix|pour|put|reduce|return|roast|roll|season|serve|set|simmer|sprinkle|stir|toast|top|toss|whisk';
const LISTED = new RegExp(
  `\u2060([^\u2061]*) and ([^\u2061]*)\u2061(?= and (?!(?:${VERBS})\\b))`,
  'g',
);

/** 'a and [b and c]' -> 'a, b and c'; '[a and b] and c' -> 'a, b and c'. */
const joined = (text: string): string =>
  text
    .replace(LISTED, '$1, $2')
    .replace(/,? and ((?:the )?)\u2060/g, ', $1')
    .replace(/[\u2060\u2061]/g, '');

/** 'the flours and the flours' -> 'the flours'. */
const tidied = (text: string): string =>
  text
    .replace(/\b(flours|sweeteners)((?:,| and|, and) (?:the )?\1)+\b/gi, '$1')
    .replace(/\b(flours|sweeteners) is\b/gi, '$1 are')
    .replace(/\b(flours|sweeteners) has\b/gi, '$1 have');
