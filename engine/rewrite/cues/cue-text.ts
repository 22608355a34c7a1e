/** Fills the blanks in the texts of cues and warnings, in the method's language. */
import { hasTag } from '../../foods/tags.ts';
import { keptFor } from '../../kept-results.ts';
import type { PlannedItem } from '../../model.ts';
import { decimals } from '../languages/language-tags.ts';
import {
  joinedWith,
  localReason,
  localUnits,
  type MethodWords,
  withOf,
} from '../languages/method-words.ts';
import { amountText, kitchenGrams, pieceText } from '../lines/written-amounts.ts';
import { listOf, shortName } from '../naming/method-names.ts';
import { foreignName } from '../naming/remarks.ts';
import { bakeMinutes } from '../oven/oven-heat.ts';
import { celsius } from '../oven/temperature-scales.ts';
import {
  type CueContext,
  floursBeside,
  floursOf,
  gumsOf,
  isShrunk,
  keptShare,
} from './cue-context.ts';
import { statedTime, timesAsLong } from './stated-time.ts';
import { flavourings } from './thin-icing.ts';

/** A food's name in the method's language; what the recipe had keeps the recipe's word. */
export function nameIn(item: PlannedItem, { words, ingredients }: CueContext): string {
  const own = ingredients.find(({ match }) => match?.foodId === item.foodId);
  if (own !== undefined) return own.item.name;
  return words === null ? shortName(item.foodName) : foreignName(item, words);
}

/** '2 g (¾ tsp) xanthan gum' in the method's language. */
export function withAmount(item: PlannedItem, context: CueContext): string {
  const food = context.foods.byId(item.foodId);
  const name = nameIn(item, context);
  if (food === null) return `${Math.round(item.grams)} g ${name}`;
  const grams = kitchenGrams(food, item.grams, item.role);
  const pieces = pieceText(food, grams, context.words);
  if (pieces !== null) return pieces;
  const amount = amountText(food, grams, context.region);
  if (context.words === null) return `${amount} ${name}`;
  return `${localUnits(decimals(amount), context.words)} ${withOf(name, context.words)}`;
}

/** A list in the method's language. */
export const listIn = (list: readonly string[], { words }: CueContext): string =>
  words === null ? listOf(list) : joinedWith(list, words.and);

const waterOf = (context: CueContext): PlannedItem | undefined =>
  context.plan.items.find(({ foodId, grams }) => foodId === 'water' && grams > 0);

/** A little of the water: about an eighth, in tens of grams, at least 30 g. */
/** Water that dry yeast wakes in, g, at least: common practice, no source. */
const LEAST_BLOOM = 30;

function bloomWater(context: CueContext): string {
  const water = waterOf(context);
  const { words } = context;
  // Little water may be too little for it: then any liquid will do.
  if (water === undefined || water.grams < LEAST_BLOOM)
    return words?.someLiquid ?? 'a little of the liquid';
  const grams = Math.max(LEAST_BLOOM, Math.round(water.grams / 80) * 10);
  return words?.someWater.replace('{grams}', String(grams)) ?? `${grams} g of the water`;
}

/** Less water than this, g, is not worth holding back: own choice. */
const LEAST_RESERVE = 10;

function reserveText(context: CueContext): string {
  const { reserveWaterG } = context.plan;
  if (reserveWaterG === null || reserveWaterG < LEAST_RESERVE) return '';
  const grams = String(Math.round(reserveWaterG));
  if (context.words !== null) return context.words.reserve.replace('{grams}', grams);
  return ` If it is still stiff after the rest, work in up to ${Math.round(reserveWaterG)} g more water by feel.`;
}

/**
 * Times as long as stated: 1.5 below 25 % digestible starch, else 1.25 (common practice, no source);
 * about as long where the plan gave it more yeast instead.
 */
const proofTimes = (context: CueContext): string =>
  isRaised(context)
    ? (context.words?.asLong ?? 'about')
    : `${isLittleStarch(context) ? '1½' : '1¼'} ${context.words?.times ?? 'times'}`;

