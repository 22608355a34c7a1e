/** Which ingredient each added food goes in with. */
import type { Plan, PlannedItem, Role } from '../../model.ts';
import { isAddition } from '../parts/part-of.ts';
import { type Mention, massOf } from './mention.ts';
import { isSweetener } from './method-names.ts';

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
