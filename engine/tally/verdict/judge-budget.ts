/** The one answer about the budget: fits, probably fits, fits with not all counted, too much. */
import type { Ingredient, MissingLine, Tally, Verdict } from '../../model.ts';
import { showGrams } from '../displayed-figures.ts';
import type { TallyOptions } from '../index.ts';
import { missingLines } from './missing-lines.ts';
import { strewnExtras } from './strewn-extra.ts';

/** Figures this near to the budget, g, are the same: the planner works to a billionth. Own choice. */
const SAME_G = 1e-6;

const NOTHING_COUNTED: MissingLine = {
  key: null,
  text: 'the whole recipe',
  why: 'no line could be counted',
  kind: null,
  netCarbsG: null,
};

/** A smaller least is a guess about a sprinkle, and turns no answer. Own choice, g. */
const SURELY_FROM_G = 2;

/** What is missing adds at least this much to a serving, g. */
const leastOf = (missing: readonly MissingLine[]): number =>
  missing
    .map(({ netCarbsG, beside }) => (beside ? 0 : (netCarbsG?.low ?? 0)))
    .filter((low) => low >= SURELY_FROM_G)
    .reduce((sum, low) => sum + low, 0);

/**
 * Above the budget by more than the screen shows: 15.1 g is shown as 15 g, and of a budget of 15 g that
 * is no 'too much'.
 */
const isAbove = (grams: number, budgetG: number): boolean =>
  grams > budgetG + SAME_G && showGrams(grams) !== showGrams(budgetG);

/** A plate may be as much larger than the one that guessed servings were reckoned with. Own choice. */
const LARGER_PLATE = 1.25;

/**
 * The answer for figures and gaps already at hand; `netCarbsG` of one serving, g; `guessed` where the
 * number of servings is a guess.
 */
export function verdictFrom(
  netCarbsG: Tally['perServing']['netCarbsG'],
  budgetG: number,
  missing: MissingLine[],
  guessed = false,
): Verdict {
  if (netCarbsG === null) {
    const gaps = missing.length > 0 ? missing : [NOTHING_COUNTED];
    return { state: 'fitsAsCounted', netCarbsG, budgetG, missing: gaps };
  }
  if (isAbove(netCarbsG.best + leastOf(missing), budgetG))
    return { state: 'tooMuch', netCarbsG, budgetG, missing };
  if (missing.length > 0) return { state: 'fitsAsCounted', netCarbsG, budgetG, missing };
  const largest = netCarbsG.high * (guessed ? LARGER_PLATE : 1);
  const whole = largest <= budgetG + SAME_G;
  return { state: whole ? 'fits' : 'probablyFits', netCarbsG, budgetG };
}

const mostOf = ({ netCarbsG }: MissingLine): number => netCarbsG?.high ?? 0;

/** What may bring most stands first: a verdict has room for few. */
const mostFirst = (missing: readonly MissingLine[]): MissingLine[] =>
  [...missing].sort((a, b) => mostOf(b) - mostOf(a));

/** A teaspoon of sugar strewn over matters to the answer only where it may take a serving past the budget. */
function pastBudget(
  strewn: readonly MissingLine[],
  netCarbsG: Tally['perServing']['netCarbsG'],
  budgetG: number,
): readonly MissingLine[] {
  const most = strewn.reduce((sum, one) => sum + (one.netCarbsG?.high ?? 0), netCarbsG?.best ?? 0);
  return netCarbsG !== null && netCarbsG.best <= budgetG && most > budgetG ? strewn : [];
}

/** The answer for a tallied recipe. `ingredients` and `options` must be those it was tallied with. */
export function verdictOf(
  tally: Tally,
  ingredients: readonly Ingredient[],
  budgetG: number,
  options: TallyOptions,
): Verdict {
  const { netCarbsG } = tally.perServing;
  const missing = missingLines(ingredients, options);
  const strewn = pastBudget(strewnExtras(ingredients), netCarbsG, budgetG);
  const guessed = options.servingsGuessed ?? false;
  const verdict = verdictFrom(netCarbsG, budgetG, mostFirst([...missing, ...strewn]), guessed);
  return options.servingsAssumed ? { ...verdict, assumedServings: tally.servings } : verdict;
}
