/** What each verb answers, as plain records: one a page or a line. */
import { foodTable } from '../foods/index.ts';
import { matchItem } from '../match/index.ts';
import {
  type Adaptation,
  type Food,
  type Goals,
  type Ingredient,
  type Interval,
  NUTRIENTS,
  type Nutrient,
  type Plan,
  type Recipe,
  type Rework,
  type Tally,
  type WayOutcome,
} from '../model.ts';
import { lineLanguage, parseLine } from '../parse/index.ts';
import { toldNote } from '../rewrite/languages/told-notes.ts';
import { verdictText } from '../tally/verdict/verdict-text.ts';
import { adaptRecipe, frontierOf, tallyRecipe } from '../walk.ts';
import { weighItem } from '../weigh/index.ts';

const DECIMALS = 4;

/** A figure to four decimals: enough to compare, without the noise of floating point. */
const round = (value: number): number => Number(value.toFixed(DECIMALS));

/** What is said of a recipe, in its own language where there are words. */
const toldIn =
  (language: string | null) =>
  ({ text }: { text: string }): string =>
    toldNote(text, language) ?? text;

const bounds = ({ low, best, high }: Interval) => ({
  best: round(best),
  low: round(low),
  high: round(high),
});

export type PerServing = Record<Nutrient, number | null>;

const perServing = (tally: Tally): PerServing =>
  Object.fromEntries(
    NUTRIENTS.map((nutrient) => {
      const value = tally.perServing[nutrient];
      return [nutrient, value ? round(value.best) : null];
    }),
  ) as PerServing;

export function readRecord(file: string, recipe: Recipe, others: readonly Recipe[]) {
  const notes = recipe.notes.map((note) => note.text);
  if (others.length > 0) {
    notes.push(`also on this page: ${others.map((other) => other.title).join('; ')}`);
  }
  return {
    file,
    title: recipe.title,
    servings: recipe.yield.servings?.low ?? null,
    yieldText: recipe.yield.text,
    ingredients: recipe.groups.flatMap((group) => group.lines),
    steps: recipe.steps.map((step) => step.text),
    language: recipe.language,
    url: recipe.url,
    markup: recipe.markup,
    notes,
  };
}

/**
 * One ingredient line on its own: parsed, matched and weighed. A line that refers to another recipe is
 * matched too, as nothing here could count it twice.
 */
export function lineRecord(text: string) {
  const language = lineLanguage(text);
  const line = parseLine(text, { language });
  const item = line.items[0];
  const foods = foodTable();
  const match = item && line.kind !== 'heading' ? matchItem(item, line, { foods, language }) : null;
  const food = match ? foods.byId(match.foodId) : null;
  const recipe = { title: '', steps: [], lines: [line] };
  const weight = item ? weighItem(item, line, food, { region: 'us', recipe }) : null;
  return {
    line: text,
    amounts: (item?.amounts ?? []).map(({ quantity, max, unit }) => ({ quantity, max, unit })),
    name: line.name,
    preparation: item?.preparation ?? null,
    optional: line.optional,
    food: match
      ? { id: match.foodId, name: match.foodName, confidence: round(match.confidence) }
      : null,
    others: (match?.others ?? []).map(({ foodId, foodName, confidence }) => ({
      id: foodId,
      name: foodName,
      confidence: round(confidence),
    })),
    grams: weight ? bounds(weight.grams) : null,
    notes: [
      ...(weight?.assumptions ?? []),
      ...(weight?.disagreement ? [weight.disagreement.text] : []),
    ],
  };
}

export function tallyRecord(
  file: string,
  recipe: Recipe,
  goals: Goals,
  ownFoods: readonly Food[] = [],
) {
  const { ingredients, servings, tally, questions, notes } = tallyRecipe(recipe, goals, {
    ownFoods,
  });
  const net = new Map(tally.contributions.map(({ key, netCarbsG }) => [key, netCarbsG]));
  const range = tally.perServing.netCarbsG;
  return {
    file,
    title: recipe.title,
    servings,
    perServing: perServing(tally),
    range: { netCarbsG: range ? [round(range.low), round(range.high)] : null },
    uncounted: tally.uncounted.map(({ text, why }) => ({ line: text, why })),
    lines: ingredients.map(({ key, line, match, weight }) => {
      const share = net.get(key);
      return {
        line: line.text,
        food: match?.foodId ?? null,
        grams: weight ? round(weight.grams.best) : null,
        netCarbsG: share ? round(share.best) : null,
      };
    }),
    questions: questions.map(toldIn(recipe.language)),
    notes: notes.map((note) => note.text),
  };
}

