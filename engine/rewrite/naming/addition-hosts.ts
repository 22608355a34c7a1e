/** Which ingredient each added food goes in with. */
import type { Plan, PlannedItem, Role } from '../../model.ts';
import { isAddition } from '../parts/part-of.ts';
import { type Mention, massOf } from './mention.ts';
import { isSweetener, newNameOf } from './method-names.ts';

/** What an addition goes in with, by its role; of several that fit the changed and the large ones first. */
const GOES_WITH: Partial<Record<Role, (mention: Mention, plan: Plan) => boolean>> = {
  sweetness: ({ ingredient }) => isSweetener(ingredient.match?.foodId ?? ''),
  liquid: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'liquid',
  egg: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'egg',
  'yeast-food': ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'yeast',
  leavening: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'structure',
  salt: ({ ingredient }, plan) => plan.roles[ingredient.key]?.[0] === 'structure',
};

/** The ingredients with the additions that go in with them; an addition that fits none is left to a step of its own. */
export function withAdditions(mentions: readonly Mention[], plan: Plan): Mention[] {
  const swapped = new Set(
    plan.swaps.filter(({ key }) => key !== null).flatMap(({ to }) => to.map((one) => one.foodId)),
  );
  const free = plan.items.filter(
    (item) => isAddition(item) && item.grams > 0 && !swapped.has(item.foodId),
  );
  const hosts = new Map<Mention, PlannedItem[]>();
  for (const item of free) {
    const fits = GOES_WITH[item.role];
    const [host] = mentions
      .filter((mention) => mention.items.length > 0 && fits?.(mention, plan) === true)
      .filter((mention) => item.part === undefined || mention.part === item.part)
      .sort((a, b) => Number(b.changed) - Number(a.changed) || massOf(b) - massOf(a));
    if (host !== undefined) hosts.set(host, [...(hosts.get(host) ?? []), item]);
  }
  return mentions.map((mention) => {
    const additions = hosts.get(mention);
    return additions === undefined ? mention : { ...mention, goesInWith: additions };
  });
}

const isEgg = ({ foodId }: PlannedItem): boolean => foodId === 'egg';

/** The eggs that stand in for some of a flour, with the eggs of the page: nobody whisks them into the dry. */
export function withEggsTogether(mentions: readonly Mention[]): Mention[] {
  const eggs = mentions.find(({ ingredient, items }) => {
    const id = ingredient.match?.foodId;
    return id === 'egg' && items.some(isEgg);
  });
  if (eggs === undefined) return [...mentions];
  const isFlour = (one: Mention): boolean =>
    one !== eggs && one.role === 'structure' && one.part === eggs.part && one.items.length > 1;
  const moved = mentions.filter(isFlour).flatMap(({ items }) => items.filter(isEgg));
  if (moved.length === 0) return [...mentions];
  return mentions.map((one) => {
    if (one === eggs) return { ...one, goesInWith: [...one.goesInWith, ...moved] };
    if (!isFlour(one)) return one;
    const items = one.items.filter((item) => !isEgg(item));
    return { ...one, items, newName: newNameOf(one.ingredient, items) };
  });
}
