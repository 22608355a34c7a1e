/** Steps and sentences that are put into a method, and their places. */
import type { RewrittenStep } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';
import { bakesIn } from '../oven/bakes-in.ts';
import { kneadApart } from '../parts/knead-apart.ts';
import { isCooked } from '../steps/boiling.ts';
import { isNamedIn } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';
import type { Cue } from './cue.ts';
import { isAbout } from './cue-applies.ts';
import type { CueContext } from './cue-context.ts';
import { icingHalves, icingSteps } from './thin-icing.ts';

export interface Insertion {
  /** Index in the original method of the step it stands before, or within; its length is the end. */
  at: number;
  /** Among insertions of one place: what follows a step, what opens a part, what precedes the next. */
  rank: number;
  step: RewrittenStep;
  /** Index of the sentence of the step behind which it stands, -1 before the first; null for a step of its own. */
  behind: number | null;
  /** Told in brackets behind the first of these names in its step, instead of in a sentence. */
  inBracketsOf?: readonly string[];
  /** Told again where it holds again, as of a second bake. */
  each?: boolean;
}

/** A step of our own. */
export const inserted = (text: string, why: string): RewrittenStep => ({
  section: null,
  before: null,
  after: text,
  change: 'inserted',
  why,
});

/** Ranks of insertions that stand before one step. */
export const RANKS = { after: 0, use: 1, before: 2, warning: 3 } as const;

/** What is said of serving and keeping is no place for handling. */
const LATER =
  /\b(?:stor(?:e|ed|age|ing)|left ?overs?|keeps? (?:well |fresh |for |in )|freez\w+ (?:for )?up to|up to \d+ (?:days|weeks|months)|reheat|make.ahead|variations?|substitut\w+|note)\b/i;

/** A step's sentences by which places are found; empty where it speaks of serving and keeping. */
const placeable = (text: string): string[] =>
  sentencesOf(text).map((sentence) => (LATER.test(sentence) ? '' : sentence));

export type Place = Pick<Insertion, 'at' | 'behind'>;

const alone = (at: number): Place => ({ at, behind: null });

interface Hit {
  at: number;
  sentence: number;
}

/** Every sentence that fits a pattern; a pattern that spans sentences fits the last of its step. */
function hitsOf(texts: readonly string[], pattern: RegExp): Hit[] {
  return texts.flatMap((text, at): Hit[] => {
    const sentences = placeable(text);
    const own = sentences.flatMap((one, sentence) => (pattern.test(one) ? [{ at, sentence }] : []));
    if (own.length > 0) return own;
    return pattern.test(sentences.join(' ')) ? [{ at, sentence: sentences.length - 1 }] : [];
  });
}

/** Before the step that fits; in a step that mixes the dough too, before the sentence that fits. */
function placeBefore(
  cue: Cue,
  hits: readonly Hit[],
  texts: readonly string[],
  context: CueContext,
): Place | null {
  const { firstStep, mixedAt } = context.course;
  const late = cue.dough === true ? hits.filter(({ at }) => at >= mixedAt) : hits;
  const [hit] = late;
  if (hit === undefined) {
    if (cue.anyway !== true && hits.length === 0) return null;
    return alone(cue.dough === true ? mixedAt + 1 : firstStep);
  }
  if (cue.dough !== true || hit.at > mixedAt) return alone(hit.at);
  // The step that mixes goes on to what the cue is about.
  const later = late.find(
    ({ at, sentence }) => at === mixedAt && sentence > context.course.mixedBy,
  );
  if (later !== undefined) return { at: mixedAt, behind: later.sentence - 1 };
  const sentences = sentencesOf(texts[mixedAt] ?? '');
  const isLast = sentences.length <= context.course.mixedBy + 1;
  const kneads = kneadApart(sentences[context.course.mixedBy] ?? '') !== null;
  return isLast && !kneads ? alone(mixedAt + 1) : { at: mixedAt, behind: context.course.mixedBy };
}

/** The ingredients that a cue is about. */
const concernedBy = (cue: Cue, context: CueContext): Mention[] =>
  cue.halved === true
    ? icingHalves(context)
    : context.mentions.filter((mention) => isAbout(cue, mention));

/** The steps that take what a cue is about; of an icing, those near its sugar: its vanilla is a dough's too. */
function usesOf(cue: Cue, context: CueContext): number[] {
  if (cue.halved === true) return icingSteps(context);
  return concernedBy(cue, context)
    .flatMap(({ ingredient }) => context.course.named.get(ingredient.key) ?? [])
    .sort((a, b) => a - b);
}

/** Whether a step comes once what the cue is about is in: an icing does not burn in the oven. */
function isInTime(cue: Cue, uses: readonly number[], at: number): boolean {
  const [first] = uses;
  if (first === undefined) return true;
  if (cue.inStep === true) return uses.includes(at);
  if (cue.here === true) return uses.some((use) => Math.abs(use - at) <= 1);
  return at >= first;
}

const YEAST = /\b(?:yeast|starter|levain|poolish|biga)\b/i;

/** Index of the first step that takes the yeast; 0 when none says so. What stands before does not rise yet. */
export const yeastStep = (texts: readonly string[]): number =>
  Math.max(
    0,
    texts.findIndex((text) => YEAST.test(text)),
  );

/** Whether the oven is used once what a cue is about is in. */
export function isBaked(cue: Cue, texts: readonly string[], context: CueContext): boolean {
  const [first] = usesOf(cue, context);
  if (first === undefined) return true;
  return texts.some((text, at) => at >= first && sentencesOf(text).some(bakesIn));
}