const isRaised = ({ plan }: CueContext): boolean =>
  plan.notes.some(({ code }) => code === 'YEAST_RAISED');

const isLittleStarch = ({ plan }: CueContext): boolean =>
  plan.dough !== null && plan.dough.after.digestibleStarchPct < 25;

/** ' (75-115 min)' where the sentence beside states how long; nothing where it does not. */
function proofFor(context: CueContext, beside: string): string {
  const stated = statedTime(beside);
  const factor = riseFactor(context);
  return stated === null || factor === null ? '' : ` (${timesAsLong(stated, factor)})`;
}

/** How many times as long as stated a dough rises; null where it takes no longer. */
export function riseFactor(context: CueContext): number | null {
  if (isRaised(context)) return null;
  return isLittleStarch(context) ? 1.5 : 1.25;
}

/** All of the water but what dry yeast wakes in. */
function mixWater(context: CueContext): string {
  if (context.words !== null) return context.words.mixWater;
  const dry = context.plan.items.some(({ foodId }) => foodId === 'dry-yeast');
  return dry
    ? `the water, keeping ${bloomWater(context).replace(' of the water', '')} for the yeast`
    : 'the water';
}

/** Share of the bake after which what browns fast is covered: common practice, no source. */
const COVER_AFTER = 0.6;
/** The same of what is to stay pale. */
const COVER_EARLY = 0.4;

/** Minutes under a lid at the start of a loaf's bake: common practice, no source. */
const COVERED = 25;
/** Below this a bake is one of rolls. */
const SHORT = 15;

/** At most {@link COVERED}, and no more than its share of a shorter bake. */
const coveredFor = ({ method }: CueContext): number =>
  Math.min(COVERED, Math.round((bakeMinutes(method) ?? COVERED / COVER_AFTER) * COVER_AFTER));

/** '{They are|It is}': the first for small bakes that are many, the second for one loaf or cake. */
function isMany({ title, method, words }: CueContext): boolean {
  const bakes = words === null ? null : bakePatterns(words);
  const many = bakes?.many ?? MANY;
  return many.test(title) || (!(bakes?.one ?? ONE).test(title) && many.test(method));
}
const MANY =
  /\b(muffins?|scones|cupcakes|rolls|buns|baps|bagels|pretzels|pitas|naans|bialys|breadsticks|cookies|biscuits|(?:cut|shape|divide)d? into \d+|\d+ (?:rolls|buns|pieces))\b/i;
const ONE = /\b(loaf|bread|cake|tart|pie|boule|baguette)\b/i;

/** The same of another language, made once. */
const bakePatterns = keptFor(({ bakes }: MethodWords) => ({
  many: new RegExp(bakes.many, 'iu'),
  one: new RegExp(bakes.one, 'iu'),
}));

/** Both scales in English, degrees Celsius in languages whose kitchens know no other. */
function degrees(low: number, high: number | null, { words }: CueContext): string {
  if (words === null) return celsius(low, high ?? low);
  return high === null ? `${low} °C` : `${low}-${high} °C`;
}

/** A cue's or warning's words in the method's language. */
export const textOf = ({ id, text }: { id: string; text: string }, { words }: CueContext): string =>
  words?.steps[id] ?? text;

/** A cue's or warning's reason in the method's language. */
export const reasonOf = ({ id, why }: { id: string; why: string }, { words }: CueContext): string =>
  (words === null ? null : localReason(id, words)) ?? why;

/** Whether the flour of the part has become several. */
const areSeveral = (context: CueContext): boolean =>
  floursOf(context).length > 1 ||
  context.mentions.some(
    ({ items }) => items.length > 1 && items.every(({ foodId }) => hasTag(foodId, 'flour-like')),
  );

/** Steps in which a share is told, percent. */
const SHARE_STEP = 5;

