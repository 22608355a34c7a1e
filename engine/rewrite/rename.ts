/** Finds ingredients in the method's words and puts their new names and amounts there. */
import type { FoodTable } from '../foods/index.ts';
import type { PlannedItem } from '../model.ts';
import { amountText, kitchenGrams, pieceText, type Region } from './kitchen.ts';
import type { Mention } from './mentions.ts';
import {
  COLLECTIVES,
  isSweetener,
  itemName,
  listOf,
  newNameOf,
  shortName,
  singular,
} from './names.ts';
import { numberOf, REST, SHARE, shareOf, unitOf } from './shares.ts';

/** What earlier steps have used of an ingredient, share of the whole, and which additions went in. */
export class Ledger {
  private readonly shares = new Map<string, number>();
  private readonly gone = new Set<string>();

  use(mention: Mention, share: number): void {
    const { key } = mention.ingredient;
    this.shares.set(key, (this.shares.get(key) ?? 0) + share);
  }

  /** Share that is left, or null when it cannot be told. */
  left(mention: Mention): number | null {
    const used = this.shares.get(mention.ingredient.key) ?? 0;
    return used > 0 && used < 0.98 ? 1 - used : null;
  }

  /** Additions that have not gone in yet; from now on they have. */
  take(mention: Mention): PlannedItem[] {
    const fresh = mention.along.filter(({ key }) => !this.gone.has(key));
    for (const { key } of fresh) this.gone.add(key);
    return fresh;
  }
}

export interface RenameContext {
  foods: FoodTable;
  region: Region;
  ledger: Ledger;
}

const AMOUNT = String.raw`(?:(?<quantity>\d+[¼½¾⅓⅔]|\d+\s+\d\/\d|\d+\/\d|\d+(?:[.,]\d+)?|[¼½¾⅓⅔])\s*(?<unit>g|grams?|kg|ml|cups?|tbsp|tablespoons?|tsp|teaspoons?|oz|ounces?|lbs?|pounds?)?\.?\s+(?:of\s+)?(?:the\s+)?)`;

/** Word boundaries that know letters beyond ASCII. */
export const START = String.raw`(?<![\p{L}\p{N}])`;
export const END = String.raw`(?![\p{L}\p{N}])`;

export const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

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

const BOILS_AS: readonly (readonly [original: RegExp, standIn: RegExp])[] = [
  [/pasta|noodles|lasagne/, /^(pasta|soybean-pasta|egg-noodles|lasagne)/],
  [/^rice-|couscous|bulgur|quinoa/, /^rice-|couscous|bulgur|quinoa|lentils/],
];

/** What of an ingredient's stand-ins is boiled like it; null when the ingredient is none that is boiled. */
export function boiledOf({ ingredient, items }: Mention): PlannedItem[] | null {
  const id = ingredient.match?.foodId ?? '';
  const rule = BOILS_AS.find(([original]) => original.test(id));
  return rule === undefined ? null : items.filter(({ foodId }) => rule[1].test(foodId));
}

export const namePattern = ({ names }: Mention): RegExp =>
  new RegExp(`${START}(?:${names.map(literal).join('|')})(?:e?s)?${END}`, 'iu');

