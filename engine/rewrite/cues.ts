/** Handling that the new ingredients call for, and where in the method it goes. */
import type { FoodTable } from '../foods/index.ts';
import type { Adjustment, Ingredient, Plan, PlannedItem, RewrittenStep } from '../model.ts';
import cues from './data/cues.json' with { type: 'json' };
import warnings from './data/warnings.json' with { type: 'json' };
import { foreignName } from './foreign.ts';
import { amountText, kitchenGrams, type Region } from './kitchen.ts';
import { listOf, type Mention, shortName } from './mentions.ts';
import { bakeMinutes } from './oven.ts';
import { celsius } from './temperature.ts';
import { joinedWith, localUnits, type MethodWords } from './words.ts';

interface Cue {
  id: string;
  families: string[];
  /** Pattern of food ids, one of which the plan adds. */
  added?: string;
  /** Pattern of food ids, none of which the plan adds. */
  notAdded?: string;
  /** Pattern of food ids, one of which is in the result. */
  present?: string;
  /** Pattern of food ids of the original, one of which is cut or gone. */
  replaces?: string;
  /** Less than a third of what it replaces is left. */
  keepsNone?: boolean;
  severalFlours?: boolean;
  /** Only when new flours are at least this share (0..1) of the flours: a little changes no handling. */
  fromShare?: number;
  yeast?: boolean;
  /** The method says it already. */
  unless?: string;
  place: string;
  where?: string;
  /** Of the steps that fit `where`, one that says this goes before the others. */
  prefers?: string;
  first?: boolean;
  /** Goes to the method's start (`before`) or end (`after`) when no step matches `where`. */
  anyway?: boolean;
  /** Only for a title or method that speaks of this. */
  ifSaid?: string;
  /** Not for a dish whose title says this. */
  notTitled?: string;
  /** Corrects the phrase of the last step (or of `all`) that says otherwise, instead of a step of its own. */
  amends?: { step: string; phrase: string; to: string; all?: boolean };
  /** Says its text also when it has corrected a step. */
  too?: boolean;
  /** Lowers the oven in the method; its text is for methods that state no temperature. */
  oven?: boolean;
  /** Only where flour and water can, or cannot, stand together before the rest goes in. */
  autolyse?: boolean;
  /** Only for bakes of at least this many minutes. */
  bakeFrom?: number;
  text: string;
  why: string;
  source: string;
}

interface Warning {
  id: string;
  /** Only in these dishes; in all when absent. */
  families?: string[];
  replaced: string;
  by: string;
  kept: number;
  words: string;
  /** What the title says instead, when no step does. */
  titled?: string;
  text: string;
  why: string;
  source: string;
}

export interface CueContext {
  plan: Plan;
  ingredients: readonly Ingredient[];
  mentions: readonly Mention[];
  foods: FoodTable;
  region: Region;
  /** The original method, for what it says already; with English key words when it is in another language. */
  method: string;
  title: string;
  /** Words of the method's language; null for English and languages without any. */
  words: MethodWords | null;
  /** Whether the method lets flour and water stand together first. */
  autolyses: boolean;
  /** Changes accepted after earlier bakes. */
  adjustments: readonly Adjustment[];
}

const FLOURS = /flour|gluten|starch|fibre|bran|flax|whey-protein|egg-white-powder|oats$/;
const BINDERS = /xanthan|guar|psyllium|glucomannan/;
const YEAST = /yeast/;

const originalIds = (context: CueContext): Set<string> =>
  new Set(context.ingredients.flatMap(({ match }) => (match === null ? [] : [match.foodId])));

function addedItems(context: CueContext): PlannedItem[] {
  const had = originalIds(context);
  return context.plan.items.filter(({ foodId, grams }) => grams > 0 && !had.has(foodId));
}

const some = (ids: readonly string[], pattern: string): boolean =>
  ids.some((id) => new RegExp(pattern).test(id));

function gone(context: CueContext, pattern: string, keepsNone: boolean): boolean {
  return context.mentions.some((mention) => {
    const { ingredient, changed } = mention;
    const id = ingredient.match?.foodId ?? '';
    return changed && new RegExp(pattern).test(id) && !(keepsNone && keptShare(mention) > 1 / 3);
  });
}

