/** The method's own steps with new names and amounts. */
import type { Recipe, RewrittenStep } from '../../model.ts';
import type { MethodContext } from '../cues/cue-context.ts';
import { BY_FOREIGN_PACKET, BY_PACKET } from '../handling/spoken-handling.ts';
import type { LateVegetable } from '../joining/joins-late.ts';
import { whyLate } from '../joining/late-vegetables.ts';
import { type Segment, segmentsOf } from '../joining/step-runs.ts';
import { keyed, type MethodWords } from '../languages/method-words.ts';
import { renameForeign } from '../naming/bracketed-names.ts';
import type { Mention } from '../naming/mention.ts';
import { listOf } from '../naming/method-names.ts';
import { renameIn } from '../naming/rename.ts';
import { partAt, type StepParts } from '../parts/step-parts.ts';
import { withoutCrushing } from '../wording/crushing.ts';
import { withoutGoneBoiling } from '../wording/gone-boiling.ts';
import { grainStep } from '../wording/grain-steps.ts';
import {
  joinsText,
  type LateGrain,
  lateGrains,
  mentionsAt,
  withoutForeignGrainsEnd,
  withoutGrainsEnd,
  withoutPuttingIn,
  withoutToasting,
} from '../wording/late-grains.ts';
import { withoutWord } from '../wording/leave-out.ts';
import { isNamedIn, namePattern } from '../wording/name-patterns.ts';
import { withoutPageRemarks } from '../wording/page-remarks.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { isUnboiled, namesOther, withoutBoiling } from './boiling.ts';
import { withoutIdlePots } from './idle-pots.ts';
import { whyChanged } from './step-reasons.ts';
import type { UsedSoFar } from './used-so-far.ts';

export interface RenamedStep {
  step: RewrittenStep;
  /** Ingredients that the step names. */
  named: Mention[];
}

/** Ingredients that are left out altogether and that the step still names. */
function leaveOut(text: string, named: readonly Mention[]): string {
  const leftOut = named.filter(({ changed, items }) => changed && items.length === 0);
  const unnamed: string[] = [];
  let result = text;
  for (const { names, ingredient } of leftOut) {
    const without = names
      .map((name) => withoutWord(result, name))
      .find((shorter) => shorter !== null);
    if (without === undefined) unnamed.push(ingredient.item.name);
    else result = without ?? result;
  }
  return unnamed.length === 0 ? result : `${result} Leave out the ${listOf(unnamed)}.`;
}

/** What came in whole and has no packet with directions. */
const unpacked = (named: readonly Mention[]): Mention[] =>
  named.filter(
    ({ changed, items, ingredient }) =>
      changed &&
      items.length > 0 &&
      items.every(
        ({ foodId, foodName }) =>
          foodId !== ingredient.match?.foodId && !/noodle|pasta|rice|couscous/i.test(foodName),
      ),
  );

/** The same in a method of another language, whose sentence names what it stands for. */
function byNoForeignPacket(
  text: string,
  named: readonly Mention[],
  { now, leaveOut: left }: MethodWords,
): string {
  if (unpacked(named).length === 0) return text;
  return sentencesOf(text)
    .map((sentence) =>
      sentence.includes(`(${now} `) || sentence.includes(`(${left})`)
        ? sentence.replace(BY_FOREIGN_PACKET, '')
        : sentence,
    )
    .join(' ');
}

/** 'Cook the zucchini according to the package': a vegetable has none. */
function byNoPacket(text: string, named: readonly Mention[]): string {
  const fresh = unpacked(named);
  if (fresh.length === 0) return text;
  return sentencesOf(text)
    .map((sentence) =>
      fresh.some(({ newName }) => newName !== null && sentence.includes(newName))
        ? sentence.replace(BY_PACKET, '')
        : sentence,
    )
    .join(' ');
}

const rewritten = (
  { section, text }: Recipe['steps'][number],
  after: string,
  why: readonly string[],
): RewrittenStep => ({
  section,
  before: text,
  after,
  change: after === text ? 'kept' : 'changed',
  why: after !== text && why.length > 0 ? why.join(' ') : null,
});

function foreignStep(
  step: Recipe['steps'][number],
  parts: StepParts | undefined,
  { words, foods, mentions, title, method }: MethodContext,
  used: UsedSoFar,
): RenamedStep | null {
  if (words === null) return null;
  const unboiled = withoutGoneBoiling(step.text, mentions, words);
  if (unboiled.alone) {
    const { text, dropped } = unboiled;
    return { step: rewritten(step, text, whyChanged(dropped, words)), named: dropped };
  }
  const { text, named } = renameForeign(
    unboiled.text,
    mentions,
    { words, foods, used, title, method },
    (at) => (parts === undefined ? null : partAt(parts, at)),
  );
  const taken = [...new Set([...named, ...unboiled.dropped])];
  const after = byNoForeignPacket(text, named, words);
  return { step: rewritten(step, after, whyChanged(taken, words)), named: taken };
}

