/** What a logged bake says in figures. */
import type { Adaptation, Family, Interval } from '../../../engine/model.ts';
import type { Bake, Work } from '../../store/records.ts';
import { amount, rangeText, short } from '../figures/format.ts';
import { factorText } from '../recipe/shown-amounts.ts';
import { say } from '../words/say.ts';
import type { BakeWords } from './bake-form.tsx';
import { cookWords } from './dish-words.ts';
import { type Heat, heatText } from './heat-scale.ts';
import { symptomWord } from './symptom-words.ts';

const scaled = (value: Interval, by: number): Interval => ({
  low: value.low * by,
  best: value.best * by,
  high: value.high * by,
});

const withRange = (value: Interval): string =>
  rangeText(value) === ''
    ? `${amount(value.best)} g`
    : say('gramsLikely', amount(value.best), rangeText(value));

/** The flours of the plan that was baked, and the water that earlier bakes had put into it. */
function bakedPlan({ plan, taught }: Adaptation): Bake['plan'] {
  const flours: Record<string, number> = {};
  for (const { role, foodId, grams } of plan.items)
    if (role === 'structure') flours[foodId] = (flours[foodId] ?? 0) + grams;
  const all = Object.values(flours).reduce((sum, grams) => sum + grams, 0);
  // A dish left as the page has it took up no lesson.
  const changes = plan.swaps.length === 0 ? [] : taught.filter(({ lever }) => lever === 'water');
  const taughtWaterG = changes.reduce((sum, { shiftPct, foodId }) => {
    const grams = foodId === undefined ? all : (flours[foodId] ?? 0);
    return sum + ((shiftPct ?? 0) / 100) * grams;
  }, 0);
  return { family: plan.family.id, flours, taughtWaterG };
}

/** A bake of the recipe as it stands, ready to be kept. */
export function bakeOf(
  words: BakeWords,
  work: Work,
  adaptation: Adaptation,
  at: { recipeId: string; factor: number; now: number },
): Bake {
  const { recipe, goals, corrections } = work;
  const { after } = adaptation;
  return {
    ...words,
    id: crypto.randomUUID(),
    recipeId: at.recipeId,
    factor: at.factor,
    addedAt: at.now,
    baked: { recipe, goals, corrections },
    servings: after.servings,
    rawGrams: after.rawGrams.best > 0 ? after.rawGrams.best : null,
    netCarbsG: after.whole.netCarbsG,
    plan: bakedPlan(adaptation),
  };
}

/** Net carbs of one slice as weighed, of one of the pieces cut, or of a serving; with the words for it. */
export function pieceText(bake: Bake): string | null {
  const { netCarbsG, factor, dishGrams, sliceGrams, pieces } = bake;
  if (netCarbsG === null) return null;
  const all = scaled(netCarbsG, factor);
  if (sliceGrams !== null && dishGrams !== null) {
    const net = scaled(all, sliceGrams / dishGrams);
    return say('loggedSlice', short(sliceGrams), withRange(net));
  }
  if (pieces !== null) {
    return say('oneOfHas', short(pieces), withRange(scaled(all, 1 / pieces)));
  }
  return null;
}

/** '780 g after baking, 12 % lost; 21.5 g net carbs in 100 g', or null when it was not weighed. */
export function dishText(
  { dishGrams, factor, rawGrams, netCarbsG }: Bake,
  family: Family,
): string | null {
  if (dishGrams === null) return null;
  const parts = [`${short(dishGrams)} g ${cookWords(family).after}`];
  if (factor !== 1) parts.push(factorText(factor));
  if (rawGrams !== null && dishGrams < rawGrams * factor) {
    parts.push(say('percentLost', Math.round(100 * (1 - dishGrams / (rawGrams * factor)))));
  }
  const per100 = netCarbsG && scaled(netCarbsG, (100 * factor) / dishGrams);
  const net = per100 ? ` ${say('in100g', withRange(per100))}` : '';
  return `${parts.join(', ')}.${net}`;
}

/** Water beyond the list, what the oven did and how long it took, as far as it was told; else null. */
export function kitchenText(
  { extraWaterG, ovenSetC, ovenReadC, minutes }: Bake,
  heat: Heat,
): string | null {
  const parts = [
    ...(extraWaterG === null || extraWaterG === 0
      ? []
      : [say(extraWaterG > 0 ? 'bakeMoreWater' : 'bakeLessWater', short(Math.abs(extraWaterG)))]),
    ...(ovenSetC === null ? [] : [say('bakeOvenSet', heatText(ovenSetC, heat))]),
    ...(ovenReadC === null ? [] : [say('bakeOvenRead', heatText(ovenReadC, heat))]),
    ...(minutes === null ? [] : [say('bakeMinutes', short(minutes))]),
  ];
  return parts.length === 0 ? null : parts.join(', ');
}

/** What went wrong, in the user's language. */
export const symptomLabels = ({ symptoms }: Bake, family: Family): string[] =>
  symptoms.map((id) => symptomWord(id, family));