const floursOf = (context: CueContext): PlannedItem[] =>
  merged(
    context.plan.items.filter(({ foodId, grams, role }) => {
      const dough = role === 'structure' || role === 'starch-bulk' || role === 'other';
      return grams > 0 && dough && FLOURS.test(foodId) && !BINDERS.test(foodId);
    }),
  );

/** One item a food, so that a flour that stands in for two lines is named once. */
function merged(items: readonly PlannedItem[]): PlannedItem[] {
  const byFood = new Map<string, PlannedItem>();
  for (const item of items) {
    const same = byFood.get(item.foodId);
    byFood.set(item.foodId, same ? { ...same, grams: same.grams + item.grams } : item);
  }
  return [...byFood.values()];
}

/** Gums for the flours of a dough, or, in other dishes and fillings, those that thicken. */
const gumsOf = (context: CueContext, thickening: boolean): PlannedItem[] =>
  merged(
    context.plan.items.filter(
      ({ foodId, grams, role }) =>
        grams > 0 && BINDERS.test(foodId) && thickening === (role === 'thickener'),
    ),
  );

/** Share of the flours, by mass, that the original did not have. */
function newShare(context: CueContext): number {
  const had = originalIds(context);
  const grams = (items: readonly PlannedItem[]): number => items.reduce((t, i) => t + i.grams, 0);
  const flours = floursOf(context);
  const fresh = flours.filter(({ foodId }) => !had.has(foodId));
  return flours.length === 0 ? 1 : grams(fresh) / grams(flours);
}

/** The dish's family and those of its parts, such as a sauce under a crust. */
const familiesOf = ({ family, parts }: Plan): string[] => [
  family.id,
  ...parts.map((part) => part.family),
];

function applies(cue: Cue, context: CueContext): boolean {
  if (!familiesOf(context.plan).some((family) => cue.families.includes(family))) return false;
  const added = addedItems(context).map(({ foodId }) => foodId);
  const all = context.plan.items.filter(({ grams }) => grams > 0).map(({ foodId }) => foodId);
  if (cue.added !== undefined && !some(added, cue.added)) return false;
  if (cue.notAdded !== undefined && some(added, cue.notAdded)) return false;
  if (cue.present !== undefined && !some(all, cue.present)) return false;
  if (cue.replaces !== undefined && !gone(context, cue.replaces, cue.keepsNone === true))
    return false;
  if (cue.fromShare !== undefined && newShare(context) < cue.fromShare) return false;
  if (cue.severalFlours === true && floursOf(context).length < 2) return false;
  if (cue.text.includes('{binders}') && gumsOf(context, false).length === 0) return false;
  if (cue.text.includes('{gums}') && gumsOf(context, true).length === 0) return false;
  if (cue.yeast === true && !all.some((id) => YEAST.test(id))) return false;
  const said = `${context.title}\n${context.method}`;
  if (cue.ifSaid !== undefined && !new RegExp(cue.ifSaid, 'i').test(said)) return false;
  if (cue.notTitled !== undefined && new RegExp(cue.notTitled, 'i').test(context.title))
    return false;
  if (cue.autolyse !== undefined && cue.autolyse !== context.autolyses) return false;
  if (cue.bakeFrom !== undefined && (bakeMinutes(context.method) ?? 0) < cue.bakeFrom) return false;
  return cue.unless === undefined || !new RegExp(cue.unless, 'i').test(context.method);
}

/** A food's name in the method's language; what the recipe had keeps the recipe's word. */
function nameIn(item: PlannedItem, { words, ingredients }: CueContext): string {
  const own = ingredients.find(({ match }) => match?.foodId === item.foodId);
  if (own !== undefined) return own.item.name;
  return words === null ? shortName(item.foodName) : foreignName(item, words);
}

function withAmount(item: PlannedItem, context: CueContext): string {
  const food = context.foods.byId(item.foodId);
  const name = nameIn(item, context);
  if (food === null) return `${Math.round(item.grams)} g ${name}`;
  const amount = amountText(food, kitchenGrams(food, item.grams, item.role), context.region);
  const local =
    context.words === null
      ? amount
      : localUnits(amount, context.words).replace(/(\d)\.(\d)/g, '$1,$2');
  return `${local} ${name}`;
}

const listIn = (list: readonly string[], { words }: CueContext): string =>
  words === null ? listOf(list) : joinedWith(list, words.and);

const waterOf = (context: CueContext): PlannedItem | undefined =>
  context.plan.items.find(({ foodId, grams }) => foodId === 'water' && grams > 0);

