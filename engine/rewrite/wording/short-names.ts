/** Short everyday names of stand-ins after they have been named in full: 'the noodles', 'the sweetener'. */
import { hasTag } from '../../foods/tags.ts';
import type { Mention } from '../naming/mention.ts';
import { isMade, isSweetener, listOf, shortName, singular } from '../naming/method-names.ts';

const lastWord = (name: string): string => singular(name.toLowerCase().split(/\s+/).at(-1) ?? '');

/** Whether another line is called by this word too, so that it would not tell which is meant. */
const isShared = (word: string, own: Mention, mentions: readonly Mention[]): boolean =>
  mentions.some(
    (other) =>
      other.ingredient.key !== own.ingredient.key &&
      [other.ingredient.item.name, ...other.items.map(({ foodName }) => shortName(foodName))].some(
        (name) => lastWord(name) === word,
      ),
  );

/** Last words that say nothing of the food alone. */
const EMPTY = /^(?:blend|mix|powder|purée|puree|meal|extract|palm|seed|paste|product)$/;

const otherSweetener = (own: Mention, mentions: readonly Mention[]): boolean =>
  mentions.some(
    (other) =>
      other.ingredient.key !== own.ingredient.key &&
      [other.ingredient.match?.foodId ?? '', ...other.items.map(({ foodId }) => foodId)].some(
        (id) => isSweetener(id) || hasTag(id, 'sugar'),
      ),
  );

/** Vegetables that lie in the dish beside each other, each to be seen: what is served is said of both. */
const isCutAlike = (items: Mention['items']): boolean =>
  items.length === 2 &&
  items.every(({ foodId }) => hasTag(foodId, 'boils-as-potato') || hasTag(foodId, 'potato'));

const withFresh = ({ items, ingredient }: Mention, found: string): string =>
  listOf([
    found,
    ...items.flatMap(({ foodId, foodName }) =>
      foodId === ingredient.match?.foodId ? [] : [shortName(foodName)],
    ),
  ]);

/**
 * What an ingredient is called once the method has named it: the page's own word where some of the food
 * stays or the new one ends in it too, else the last word of the new name, where that tells enough.
 */
export function shortCalled(mention: Mention, found: string, mentions: readonly Mention[]): string {
  const { newName, items, ingredient } = mention;
  if (newName === null || newName === 'flours' || isMade(newName)) return newName ?? found;
  if (items.some(({ foodId }) => foodId === ingredient.match?.foodId))
    return isCutAlike(items) ? withFresh(mention, found) : found;
  const head = lastWord(newName);
  const words = newName.toLowerCase().split(/\s+/).map(singular);
  // 'The oreo crust' is a crust still.
  if (words.length === 1 && head === lastWord(found)) return newName;
  if (words.includes(lastWord(found))) return found;
  const [only] = items;
  if (items.length !== 1 || only === undefined) return newName;
  if (isSweetener(only.foodId))
    return otherSweetener(mention, mentions) || newName.length < 10 ? newName : 'sweetener';
  const plain = newName.includes(' ') && !/ (?:of|and|with) /.test(newName);
  if (!plain || EMPTY.test(head) || hasTag(only.foodId, 'flour-like')) return newName;
  return isShared(head, mention, mentions) ? newName : (newName.split(' ').at(-1) ?? newName);
}

/** 'While the pasta is cooking': what is looked at on the way, before or after it goes in. */
const PASSING_BEFORE =
  /\b(?:while|once|when|until|as|after|before|that)\s+(?:the |your |all the )?$/i;
const PASSING_AFTER =
  /^\s+(?:is|are|has|have|was|were|cooks?|boils?|bakes?|simmers?|comes?|finish\w*|roasts?|softens?|dissolves?|melts?)\b/i;

/** 'Rinse the quinoa': what stands in for part of it goes in later. */
const RINSED = /\b(?:rinse|wash|soak|measure out)\b[^.;,]{0,20}$/i;

/** Whether a name between two texts is no more than spoken of. */
export const isPassing = (before: string, after: string): boolean =>
  (PASSING_BEFORE.test(before) && PASSING_AFTER.test(after)) || RINSED.test(before);

/** Whether a name stands in the words that head a sentence: 'Make the crispy rice: '. */
export const isLead = (before: string, after: string): boolean =>
  /(?:^|[.!?]\s|\n)[^.:!?\n]{0,50}$/.test(before) && /^[^.:!?,\n]{0,20}:\s/.test(after);
