/** The verdict in one sentence or two, for exports and the command line; screens have words of their own. */
import type { Interval, MissingLine, StillContains, Verdict } from '../../model.ts';
import { showGramsRange } from '../displayed-figures.ts';
import { goesPastWithIt, verdictWord } from './verdict-word.ts';

/** Missing lines that are named; the rest is counted. */
const MOST_NAMED = 3;

const grams = (value: Interval): string => showGramsRange(value, { range: 'always' });

/** Letters of a line that a verdict has room for. */
const ROOM = 60;

/** The text as far as there is room, cut between words; a quotation that is cut is closed. */
function shortened(text: string): string {
  if (text.length <= ROOM) return text;
  const cut = text.slice(0, ROOM - 3);
  const space = cut.lastIndexOf(' ');
  const words = `${(space > ROOM / 2 ? cut.slice(0, space) : cut).trimEnd()}...`;
  return words.lastIndexOf('“') > words.lastIndexOf('”') ? `${words}”` : words;
}

const span = ({ low, high }: Interval): string => {
  const [least, most] = [Math.round(low), Math.round(high)];
  return `about ${least === most ? most : `${least}-${most}`} g a serving`;
};

const missingWords = ({ text, netCarbsG }: MissingLine): string =>
  `${shortened(text.trim())} (${netCarbsG === null ? 'unknown' : span(netCarbsG)})`;

const PAST_WITH_IT = ' Eaten with it, a serving is above the budget.';

function missingText(missing: readonly MissingLine[]): string {
  if (missing.length === 0) return '';
  const named = missing.slice(0, MOST_NAMED).map(missingWords);
  const more = missing.length - named.length;
  return ` Not counted: ${named.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`;
}

function countedText(
  verdict: Extract<Verdict, { state: 'fitsAsCounted' }>,
  budget: string,
): string {
  const { netCarbsG } = verdict;
  if (netCarbsG === null) return `Not known: nothing could be counted against ${budget}.`;
  const word = verdictWord(verdict);
  if (word === 'fitsAlone')
    return `${netCarbsG.high > verdict.budgetG ? 'Probably fits' : 'Fits'} by itself: one serving has ${grams(netCarbsG)} net carbs, within ${budget}.`;
  return word === 'cannotBeTold'
    ? `Cannot be told: what was counted has ${grams(netCarbsG)} net carbs a serving, within ${budget}, but not all was counted.`
    : `Fits, not all counted: one serving has ${grams(netCarbsG)} net carbs, within ${budget}.`;
}

const assumedText = ({ assumedServings: servings }: Verdict): string =>
  servings === undefined
    ? ''
    : ` We assume ${servings} ${servings === 1 ? 'serving' : 'servings'}: the page does not say.`;

/** Nearer than this a figure is the budget, g: more digits than a kitchen has. Own choice. */
const SHOWN_ALIKE_G = 0.05;

/** 'Fits: one serving has 12 g (10-14) net carbs, within the budget of 15 g.' and its like. */
export const verdictText = (verdict: Verdict): string =>
  `${answerText(verdict)}${assumedText(verdict)}`;

/** A best figure that only rounds to the budget is at it, not within. */
const nearness = ({ netCarbsG, budgetG }: Extract<Verdict, { state: 'probablyFits' }>): string =>
  netCarbsG.best > budgetG + SHOWN_ALIKE_G ? 'about' : 'likely within';

function answerText(verdict: Verdict): string {
  const budget = `the budget of ${verdict.budgetG} g`;
  switch (verdict.state) {
    case 'fits':
      return `Fits: one serving has ${grams(verdict.netCarbsG)} net carbs, within ${budget}.`;
    case 'probablyFits':
      return `Probably fits: one serving has ${grams(verdict.netCarbsG)} net carbs, ${nearness(verdict)} ${budget}, but it may be more.`;
    case 'fitsAsCounted':
      return `${countedText(verdict, budget)}${missingText(verdict.missing)}${goesPastWithIt(verdict) ? PAST_WITH_IT : ''}`;
    case 'tooMuch':
      return verdict.netCarbsG.best > verdict.budgetG
        ? `Too much: one serving has ${grams(verdict.netCarbsG)} net carbs, above ${budget}.${missingText(verdict.missing)}`
        : `Too much: with what is not counted, one serving has more than ${budget}; ${grams(verdict.netCarbsG)} net carbs were counted.${missingText(verdict.missing)}`;
  }
}

/** 'Still contains what you avoid: egg (2 lines).' Empty when nothing of it is left. */
export function stillContainsText(found: readonly StillContains[]): string {
  if (found.length === 0) return '';
  const one = ({ allergen, keys }: StillContains): string =>
    keys.length === 0 ? `likely ${allergen}` : allergen;
  return `Still contains what you avoid: ${found.map(one).join(', ')}.`;
}
