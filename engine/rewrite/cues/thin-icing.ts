/** Whether an icing is to be made with less liquid than the page says, or by half. */

import { hasTag } from '../../foods/tags.ts';
import type { Swap } from '../../model.ts';
import { type Mention, massOf } from '../naming/mention.ts';
import type { CueContext } from './cue-context.ts';

const ICES =
  /\b(?:icing(?! sugar)|frosting|glaze|drizzle|glasur|zuckerguss|glaçage|glazuur|glaseado|glassa|cobertura|glasyr)\b/i;
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

/** Whether an icing is made by half: its icing sugar, and something that a step takes with it. */
export function halvesIcing({ mentions, course }: CueContext): boolean {
  const halves = mentions.filter(isHalf);
  const stepsOf = ({ ingredient }: Mention): readonly number[] =>
    course.named.get(ingredient.key) ?? [];
  return halves
    .filter(({ ingredient }) => hasTag(ingredient.match?.foodId ?? '', 'sugar'))
    .some((sugar) =>
      halves.some(
        (other) =>
          other.ingredient.key !== sugar.ingredient.key &&
          stepsOf(other).some((step) => stepsOf(sugar).includes(step)),
      ),
    );
}
