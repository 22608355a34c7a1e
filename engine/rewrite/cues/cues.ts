/** Handling that the new ingredients call for, and where in the method it goes. */
import type { Plan, RewrittenStep, Swap } from '../../model.ts';
import cues from '../data/cues.json' with { type: 'json' };
import warnings from '../data/warnings.json' with { type: 'json' };
import type { Mention } from '../naming/mention.ts';
import { bakeMinutes } from '../oven/oven-heat.ts';
import { addedItems, type CueContext, floursOf, gumsOf, newShare } from './cue-context.ts';
import { fill, listIn, nameIn, textOf } from './cue-text.ts';

export type { CueContext } from './cue-context.ts';

const YEAST = /yeast/;

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
  /** Whether flour or starch that thickens is to stay beside the gum, or none. */
  starchStays?: boolean;
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
  amends?: { step: string; phrase: string; to: string; all?: boolean; notPresent?: string };
  /** Says its text also when it has corrected a step. */
  too?: boolean;
  /** Makes the thing that a swap without handling of its own brings in. */
  makes?: boolean;
  /** Tells the handling of the foods it is for, in place of what their swaps say. */
  handles?: boolean;
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

const some = (ids: readonly string[], pattern: string): boolean =>
  ids.some((id) => new RegExp(pattern).test(id));

function gone(context: CueContext, pattern: string, keepsNone: boolean): boolean {
  return context.mentions.some((mention) => {
    const { ingredient, changed } = mention;
    const id = ingredient.match?.foodId ?? '';
    return changed && new RegExp(pattern).test(id) && !(keepsNone && keptShare(mention) > 1 / 3);
  });
}

/** Families of parts that go with a dough: a sauce or filling has handling of its own, a second dough not. */
const BESIDE: ReadonlySet<string> = new Set([
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'breaded-food',
  'thickened-sauce',
  'sweet-sauce',
  'frozen-dessert',
  'other',
]);

const familiesOf = ({ family, parts }: Plan): string[] => [
  family.id,
  ...parts.map((part) => part.family).filter((one) => BESIDE.has(one)),
];

/** Whether flour or starch is left among what thickens. */
const starchStays = ({ plan }: CueContext): boolean =>
  plan.items.some(
    ({ role, grams, foodId }) => role === 'thickener' && grams > 0 && /flour|starch/.test(foodId),
  );

const matches = (pattern: string | undefined, id: string): boolean =>
  pattern === undefined || new RegExp(pattern).test(id);

const concerns = (cue: Cue, { from, to }: Swap): boolean =>
  matches(cue.replaces, from?.foodId ?? '') && matches(cue.added, to[0]?.foodId ?? '');

/** Whether a swap brings in the foods of a cue and says nothing itself of what is made of them. */
const isMadeBy = (cue: Cue, swap: Swap): boolean =>
  matches(cue.replaces, swap.from?.foodId ?? '') &&
  swap.to.length > 1 &&
  swap.to.some(({ foodId }) => matches(cue.added, foodId)) &&
  (swap.method ?? '') === '';

function applies(cue: Cue, context: CueContext): boolean {
  if (!familiesOf(context.plan).some((family) => cue.families.includes(family))) return false;
  const added = addedItems(context).map(({ foodId }) => foodId);
  const all = context.plan.items.filter(({ grams }) => grams > 0).map(({ foodId }) => foodId);
  if (cue.added !== undefined && !some(added, cue.added)) return false;
  if (cue.notAdded !== undefined && some(added, cue.notAdded)) return false;
  if (cue.present !== undefined && !some(all, cue.present)) return false;
  if (cue.makes === true && !context.plan.swaps.some((swap) => isMadeBy(cue, swap))) return false;
  if (cue.replaces !== undefined && !gone(context, cue.replaces, cue.keepsNone === true))
    return false;
  if (cue.fromShare !== undefined && newShare(context) < cue.fromShare) return false;
  if (cue.starchStays !== undefined && cue.starchStays !== starchStays(context)) return false;
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

interface Correction {
  step: RegExp;
  phrase: RegExp;
  to: string;
}

/** Whether a food is in the dish for whose sake a phrase stays, such as meat that needs its time. */
const isHeld = (pattern: string | undefined, plan: Plan): boolean =>
  pattern !== undefined &&
  plan.items.some(({ foodId, grams }) => grams > 0 && new RegExp(pattern).test(foodId));

/** What a cue corrects in the method's language, most special phrase first. */
function correctionsOf(cue: Cue, { words, plan }: CueContext): Correction[] {
  const { amends, id } = cue;
  if (amends === undefined || isHeld(amends.notPresent, plan)) return [];
  const local = words?.amends[id] ?? [];
  const rows = words === null ? [[amends.step, amends.phrase, amends.to] as const] : local;
  return rows.map(([step, phrase, to]) => ({
    step: new RegExp(step, 'i'),
    phrase: new RegExp(phrase, 'i'),
    to,
  }));
}

/** Phrases of steps that a cue corrects: of the last step that says otherwise, or of all of them. */
function amendedSteps(
  cue: Cue,
  context: CueContext,
  texts: readonly string[],
): { at: number; correction: Correction }[] {
  const corrections = correctionsOf(cue, context);
  const hits = texts.flatMap((text, at) => {
    const correction = corrections.find((one) => one.step.test(text) && one.phrase.test(text));
    return correction === undefined ? [] : [{ at, correction }];
  });
  return cue.amends?.all === true ? hits : hits.slice(-1);
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
    amendedSteps(cue, context, texts).map(({ at, correction }) => ({
      at,
      phrase: correction.phrase,
      to: fill(correction.to, context),
      why: cue.why,
    })),
  );
}

/** Whether a cue tells the handling of a swap's main food already. */
export const isPrepared = (swap: Swap, context: CueContext): boolean =>
  fitting(context).some((cue) => cue.handles === true && concerns(cue, swap));

/** Why the oven is to be cooler, or null when it is not. */
export const coolerOven = (context: CueContext): string | null =>
  fitting(context).find(({ oven }) => oven === true)?.why ?? null;

/** Whether flour and water are to stand before the other ingredients go in. */
export const restsFirst = (context: CueContext): boolean =>
  fitting(context).some(({ autolyse }) => autolyse === true);

/**
 * Steps to insert, with their places. `original`: the steps as they are; `texts`: the same with
 * English key words. `ovenSaid`: the method states oven temperatures, which are changed where they stand.
 */
export function insertions(
  context: CueContext,
  original: readonly string[],
  texts: readonly string[],
  ovenSaid: boolean,
): Insertion[] {
  return fitting(context)
    .filter((cue) => cue.text !== '' && !(cue.oven === true && ovenSaid))
    .filter((cue) => cue.too === true || amendedSteps(cue, context, original).length === 0)
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
