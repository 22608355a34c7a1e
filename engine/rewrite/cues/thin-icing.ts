/** Whether an icing is to be made with less liquid than the page says, or by half. */

import { hasTag } from '../../foods/tags.ts';
import type { Swap } from '../../model.ts';
import { type Mention, massOf } from '../naming/mention.ts';
import type { CueContext } from './cue-context.ts';

const ICES =
  /\b(?:icing(?! sugar)|frosting|glaze|drizzle|glasur|zuckerguss|glaçage|glazuur|glaseado|glassa|cobertura|glasyr)\b/i;
/** A few drops of juice are no liquid to leave out, g. Own choice. */
const DROPS_G = 8;
const LIQUID =
  /water|milk|juice|coffee|cream-(?:heavy|light|whipping)|^cream|half-and-half|liqueur|rum/;

/**
 * True where the swapped sugar goes into an icing or glaze with a liquid line that is as the page has it:
 * a liquid that was cut with the icing is not cut again, and a filling is no icing.
 */
export function thinsIcing(
  { key }: Swap,
  { mentions, course, partTitle }: CueContext,
  texts: readonly string[],
): boolean {
  if (key === null) return false;
  const places = course.named.get(key) ?? [];
  const group = mentions.find(({ ingredient }) => ingredient.key === key)?.ingredient.line.group;
  const headed = ICES.test(`${group ?? ''} ${partTitle ?? ''}`);
  const iced = places.filter((at) => headed || ICES.test(texts[at] ?? ''));
  const liquids = mentions.filter(
    ({ ingredient }) =>
      LIQUID.test(ingredient.match?.foodId ?? '') &&
      (ingredient.weight?.grams.best ?? 0) >= DROPS_G &&
      (course.named.get(ingredient.key) ?? []).some((at) => iced.includes(at)),
  );
  return liquids.length > 0 && liquids.every(({ changed }) => !changed);
}

/** Shares of a line that count as half. Own choice. */
const HALF = { from: 0.4, to: 0.6 };

function isHalf(mention: Mention): boolean {
  const share = massOf(mention) / (mention.ingredient.weight?.grams.best ?? Number.NaN);
  return mention.changed && share >= HALF.from && share <= HALF.to;
}

/** Steps of an icing that is made bit by bit. Own choice. */
const NEAR_STEPS = 2;

/** The halved lines of an icing: icing sugar, and what goes in with it in its steps or under its heading. */
export function icingHalves({ mentions, course, title, method, partTitle }: CueContext): Mention[] {
  if (!ICES.test(`${title} ${partTitle ?? ''} ${method}`)) return [];
  const halves = mentions.filter(isHalf);
  const stepsOf = ({ ingredient }: Mention): readonly number[] =>
    course.named.get(ingredient.key) ?? [];
  const isNear = (one: Mention, other: Mention): boolean => {
    const { group } = one.ingredient.line;
    if (group !== null && group === other.ingredient.line.group) return true;
    return stepsOf(one).some((a) => stepsOf(other).some((b) => Math.abs(a - b) <= NEAR_STEPS));
  };
  const isSugar = ({ ingredient }: Mention): boolean =>
    hasTag(ingredient.match?.foodId ?? '', 'sugar');
  const others = halves.filter((one) => !isSugar(one));
  const sugars = halves.filter((one) => isSugar(one) && others.some((other) => isNear(one, other)));
  return [...sugars, ...others.filter((one) => sugars.some((sugar) => isNear(one, sugar)))];
}

/** The steps of the halved icing, in their order: those that take its sugar, and those near them that take the rest. */
export function icingSteps(context: CueContext): number[] {
  const halves = icingHalves(context);
  const stepsOf = (some: readonly Mention[]): number[] =>
    some.flatMap(({ ingredient }) => context.course.named.get(ingredient.key) ?? []);
  const sugared = stepsOf(
    halves.filter(({ ingredient }) => hasTag(ingredient.match?.foodId ?? '', 'sugar')),
  );
  const isNear = (step: number): boolean =>
    sugared.some((sugar) => Math.abs(sugar - step) <= NEAR_STEPS);
  const all = stepsOf(halves);
  return (sugared.length === 0 ? all : all.filter(isNear)).sort((a, b) => a - b);
}

/** What flavours, in grams or pinches that no plan halves. */
const FLAVOURS = /salt|vanilla|extract|zest|flavou?r/;

/** Flavourings of a halved icing that are as the page has them and go in nowhere else. */
export function flavourings(context: CueContext): Mention[] {
  const steps = new Set(
    icingHalves(context).flatMap(
      ({ ingredient }) => context.course.named.get(ingredient.key) ?? [],
    ),
  );
  return context.mentions.filter(({ ingredient, changed }) => {
    const own = context.course.named.get(ingredient.key) ?? [];
    const isFlavour = FLAVOURS.test(ingredient.match?.foodId ?? '');
    return !changed && isFlavour && own.length > 0 && own.every((step) => steps.has(step));
  });
}
