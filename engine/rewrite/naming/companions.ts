/** What goes in with a vegetable or pasta that stands in: the egg of grated roots, the cream cheese of a mash. */
import { hasTag } from '../../foods/tags.ts';
import type { Swap } from '../../model.ts';
import { shortName } from './method-names.ts';

/** A vegetable that is cut up as roots and squashes are. */
export const isCutUp = (foodId: string): boolean =>
  hasTag(foodId, 'boils-as-potato') || hasTag(foodId, 'watery-vegetable');

/** What is cooked by itself, and never together with what binds it later. */
const isCookedAlone = (foodId: string): boolean => isCutUp(foodId) || hasTag(foodId, 'pasta');

const lastWord = (food: string): string => shortName(food).split(' ').at(-1)?.toLowerCase() ?? food;

/**
 * Foods of a swap that are not peeled, cut and boiled with its vegetable or pasta: its handling says where they
 * go, so no step of the page names them.
 */
export function companionsOf({ to, method = '' }: Swap): Set<string> {
  const [main, ...others] = to;
  if (main === undefined || !isCookedAlone(main.foodId)) return new Set();
  const said = method.toLowerCase();
  return new Set(
    others
      .filter(({ foodId, food }) => !isCutUp(foodId) && said.includes(lastWord(food)))
      .map(({ foodId }) => foodId),
  );
}
