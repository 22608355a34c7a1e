/** The swaps that fit a dish's lines, and those the user's wishes or the dish itself forbid. */
import type { Food, Goals } from '../../model.ts';
import type { Dish, Part, Section } from './dish.ts';
import { netPerGram } from './food-figures.ts';
import { isFor, mustKeep, SWAP_RULES, type SwapRule, says, suits } from './knowledge.ts';

export interface Candidate {
  rule: SwapRule;
  part: Part;
  to: { food: Food; ratio: number }[];
  cap: number;
}

/** A swap that fits the ingredient but may not be used, and why. */
export interface Refused {
  rule: SwapRule;
  key: string;
  why: string;
}

/** Foods that every kitchen has, whatever the list of what is at home says. */
const ALWAYS_AT_HOME = new Set(['water', 'ice']);

type Larder = Pick<Dish, 'goals' | 'parts'>;

const atHome = (food: Food, { goals, parts }: Larder): boolean =>
  goals.pantry === null ||
  goals.pantry.includes(food.id) ||
  ALWAYS_AT_HOME.has(food.id) ||
  parts.some((part) => part.food.id === food.id);

const wished = (food: Food, goals: Goals): string | null => {
  const allergen = food.allergens.find((a) => goals.avoid.includes(a));
  if (allergen) return `${food.name} contains ${allergen}, which you avoid`;
  return goals.excludedFoods.includes(food.id) ? `you excluded ${food.name}` : null;
};

/** Why the user's wishes forbid a food, or null when they do not. */
export const forbidden = (food: Food, dish: Larder): string | null =>
  wished(food, dish.goals) ??
  (atHome(food, dish) ? null : `${food.name} is not among the foods you have`);

/** Whether a food may be added of its own accord, such as a binder. */
export const mayAdd = (food: Food, dish: Larder): boolean =>
  forbidden(food, dish) === null && !dish.goals.excludedSwaps.includes(`add-${food.id}`);

/** The swaps for each class of foods, in the table's order. */
const RULES = new Map<string, SwapRule[]>();
for (const rule of SWAP_RULES)
  for (const cls of new Set(rule.replaces)) RULES.set(cls, [...(RULES.get(cls) ?? []), rule]);

function candidateFor(
  rule: SwapRule,
  part: Part,
  section: Section,
  dish: Dish,
): Candidate | Refused | null {
  const { goals, foods } = dish;
  const { family, limits } = section;
  const refuse = (why: string): Refused => ({ rule, key: part.key, why });
  if (rule.role !== undefined && rule.role !== part.role) return null;
  if (rule.role === undefined && part.role === 'coating' && part.class.endsWith('flours'))
    return null;
  if (!suits(rule, family)) return null;
  const title = `${dish.title}\n${section.title ?? ''}`;
  if (!isFor(rule, part.food.id, `${title}\n${part.text}\n${dish.method}`)) return null;
  const to = rule.to.map(({ food: id, ratio }) => ({ id, food: foods.byId(id), ratio }));
  if (to.some(({ food, id }) => food === null || id === part.food.id)) return null;
  const known = to.flatMap(({ food, ratio }) => (food ? [{ food, ratio }] : []));
  if (goals.excludedSwaps.includes(rule.id)) return refuse('you excluded it');
  if (says(rule.unless, title)) {
    return refuse('it would spoil this kind of dish');
  }
  const kept = mustKeep(part.class, title, dish.method);
  if (kept) return refuse(kept);
  for (const { food } of known) {
    const why = forbidden(food, dish);
    if (why) return refuse(why);
  }
  const nets = known.map(({ food, ratio }) => (netPerGram(food, goals.rule) ?? 1) * ratio);
  const added = nets.reduce((sum, net) => sum + net, 0);
  if (added >= part.net * 0.9) return refuse('it would not lower the net carbs');
  if (part.base && limits.share) {
    const column = limits.share;
    const none = known.find(({ food }) => food.function?.maxShare[column] === 0);
    if (none) return refuse(`${none.food.name} does not suit this dish`);
  }
  return { rule, part, to: known, cap: rule.capBy?.[family] ?? rule.cap };
}

/** Lines with a negligible share of the dish's carbohydrate are left alone. */
function worthwhile(candidates: Candidate[]): Candidate[] {
  const carbs = (c: Candidate): number => c.part.grams * c.part.net * c.part.eaten;
  const most = Math.max(0, ...candidates.map(carbs));
  return candidates.filter((c) => carbs(c) >= 0.03 * most);
}

/** Every swap that fits a line of the dish, and those refused, in the table's order line by line. */
export function candidatesOf(dish: Dish): Pick<Dish, 'candidates' | 'refused'> {
  const candidates: Candidate[] = [];
  const refused: Refused[] = [];
  for (const part of dish.parts) {
    const section = dish.sections[part.section] ?? dish.main;
    if (part.fixed || part.net < 0.02 || part.eaten <= 0) continue;
    for (const rule of RULES.get(part.class) ?? []) {
      const found = candidateFor(rule, part, section, dish);
      if (found === null) continue;
      if ('to' in found) candidates.push(found);
      else refused.push(found);
    }
  }
  return { candidates: worthwhile(candidates), refused };
}
