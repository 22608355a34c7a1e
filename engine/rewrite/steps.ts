/** The method of the reworked recipe. */
import type { PlannedItem, Recipe, RewrittenStep } from '../model.ts';
import {
  type Amendment,
  amendments,
  type CueContext,
  type Insertion,
  insertions,
  warningsFor,
} from './cues.ts';
import { listOf, type Mention, renameIn, shortName } from './mentions.ts';
import { withBothScales } from './temperature.ts';

function whyChanged(named: readonly Mention[]): string | null {
  const changed = named.filter(({ changed: isChanged }) => isChanged);
  if (changed.length === 0) return null;
  const words = changed.map(({ ingredient, newName, items }) => {
    const old = ingredient.item.name;
    if (items.length === 0) return `${old} is left out`;
    if (newName === null) return `the amount of ${old} changed`;
    const own = ingredient.match?.foodId;
    const others = items.filter(({ foodId }) => foodId !== own);
    const names = listOf([...new Set(others.map(({ foodName }) => shortName(foodName)))]);
    return others.length < items.length
      ? `${names} for part of the ${old}`
      : `${newName} instead of ${old}`;
  });
  return `${listOf([...new Set(words)])}.`;
}

/** Ingredients that are gone altogether and that the step still names. */
function leaveOut(named: readonly Mention[]): string {
  const none = named.filter(({ changed, items }) => changed && items.length === 0);
  if (none.length === 0) return '';
  return ` Leave out the ${listOf(none.map(({ ingredient }) => ingredient.item.name))}.`;
}

function rewriteStep(step: Recipe['steps'][number], context: CueContext): RewrittenStep {
  const { text, named } = renameIn(step.text, context.mentions, context.foods, context.region);
  const words = `${text}${leaveOut(named)}`;
  const changed = words !== step.text;
  return {
    section: step.section,
    before: step.text,
    after: withBothScales(words),
    change: changed ? 'changed' : 'kept',
    why: changed ? whyChanged(named) : null,
  };
}

/** A step with the phrase put right that the new ingredients contradict. */
function amend(step: RewrittenStep, amendment: Amendment | undefined): RewrittenStep {
  if (amendment === undefined) return step;
  const after = step.after.replace(amendment.phrase, amendment.to);
  const why = [step.why, amendment.why].filter((reason) => reason !== null).join(' ');
  return { ...step, after, change: 'changed', why };
}

/** Additions that no step speaks of: they must not be forgotten. */
function unspoken(context: CueContext, said: string): PlannedItem[] {
  const text = said.toLowerCase();
  const had = new Set(context.ingredients.map(({ match }) => match?.foodId ?? ''));
  const standIns = new Set(
    context.mentions.flatMap(({ items, changed }) => (changed ? items.map((i) => i.foodId) : [])),
  );
  return context.plan.items.filter(({ foodId, foodName, grams, key }) => {
    if (grams <= 0 || had.has(foodId)) return false;
    if (standIns.has(foodId) && !key.startsWith('new.')) return false;
    return !text.includes(shortName(foodName).toLowerCase());
  });
}

const DRY_ROLES = [
  'structure',
  'starch-bulk',
  'sweetness',
  'leavening',
  'yeast-food',
  'binder',
  'salt',
];

function additionSteps(context: CueContext, said: string): RewrittenStep[] {
  const items = unspoken(context, said);
  if (items.length === 0) return [];
  const names = (list: readonly PlannedItem[]): string =>
    listOf(list.map(({ foodName }) => `the ${shortName(foodName)}`));
  const dry = items.filter(({ role }) => DRY_ROLES.includes(role));
  const wet = items.filter(({ role }) => !DRY_ROLES.includes(role));
  const parts = [
    dry.length > 0 && context.plan.dough !== null
      ? `mix ${names(dry)} into the dry ingredients`
      : null,
    wet.length > 0 && context.plan.dough !== null
      ? `add ${names(wet)} with the other moist ingredients`
      : null,
    context.plan.dough === null ? `stir in ${names(items)} while mixing` : null,
  ].filter((part) => part !== null);
  const sentence = listOf(parts);
  return [
    {
      section: null,
      before: null,
      after: `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`,
      change: 'inserted',
      why: 'New in this version, so the method does not name it.',
    },
  ];
}

/** Steps with insertions before the step of their index; a heading stays with its first own step. */
function woven(steps: readonly RewrittenStep[], extra: readonly Insertion[]): RewrittenStep[] {
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
 * The method with new names and amounts, temperatures in both scales, and the handling steps the new
 * ingredients call for, marked `inserted` with the reason. A step the plan does not touch keeps its
 * words. No steps are made up for a recipe without a method, except what the new foods need.
 */
export function rewriteSteps(recipe: Recipe, context: CueContext): RewrittenStep[] {
  const texts = recipe.steps.map(({ text }) => text);
  const corrections = new Map(amendments(context, texts).map((found) => [found.at, found]));
  const own = recipe.steps.map((step, at) =>
    amend(rewriteStep(step, context), corrections.get(at)),
  );
  const cues = [...insertions(context, texts), ...warningsFor(context, texts)];
  const said = [...own.map((step) => step.after), ...cues.map(({ step }) => step.after)];
  const additions = additionSteps(context, said.join(' ')).map((step) => ({
    at: 0,
    rank: 0,
    step,
  }));
  return woven(own, [...cues, ...additions]);
}
