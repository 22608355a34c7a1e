/**
 * One recipe's way through the stages: parse, match, weigh, tally, plan, tally again, rewrite.
 * Only this file knows the order; no stage calls another one's stage.
 */
import { type FoodTable, foodTable } from './foods/index.ts';
import { exact } from './interval.ts';
import { isTool, matchItem } from './match/index.ts';
import type {
  Adaptation,
  Adjustment,
  Corrections,
  Food,
  FrontierPoint,
  Goals,
  Ingredient,
  Line,
  MissingLine,
  Note,
  Person,
  Plan,
  Recipe,
  Rework,
  Tally,
  Verdict,
  Way,
  WayOutcome,
} from './model.ts';
import { withBareHeadings } from './parse/bare-headings.ts';
import { parseLine } from './parse/index.ts';
import { languageOfLines } from './parse/lines-language.ts';
import { underHeading } from './parse/optional-parts.ts';
import { withBlendSpelledOut } from './parse/spelled-out.ts';
import { changesOn, type Taught, taughtChanges, taughtShare } from './plan/bakes/index.ts';
import { recogniseFamily } from './plan/dish/family/dish-family.ts';
import { planFrontier, planWays } from './plan/index.ts';
import { rewriteRecipe } from './rewrite/index.ts';
import { minutesOnHeat } from './tally/alcohol.ts';
import { cautionsFor } from './tally/cautions/cautions.ts';
import { wholeEnergy } from './tally/counted.ts';
import { tally } from './tally/index.ts';
import { leavingOut, withoutLeftOut } from './tally/left-out.ts';
import { plannedIngredients } from './tally/planned-ingredients.ts';
import { pieceServingNotes } from './tally/servings/piece-servings.ts';
import { centrePieces } from './tally/servings/plates-told.ts';
import { proposeServings } from './tally/servings/servings.ts';
import { allergenChange } from './tally/verdict/allergen-change.ts';
import { stillContains } from './tally/verdict/avoided-allergens.ts';
import { verdictOf } from './tally/verdict/judge-budget.ts';
import { methodOnly } from './tally/verdict/method-only.ts';
import { contradicted } from './tally/verdict/page-contradiction.ts';
import { implausible } from './tally/verdict/plausibility.ts';
import { replaceable } from './tally/verdict/replaceable.ts';
import { withFatPouredOff } from './weigh/eaten/poured-off.ts';
import { measureRegion, weighItem } from './weigh/index.ts';
import { linesMadeHere, withTakenShares } from './weigh/made-here.ts';
import { linesOfOneVersion } from './weigh/one-version.ts';
import { otherReadings } from './weigh/other-readings.ts';
import { withSaltAllowance } from './weigh/salt-allowance.ts';

export interface WalkOptions {
  /** The user's own foods, which take part in matching and planning. */
  ownFoods?: readonly Food[];
  corrections?: Corrections;
  /** The user's own names for foods: name -> food id. */
  aliases?: Record<string, string>;
  /** Weighed mass of the finished dish as the page has it, g; replaces the estimate. */
  cookedGrams?: number | null;
  /** Weighed mass of the finished reworked dish, g; replaces the estimate. */
  reworkedGrams?: number | null;
  /** What the user has said of themselves; it decides on cautions only. */
  person?: Person;
  /** What earlier bakes taught; only what the user left switched on. */
  taught?: Taught;
}

/** What a recipe costs as it stands. */
export interface RecipeTally {
  ingredients: Ingredient[];
  family: Plan['family'];
  servings: number;
  tally: Tally;
  /** What to ask before the figures are believed; empty as a rule. */
  questions: Note[];
  notes: Note[];
}

/** Whether a smaller serving is of no use, as what is not counted may fill the budget by itself. */
const outgrown = (outcome: WayOutcome | undefined): boolean =>
  outcome?.plan.way === 'smaller' &&
  'missing' in outcome.verdict &&
  outcome.verdict.missing.some(
    ({ netCarbsG }) => netCarbsG !== null && netCarbsG.best >= outcome.verdict.budgetG,
  );

const stepTexts = (recipe: Recipe): string[] => recipe.steps.map((step) => step.text);

/** The recipe in the language its lines speak. */
const inItsLanguage = (recipe: Recipe): Recipe => ({
  ...recipe,
  language: languageOfLines(
    recipe.groups.flatMap(({ lines }) => lines),
    recipe.language,
  ),
});