/** Lines the verdict lacks, with the rough net carbs a serving they may add. */
const missingRecords = ({ verdict }: WayOutcome) =>
  ('missing' in verdict ? verdict.missing : []).map(({ text, why, kind, netCarbsG }) => ({
    line: text,
    why,
    kind,
    netCarbsG: netCarbsG && bounds(netCarbsG),
  }));

function swapRecords({ swaps }: Plan, ingredients: readonly Ingredient[], language: string | null) {
  const text = new Map(ingredients.map(({ key, line }) => [key, line.text]));
  return swaps.map((swap) => ({
    line: swap.key === null ? null : (text.get(swap.key) ?? null),
    from: swap.from && { food: swap.from.food, grams: round(swap.from.grams) },
    /** Grams of the original that stay; 0 for an addition. */
    keptGrams: round(swap.keptGrams),
    to: swap.to.map(({ food, grams }) => ({ food, grams: round(grams) })),
    why: toldIn(language)({ text: swap.why }),
  }));
}

/** What one way comes to. */
function wayRecord(
  { plan, after, verdict }: WayOutcome,
  { ingredients, recipe }: Pick<Adaptation, 'ingredients' | 'recipe'>,
) {
  return {
    way: plan.way,
    servings: plan.servings,
    met: plan.met,
    verdict: verdict.state,
    verdictText: verdictText(verdict),
    missing: missingRecords({ plan, after, verdict }),
    after: perServing(after),
    swaps: swapRecords(plan, ingredients, recipe.language),
    shopping: plan.shopping.map(({ food, grams, availability }) => ({
      food,
      grams: round(grams),
      availability,
    })),
    stomach: {
      sweetenersG: round(plan.stomach.sweetenersG),
      addedFibreG: round(plan.stomach.addedFibreG),
    },
    closeness: round(plan.closeness),
    limits: [...plan.limits, ...plan.notes].map(toldIn(recipe.language)),
    uncounted: after.uncounted.map(({ text, why }) => ({ line: text, why })),
  };
}

/** Titles of groups of lines, each with the index of the first line under it. */
function headingsOf(lines: Rework['lines']): { at: number; title: string }[] {
  const shown = lines.filter(({ after }) => after !== null);
  return shown.flatMap(({ group, after }, at) => {
    const before = shown[at - 1];
    const isNew = group !== null && group !== (before?.group ?? null);
    // A heading that the page lists like a line stands there already.
    return isNew && after !== group && before?.after !== group ? [{ at, title: group }] : [];
  });
}

/** The chosen way to cook by. */
const writtenRecord = (rework: Rework) => ({
  ingredients: rework.lines.flatMap(({ after }) => (after === null ? [] : [after])),
  headings: headingsOf(rework.lines),
  steps: rework.steps.map(({ after }) => after),
  methodNotes: rework.methodNotes.map((note) => ({ ...note, grams: round(note.grams) })),
  cautions: rework.cautions.map(({ text }) => text),
  allergensAdded: rework.allergensAdded,
  stillContains: rework.stillContains,
});

const frontierRecords = (adaptation: Adaptation, ownFoods: readonly Food[]) =>
  frontierOf(adaptation, { ownFoods }).map((point) => ({
    netCarbsG: round(point.netCarbsG),
    closeness: round(point.closeness),
  }));

/**
 * A recipe reworked: the way taken in the record's own fields, what every way comes to in `ways`; the curve of
 * net carbs against closeness only when it is asked for, as it takes longer than the rest, else null.
 */
export function adaptRecord(
  file: string,
  recipe: Recipe,
  goals: Goals,
  { ownFoods = [], frontier = false }: { ownFoods?: readonly Food[]; frontier?: boolean } = {},
) {
  const adaptation = adaptRecipe(recipe, goals, { ownFoods });
  const { before, plan } = adaptation;
  const told = toldIn(recipe.language);
  return {
    file,
    title: recipe.title,
    family: plan.family.id,
    budgetG: plan.budgetG,
    promises: plan.promises,
    notReworked: plan.notReworked === null ? null : told({ text: plan.notReworked }),
    questions: adaptation.questions.map(told),
    before: perServing(before),
    ...wayRecord(adaptation, adaptation),
    ...writtenRecord(adaptation),
    limits: [...plan.limits, ...adaptation.notes].map(told),
    recommended: adaptation.recommended,
    /** Servings of the page, which `before` is reckoned with. */
    servingsBefore: before.servings,
    ways: adaptation.ways.map((way) => wayRecord(way, adaptation)),
    frontier: frontier ? frontierRecords(adaptation, ownFoods) : null,
  };
}

export type ReadRecord = ReturnType<typeof readRecord>;
export type LineRecord = ReturnType<typeof lineRecord>;
export type TallyRecord = ReturnType<typeof tallyRecord>;
export type AdaptRecord = ReturnType<typeof adaptRecord>;
