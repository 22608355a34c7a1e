/** The ingredients as the method speaks of them, and what became of each. */
import type { Ingredient, Plan, PlannedItem, Role } from '../../model.ts';
import { isSame, itemsFor } from '../lines/ingredient-lines.ts';
import {
  COLLECTIVES,
  isMade,
  isSweetener,
  itemName,
  listOf,
  madeName,
  newNameOf,
  singular,
} from './method-names.ts';

export { listOf, shortName } from './method-names.ts';

/** What became of one ingredient, for the words of the method. */
export interface Mention {
  ingredient: Ingredient;
  items: PlannedItem[];
  /** Words that stand for it in the method, longest first. */
  names: string[];
  /** A word that may also mean another ingredient, such as 'sugar' of two sugars; null when there is none. */
  loose: string | null;
  /** What it is called now; null when nothing of it is left, or it is the same food still. */
  newName: string | null;
  changed: boolean;
  /** What it does in the dish, to tell two of one name apart. */
  role: Role | null;
  /** Additions that go in with it, where it is first named. */
  along: PlannedItem[];
  /** Foods that stand in for another ingredient too, so that their amounts must be told apart. */
  twice: ReadonlySet<string>;
}

const CALLED: Record<string, string[]> = {
  'pasta-dry': ['pasta', 'spaghetti', 'noodles', 'nudeln', 'pâtes'],
  'egg-noodles-dry': ['noodles', 'pasta', 'nudeln', 'pâtes'],
  'rice-white-dry': ['rice', 'reis', 'riz'],
  'breadcrumbs-dry': ['breadcrumbs', 'crumbs', 'bread crumbs'],
  panko: ['panko', 'breadcrumbs', 'crumbs'],
  'corn-kernels': ['corn', 'sweetcorn'],
  'chocolate-semisweet': ['chocolate chips', 'chocolate'],
  'chocolate-dark-70': ['chocolate'],
};

/** Additions that a swap of this ingredient brings and that are spoken of together with it. */
function standIns(plan: Plan, ingredient: Ingredient): PlannedItem[] {
  const foods = plan.swaps
    .filter((swap) => swap.key === ingredient.key)
    .flatMap((swap) => swap.to.map(({ foodId }) => foodId));
  return plan.items.filter(
    ({ key, foodId, grams, role }) =>
      key === `new.${foodId}` && grams > 0 && foods.includes(foodId) && role !== 'binder',
  );
}

/** 'semisweet chocolate chips' -> itself, 'chocolate chips', 'chips'. */
function endings(name: string): string[] {
  const words = name.split(/\s+/);
  return words.map((_, at) => words.slice(at).join(' '));
}

function namesOf(ingredient: Ingredient, all: readonly Ingredient[]): string[] {
  const own = ingredient.item.name.toLowerCase().trim();
  // A second line of the very same name is told apart by the words around it.
  const others = new Set(
    all
      .filter(({ item }) => item.name.toLowerCase().trim() !== own)
      .flatMap(({ item }) => endings(item.name.toLowerCase().trim()).map(singular)),
  );
  const unshared = endings(own).filter((name) => name === own || !others.has(singular(name)));
  const more = CALLED[ingredient.match?.foodId ?? ''] ?? [];
  return [...new Set([...unshared, ...more])]
    .filter((word) => word.length > 2)
    .sort((a, b) => b.length - a.length);
}

/** Every ingredient with its names in the method and what became of it. */
export function mentionsOf(ingredients: readonly Ingredient[], plan: Plan): Mention[] {
  const own = ingredients
    .filter(({ match, line }) => match !== null && line.kind === 'ingredient')
    .map((ingredient) => mentionOf(ingredient, ingredients, plan));
  const told = withAdditions(withTwice(own), plan);
  return [...told, ...sharedMentions(told)];
}

/** One item a food: what a swap brings and what is added of the same food go in together. */
function merged(items: readonly PlannedItem[]): PlannedItem[] {
  const byFood = new Map<string, PlannedItem>();
  for (const item of items) {
    const same = byFood.get(item.foodId);
    byFood.set(item.foodId, same ? { ...same, grams: same.grams + item.grams } : item);
  }
  return [...byFood.values()];
}

