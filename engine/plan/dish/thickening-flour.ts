/** The flour of a sauce beside the larger flour of a dough, where no heading parts them. */
import type { Part } from './dish.ts';

/** A step that cooks flour into a sauce. */
const STIRS_IN =
  /\b(?:add|stir|whisk|sprinkle|cook|mix|dust|combine)\w*\b[^.;]{0,60}\bflour\b|\bflour\b[^.;]{0,60}\b(?:stir|whisk|cook)/i;
const LIQUID = /\b(?:stock|broth|bouillon|gravy|roux|wine|béchamel|bechamel)\b/i;
const BUTTER_AND_MILK =
  /\bbutter\b[\s\S]*\b(?:milk|cream|half.and.half)\b|\b(?:milk|cream)\b[\s\S]*\bbutter\b/i;
const THICKENS = /\b(?:thick\w*|smooth|simmer\w*|boil\w*|bubbl\w*|roux|gravy)\b/i;
const HEATS =
  /\b(?:cook\w*|simmer\w*|boil\w*|melt\w*|saut[eé]\w*|saucepan|skillet|stockpot|pot|heat)\b/i;
const DOUGH =
  /\b(?:dough|batter|knead\w*|baking (?:powder|soda)|yeast|crust|tangzhong|shaggy|egg ?wash)\b/i;

const isSauce = (step: string): boolean =>
  STIRS_IN.test(step) &&
  (LIQUID.test(step) || BUTTER_AND_MILK.test(step)) &&
  THICKENS.test(step) &&
  HEATS.test(step) &&
  !DOUGH.test(step);

/** At most this share of the dough's flour. Own choice. */
const SMALL = 0.5;

/** Keys of flours that only thicken: the smallest of several of a dough, where one step cooks flour into a sauce and another takes it otherwise. */
export function thickeningFlours(parts: readonly Part[], steps: readonly string[]): Set<string> {
  const naming = steps.filter((step) => /\bflour\b/i.test(step));
  if (!naming.some(isSauce) || naming.every(isSauce)) return new Set();
  const flours = parts.filter(
    ({ role, class: own, name }) =>
      role === 'structure' && own.endsWith('flours') && /\bflour$/i.test(name),
  );
  const largest = Math.max(...flours.map(({ grams }) => grams));
  const [smallest] = flours.toSorted((a, b) => a.grams - b.grams);
  if (smallest === undefined || flours.length < 2 || smallest.grams > SMALL * largest)
    return new Set();
  return new Set([smallest.key]);
}

/** A sauce so thick that it is shaped and fried, in nine languages. */
const SHAPED = /croquet|kroket|krokett|crocchett|bitterbal/i;
/** Flour that is more than this share of the milk is a batter's. A croquette has a tenth (common practice, no source). */
const OF_MILK = 0.25;

/** Keys of the flours that a sauce needs to be shaped, such as that of croquettes. */
export function shapingFlours(parts: readonly Part[], title: string): Set<string> {
  if (!SHAPED.test(title)) return new Set();
  const milk = parts
    .filter(({ food }) => /^(?:milk|half-and-half|chicken-stock|beef-stock)/.test(food.id))
    .reduce((sum, { grams }) => sum + grams, 0);
  const flours = parts.filter(
    ({ class: own, grams }) => own.endsWith('flours') && grams <= OF_MILK * milk,
  );
  return new Set(flours.map(({ key }) => key));
}
