/** The method of the reworked recipe. */
import type { PlannedItem, Recipe, RewrittenStep } from '../model.ts';
import { adjustedSteps } from './adjusted.ts';
import { withoutBoiling } from './boiling.ts';
import {
  type Amendment,
  amendments,
  type CueContext,
  coolerOven,
  type Insertion,
  insertions,
  restsFirst,
  warningsFor,
} from './cues.ts';
import { foreignName, renameForeign } from './foreign.ts';
import { withoutWord } from './leave-out.ts';
import { Ledger } from './ledger.ts';
import { listOf, type Mention, shortName } from './mentions.ts';
import { withLowerOven } from './oven.ts';
import { namePattern } from './patterns.ts';
import { renameIn } from './rename.ts';
import { usesGas, withAllScales } from './temperature.ts';
import { isForeign, joinedWith, keyed } from './words.ts';

const sentence = (text: string): string => `${capital(text)}.`;

/** 'vital wheat gluten for part of the flour', 'berry spread instead of jam'. */
function swapped({ ingredient, newName, items }: Mention): string {
  const old = ingredient.item.name;
  const own = ingredient.match?.foodId;
  const others = items.filter(({ foodId }) => foodId !== own);
  const names = listOf([...new Set(others.map(({ foodName }) => shortName(foodName)))]);
  return others.length < items.length
    ? `${names} for part of the ${old}`
    : `${newName === 'flours' ? names : newName} instead of ${old}`;
}

/** Less, more or none of an ingredient that stays what it is. */
function amountChange({ ingredient, items }: Mention): 'less' | 'more' | 'no' {
  const now = items.reduce((sum, { grams }) => sum + grams, 0);
  if (now === 0) return 'no';
  return now < (ingredient.weight?.grams.best ?? now) ? 'less' : 'more';
}

function whyChanged(named: readonly Mention[]): string[] {
  const changed = named.filter((mention) => mention.changed);
  const swaps = changed.filter(({ newName }) => newName !== null).map(swapped);
  const amounts = (['no', 'less', 'more'] as const).flatMap((word) => {
    const names = changed
      .filter((mention) => mention.newName === null && amountChange(mention) === word)
      .map(({ ingredient }) => ingredient.item.name);
    return names.length === 0 ? [] : [`${word} ${listOf([...new Set(names)])}`];
  });
  return [[...new Set(swaps)].join('; '), amounts.join('; ')]
    .filter((text) => text !== '')
    .map(sentence);
}

/** Ingredients that are gone altogether and that the step still names. */
function leaveOut(text: string, named: readonly Mention[]): string {
  const none = named.filter(({ changed, items }) => changed && items.length === 0);
  const left: string[] = [];
  let result = text;
  for (const { names, ingredient } of none) {
    const without = names
      .map((name) => withoutWord(result, name))
      .find((shorter) => shorter !== null);
    if (without === undefined) left.push(ingredient.item.name);
    else result = without ?? result;
  }
  return left.length === 0 ? result : `${result} Leave out the ${listOf(left)}.`;
}

/** What the passes over one method share. */
interface Pass {
  context: CueContext;
  ledger: Ledger;
  gas: boolean;
  /** Why the oven is to be cooler, else null. */
  oven: string | null;
}

const UNITES = /\b(mix|stir|combine|work|knead|put|add|make|bring)\b/i;

const waterOf = (mentions: readonly Mention[]): Mention | undefined =>
  mentions.find(({ ingredient }) => ingredient.match?.foodId === 'water');

/** The text without the water, where it goes in with the flour; null where it does not. */
function withoutWater(text: string, water: Mention): string | null {
  if (!/\bflours?\b/i.test(text) || !UNITES.test(text)) return null;
  return (
    water.names
      .filter((name) => namePattern({ ...water, names: [name] }).test(text))
      .map((name) => withoutWord(text, name))
      .find((shorter) => shorter !== null) ?? null
  );
}

/** Whether flour and water can stand first: the method brings them together in one step, or names no water. */
export function autolyses(texts: readonly string[], mentions: readonly Mention[]): boolean {
  const water = waterOf(mentions);
  if (water === undefined) return false;
  const first = texts.find((text) => namePattern(water).test(text));
  return first === undefined || withoutWater(first, water) !== null;
}

/** Flour and water already stand together: the first step that unites them says so. */
function rested(step: RewrittenStep, { mentions }: CueContext): RewrittenStep | null {
  const water = waterOf(mentions);
  const without = water === undefined ? null : withoutWater(step.after, water);
  if (without === null) return null;
  const after = without.replace(/\b(flours?)\b/i, 'rested $1');
  const why = [step.why, 'Flour and water are together already.'].filter((one) => one !== null);
  return { ...step, after, change: 'changed', why: why.join(' ') };
}

/** The first step that takes up the rested dough, marked so; the others as they are. */
function afterRest(steps: readonly RewrittenStep[], context: CueContext): RewrittenStep[] {
  if (context.words !== null || !restsFirst(context)) return [...steps];
  const at = steps.findIndex((step) => rested(step, context) !== null);
  return steps.map((step, index) => (index === at ? (rested(step, context) ?? step) : step));
}

