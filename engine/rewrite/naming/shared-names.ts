/** Names that several ingredients share: 'sugar' of two sugars, 'both flours'. */
import type { Ingredient } from '../../model.ts';
import type { UsedSoFar } from '../steps/used-so-far.ts';
import { type Mention, mergedByFood } from './mention.ts';
import { COLLECTIVES, isMade, itemName, listOf, newNameOf, singular } from './method-names.ts';

const headOf = ({ item }: Ingredient): string =>
  singular(item.name.toLowerCase().trim().split(/\s+/).at(-1) ?? '');

/** The last word of a name, when lines of other names end in it too; else null. */
export function sharedHeadOf(ingredient: Ingredient, all: readonly Ingredient[]): string | null {
  const head = headOf(ingredient);
  const own = ingredient.item.name.toLowerCase().trim();
  const shared = all.some(
    (other) => headOf(other) === head && other.item.name.toLowerCase().trim() !== own,
  );
  return shared && head.length > 2 ? head : null;
}

const lastWord = ({ ingredient }: Mention): string => headOf(ingredient);

const goingTogether = (first: Mention, sharing: readonly Mention[]): Mention => ({
  ...first,
  items: mergedByFood(sharing.flatMap((mention) => mention.items)),
  changed: true,
  sharedHead: null,
  goesInWith: [],
  alsoElsewhere: new Set<string>(),
});

/** What 'both' means: the ones of the only part or list that has several, or all of them. */
function ofOnePart(sharing: readonly Mention[]): readonly Mention[] {
  const placeOf = ({ part, ingredient }: Mention): string => `${part} ${ingredient.line.group}`;
  const several = [...new Set(sharing.map(placeOf))]
    .map((place) => sharing.filter((mention) => placeOf(mention) === place))
    .filter(({ length }) => length > 1);
  const [only] = several;
  return several.length === 1 && only?.some(({ changed }) => changed) === true ? only : sharing;
}

/** 'sugar', when a recipe has two sugars: means them all, and is renamed when all of them changed. */
export function sharedMentions(mentions: readonly Mention[]): Mention[] {
  const heads = new Set(mentions.map(lastWord));
  return [...heads].flatMap((head): Mention[] => {
    const sharing = mentions.filter((mention) => lastWord(mention) === head);
    // What becomes of them is told where one that changed goes in.
    const first = sharing.find(({ changed }) => changed) ?? sharing[0];
    if (first === undefined || sharing.length < 2 || !sharing.some(({ changed }) => changed))
      return [];
    const together = goingTogether(first, sharing);
    const { items } = together;
    const both = ofOnePart(sharing);
    const plural = allOf(
      head,
      both,
      goingTogether(both.find(({ changed }) => changed) ?? first, both),
    );
    if (!sharing.every(({ changed }) => changed)) return plural;
    const kinds = new Set(items.map(({ foodId }) => foodId));
    const newName = kinds.size > 1 ? newNameOf(first.ingredient, items) : first.newName;
    if (newName === null) return plural;
    // 'the sugar' may mean one of them; 'the sugars' means all.
    const names = COLLECTIVES.has(newName) || kinds.size === 1 ? [head] : [`${head}s`];
    return [{ ...together, names, newName }, ...plural];
  });
}

/** 'both sugars': every one of them, by name. */
function allOf(head: string, sharing: readonly Mention[], together: Mention): Mention[] {
  const names = sharing.flatMap(({ items, ingredient }) =>
    items.map((item) => itemName(item, ingredient)),
  );
  const flours = sharing.every(({ newName, changed }) => !changed || newName === 'flours');
  const newName =
    flours && sharing.some(({ newName }) => newName === 'flours')
      ? 'flours'
      : listOf([...new Set(names)]);
  if (newName === '') return [];
  const words = [
    `both kinds of ${head}s`,
    `both types of ${head}s`,
    `both ${head}s`,
    `both the ${head}s`,
    `all the ${head}s`,
    `two ${head}s`,
  ];
  return [{ ...together, names: words, newName }];
}

/** Marks stand-ins that another ingredient is or has too, so that each place says its own amount. Flours go by one word, so they need none. */
export function markedElsewhere(mentions: readonly Mention[]): Mention[] {
  const counts = new Map<string, number>();
  for (const { items } of mentions)
    for (const { foodId } of items) counts.set(foodId, (counts.get(foodId) ?? 0) + 1);
  return mentions.map((mention) => {
    const own = mention.ingredient.match?.foodId;
    const { changed, newName } = mention;
    if (!changed || newName === null || newName === 'flours' || isMade(newName)) return mention;
    const elsewhere = mention.items
      .map(({ foodId }) => foodId)
      .filter((id) => id !== own && (counts.get(id) ?? 0) > 1);
    return elsewhere.length > 0 ? { ...mention, alsoElsewhere: new Set(elsewhere) } : mention;
  });
}

/** Lines of one thing stand as near as this. Own choice. */
const APART = 2;

const listedAt = ({ ingredient }: Mention): number => Number.parseInt(ingredient.key, 10);

/** Of the lines that share a plural's last word the first that stand together and no step has named. */
export function linesTogether(
  name: string,
  mentions: readonly Mention[],
  used: UsedSoFar,
): Mention[] {
  const word = name.toLowerCase().split(' ').at(-1) ?? '';
  const head = singular(word);
  if (head === word || mentions.some(({ ingredient }) => ingredient.line.group !== null)) return [];
  const lines = mentions
    .filter((one) => one.sharedHead === head && !used.isNamedBefore(one))
    .toSorted((a, b) => listedAt(a) - listedAt(b));
  const end = lines.findIndex((one, at) => {
    const next = lines[at + 1];
    return next === undefined || listedAt(next) - listedAt(one) > APART;
  });
  return lines.slice(0, end + 1);
}