/** Every ingredient line of the recipe, understood, in page order. */
export function parseLines(recipe: Recipe): Line[] {
  const { language, title } = recipe;
  const lines = recipe.groups.flatMap(({ lines, title: group }) =>
    lines.map((text) => {
      const line = withBlendSpelledOut(parseLine(text, { language, group }), { language, group });
      return underHeading(line, { title, language });
    }),
  );
  const titled = withBareHeadings(lines, stepTexts(recipe));
  return linesOfOneVersion(linesMadeHere(titled), title);
}

const foodOf = (id: string | undefined, foods: FoodTable): Food | null =>
  id === undefined ? null : foods.byId(id);

function corrected(ingredient: Ingredient, corrections: Corrections, foods: FoodTable): Ingredient {
  const correction = corrections[ingredient.key];
  if (correction === undefined) return ingredient;
  const { grams } = correction;
  const food = foodOf(correction.foodId, foods);
  return {
    ...ingredient,
    match: food
      ? {
          foodId: food.id,
          foodName: food.name,
          confidence: 1,
          reason: 'chosen by you',
          others: ingredient.match?.others ?? [],
        }
      : ingredient.match,
    weight:
      grams === undefined
        ? ingredient.weight
        : {
            grams: exact(grams),
            eaten: ingredient.weight?.eaten ?? exact(1),
            basis: 'corrected',
            assumptions: ['grams set by you'],
            disagreement: null,
          },
  };
}

/** Lines matched to foods and weighed; a correction of the user's wins over our reading. */
export function weighRecipe(given: Recipe, options: WalkOptions = {}): Ingredient[] {
  const recipe = inItsLanguage(given);
  return weighLines(parseLines(recipe), recipe, options);
}

function weighLines(lines: readonly Line[], recipe: Recipe, options: WalkOptions): Ingredient[] {
  const foods = foodTable(options.ownFoods);
  const corrections = options.corrections ?? {};
  const region = measureRegion(recipe);
  const { servings } = recipe.yield;
  const context = {
    title: recipe.title,
    steps: stepTexts(recipe),
    lines,
    servings: servings && servings.low === servings.high ? servings.low : null,
  };
  const matchOptions = { foods, aliases: options.aliases ?? {}, language: recipe.language };
  const weighed = lines.flatMap((line, at) =>
    line.kind === 'heading'
      ? []
      : line.items.map((item, n): Ingredient => {
          const key = n === 0 ? `${at}` : `${at}.${n}`;
          const match = line.kind === 'ingredient' ? matchItem(item, line, matchOptions) : null;
          const food = foodOf(corrections[key]?.foodId, foods) ?? foodOf(match?.foodId, foods);
          const weight = weighItem(item, line, food, { region, recipe: context });
          const isFood = food !== null || line.kind !== 'ingredient' || !isTool(item.name);
          const said = isFood ? line : { ...line, kind: 'tool' as const };
          return corrected({ key, line: said, item, match, weight }, corrections, foods);
        }),
  );
  const eaten = withFatPouredOff(withTakenShares(weighed), context.steps, foods);
  return withSaltAllowance(eaten, foods);
}

/** More would not be answered. Own choice. */
const MOST_QUESTIONS = 3;

/** Goals that change the count of the recipe as it stands. */
type CountingGoals = Pick<Goals, 'servings' | 'rule' | 'family'>;

/**
 * The recipe as it stands: ingredients, family, servings and totals. Figures that cannot be believed
 * are tried in another reading of the lines first; what then still cannot be is asked in `questions`.
 */
export function tallyRecipe(
  given: Recipe,
  goals: CountingGoals,
  options: WalkOptions = {},
): RecipeTally {
  const recipe = inItsLanguage(given);
  const lines = parseLines(recipe);
  const first = tallyLines(lines, recipe, goals, options);
  if (first.questions.length === 0) return first;
  for (const { lines: read, note } of otherReadings(lines, first.ingredients)) {
    const second = tallyLines(read, recipe, goals, options);
    if (second.questions.length === 0) return { ...second, notes: [...second.notes, note] };
  }
  return first;
}

