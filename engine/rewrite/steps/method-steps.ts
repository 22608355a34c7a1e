/** The method of the reworked recipe. */
import type { Recipe, RewrittenStep } from '../../model.ts';
import { type Amendment, amendments } from '../cues/amendments.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { insertions } from '../cues/cues.ts';
import { coolerOven } from '../cues/fitting-cues.ts';
import type { Insertion } from '../cues/insertion.ts';
import { warningsFor } from '../cues/warnings.ts';
import { isForeign, keyed } from '../languages/method-words.ts';
import { renameForeign } from '../naming/bracketed-names.ts';
import { withoutWord } from '../naming/leave-out.ts';
import type { Mention } from '../naming/mention.ts';
import { listOf } from '../naming/method-names.ts';
import { renameIn } from '../naming/rename.ts';
import { withLowerOven } from '../oven/oven-heat.ts';
import { usesGas, withAllScales } from '../oven/temperature-scales.ts';
import { adjustedSteps } from './accepted-changes.ts';
import { additionSteps } from './additions.ts';
import { withoutBoiling } from './boiling.ts';
import { afterRest } from './rested-flour.ts';
import { whyChanged } from './step-reasons.ts';
import { swapSteps } from './swap-steps.ts';
import { UsedSoFar } from './used-so-far.ts';

/** Ingredients that are gone altogether and that the step still names. */
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

/** What the passes over one method share. */
interface Pass {
  context: CueContext;
  used: UsedSoFar;
  gas: boolean;
  /** Why the oven is to be cooler, else null. */
  oven: string | null;
}

/** A step of a method in another language: names with remarks, and the oven. */
function rewriteForeign(step: Recipe['steps'][number], pass: Pass): RewrittenStep {
  const { context, used, oven } = pass;
  const { words, foods, mentions } = context;
  if (words === null) return rewriteStep(step, pass);
  const { text, named } = renameForeign(step.text, mentions, { words, foods, used });
  const cooler = oven === null ? text : withLowerOven(text);
  const why = [...whyChanged(named), ...(cooler === text || oven === null ? [] : [oven])];
  const changed = cooler !== step.text;
  return {
    section: step.section,
    before: step.text,
    after: cooler,
    change: changed ? 'changed' : 'kept',
    why: changed && why.length > 0 ? why.join(' ') : null,
  };
}

function rewriteStep(step: Recipe['steps'][number], pass: Pass): RewrittenStep {
  const { context, used, gas, oven } = pass;
  const { mentions, foods, region } = context;
  const unboiled = withoutBoiling(step.text, mentions);
  const { text, named } = renameIn(unboiled.text, mentions, { foods, region, used }, step.section);
  const words = leaveOut(text, named);
  const cooler = oven === null ? words : withLowerOven(words);
  const why = [
    ...unboiled.dropped.map(({ newName }) => `Not boiled here: ${newName ?? 'what is left'}.`),
    ...whyChanged(named),
    ...(cooler === words || oven === null ? [] : [oven]),
  ];
  const changed = cooler !== step.text;
  return {
    section: step.section,
    before: step.text,
    after: withAllScales(cooler, gas),
    change: changed ? 'changed' : 'kept',
    why: changed && why.length > 0 ? why.join(' ') : null,
  };
}

/** A step with the phrases put right that the new ingredients contradict. */
function amend(step: RewrittenStep, found: readonly Amendment[]): RewrittenStep {
  let { after } = step;
  const reasons = new Set(step.why === null ? [] : [step.why]);
  for (const { phrase, to, why } of found) {
    const amended = after.replace(phrase, to);
    if (amended !== after) reasons.add(why);
    after = amended;
  }
  if (after === step.after) return step;
  return { ...step, after, change: 'changed', why: [...reasons].join(' ') };
}

/** Steps with insertions before the step of their index; a heading stays with its first own step. */
function withInsertions(
  steps: readonly RewrittenStep[],
  extra: readonly Insertion[],
): RewrittenStep[] {
  const result: RewrittenStep[] = [];
  for (let at = 0; at <= steps.length; at += 1) {
    const own = steps[at];
    const section = own?.section ?? steps[at - 1]?.section ?? null;
    const here = extra.filter((insertion) => insertion.at === at).sort((a, b) => a.rank - b.rank);
    result.push(...here.map(({ step }) => ({ ...step, section })));
    if (own !== undefined) result.push(own);
  }
  return result;
}

/**
 * The method with new names and amounts, temperatures in both scales (and gas marks where the recipe
 * uses them), and the handling steps the new ingredients call for, marked `inserted` with the reason.
 * A step the plan does not touch keeps its words. No steps are made up for a recipe without a method,
 * except what the new foods need.
 */
export function rewriteSteps(recipe: Recipe, context: CueContext): RewrittenStep[] {
  const { words } = context;
  const texts = recipe.steps.map(({ text }) => text);
  // Places are found by English key words.
  const searched = words === null ? texts : texts.map((text) => keyed(text, words));
  const found = isForeign(recipe.language) && words === null ? [] : amendments(context, texts);
  const oven = coolerOven(context);
  const pass = { context, used: new UsedSoFar(), gas: usesGas(context.method), oven };
  const rewrite = words === null ? rewriteStep : rewriteForeign;
  const own = afterRest(
    recipe.steps.map((step, at) =>
      amend(
        rewrite(step, pass),
        found.filter((one) => one.at === at),
      ),
    ),
    context,
  );
  const statesOven = oven !== null && texts.some((text) => withLowerOven(text) !== text);
  const local = [
    ...insertions(context, texts, searched, statesOven),
    ...warningsFor(context, searched),
  ];
  // Accepted changes and the handling of single swaps are worded in English.
  const accepted = [...swapSteps(context, texts), ...adjustedSteps(context.adjustments, searched)];
  const cues =
    words === null
      ? [...local, ...accepted].map((one) => inAllScales(one, pass.gas))
      : [...local, ...accepted.map(inEnglish)];
  const written = [...own, ...cues.map(({ step }) => step)].map(({ after }) => after).join(' ');
  const extra = [...cues, ...additionSteps(context, written, texts)];
  // English steps in a method of a language that has no words of its own.
  const english = words === null && isForeign(recipe.language);
  return withInsertions(own, english ? extra.map(inEnglish) : extra);
}

const inAllScales = (one: Insertion, gas: boolean): Insertion => ({
  ...one,
  step: { ...one.step, after: withAllScales(one.step.after, gas) },
});

const inEnglish = (one: Insertion): Insertion => ({ ...one, step: { ...one.step, lang: 'en' } });