/** A step of a method in another language: names with remarks, and the oven. */
function rewriteForeign(step: Recipe['steps'][number], pass: Pass): RewrittenStep {
  const { context, ledger, oven } = pass;
  const { words, foods, mentions } = context;
  if (words === null) return rewriteStep(step, pass);
  const { text, named } = renameForeign(step.text, mentions, { words, foods, ledger });
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
  const { context, ledger, gas, oven } = pass;
  const { mentions, foods, region } = context;
  const unboiled = withoutBoiling(step.text, mentions);
  const { text, named } = renameIn(
    unboiled.text,
    mentions,
    { foods, region, ledger },
    step.section,
  );
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

/** Additions that no step speaks of: they must not be forgotten. */
function unspoken(context: CueContext, said: string): PlannedItem[] {
  const { words } = context;
  const text = said.toLowerCase();
  const had = new Set(context.ingredients.map(({ match }) => match?.foodId ?? ''));
  const standIns = new Set(
    context.mentions.flatMap(({ items, changed }) => (changed ? items.map((i) => i.foodId) : [])),
  );
  return context.plan.items.filter(({ foodId, foodName, grams, key }) => {
    if (grams <= 0 || had.has(foodId)) return false;
    if (standIns.has(foodId) && !key.startsWith('new.')) return false;
    const named = words === null ? shortName(foodName) : (words.foods[foodId] ?? foodName);
    return !text.includes(named.toLowerCase());
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

const ENGLISH_ADDITIONS = {
  dry: 'Mix {list} into the dry ingredients.',
  moist: 'Add {list} with the other moist ingredients.',
  dish: 'Stir in {list} while mixing.',
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const addition = (sentence: string): RewrittenStep => ({
  section: null,
  before: null,
  after: capital(sentence),
  change: 'inserted',
  why: 'New in this version, so the method does not name it.',
});

/** Steps for what no step names: dry things at the start, moist ones where the first moist one goes in. */
function additionSteps(context: CueContext, said: string, texts: readonly string[]): Insertion[] {
  const items = unspoken(context, said);
  if (items.length === 0) return [];
  const { words } = context;
  const names = (list: readonly PlannedItem[]): string =>
    words === null
      ? listOf(list.map(({ foodName }) => `the ${shortName(foodName)}`))
      : joinedWith(
          list.map((item) => foreignName(item, words)),
          words.and,
        );
  const says = words?.additions ?? ENGLISH_ADDITIONS;
  const moistAt = Math.max(
    0,
    texts.findIndex((text) =>
      context.mentions.some(
        (mention) =>
          ['liquid', 'egg'].includes(context.plan.roles[mention.ingredient.key]?.[0] ?? '') &&
          namePattern(mention).test(text),
      ),
    ),
  );
  const step = (list: readonly PlannedItem[], at: number, say: string) =>
    list.length === 0 ? [] : [{ at, rank: 0, step: addition(say.replace('{list}', names(list))) }];
  if (context.plan.dough === null) return step(items, moistAt, says.dish);
  const isDry = ({ role, foodId }: PlannedItem): boolean =>
    DRY_ROLES.includes(role) && !/liquid|syrup/.test(foodId);
  const dry = items.filter(isDry);
  const wet = items.filter((item) => !isDry(item));
  return [...step(dry, 0, says.dry), ...step(wet, moistAt, says.moist)];
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
 * The method with new names and amounts, temperatures in both scales (and gas marks where the recipe
 * uses them), and the handling steps the new ingredients call for, marked `inserted` with the reason.
 * A step the plan does not touch keeps its words. No steps are made up for a recipe without a method,
 * except what the new foods need.
 */
export function rewriteSteps(recipe: Recipe, context: CueContext): RewrittenStep[] {
  const { words } = context;
  const texts = recipe.steps.map(({ text }) => text);
  // Phrases are corrected in English only; places are found in every language with key words.
  const searched = words === null ? texts : texts.map((text) => keyed(text, words));
  const found = words === null ? amendments(context, texts) : [];
  const oven = coolerOven(context);
  const pass = { context, ledger: new Ledger(), gas: usesGas(context.method), oven };
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
  const ovenSaid = oven !== null && texts.some((text) => withLowerOven(text) !== text);
  const cues = [
    ...insertions(context, searched, ovenSaid),
    ...warningsFor(context, searched),
    ...adjustedSteps(context.adjustments, searched),
  ].map((one) => (words === null ? inAllScales(one, pass.gas) : one));
  const said = [...own, ...cues.map(({ step }) => step)].map(({ after }) => after).join(' ');
  const extra = [...cues, ...additionSteps(context, said, texts)];
  // English steps in a method of a language that has no words of its own.
  const english = words === null && isForeign(recipe.language);
  return woven(own, english ? extra.map(inEnglish) : extra);
}

const inAllScales = (one: Insertion, gas: boolean): Insertion => ({
  ...one,
  step: { ...one.step, after: withAllScales(one.step.after, gas) },
});

const inEnglish = (one: Insertion): Insertion => ({ ...one, step: { ...one.step, lang: 'en' } });