function tallyLines(
  lines: readonly Line[],
  recipe: Recipe,
  goals: CountingGoals,
  options: WalkOptions,
): RecipeTally {
  const foods = foodTable(options.ownFoods);
  const ingredients = weighLines(lines, recipe, options);
  const guess = recogniseFamily(
    ingredients,
    { title: recipe.title, steps: stepTexts(recipe) },
    foods,
  );
  const family = goals.family ? { id: goals.family, confidence: 1, why: 'chosen by you' } : guess;
  const rawGrams = totalGrams(ingredients);
  const proposal = proposeServings(recipe, {
    rawGrams,
    energyKcal: wholeEnergy(ingredients, foods),
    family: family.id,
    centrePieces: centrePieces(ingredients, (id) => foods.byId(id)?.group ?? null),
  });
  const servings = goals.servings ?? proposal.servings;
  const notes: Note[] = [...recipe.notes];
  if (goals.servings === null) {
    const code = proposal.assumed ? 'SERVINGS_ASSUMED' : 'SERVINGS_ESTIMATED';
    if (!proposal.stated) notes.push({ code, text: proposal.text, key: null });
    else notes.push(...pieceServingNotes(recipe, servings, rawGrams));
  }
  const tallyOptions = {
    foods,
    servings,
    rule: goals.rule,
    family: family.id,
    title: recipe.title,
    minutes: minutesOnHeat(stepTexts(recipe), recipe.minutes.cook),
    cookedGrams: options.cookedGrams ?? null,
    methodOnly: methodOnly(stepTexts(recipe), ingredients, foods, recipe.title),
  };
  const before = tally(ingredients, tallyOptions);
  const servingsSet = goals.servings !== null;
  const questions = [
    ...implausible(before, ingredients, foods, servingsSet),
    ...contradicted(recipe, before, ingredients, tallyOptions, servingsSet),
  ].slice(0, MOST_QUESTIONS);
  return { ingredients, family, servings, tally: before, questions, notes };
}

const totalGrams = (ingredients: readonly Ingredient[]): number | null => {
  const weighed = ingredients.flatMap((i) =>
    i.weight ? [i.weight.grams.best * i.weight.eaten.best] : [],
  );
  return weighed.length === 0 ? null : weighed.reduce((sum, grams) => sum + grams, 0);
};

/** What the reworks of one recipe share. */
interface Reworking {
  recipe: Recipe;
  goals: Goals;
  options: WalkOptions;
  foods: FoodTable;
  family: Plan['family'];
  ingredients: Ingredient[];
  before: Tally;
  /** Changes that earlier bakes taught. */
  taught: readonly Adjustment[];
  /** What stands in the method only, whichever way the dish is made. */
  besides: readonly MissingLine[];
  servingsGuessed: boolean;
  servingsAssumed: boolean;
}

/** A way with what it was counted from. */
interface Outcome {
  way: WayOutcome;
  ingredients: Ingredient[];
}

/** The plan without a number of servings that would fit, where food that is not counted comes on top. */
function withoutPromises(plan: Plan, verdict: Verdict): Plan {
  const missing = 'missing' in verdict ? verdict.missing : [];
  const onTop = missing.some(({ netCarbsG }) => netCarbsG === null || netCarbsG.high > 0);
  if (!onTop) return plan;
  return { ...plan, limits: plan.limits.filter(({ code }) => code !== 'MORE_SERVINGS') };
}

/** The dish as a plan has it, counted again. */
function outcomeOf(cooked: Plan, work: Reworking): Outcome {
  const { recipe, goals, options, foods, family } = work;
  const plan = leavingOut(cooked, work.ingredients, goals);
  const ingredients = plannedIngredients(plan, withoutLeftOut(work.ingredients, goals));
  const counting = {
    foods,
    servings: plan.servings,
    rule: goals.rule,
    family: family.id,
    title: recipe.title,
    minutes: minutesOnHeat(stepTexts(recipe), recipe.minutes.cook),
    cookedGrams: options.reworkedGrams ?? null,
    cookedShare: taughtShare(options.taught, family.id),
    methodOnly: work.besides,
    servingsGuessed: work.servingsGuessed,
    servingsAssumed: work.servingsAssumed,
  };
  const after = tally(ingredients, counting);
  const verdict = verdictOf(after, ingredients, goals.budgetG, counting);
  return { way: { plan: withoutPromises(plan, verdict), after, verdict }, ingredients };
}

