/** What is boiled like the pasta, rice or potatoes it stands in for. */
import type { PlannedItem } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';

const BOILS_AS: readonly (readonly [original: RegExp, standIn: RegExp])[] = [
  [/pasta|noodles|lasagne/, /^(pasta|soybean-pasta|egg-noodles|lasagne)/],
  [/^potato/, /^(?!cream|butter|cheddar|parmesan|mozzarella|egg$|almond|milk|olive)/],
  [/^rice-|couscous|bulgur|quinoa/, /^rice-|couscous|bulgur|quinoa|lentils/],
];

/** What of an ingredient's stand-ins is boiled like it; null when the ingredient is none that is boiled. */
export function boiledOf({ ingredient, items }: Mention): PlannedItem[] | null {
  const id = ingredient.match?.foodId ?? '';
  const rule = BOILS_AS.find(([original]) => original.test(id));
  return rule === undefined ? null : items.filter(({ foodId }) => rule[1].test(foodId));
}