function mentionOf(ingredient: Ingredient, all: readonly Ingredient[], plan: Plan): Mention {
  const items = merged([...itemsFor(plan, ingredient), ...standIns(plan, ingredient)]);
  const [only] = items;
  const touched =
    items.length > 0 || plan.swaps.some((s) => s.key === ingredient.key && s.keptGrams <= 0);
  const same = items.length === 1 && only !== undefined && isSame(only, ingredient);
  return {
    ingredient,
    items,
    names: namesOf(ingredient, all),
    loose: looseName(ingredient, all),
    newName: madeName(ingredient, items, plan) ?? newNameOf(ingredient, items),
    changed: touched && !same,
    role: plan.roles[ingredient.key]?.[0] ?? null,
    along: [],
    twice: new Set(),
  };
}

/** Marks stand-ins that another ingredient is or has too. Flours go by one word, so they need none. */
function withTwice(mentions: readonly Mention[]): Mention[] {
  const counts = new Map<string, number>();
  for (const { items } of mentions)
    for (const { foodId } of items) counts.set(foodId, (counts.get(foodId) ?? 0) + 1);
  return mentions.map((mention) => {
    const own = mention.ingredient.match?.foodId;
    const { changed, newName } = mention;
    if (!changed || newName === null || newName === 'flours' || isMade(newName)) return mention;
    const twice = mention.items
      .map(({ foodId }) => foodId)
      .filter((id) => id !== own && (counts.get(id) ?? 0) > 1);
    return twice.length > 0 ? { ...mention, twice: new Set(twice) } : mention;
  });
}

/** What an addition goes in with, by its role: the first fitting ingredient, the changed and large ones first. */
const GOES_WITH: Partial<Record<Role, (mention: Mention, plan: Plan) => boolean>> = {
  sweetness: ({ ingredient }) => isSweetener(ingredient.match?.foodId ?? ''),
  liquid: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'liquid',
  egg: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'egg',
  'yeast-food': ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'yeast',
  leavening: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'structure',
  salt: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'structure',
};

function withAdditions(mentions: readonly Mention[], plan: Plan): Mention[] {
  const swapped = new Set(
    plan.swaps.filter(({ key }) => key !== null).flatMap(({ to }) => to.map((one) => one.foodId)),
  );
  const free = plan.items.filter(
    ({ key, foodId, grams }) => key.startsWith('new.') && grams > 0 && !swapped.has(foodId),
  );
  const hosts = new Map<Mention, PlannedItem[]>();
  for (const item of free) {
    const fits = GOES_WITH[item.role];
    const [host] = mentions
      .filter((mention) => mention.items.length > 0 && fits?.(mention, plan) === true)
      .sort((a, b) => Number(b.changed) - Number(a.changed) || massOf(b) - massOf(a));
    if (host !== undefined) hosts.set(host, [...(hosts.get(host) ?? []), item]);
  }
  return mentions.map((mention) => {
    const along = hosts.get(mention);
    return along === undefined ? mention : { ...mention, along };
  });
}

const massOf = ({ items }: Mention): number => items.reduce((sum, { grams }) => sum + grams, 0);

const headOf = ({ item }: Ingredient): string =>
  singular(item.name.toLowerCase().trim().split(/\s+/).at(-1) ?? '');

/** The last word of a name, when lines of other names end in it too. */
function looseName(ingredient: Ingredient, all: readonly Ingredient[]): string | null {
  const head = headOf(ingredient);
  const own = ingredient.item.name.toLowerCase().trim();
  const shared = all.some(
    (other) => headOf(other) === head && other.item.name.toLowerCase().trim() !== own,
  );
  return shared && head.length > 2 ? head : null;
}

const lastWord = ({ ingredient }: Mention): string => headOf(ingredient);

/** 'sugar', when a recipe has two sugars: means them all, and is renamed when all of them changed. */
function sharedMentions(mentions: readonly Mention[]): Mention[] {
  const heads = new Set(mentions.map(lastWord));
  return [...heads].flatMap((head): Mention[] => {
    const sharing = mentions.filter((mention) => lastWord(mention) === head);
    const [first] = sharing;
    if (first === undefined || sharing.length < 2 || !sharing.some(({ changed }) => changed))
      return [];
    const items = merged(sharing.flatMap((mention) => mention.items));
    const together = {
      ...first,
      items,
      changed: true,
      loose: null,
      along: [],
      twice: new Set<string>(),
    };
    const plural = allOf(head, sharing, together);
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
  const words = [`both ${head}s`, `both the ${head}s`, `all the ${head}s`, `two ${head}s`];
  return [{ ...together, names: words, newName }];
}