/** An outcome written out: the lines and the method to cook by, and what to heed. */
function writtenOut({ way, ingredients: planned }: Outcome, work: Reworking): Rework {
  const { recipe, goals, options, foods, ingredients, before, taught } = work;
  const { plan, after } = way;
  const { lines, steps, methodNotes } = rewriteRecipe(recipe, ingredients, plan, {
    foods,
    pageServings: before.servings,
    region: measureRegion(recipe),
    adjustments: [...goals.adjustments, ...taught],
    besides: replaceable(way.verdict),
    after,
  });
  // Who leaves out what is optional meets an allergen for the first time in what stands in.
  const foodsOf = (list: readonly Ingredient[]): Food[] =>
    list
      .filter(({ line }) => !line.optional)
      .flatMap((i) => (i.match ? [foods.byId(i.match.foodId)] : []))
      .filter((f) => f !== null);
  const allergens = allergenChange(foodsOf(ingredients), foodsOf(planned));
  const words = [recipe.title, ...stepTexts(recipe)].join('\n');
  return {
    ...way,
    lines,
    steps,
    methodNotes,
    allergensAdded: allergens.added,
    allergensRemoved: allergens.removed,
    stillContains: stillContains(planned, goals.avoid, foods),
    cautions: cautionsFor({
      before,
      after,
      plan,
      foods,
      words,
      language: recipe.language,
      person: options.person ?? {},
    }),
  };
}

/** Pieces of which a serving is several; null where the page counts servings or pieces only. */
const piecesMade = ({ yield: { servings, pieces } }: Recipe): number | null =>
  servings === null ? null : (pieces?.count ?? null);

/**
 * The main job: the recipe as it stands, the ways to bring a serving within the budget with the
 * figures of each, and the recipe by one of them with its lines and method: the way asked for, the
 * recommended one when that is not there. Deterministic; never throws on a readable recipe.
 * `onTallied` gets the recipe as it stands as soon as it is counted, before anything is planned.
 */
export function adaptRecipe(
  given: Recipe,
  wished: Goals,
  options: WalkOptions = {},
  onTallied: (standing: RecipeTally) => void = () => {},
): Adaptation {
  const recipe = inItsLanguage(given);
  const foods = foodTable(options.ownFoods);
  const goals = { ...wished, adjustments: changesOn(wished.adjustments, options.taught) };
  const taught = taughtChanges(options.taught, stepTexts(recipe));
  const standing = tallyRecipe(recipe, goals, options);
  onTallied(standing);
  const { ingredients, family, servings, tally: before, questions } = standing;
  const servingsAssumed = standing.notes.some(({ code }) => code === 'SERVINGS_ASSUMED');
  const servingsGuessed =
    servingsAssumed || standing.notes.some(({ code }) => code === 'SERVINGS_ESTIMATED');
  const { plans, recommended } = planWays(
    withoutLeftOut(ingredients, goals),
    { title: recipe.title, steps: stepTexts(recipe) },
    { goals, servings, foods, before, taught, servingsGuessed, made: piecesMade(recipe) },
  );
  const besides = methodOnly(stepTexts(recipe), ingredients, foods, recipe.title);
  const work = { recipe, goals, options, foods, family, ingredients, before, taught };
  const shared = { ...work, besides, servingsGuessed, servingsAssumed };
  const [within, ...others] = plans;
  const first = outcomeOf(within, shared);
  const outcomes = [first, ...others.map((plan) => outcomeOf(plan, shared))];
  const named = (name: Way): Outcome | undefined =>
    outcomes.find(({ way }) => way.plan.way === name);
  const best = outgrown(named(recommended)?.way) ? 'within' : recommended;
  const asked = goals.way === 'recommended' ? best : goals.way;
  const chosen = writtenOut(named(asked) ?? named(recommended) ?? first, shared);
  return {
    recipe,
    goals: wished,
    taught,
    corrections: options.corrections ?? {},
    ingredients,
    before,
    questions,
    recommended: best,
    ways: outcomes.map(({ way }) => way),
    ...chosen,
    notes: [...standing.notes, ...chosen.plan.notes],
  };
}

/**
 * The curve of an adaptation: closeness to the original against net carbs of a serving, from the least
 * in reach to the original; one point when nothing can change. `options` are those it was made with.
 */
export function frontierOf(adaptation: Adaptation, options: WalkOptions = {}): FrontierPoint[] {
  const { recipe, ingredients, before, taught } = adaptation;
  const { goals: wished } = adaptation;
  const goals = { ...wished, adjustments: changesOn(wished.adjustments, options.taught) };
  return planFrontier(
    withoutLeftOut(ingredients, goals),
    { title: recipe.title, steps: stepTexts(recipe) },
    { goals, servings: before.servings, foods: foodTable(options.ownFoods), before, taught },
  );
}
