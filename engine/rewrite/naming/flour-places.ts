/** Flours that the method takes in one place only: there they are listed, and need no mix made first. */

import { hasTag } from '../../foods/tags.ts';
import type { Plan, PlannedItem } from '../../model.ts';
import { isAddition } from '../parts/part-of.ts';
import { namePattern } from '../wording/name-patterns.ts';
import { isOtherUse } from '../wording/other-uses.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { type Mention, massOf } from './mention.ts';
import { itemName, listOf } from './method-names.ts';
import { SAUCE } from './owners.ts';

const MIXTURE = /^[\s-]+(?:mixture|mix|blend)\b/i;
/** Where dry things meet: there a gum needs no word of its own. */
const DRY = /\b(?:whisk|sift|mix|combine|stir|blend|pulse|make|rub|knead|work|put|place)\b/i;
const INTO_WET = /\b(?:into|to) (?:the )?(?:wet|butter|egg|batter|bowl of|creamed|mixture|sugar)/i;

/** Flour that goes in bit by bit is a mix made first. */
const SHARED_OUT =
  /\b(?:half|thirds?|quarters?|the rest|rest of|remaining|gradually|batches|additions|at a time|(?:cup|spoon|bit|handful) by (?:cup|spoon|bit|handful)|little by little)\b/i;

/** Sentences of the method that take an ingredient; a sauce takes the flour that thickens, where there is one. */
function placesOf(
  mention: Mention,
  mentions: readonly Mention[],
  texts: readonly string[],
): string[] {
  const thickens = mentions.some(({ role }) => role === 'thickener');
  return texts.flatMap(sentencesOf).filter((sentence) => {
    if (thickens && SAUCE.test(sentence)) return false;
    const pattern = new RegExp(namePattern(mention).source, 'giu');
    return [...sentence.matchAll(pattern)].some(({ 0: word, index }) => {
      const end = index + word.length;
      return !isOtherUse(sentence, index, end, mention) && !MIXTURE.test(sentence.slice(end));
    });
  });
}

/** Whether several lines have the same name. */
const shareName = (own: readonly Mention[]): boolean =>
  new Set(own.map(({ ingredient }) => ingredient.key)).size > 1 &&
  own.every(({ names }) => names.some((name) => own[0]?.names.includes(name)));

/** Whether another line of the same name stays as it is: 'flour' alone would mean either. */
const hasTwin = ({ ingredient, names }: Mention, mentions: readonly Mention[]): boolean =>
  mentions.some(
    (other) =>
      !other.changed &&
      other.sharedHead === null &&
      other.ingredient.key !== ingredient.key &&
      other.ingredient.match?.foodId === ingredient.match?.foodId &&
      other.names.some((name) => names.includes(name)),
  );

const bindersOf = (plan: Plan, part: number | null): PlannedItem[] =>
  plan.items.filter(
    (item) =>
      isAddition(item) &&
      item.grams > 0 &&
      item.role !== 'thickener' &&
      hasTag(item.foodId, 'binder') &&
      (part === null || item.part === undefined || item.part === part),
  );

/** Flours of one place by their names, the binder with them; all other mentions as they are. */
export function listedFlours(
  mentions: readonly Mention[],
  plan: Plan,
  texts: readonly string[],
): Mention[] {
  const mixed = mentions.filter(({ newName }) => newName === 'flours');
  const parts = new Set(mixed.map(({ part }) => part));
  const inOnePlace = new Map<Mention, string>();
  for (const part of parts) {
    const own = mixed.filter((mention) => mention.part === part);
    const places = new Set(own.flatMap((mention) => placesOf(mention, mentions, texts)));
    const [only = ''] = places;
    if (places.size === 1 && !SHARED_OUT.test(only))
      for (const mention of own) inOnePlace.set(mention, only);
    // Lines of one name go into different things: each is listed where it goes in.
    else if (
      places.size > 1 &&
      (shareName(mixed) ||
        (own.every((mention) => hasTwin(mention, mentions)) &&
          ![...places].some((place) => SHARED_OUT.test(place))))
    )
      for (const mention of own) inOnePlace.set(mention, '');
  }
  const hosting = new Set<string>();
  const largest = Math.max(...mixed.map(massOf));
  return mentions.map((mention) => {
    const sentence = inOnePlace.get(mention);
    if (sentence === undefined) return mention;
    const { items, ingredient, part } = mention;
    const newName = listOf([...new Set(items.map((item) => itemName(item, ingredient)))]);
    const isDry =
      sentence === ''
        ? massOf(mention) === largest
        : DRY.test(sentence) && !INTO_WET.test(sentence);
    const fresh = isDry ? bindersOf(plan, part).filter(({ key }) => !hosting.has(key)) : [];
    for (const { key } of fresh) hosting.add(key);
    return { ...mention, newName, goesInWith: [...mention.goesInWith, ...fresh] };
  });
}