/** A step on how to make what is bought: 'If you want to make rice from scratch, start with …'. */
const FROM_SCRATCH =
  /^\W*(?:if you(?:['’]d| would)? (?:want|like|prefer) to|to) (?:make|cook)\b[^.]*\bfrom scratch\b/i;

/** The ingredient that is gone altogether and that a step only tells how to make. */
const aboutGone = (text: string, mentions: readonly Mention[]): Mention | undefined => {
  const [lead = ''] = sentencesOf(text);
  if (!FROM_SCRATCH.test(lead)) return undefined;
  return mentions.find(
    (one) =>
      one.changed &&
      !one.items.some(({ foodId }) => foodId === one.ingredient.match?.foodId) &&
      isNamedIn(lead, one) &&
      !namesOther(text, one, mentions),
  );
};

function englishStep(
  step: Recipe['steps'][number],
  parts: StepParts | undefined,
  { mentions, foods, region, method }: MethodContext,
  used: UsedSoFar,
): RenamedStep {
  const idle = aboutGone(step.text, mentions);
  if (idle !== undefined) {
    const text = `Skip this step: there is no ${idle.ingredient.item.name} in this version.`;
    return { step: rewritten(step, text, whyChanged([idle], null)), named: [] };
  }
  const grain = grainStep(step.text, mentions, method.split('\n'));
  if (grain !== null) {
    const taken = [grain.rice, ...grain.others];
    for (const mention of grain.others) {
      used.name(mention);
      used.introduce(mention);
      used.pour(mention);
    }
    return { step: rewritten(step, grain.text, whyChanged(taken, null)), named: taken };
  }
  const unboiled = withoutBoiling(step.text, mentions);
  const uncrushed = withoutCrushing(unboiled.text, mentions);
  const { text, named } = renameIn(
    uncrushed.text,
    mentions,
    { foods, region, used },
    {
      section: step.section,
      partAt: (at) => (parts === undefined ? null : partAt(parts, at)),
    },
  );
  const why = [
    ...unboiled.dropped.map(({ newName }) => `Not boiled here: ${newName ?? 'what is left'}.`),
    ...uncrushed.dropped.map(({ newName }) => `Fine already: ${newName ?? 'the crumbs'}.`),
    ...whyChanged(named, null),
  ];
  const taken = [...named, ...unboiled.dropped, ...uncrushed.dropped];
  const told = withoutPageRemarks(byNoPacket(leaveOut(text, named), named), named);
  return { step: rewritten(step, told, why), named: taken };
}

/** Whether a sentence that names an ingredient names no other food. */
function isAlone(mention: Mention, text: string, mentions: readonly Mention[]): boolean {
  const naming = sentencesOf(text).filter((one) => namePattern(mention).test(one));
  return naming.length > 0 && !naming.some((one) => namesOther(one, mention, mentions));
}

/** Whether a step boils an ingredient by itself, with nothing else in the sentence. */
const isBoiledApart = (
  mention: Mention,
  texts: readonly string[],
  { words, mentions }: MethodContext,
): boolean =>
  texts.some((text) =>
    words === null
      ? withoutBoiling(withoutToasting(text), mentions).dropped.includes(mention)
      : isAlone(mention, text, mentions) &&
        withoutGoneBoiling(text, mentions, words).dropped.includes(mention),
  );

/** Grains whose stand-in joins at the end of a pot, unless a step boils them by themselves. */
function lateIn(steps: Recipe['steps'], context: MethodContext): LateGrain[] {
  const { words } = context;
  const texts = steps.map(({ text }) => text);
  const searched = words === null ? texts : texts.map((text) => keyed(text, words));
  const isAlone = (mention: Mention): boolean =>
    words === null &&
    texts.some((text) => grainStep(text, context.mentions, texts)?.rice === mention);
  const isApart = (mention: Mention): boolean =>
    isAlone(mention) || isBoiledApart(mention, texts, context);
  return lateGrains(searched, texts, context, isApart);
}

/** The step as it reads without the grains that join later. */
function beforeGrains(
  step: Recipe['steps'][number],
  at: number,
  grains: readonly LateGrain[],
): Recipe['steps'][number] {
  const text = grains
    .filter((grain) => at <= grain.at)
    .reduce(
      (now, grain) =>
        withoutForeignGrainsEnd(withoutGrainsEnd(withoutPuttingIn(now, grain), grain), grain),
      step.text,
    );
  return text.trim() === '' ? step : { ...step, text };
}

const SERVES_NOW =
  /(?<!\p{L})(?:serv(?:e|ed|ing|eer\p{L}*|eren|ieren|iere|ez|ir|ire|ite|era|er)|sirv[ae]\p{L}*|anrichten|opdien\p{L}*)(?!\p{L})/iu;

/** The text with a sentence at its end, but before the one that serves. */
function beforeServing(text: string, sentence: string): string {
  const own = sentencesOf(text);
  const last = own.length - 1;
  const serves = last > 0 && SERVES_NOW.test(own[last] ?? '') && !/\d/.test(own[last] ?? '');
  return withSentence(text, serves ? last - 1 : last, sentence);
}

/** The step with what joins at its end. */
function withGrains(
  renamed: RenamedStep,
  at: number,
  grains: readonly LateGrain[],
  { words }: MethodContext,
  page: string,
): RenamedStep {
  const own = grains.filter((grain) => grain.at === at);
  const told = own.flatMap((grain) => joinsText(grain, words) ?? []);
  const { step } = renamed;
  const after = told.reduce((now, sentence) => beforeServing(now, sentence), step.after);
  const change = after === page ? ('kept' as const) : ('changed' as const);
  const why =
    step.why ??
    (told.length > 0
      ? whyChanged(
          own.map(({ mention }) => mention),
          words,
        ).join(' ')
      : null);
  return {
    step: { ...step, before: page, after, change, why: change === 'kept' ? null : why },
    named: [...renamed.named, ...own.map(({ mention }) => mention)],
  };
}

/** The steps word for word, with the ingredients that each names: for languages without words of their own. */
export const wholeSteps = (
  steps: Recipe['steps'],
  { mentions }: MethodContext,
  used: UsedSoFar,
): RenamedStep[] =>
  steps.map((page) => {
    used.nextStep();
    const named = mentions.filter((mention) => isNamedIn(page.text, mention));
    for (const mention of named) used.name(mention);
    return { step: rewritten(page, page.text, []), named };
  });

/** The parts of a step's text from a place on. */
const partsFrom = (parts: StepParts | undefined, offset: number): StepParts | undefined =>
  parts && {
    ...parts,
    sentences: parts.sentences.map(({ end, part }) => ({ end: end - offset, part })),
  };

interface Segmented {
  /** All steps of the page, and which of them this is. */
  texts: readonly string[];
  at: number;
  mentions: readonly Mention[];
  vegetables: readonly LateVegetable[];
}

/** A step whose sentences may speak of an ingredient as it was and as it is, with what joins between them. */
function segmentedStep(
  step: Recipe['steps'][number],
  { texts, at, mentions, vegetables }: Segmented,
  parts: StepParts | undefined,
  context: MethodContext,
  used: UsedSoFar,
): RenamedStep {
  const page = texts.with(at, step.text);
  const told = (segment: Segment): RenamedStep => {
    const own = { ...step, text: segment.text };
    const here = { ...context, mentions: segment.mentions };
    const of = partsFrom(parts, segment.offset);
    return foreignStep(own, of, here, used) ?? englishStep(own, of, here, used);
  };
  const segments = segmentsOf(page, at, mentions, vegetables, context.words);
  const [only] = segments;
  if (only !== undefined && segments.length === 1 && only.told.length === 0) return told(only);
  const runs = segments.map((segment) => {
    const run = segment.text === '' ? null : told(segment);
    for (const { mention } of segment.told) used.introduce(mention);
    return { run, joins: segment.told };
  });
  const after = runs
    .flatMap(({ run, joins }) => [run?.step.after ?? '', ...joins.map((one) => one.told)])
    .map((text) => text.trim())
    .filter((text) => text !== '')
    .join(' ');
  const joined = runs.flatMap(({ joins }) => joins);
  const why = [
    ...new Set([
      ...runs.flatMap(({ run }) => run?.step.why ?? []),
      ...(joined.length > 0 ? [whyLate(context)] : []),
    ]),
  ];
  return {
    step: rewritten(step, after, why),
    named: [
      ...new Set([
        ...runs.flatMap(({ run }) => run?.named ?? []),
        ...joined.map(({ mention }) => mention),
      ]),
    ],
  };
}

/** Every step under the new names, and the ingredients that each names. */
export function renamedSteps(
  steps: Recipe['steps'],
  parts: readonly StepParts[],
  context: MethodContext,
  used: UsedSoFar,
): RenamedStep[] {
  const grains = lateIn(steps, context);
  const texts = steps.map(({ text }) => text);
  const vegetables = context.late ?? [];
  const renamed = steps.map((page, at): RenamedStep => {
    used.nextStep();
    const mentions = mentionsAt(context.mentions, grains, at);
    const step = beforeGrains(page, at, grains);
    const own = segmentedStep(step, { texts, at, mentions, vegetables }, parts[at], context, used);
    return grains.length === 0 ? own : withGrains(own, at, grains, context, page.text);
  });
  const isIdle = context.words === null && context.mentions.some(isUnboiled);
  return withoutIdlePots(renamed, isIdle);
}
