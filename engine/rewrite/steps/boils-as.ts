/** What is boiled like the pasta, rice or potatoes it stands in for. */
import { hasTag, type Tag } from '../../foods/tags.ts';
import type { PlannedItem } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';
import { isMade } from '../naming/method-names.ts';

const BOILS_AS: readonly (readonly [original: Tag, standIn: Tag])[] = [
  ['pasta', 'boils-as-pasta'],
  ['stuffed-pasta', 'boils-as-pasta'],
  ['potato', 'boils-as-potato'],
  ['rice-or-grain', 'boils-as-grain'],
];

/** Made first, then simmered like the bought ones. */
const MADE_TO_BOIL = /gnocchi|dumplings/;

/** What of an ingredient's stand-ins is boiled like it; null when the ingredient is none that is boiled. */
export function boiledOf({ ingredient, items, newName }: Mention): PlannedItem[] | null {
  if (newName !== null && isMade(newName) && MADE_TO_BOIL.test(newName)) return [...items];
  const id = ingredient.match?.foodId ?? '';
  const rule = BOILS_AS.find(([original]) => hasTag(id, original));
  if (rule === undefined) return null;
  return items.filter(({ foodId }) => foodId === id || hasTag(foodId, rule[1]));
}