/** A little of the water: about an eighth, in tens of grams, at least 30 g. */
function bloomWater(context: CueContext): string {
  const water = waterOf(context);
  const { words } = context;
  if (water === undefined) return words?.someLiquid ?? 'a little of the liquid';
  const grams = Math.max(30, Math.round(water.grams / 80) * 10);
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
const proofTimes = ({ plan, words }: CueContext): string => {
  if (words === null && plan.notes.some(({ code }) => code === 'YEAST_RAISED')) return 'about';
  const little = plan.dough !== null && plan.dough.after.digestibleStarchPct < 25;
  return `${little ? '1½' : '1¼'} ${words?.times ?? 'times'}`;
};

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

/** Minutes under a lid at the start of a loaf's bake: common practice, no source. */
const COVERED = 25;
/** Below this a bake is one of rolls. */
const SHORT = 15;

/** At most {@link COVERED}, and no more than its share of a shorter bake. */
const coveredFor = ({ method }: CueContext): number =>
  Math.min(COVERED, Math.round((bakeMinutes(method) ?? COVERED / COVER_AFTER) * COVER_AFTER));

/** '{They are|It is}': the first for small bakes that are many, the second for one loaf or cake. */
const isMany = ({ title, method }: CueContext): boolean =>
  MANY.test(title) || (!ONE.test(title) && MANY.test(method));
const MANY =
  /\b(muffins?|scones|cupcakes|rolls|buns|baps|bagels|cookies|biscuits|(?:cut|shape|divide)d? into \d+|\d+ (?:rolls|buns|pieces))\b/i;
const ONE = /\b(loaf|bread|cake|tart|pie|boule|baguette)\b/i;

/** Both scales in English, degrees Celsius in languages whose kitchens know no other. */
function degrees(low: number, high: number | null, { words }: CueContext): string {
  if (words === null) return celsius(low, high ?? low);
  return high === null ? `${low} °C` : `${low}-${high} °C`;
}

/** A cue's or warning's words in the method's language. */
const textOf = ({ id, text }: { id: string; text: string }, { words }: CueContext): string =>
  words?.steps[id] ?? text;

function fill(raw: string, context: CueContext): string {
  const { plan } = context;
  const text = raw.replace(/\{([^{}|]+)\|([^{}|]+)\}/g, (_, many: string, one: string) =>
    isMany(context) ? many : one,
  );
  const konjac = plan.items.find(({ foodId }) => /^konjac-(noodles|rice)$/.test(foodId));
  const words: Record<string, string> = {
    flours: listIn(
      floursOf(context).map((item) => withAmount(item, context)),
      context,
    ),
    flourWord: floursOf(context).length > 1 ? 'flours' : 'flour',
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
    coverAt: String(Math.round((bakeMinutes(context.method) ?? 0) * COVER_AFTER)),
    coveredFor: String(coveredFor(context)),
    longer: coveredFor(context) < SHORT ? '5-10' : '10-20',
    konjac: konjac === undefined ? 'konjac' : nameIn(konjac, context),
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

/** Where a cue goes: the index of the step it stands before; `length` is the end; null is nowhere. */
function placeOf(cue: Cue, texts: readonly string[]): number | null {
  if (cue.place === 'start' || texts.length === 0) return 0;
  if (cue.place === 'end' || cue.where === undefined) return texts.length;
  const pattern = new RegExp(cue.where, 'i');
  const all = texts.flatMap((text, at) => (pattern.test(text) ? [at] : []));
  const prefers = cue.prefers === undefined ? null : new RegExp(cue.prefers, 'i');
  const best = prefers === null ? [] : all.filter((at) => prefers.test(texts[at] ?? ''));
  const hits = best.length > 0 ? best : all;
  const first = hits[0];
  const last = hits.at(-1);
  if (first === undefined || last === undefined) {
    if (cue.anyway !== true) return null;
    return cue.place === 'before' ? 0 : texts.length;
  }
  if (cue.place === 'before') return first;
  return (cue.first === true ? first : last) + 1;
}

export interface Insertion {
  /** Index in the original method of the step it stands before; its length is the end. */
  at: number;
  /** Among insertions of one place: what opens the method, what follows a step, what precedes the next. */
  rank: number;
  step: RewrittenStep;
}

const RANKS = ['start', 'after', 'end', 'before'];

const capital = (text: string): string => text.replace(/^\p{Ll}/u, (first) => first.toUpperCase());

const inserted = (text: string, why: string): RewrittenStep => ({
  section: null,
  before: null,
  after: text,
  change: 'inserted',
  why,
});

/** Indices of the steps whose words a cue corrects: the last that says otherwise, or all of them. */
function amendedSteps(cue: Cue, texts: readonly string[]): number[] {
  const { amends } = cue;
  if (amends === undefined) return [];
  const [step, phrase] = [new RegExp(amends.step, 'i'), new RegExp(amends.phrase, 'i')];
  const hits = texts.flatMap((text, at) => (step.test(text) && phrase.test(text) ? [at] : []));
  return amends.all === true ? hits : hits.slice(-1);
}

export interface Amendment {
  /** Index of the step in the original method. */
  at: number;
  phrase: RegExp;
  to: string;
  why: string;
}

const fitting = (context: CueContext): Cue[] =>
  (cues as Cue[]).filter((cue) => applies(cue, context));

/** Phrases of steps that the new ingredients contradict, such as a shorter cooling. */
export function amendments(context: CueContext, texts: readonly string[]): Amendment[] {
  return fitting(context).flatMap((cue) =>
    amendedSteps(cue, texts).map((at) => ({
      at,
      phrase: new RegExp(cue.amends?.phrase ?? '', 'i'),
      to: fill(cue.amends?.to ?? '', context),
      why: cue.why,
    })),
  );
}

/** Why the oven is to be cooler, or null when it is not. */
export const coolerOven = (context: CueContext): string | null =>
  fitting(context).find(({ oven }) => oven === true)?.why ?? null;

/** Whether flour and water are to stand before the other ingredients go in. */
export const restsFirst = (context: CueContext): boolean =>
  fitting(context).some(({ autolyse }) => autolyse === true);

/**
 * Steps to insert, with their places. `ovenSaid`: the method states oven temperatures, which are
 * changed where they stand.
 */
export function insertions(
  context: CueContext,
  texts: readonly string[],
  ovenSaid: boolean,
): Insertion[] {
  return fitting(context)
    .filter((cue) => cue.text !== '' && !(cue.oven === true && ovenSaid))
    .filter((cue) => cue.too === true || amendedSteps(cue, texts).length === 0)
    .flatMap((cue) => {
      const at = placeOf(cue, texts);
      if (at === null) return [];
      const step = inserted(capital(fill(textOf(cue, context), context)), cue.why);
      return [{ at, rank: RANKS.indexOf(cue.place), step }];
    });
}

/** Share (0..1) of an ingredient's grams that stays. */
function keptShare({ ingredient, items }: Mention): number {
  const before = ingredient.weight?.grams.best ?? 0;
  const own = items.filter((item) => item.foodId === ingredient.match?.foodId);
  return before > 0 ? own.reduce((sum, { grams }) => sum + grams, 0) / before : 1;
}

/** Warnings before steps that cannot work as written, because what they rest on is gone. */
export function warningsFor(context: CueContext, texts: readonly string[]): Insertion[] {
  const added = addedItems(context);
  const found: Insertion[] = [];
  for (const warning of warnings as Warning[]) {
    if (warning.families && !warning.families.includes(context.plan.family.id)) continue;
    const words = new RegExp(warning.words, 'i');
    const step = texts.findIndex((text) => words.test(text));
    const titled =
      warning.titled !== undefined && new RegExp(warning.titled, 'i').test(context.title);
    const at = step < 0 && titled ? 0 : step;
    if (at < 0) continue;
    const lost = context.mentions.find(
      (mention) =>
        mention.changed &&
        new RegExp(warning.replaced).test(mention.ingredient.match?.foodId ?? '') &&
        keptShare(mention) < warning.kept,
    );
    const by = added.filter(({ foodId }) => new RegExp(warning.by).test(foodId));
    if (lost === undefined || (warning.by !== '' && by.length === 0)) continue;
    const own = lost.ingredient.match?.foodId;
    const others = lost.items.filter(({ foodId }) => foodId !== own);
    const stands = (warning.by === '' ? others : by).map((item) => nameIn(item, context));
    const stand = stands.length === 0 ? 'what is left' : listIn([...new Set(stands)], context);
    const text = fill(textOf(warning, context).replace('{stand}', stand), context);
    found.push({ at, rank: RANKS.length, step: inserted(capital(text), warning.why) });
  }
  return found;
}
