/** What stands in a step in place of an ingredient's old name and amount. */
import { numberValue } from '../../numerals.ts';
import { kitchenGrams, pieceText } from '../lines/written-amounts.ts';
import { agreeing } from '../wording/agreement.ts';
import { shareOf, unitOf } from '../wording/shares.ts';
import { shortCalled } from '../wording/short-names.ts';
import {
  itemAmount,
  type RenameContext,
  shareAmount,
  shareNamed,
  withGrams,
} from './amounts-in-steps.ts';
import { type Mention, massOf } from './mention.ts';
import { COLLECTIVES, isMade, itemName, listOf } from './method-names.ts';

/** A name found in a text, with the amount or share in front of it. */
export interface Found {
  name: string;
  quantity: string | undefined;
  unit: string | undefined;
  share: string | undefined;
  rest: string | undefined;
  whole: string;
  /** The page's words before the name. */
  before: string;
  /** Whether the name is only spoken of, as in 'while the pasta is cooking'. */
  passing: boolean;
  /** What its pieces are called, behind the name. */
  cut: string;
}

/** 'chickpeas and black soybeans': what stays is called as the page calls it here. */
const withOwnWord = ({ items, ingredient, newName }: Mention, found: string): string =>
  newName !== null && (COLLECTIVES.has(newName) || /^(?:both|all|two) /i.test(found))
    ? newName
    : listOf([
        ...new Set(
          items.map((item) =>
            item.foodId === ingredient.match?.foodId ? found : itemName(item, ingredient),
          ),
        ),
      ]);

/** Pieces that a name says: 'bread cubes'. */
const PIECES = /\s(?:cubes|slices|chunks|wedges|strips)$/i;

/** A new name that agrees with the words around it, before the pieces it comes in. */
function agreed(name: string, { name: found, before, cut }: Found): string {
  const pieces = PIECES.exec(found)?.[0] ?? '';
  if (cut === '' && pieces === '') return agreeing(name, found, before);
  const one = / and |, /.test(name) ? name : agreeing(name, 'one', 'a ');
  return `${one}${pieces}`;
}

/** 'all the rest except the plantain': it goes in later, and is named in full then. */
const EXCEPTED = /\b(?:except|excluding|apart from|but not)\b[^.;:]{0,60}$/i;
const isExcepted = ({ before }: Found): boolean => EXCEPTED.test(before);

/** The mention's name now, with amounts where the same food stands in elsewhere too; short after the first time. */
function calledNow(
  mention: Mention,
  found: Found,
  context: RenameContext,
  mentions: readonly Mention[],
): string {
  const { newName, items, alsoElsewhere, ingredient } = mention;
  if (newName === null) {
    if (!found.passing) context.used.introduce(mention);
    return found.name;
  }
  const short = !isExcepted(found) && (found.passing || context.used.introduce(mention));
  if (short) return agreed(shortCalled(mention, found.name, mentions), found);
  const own = items.some(({ foodId }) => foodId === ingredient.match?.foodId);
  if (alsoElsewhere.size === 0)
    return own ? withOwnWord(mention, found.name) : agreed(newName, found);
  const called = items.map((item) => {
    const name = agreeing(itemName(item, ingredient), `${found.name}s`, found.before);
    if (!alsoElsewhere.has(item.foodId)) return name;
    // 'the chopped chocolate chips (115 g)': behind an adjective no amount can stand.
    const [only] = items.length === 1 && /\b(?:the|a|your) \w+ $/i.test(found.before) ? items : [];
    return only === undefined
      ? withGrams(item, name, 1, context)
      : `${name} (${withGrams(item, '', 1, context).trim()})`;
  });
  return listOf(called);
}

/** 'half the sugar' -> 'half the allulose (75 g)'; 'remaining' takes what earlier steps left. */
function sharedOut(
  mention: Mention,
  found: Found,
  context: RenameContext,
  mentions: readonly Mention[],
): string | null {
  const { used } = context;
  const lead = found.whole.slice(0, found.whole.length - found.name.length);
  // Of what is in the pot nobody weighs a half.
  if (found.share !== undefined && used.isNamedBefore(mention) && used.isIn(mention))
    return `${lead}${shortCalled(mention, found.name, mentions)}`;
  const share = found.share === undefined ? used.left(mention) : shareOf(found.share);
  if (share === null) return null;
  if (mention.changed === false) {
    used.use(mention, share);
    return found.whole;
  }
  used.use(mention, share);
  if (mention.items.length === 0) return found.whole;
  const [only] = mention.items;
  const amount =
    mention.items.length === 1 && only !== undefined
      ? withGrams(only, '', share, context).trim()
      : shareAmount(mention, share, context);
  return `${lead}${mention.newName ?? found.name} (${amount})`;
}

/** The changed ingredient in place of what was found: name, and amount where one was given. */
export function replacement(
  mention: Mention,
  found: Found,
  context: RenameContext,
  mentions: readonly Mention[],
): string {
  const { used } = context;
  if (found.share !== undefined || found.rest !== undefined) {
    const parted = sharedOut(mention, found, context, mentions);
    if (parted !== null) return parted;
  }
  const lead = found.whole.slice(0, found.whole.length - found.name.length);
  if (found.quantity === undefined) return `${lead}${calledNow(mention, found, context, mentions)}`;
  // A measure of what is all in the pot already is not of the line.
  if (mention.newName === null && used.isPoured(mention)) return found.whole;
  const share = shareNamed(
    mention,
    numberValue(found.quantity.replace('-', ' ')) ?? Number.NaN,
    unitOf(found.unit),
  );
  const called = mention.newName ?? found.name;
  if (share === null || mention.items.length === 0) return `${lead}${called}`;
  used.use(mention, share);
  used.introduce(mention);
  const [only] = mention.items;
  if (mention.items.length === 1 && only !== undefined) {
    const food = context.foods.byId(only.foodId);
    const pieces =
      food === null ? null : pieceText(food, kitchenGrams(food, only.grams * share, only.role));
    return pieces ?? `${itemAmount(only, share, context)} ${called}`;
  }
  if (isMade(called))
    return share > ALL ? `the ${called}` : `${Math.round(massOf(mention) * share)} g ${called}`;
  const amount = shareAmount(mention, share, context);
  return COLLECTIVES.has(called) && called === 'flours' ? `${amount} ${called}` : amount;
}

/** What is as good as all of a thing made first. */
const ALL = 0.98;

/** An unchanged ingredient keeps its words; what a step uses of it is remembered. */
export function keptText(mention: Mention, found: Found, { used }: RenameContext): string {
  const share =
    found.share !== undefined
      ? shareOf(found.share)
      : found.quantity === undefined
        ? null
        : shareNamed(
            mention,
            numberValue(found.quantity.replace('-', ' ')) ?? Number.NaN,
            unitOf(found.unit),
          );
  if (share !== null) used.use(mention, share);
  return found.whole;
}
