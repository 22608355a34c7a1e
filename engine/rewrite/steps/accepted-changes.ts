/** Changes of the method that the user accepted after an earlier bake. */
import type { Adjustment } from '../../model.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';

/** Steps that a change belongs before, by its own first words; the rest comes at the end. */
const BEFORE: readonly (readonly [change: RegExp, step: RegExp])[] = [
  [
    /^(bake|set the oven|start the oven|brush|chill|press|take it out)\b/i,
    /\b(bake|oven|roast)\b/i,
  ],
  [/^(knead|work in)\b/i, /\b(knead|dough)\b/i],
  [/^(let the dough|let it rise|mix until)\b/i, /\b(rise|prove|proof|rest|shape|divide|roll)\b/i],
  [
    /^(stir only|sift|grind|blend|use|stir in|salt|dissolve)\b/i,
    /\b(mix|whisk|stir|beat|combine|add)\b/i,
  ],
  [/^(boil)\b/i, /\bboil\b/i],
  [/^(take the custard|keep the pan|simmer)\b/i, /\b(cook|heat|simmer|fry)\b/i],
];

function placeOf(text: string, steps: readonly string[]): number {
  const rule = BEFORE.find(([change]) => change.test(text));
  const at = rule === undefined ? -1 : steps.findIndex((step) => rule[1].test(step));
  return at < 0 ? steps.length : at;
}

/** Steps for accepted changes in words, where they belong. */
export const adjustedSteps = (
  adjustments: readonly Adjustment[],
  steps: readonly string[],
): Insertion[] =>
  adjustments
    .filter(({ lever }) => lever === 'method')
    .map(({ text, why }) => ({
      at: placeOf(text, steps),
      rank: RANKS.before,
      behind: null,
      step: { section: null, before: null, after: text, change: 'inserted', why },
    }));
