/** The method of the reworked recipe. */
import type { MethodNote, Recipe, RewrittenStep } from '../../model.ts';
import { type Amendment, amendments } from '../cues/amendments.ts';
import { cookedAhead } from '../cues/cooked-ahead.ts';
import type { CueContext, MethodContext } from '../cues/cue-context.ts';
import { insertions, riseTimes } from '../cues/cues.ts';
import { restsFirst } from '../cues/fitting-cues.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import { warningsFor } from '../cues/warnings.ts';
import { newFoodTexts } from '../handling/new-foods.ts';
import { swapSteps } from '../handling/swap-steps.ts';
import { goesInTogether, lateVegetables } from '../joining/late-vegetables.ts';
import { isForeign, keyed } from '../languages/method-words.ts';
import { markedStep, remarksBeside } from '../languages/unworded.ts';
import { capital } from '../naming/method-names.ts';
import { withLateOven } from '../oven/late-oven.ts';
import { withLowerOven } from '../oven/oven-heat.ts';
import { usesGas, withAllScales } from '../oven/temperature-scales.ts';
import type { Course } from '../parts/course.ts';
import { type PartMethod, partMethods } from '../parts/part-contexts.ts';
import { stepParts } from '../parts/step-parts.ts';
import { withUnnamedFlours } from '../parts/unnamed-flours.ts';
import { massFactor, withStatedWeights } from '../wording/stated-weights.ts';
import { adjustedSteps } from './accepted-changes.ts';
import { additionSteps, companionSteps } from './additions.ts';
import { withOvens } from './cooler-ovens.ts';
import { withInsertions } from './insert-steps.ts';
import { methodLedger } from './method-ledger.ts';
import { type RenamedStep, renamedSteps, wholeSteps } from './renamed-steps.ts';
import { afterRest } from './rested-flour.ts';
import { withReason } from './step-reasons.ts';
import { UsedSoFar } from './used-so-far.ts';

/** Steps that name each ingredient, by its key. */
function stepsNaming(renamed: readonly RenamedStep[]): Course['named'] {
  const steps = new Map<string, number[]>();
  renamed.forEach(({ named }, at) => {
    for (const key of new Set(named.map(({ ingredient }) => ingredient.key)))
      steps.set(key, [...(steps.get(key) ?? []), at]);
  });
  return steps;
}

/** A step with the phrases put right that the new ingredients contradict. */
const amended = (step: RewrittenStep, found: readonly Amendment[]): RewrittenStep =>
  found.reduce((now, { phrase, to, why }) => {
    const put = now.after.replace(phrase, to);
    const after = /^\p{Ll}/u.test(put) && !/^\p{Ll}/u.test(now.after) ? capital(put) : put;
    return after === now.after ? now : withReason(now, after, why);
  }, step);

/** Whether handling stands before what it is for, not beside a bake or behind it: how long it bakes and cools the page says. */
const isNeeded = ({ rank }: Insertion): boolean => rank !== RANKS.after;

/** Heat that only an oven has, in a language without words. */
const OVEN_HEAT = /(?<!\d)(?:1[3-9]\d|2[0-6]\d)\s*[°º˚]/;
const withOvenWords = (text: string): string =>
  OVEN_HEAT.test(text) ? `Bake in the oven: ${text}` : text;

const OTHER_MASS = 'The whole weighs more or less than on the page.';

const inEnglish = (one: Insertion): Insertion => ({ ...one, step: { ...one.step, lang: 'en' } });
const marked = (one: Insertion): Insertion => ({ ...one, step: markedStep(one.step) });

const OTHER_FOOD = 'The page’s own words stand for what is on the list now.';

/** What one part puts right in the page's own words. */
const amendmentsOf = (method: PartMethod): Amendment[] => [
  ...riseTimes(method),
  ...amendments(method.context, method.original),
];

/** What the handling of one part puts into the method. */
function partInsertions(
  method: PartMethod,
  statesOven: boolean,
  steps: readonly RewrittenStep[],
): Insertion[] {
  const { context } = method;
  const texts = steps.map(({ after }) => after);
  const inTime = (one: Insertion): Insertion => cookedAhead(one, context, texts);
  const cues = [...insertions(method, statesOven, texts).map(inTime), ...warningsFor(method)];
  const swaps = swapSteps(context, texts).map(inTime);
  const handling = [...cues, ...swaps].map(({ step }) => step.after).join(' ');
  const companions = companionSteps(context, handling, texts);
  const said = companions.map(({ step }) => step.after);
  const written = [...texts, handling, ...said].join(' ');
  return [...cues, ...swaps, ...companions, ...additionSteps(context, written, texts)];
}