/** What is left of the food that has shrunk most, percent. */
function leftPct({ mentions }: CueContext): string {
  const least = Math.min(1, ...mentions.filter(isShrunk).map(keptShare));
  return String(Math.round((100 * least) / SHARE_STEP) * SHARE_STEP);
}

/** The food that has shrunk most, by the recipe's word. */
const shrunk = ({ mentions }: CueContext): string =>
  mentions.filter(isShrunk).toSorted((a, b) => keptShare(a) - keptShare(b))[0]?.ingredient.item
    .name ?? '';

/** ' Take half of its vanilla and salt too.'; nothing where the plan has halved them. */
function halfToo(context: CueContext): string {
  const names = [...new Set(flavourings(context).map(({ ingredient }) => ingredient.item.name))];
  if (names.length === 0) return '';
  const says = context.words?.halfToo ?? ' Take half of its {list} too.';
  return says.replace('{list}', listIn(names, context));
}

/** Where the page's own words for it are put right. */
const READY_AT = / ?: [^:]*\b1[.,]6[^:]*(?=\.$)/u;
const DOUBLED_THERE = /\bdouble\b/i;
const SAYS_DOUBLED = /\buntil\b[^.;]*\b(?:doubl|tripl)/i;

/** A text of a cue or warning with its blanks filled; `beside`: the page's sentence that it is told with. */
export function fill(raw: string, context: CueContext, beside = ''): string {
  const { plan } = context;
  const doubled = (context.words === null ? SAYS_DOUBLED : DOUBLED_THERE).test(context.method);
  const own = doubled ? raw.replace(READY_AT, '') : raw;
  const text = own.replace(/\{([^{}|]+)\|([^{}|]+)\}/g, (_, many: string, one: string) =>
    isMany(context) ? many : one,
  );
  const konjac = plan.items.find(({ foodId }) => hasTag(foodId, 'konjac'));
  const words: Record<string, string> = {
    flours: listIn(
      [...floursOf(context), ...floursBeside(context), ...gumsOf(context, false)].map((item) =>
        withAmount(item, context),
      ),
      context,
    ),
    halfToo: text.includes('{halfToo}') ? halfToo(context) : '',
    flourWord: areSeveral(context) ? 'flours' : 'flour',
    binders: listIn(
      gumsOf(context, false).map((item) => withAmount(item, context)),
      context,
    ),
    gums: listIn(
      gumsOf(context, true).map((item) => withAmount(item, context)),
      context,
    ),
    bloomWater: bloomWater(context),
    mixWater: mixWater(context),
    reserveText: reserveText(context),
    proofTimes: proofTimes(context),
    proofFor: proofFor(context, beside),
    coverAt: String(Math.round((bakeMinutes(context.method) ?? 0) * COVER_AFTER)),
    coverEarly: String(Math.round((bakeMinutes(context.method) ?? 0) * COVER_EARLY)),
    coveredFor: String(coveredFor(context)),
    longer: coveredFor(context) < SHORT ? '5-10' : '10-20',
    leftPct: leftPct(context),
    shrunk: shrunk(context),
    konjac: konjac === undefined ? 'konjac' : nameIn(konjac, context),
    roots: listIn(
      plan.items.flatMap((item) =>
        item.grams > 0 && hasTag(item.foodId, 'slow-root') ? [nameIn(item, context)] : [],
      ),
      context,
    ),
  };
  return text
    .replace(/\{(\w+)\}/g, (whole, key: string) => words[key] ?? whole)
    .replace(/\{C:(\d+)(?:-(\d+))?\}/g, (_, low: string, high?: string) =>
      degrees(Number(low), high === undefined ? null : Number(high), context),
    )
    .replace(/\{d:(\d+)-(\d+)\}/g, (_, low: string, high: string) => {
      const f = (difference: string): number => Math.round((Number(difference) * 1.8) / 5) * 5;
      const metric = `${low}-${high} °C`;
      return context.words === null ? `${metric} (${f(low)}-${f(high)} °F)` : metric;
    });
}
