/** How a dough is worked and cooked, by the words of the title and the method. */
import type { CueContext } from './cue-context.ts';

const OVEN = /\boven\b/i;
const BAKES = /\b(?:bak(?:e|es|ed|ing)|roast)\b/i;
const FRIES = /\b(?:fry|fries|fried|frying|fryer)\b|\bhot oil\b/i;
const BOILS = /\b(?:boil|steam|poach|simmer)(?:s|ed|ing)?\b/i;

const saidOf = ({ title, method }: CueContext): string => `${title}\n${method}`;

/**
 * Whether pieces are fried or boiled and never see an oven. Other languages may have one word for baking
 * and frying, so there only the oven itself tells them apart.
 */
export function isFriedOrBoiled(context: CueContext): boolean {
  const said = saidOf(context);
  const bakes = BAKES.test(said);
  if (OVEN.test(said) || (bakes && context.words === null)) return false;
  return FRIES.test(said) || (BOILS.test(said) && !bakes);
}

/** Whether a dough is kneaded. Other languages may have one word for dough and batter: there the verb decides. */
export function isKneaded({ words, plan, method }: CueContext): boolean {
  if (/\bknead/i.test(method)) return true;
  const isDough = words === null || plan.family.id === 'lean-yeast-bread';
  return isDough && /\bdough\b/i.test(method);
}