/** The steps with flour and water that stand together first, where a part's are to. */
function rested(steps: RewrittenStep[], methods: readonly PartMethod[]): RewrittenStep[] {
  const resting = methods.find(({ context }) => restsFirst(context));
  return resting === undefined ? steps : afterRest(steps, resting.context);
}

/** How new foods are handled where there is no method to say it, in a language that has words for it. */
const handledAlone = (
  { steps, language }: Recipe,
  context: CueContext,
): Map<string, string> | undefined =>
  steps.length > 0 || (context.words === null && isForeign(language))
    ? undefined
    : newFoodTexts(context);

/** The same with the recipe's title, and what joins the pot late. */
const titledContext = (
  { title, steps }: Recipe,
  base: MethodContext,
  unworded: boolean,
): MethodContext => {
  const page = steps.map(({ text }) => text);
  const late = unworded ? [] : lateVegetables(page, base);
  return { ...base, title, whole: base.plan, late, together: goesInTogether(page, base) };
};

/**
 * The method with new names and amounts, temperatures in both scales (and gas marks where the recipe
 * uses them), and the handling that the new ingredients call for, marked with the reason. Each part of a
 * dish has the handling of its own. A step the plan does not touch keeps its words. A recipe without a
 * method gets no steps, but notes on how its new foods are handled. Accepted changes stay.
 */
export function rewriteSteps(
  recipe: Recipe,
  base: MethodContext,
): { steps: RewrittenStep[]; methodNotes: MethodNote[] } {
  const { words, plan, mentions } = base;
  const original = recipe.steps.map(({ text }) => text);
  // Places are found by English key words.
  const unworded = words === null && isForeign(recipe.language);
  const read = unworded ? withOvenWords : (text: string) => text;
  const searched = original.map((text) => (words === null ? read(text) : keyed(text, words)));
  const parts = stepParts(recipe.steps, plan, mentions);
  const used = new UsedSoFar();
  const titled = titledContext(recipe, base, unworded);
  const renamed = unworded
    ? wholeSteps(recipe.steps, titled, used)
    : renamedSteps(recipe.steps, parts, titled, used);
  const named = withUnnamedFlours(stepsNaming(renamed), mentions, { searched, original });
  const none: Course = { firstStep: 0, lastStep: 0, mixedAt: 0, mixedBy: 0, named: new Map() };
  const methods = partMethods({ ...titled, course: none }, { original, searched, parts, named });
  const found = unworded ? [] : methods.flatMap(amendmentsOf);
  const gas = usesGas(base.method);
  const scaled = (text: string): string =>
    words === null && !unworded ? withAllScales(text, gas) : text;
  const { steps: ovens, longer } = withOvens(
    renamed.map(({ step }) => step),
    parts,
    methods,
    words,
    unworded,
  );
  const own = rested(ovens, methods).map((step, at) => {
    const put = amended(
      step,
      found.filter((one) => one.at === at),
    );
    const factor = massFactor(plan, mentions, parts[at]?.whole ?? null);
    const weighed = withStatedWeights(put.after, factor);
    const told = weighed === put.after ? put : withReason(put, weighed, OTHER_MASS);
    return { ...told, after: scaled(told.after) };
  });
  const statesOven = original.some(
    (text) => withLowerOven(text, words !== null || unworded) !== text,
  );
  const all = [
    ...longer,
    ...(own.length === 0
      ? []
      : methods.flatMap((method) => partInsertions(method, statesOven, own))),
    ...adjustedSteps(base.adjustments, searched).map(words === null ? (one) => one : inEnglish),
  ].map((one) => ({ ...one, step: { ...one.step, after: scaled(one.step.after) } }));
  // English steps, none of them within a step, in a method of a language that has no words of its own: only what the new foods need.
  const put = unworded
    ? [...all.filter(isNeeded), ...remarksBeside(recipe.steps, mentions, OTHER_FOOD)].map((one) =>
        marked({ ...one, behind: null }),
      )
    : all;
  const told = withInsertions(own, put, words?.leaveOut ?? null);
  const steps = unworded ? told : withLateOven(told, words);
  const handled = handledAlone(recipe, { ...base, course: none });
  return {
    steps,
    methodNotes: methodLedger({ plan, mentions, words, steps, named, used, handled }),
  };
}