/** Whether the step that takes what a cue is about says what it must, and nothing it must not. */
function isTakenSo(cue: Cue, uses: readonly number[], texts: readonly string[]): boolean {
  const [first] = uses;
  const text = first === undefined ? texts.join('\n') : (texts[first] ?? '');
  if (cue.taken !== undefined && !new RegExp(cue.taken, 'i').test(text)) return false;
  return cue.takenNot === undefined || !new RegExp(cue.takenNot, 'i').test(text);
}

/**
 * Where a cue goes; null is nowhere. `texts`: the steps of its part with English key words, others empty;
 * `original`: the same in the page's words, by which ingredients are found.
 */
export function placeOf(
  cue: Cue,
  texts: readonly string[],
  context: CueContext,
  original: readonly string[] = texts,
): Place | null {
  const { lastStep, firstStep } = context.course;
  if (texts.length === 0) return alone(0);
  const uses = usesOf(cue, context);
  if (!isTakenSo(cue, uses, texts)) return null;
  if (cue.place === 'use' || cue.where === undefined) {
    const elsewhere = cue.where === undefined ? [] : hitsOf(texts, new RegExp(cue.where, 'i'));
    if (cue.halved === true && uses.length + elsewhere.length === 0) return null;
    const at = uses[0] ?? elsewhere[0]?.at ?? flourStep(context);
    if (cue.inside !== true || context.autolyses) return alone(at);
    // What is mixed dry is mixed before anything is hot or beaten.
    const isDry = cue.group === 'flours' || cue.afterwards === true;
    return { at, behind: isDry ? -1 : takingSentence(at, original, cue, context) - 1 };
  }
  if (cue.oven === true) return isBaked(cue, texts, context) ? alone(firstStep) : null;
  const fitting = hitsOf(texts, new RegExp(cue.where, 'i'));
  const all = fitting.filter(
    (hit) =>
      isInTime(cue, uses, hit.at) &&
      !(cue.dough === true && cue.place === 'within' && isBeforeDough(hit, context)) &&
      (cue.risen !== true || hit.at >= yeastStep(texts)) &&
      (cue.naming !== true || isCookedIn(hit, original, cue, context)),
  );
  const prefers = cue.prefers === undefined ? null : new RegExp(cue.prefers, 'i');
  const said = ({ at, sentence }: Hit): string => sentencesOf(texts[at] ?? '')[sentence] ?? '';
  const inSentence = prefers === null ? [] : all.filter((hit) => prefers.test(said(hit)));
  const inStep = prefers === null ? [] : all.filter(({ at }) => prefers.test(texts[at] ?? ''));
  const best = inSentence.length > 0 ? inSentence : inStep;
  const hits = best.length > 0 ? best : all;
  if (fitting.length > 0 && hits.length === 0) return null;
  if (cue.place === 'before') return placeBefore(cue, hits, texts, context);
  const last = hits.at(-1);
  // What follows the bake is no place for the oven's advice, but one for what is to be done then.
  // When it is done is told behind the last bake of its step, not while the lid is on.
  const isLast = cue.place === 'after' || cue.group === 'core';
  const ofLast = isLast ? last : hits.find(({ at }) => at === last?.at);
  const hit = cue.first === true ? hits[0] : ofLast;
  if (hit === undefined) return cue.anyway === true ? alone(lastStep + 1) : null;
  return { at: hit.at, behind: cue.ahead === true ? hit.sentence - 1 : hit.sentence };
}

/** Whether the dough is not mixed yet: yeast that rises in its water is none. */
const isBeforeDough = ({ at, sentence }: Hit, { course }: CueContext): boolean =>
  at < course.mixedAt || (at === course.mixedAt && sentence < course.mixedBy);

/** What is waited for: 'until the sauce is thick and the pasta charred'. */
const LOOKS = /\b(?:until|while|when|once)\b[^.;]*/gi;

/** Whether the sentence of a hit does something with what a cue is about: 'until the pasta is done' only looks at it. */
function isCookedIn(
  { at, sentence }: Hit,
  original: readonly string[],
  cue: Cue,
  { mentions }: CueContext,
): boolean {
  const text = (sentencesOf(original[at] ?? '')[sentence] ?? '').replace(LOOKS, '');
  return mentions.some((mention) => isAbout(cue, mention) && isCooked(text, mention));
}

/** Index of the sentence of a step that takes what a cue is about, or a flour; the first when none says it. */
function takingSentence(
  at: number,
  texts: readonly string[],
  cue: Cue,
  context: CueContext,
): number {
  const concerned = concernedBy(cue, context);
  const taken = context.mentions.filter(
    (mention) =>
      concerned.includes(mention) || mention.role === 'structure' || mention.newName === 'flours',
  );
  return Math.max(
    0,
    sentencesOf(texts[at] ?? '').findIndex((sentence) =>
      taken.some((mention) => isNamedIn(sentence, mention)),
    ),
  );
}

/** The first step that takes a flour of the part; its first step when none does. */
function flourStep({ mentions, course }: CueContext): number {
  const steps = mentions
    .filter(({ role, newName }) => role === 'structure' || newName === 'flours')
    .flatMap(({ ingredient }) => course.named.get(ingredient.key) ?? []);
  return steps.length > 0 ? Math.min(...steps) : course.firstStep;
}