/** In a step that boils pasta or rice, only the part of the stand-ins that is boiled is meant. */
function inBoilingStep(mention: Mention, text: string): Mention | null {
  const items = boiledOf(mention);
  const called = namePattern(mention);
  const sentence = text.split(/(?<=[.;!])\s+/).find((part) => called.test(part)) ?? text;
  if (items === null || !/\b(boil|cook|simmer)\b/i.test(sentence)) return mention;
  if (items.length === mention.items.length) return mention;
  return items.length === 0
    ? null
    : { ...mention, items, newName: newNameOf(mention.ingredient, items) };
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

interface Owners {
  /** Ingredients by name: a changed one before an unchanged one, else the first line of the name. */
  named: Map<string, Mention[]>;
  /** Ingredients by a word that several of them end in. */
  loose: Map<string, Mention[]>;
}

function grouped(
  mentions: readonly Mention[],
  namesOf: (mention: Mention) => readonly string[],
): Map<string, Mention[]> {
  const owners = new Map<string, Mention[]>();
  for (const mention of mentions)
    for (const name of namesOf(mention)) owners.set(name, [...(owners.get(name) ?? []), mention]);
  for (const [name, own] of owners)
    owners.set(
      name,
      own.toSorted((a, b) => Number(b.changed) - Number(a.changed)),
    );
  return owners;
}

function ownersOf(mentions: readonly Mention[]): Owners {
  return {
    // 'both sugars' and 'sugars' stay plurals; the rest is looked up in the singular.
    named: grouped(mentions, ({ names, loose, ingredient }) =>
      names.map((name) =>
        loose === null && !ingredient.item.name.toLowerCase().includes(name)
          ? name
          : singular(name),
      ),
    ),
    loose: grouped(mentions, ({ loose }) => (loose === null ? [] : [loose])),
  };
}

/** Where a flour thickens, coats or dusts instead of making the dough. */
const SAUCE =
  /\b(sauce|gravy|roux|thicken\w*|simmer|stock|broth|whisk in the (?:milk|stock|cream))\b/i;
const COATING = /\b(dip|dredge|coat|toss the|dust the)\b/i;

const norm = (title: string | null): string => (title ?? '').toLowerCase().replace(/^for the /, '');

/** Where a name stands: the sentence and step around it, the heading above, and every ingredient of the recipe. */
interface Place {
  sentence: string;
  text: string;
  section: string | null;
  mentions: readonly Mention[];
}

function bySection(own: readonly Mention[], { section }: Place): Mention | undefined {
  const heading = norm(section);
  return own.find(({ ingredient }) => heading !== '' && norm(ingredient.line.group) === heading);
}

/** By the other ingredients in the sentence: the one whose group most of them are of. */
function byCompany(
  own: readonly Mention[],
  sentence: string,
  { mentions }: Place,
): Mention | undefined {
  const groups = new Set(own.map(({ ingredient }) => ingredient.line.group));
  if (groups.size < 2) return undefined;
  const counts = new Map<string | null, number>();
  for (const other of mentions) {
    const { group } = other.ingredient.line;
    const alone =
      other.loose === null &&
      !own.some(({ ingredient }) => ingredient.key === other.ingredient.key);
    const only = mentions.every(
      (one) =>
        one.ingredient.line.group === group || !one.names.some((n) => other.names.includes(n)),
    );
    if (alone && only && namePattern(other).test(sentence))
      counts.set(group, (counts.get(group) ?? 0) + 1);
  }
  const ranked = [...counts].sort((a, b) => b[1] - a[1]);
  const [best, second] = ranked;
  if (best === undefined || best[1] === second?.[1]) return undefined;
  return own.find(({ ingredient }) => ingredient.line.group === best[0]);
}

function byRole(own: readonly Mention[], sentence: string): Mention | undefined {
  const role = SAUCE.test(sentence) ? 'thickener' : COATING.test(sentence) ? 'coating' : null;
  return role === null ? undefined : own.find((mention) => mention.role === role);
}

/** Of several ingredients a word may mean, the one the words around it speak of. */
function meantBy(own: readonly Mention[], place: Place): Mention | null {
  const [first] = own;
  if (first === undefined || own.length === 1) return first ?? null;
  const { sentence, text } = place;
  return (
    bySection(own, place) ??
    byRole(own, sentence) ??
    byCompany(own, sentence, place) ??
    byCompany(own, text, place) ??
    byRole(own, text) ??
    first
  );
}

function ownerOf({ named, loose }: Owners, name: string, place: Place): Mention | null {
  const low = name.toLowerCase();
  const exact = named.get(low) ?? named.get(singular(low)) ?? named.get(low.replace(/es$/, ''));
  const any = loose.get(singular(low));
  if (any !== undefined && low === singular(low)) {
    const one = bySection(any, place) ?? byCompany(any, place.sentence, place);
    if (one !== undefined) return one;
  }
  return exact === undefined ? null : meantBy(exact, place);
}

/** The sentence around a place in a text. */
const sentenceAt = (text: string, at: number): string => {
  const start = Math.max(...['. ', '; ', '! '].map((end) => text.lastIndexOf(end, at) + 1));
  const ends = ['. ', '; ', '! '].map((end) => text.indexOf(end, at)).filter((found) => found >= 0);
  return text.slice(start, ends.length === 0 ? text.length : Math.min(...ends));
};

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
    `${START}(?:${SHARE}|${REST}|${AMOUNT})?${START}(?<name>(?:${stems.map(literal).join('|')})(?:e?s)?)${END}`,
    'giu',
  );
  const named = new Set<Mention>();
  const renamed = text.replace(pattern, (...found) => {
    const whole = found[0] as string;
    const groups = found.at(-1) as Record<'name' | 'quantity' | 'unit' | 'share' | 'rest', string>;
    const at = found.at(-3) as number;
    const sentence = sentenceAt(text, at);
    const mention = ownerOf(owners, groups.name, { sentence, text, section, mentions });
    if (mention === null || isOtherUse(text, at, at + whole.length)) return whole;
    named.add(mention);
    const meant = mention.changed ? inBoilingStep(mention, text) : mention;
    if (meant === null) return whole;
    const parts: Found = { ...groups, whole };
    if (MIXTURE.test(text.slice(at + whole.length)))
      return meant.changed ? whole.replace(groups.name, mixtureName(meant, groups.name)) : whole;
    const put = meant.changed
      ? replacement(meant, parts, context)
      : keptText(meant, parts, context);
    const full = withAlong(put, meant, context);
    if (full === whole) return whole;
    // A part in brackets is no list to be joined with its neighbours.
    const marked = full.endsWith(')') ? full : `${OPEN}${full}${CLOSE}`;
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

/** Marks around a list that was put in, so that it can be joined with the words beside it. */
const OPEN = '\u2060';
const CLOSE = '\u2061';

/** Words that begin what is to be done next, so that a list before them is at its end. */
const VERBS = [
  'then|add|allow|arrange|assemble|bake|beat|blend|blitz|boil|bring|broil|brown|brush|caramelise|caramelize',
  'chill|coat|combine|continue|cook|cool|cover|crimp|crumble|crush|cut|decorate|dip|discard|dissolve|divide',
  'drain|dredge|drizzle|drop|dust|fill|finish|flip|fold|form|fry|garnish|gently|glaze|gradually|grate|grease',
  'grill|heat|keep|knead|ladle|layer|leave|let|lift|line|loosen|mash|melt|mix|pack|peel|pinch|pipe|place|pour',
  'press|process|prove|proof|pulse|puree|push|put|reduce|remove|repeat|reserve|rest|return|rinse|rise|roast',
  'roll|rub|scatter|score|scrape|seal|sear|season|serve|set|shake|shape|sift|simmer|skim|slash|slice|slowly',
  'soak|soften|spoon|spread|sprinkle|start|steam|stir|strain|stuff|swirl|taste|temper|thicken|thin|toast|top',
  'torch|toss|transfer|trim|turn|warm|wash|whip|whisk|work|wrap',
].join('|');
const GOES_ON = `(?= and (?!(?:${VERBS})\\b)|, (?!(?:${VERBS})\\b)(?:[^.,;]+, )*[^.,;]+ and (?!(?:${VERBS})\\b))`;
const LISTED = new RegExp(`\u2060([^\u2060\u2061]*) and ([^\u2061]*)\u2061${GOES_ON}`, 'g');

/** 'a and [b and c]' -> 'a, b and c'; '[a and b] and c' -> 'a, b and c'; 'the [70 g a]' -> '70 g a'. */
const joined = (text: string): string =>
  text
    .replace(/\bthe \u2060(?=\d)/gi, '\u2060')
    .replace(LISTED, '\u2060$1, $2\u2061')
    .replace(/,? and ((?:the )?)\u2060(?=[^\u2061]*(?: and |, ))/g, ', $1\u2060')
    .replace(/[\u2060\u2061]/g, '');

/** 'the flours and the flours' -> 'the flours'. */
const tidied = (text: string): string =>
  text
    .replace(/\b(flours|sweeteners)((?:,| and|, and) (?:the )?\1)+\b/gi, '$1')
    .replace(/\b(flours|sweeteners) is\b/gi, '$1 are')
    .replace(/\b(flours|sweeteners) has\b/gi, '$1 have');
