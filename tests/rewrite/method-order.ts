/** Finds what stands in the wrong order in a reworked method, by its words alone. */
import type { Adaptation, RewrittenStep } from '../../engine/model.ts';
import { shortName } from '../../engine/rewrite/naming/method-names.ts';

/** Own steps that make or prepare a food first, in English. */
const PREPARES =
  /^(?:Make the|Mix \d|Whisk [\d.]+ g|Grind the|Rinse the|Chop the|Cut the|Slice the|Drain|Halve the|Stir the dry yeast|Stir the tomato)/;
const RESTS = /\b(?:let it rest|let the (?:dough|batter) stand|Rest the dough|Chill the dough)\b/i;
const MIXES =
  /\b(?:mix|stir|combine|whisk|fold|beat|rub|pulse|blend|process|cut|work|add|sift|make|knead)\b/i;
const SHIELDS = /\b(?:cover the top with foil|Shield the rim with foil)\b/i;
const COOLED = /\b(?:cool(?:ed)? completely|transfer to a (?:wire )?rack|remove from the oven)\b/i;

/** A food that an own step prepares is not used in a step before it. */
function madeAfterUse(steps: readonly RewrittenStep[], foods: readonly string[]): string[] {
  return steps.flatMap(({ after, change }, at) => {
    if (change !== 'inserted' || !PREPARES.test(after)) return [];
    const made = /^Make the ([\w ]+?) (?:in place of|for part of|first)/.exec(after)?.[1];
    const own = made === undefined ? foods.filter((food) => after.includes(food)) : [made];
    const earlier = steps
      .slice(0, at)
      .filter((step) => step.change === 'changed')
      .find((step) => own.some((food) => step.after.includes(food)));
    return earlier === undefined ? [] : [`made after use: ${after} | ${earlier.after}`];
  });
}

/** No dough rests or is chilled before a step mixes something. */
function restBeforeMix(steps: readonly RewrittenStep[]): string[] {
  const rest = steps.findIndex(({ after, change }) => change === 'inserted' && RESTS.test(after));
  if (rest < 0) return [];
  const before = steps.slice(0, rest).some(({ before: own }) => own !== null && MIXES.test(own));
  return before ? [] : [`rest before mix: ${steps[rest]?.after}`];
}

/** Foil is spoken of where it bakes, before it has cooled. */
function foilAfterBake(steps: readonly RewrittenStep[]): string[] {
  return steps.flatMap(({ after }) => {
    const foil = SHIELDS.exec(after)?.index ?? -1;
    if (foil < 0) return [];
    const cooled = COOLED.exec(after)?.index ?? Number.POSITIVE_INFINITY;
    const bakes = /\b(?:bake|roast|oven)/i.test(after.slice(0, foil));
    return bakes && foil < cooled ? [] : [`foil away from the oven: ${after}`];
  });
}

/** Words that no cook reads aloud without stopping, where the page has none of them. */
const STUMBLES: readonly (readonly [RegExp, string])[] = [
  [/\b(?!had|that|so\b)(\p{L}{3,}) \1\b/iu, 'a word twice'],
  [/\b(?:add|stir in) the (?:stir|cook|bring|toss|and|until)\b/i, 'a verb without its food'],
  [/\([^()]*\([^()]*\([^)]*\)/, 'brackets in brackets in brackets'],
  [/,\s*,|\(\s*\)|\s,/, 'an empty place in a list'],
];

/** A bake and how much longer it takes are one time, where the bake has minutes. */
const SUM_LEFT = /\b(?:bake|oven)[^.]*\b\d+ min[^.]*\. In the cooler oven it takes/i;

/** What stops a cook who reads a step aloud, though its order is right. */
function readingFaults(steps: readonly RewrittenStep[]): string[] {
  return steps.flatMap(({ before, after, change }) => {
    if (change === 'kept') return [];
    const words = STUMBLES.flatMap(([pattern, what]) =>
      pattern.test(after) && !pattern.test(before ?? '') ? [what] : [],
    );
    const all = SUM_LEFT.test(after) ? [...words, 'a sum left to the cook'] : words;
    return all.map((what) => `${what}: ${after}`);
  });
}

/** What stands in the wrong order, a sentence each; empty when all is well. */
export function orderFaults({ plan, ingredients, steps }: Adaptation): string[] {
  const had = new Set(ingredients.map(({ match }) => match?.foodId));
  const foods = plan.items
    .filter(({ foodId, grams }) => grams > 0 && !had.has(foodId))
    // A gum of the dough and one of the sauce are told apart by no word.
    .filter(({ foodId }, _, all) => all.filter((one) => one.foodId === foodId).length === 1)
    .map(({ foodName }) => shortName(foodName));
  return [
    ...madeAfterUse(steps, foods),
    ...restBeforeMix(steps),
    ...foilAfterBake(steps),
    ...readingFaults(steps),
  ];
}
