/** Says in plain words what a plan changes, why that much, what it does and what else was possible. */
import type { Allergen, Food, PlannedItem, Swap } from '../model.ts';
import type { Candidate, Dish, Part } from './dish/dish.ts';
import { netPerGram, sweetness } from './dish/food-figures.ts';
import { addedSwap, lessSwap } from './explain-added.ts';
import type { Amount } from './kitchen/planned-masses.ts';
import type { Choice } from './model/decisions.ts';
import type { PlanModel } from './model/plan-model.ts';
import { isSetLine } from './model/rows/set-rows.ts';
import { shareCap } from './model/rows/structure-rows.ts';
import { additionKey } from './model/variable-ids.ts';

type Values = ReadonlyMap<string, number>;

const TINY = 1e-6;

const grams = (value: number): string => `${Math.round(value * 10) / 10} g`;
const one = (value: number): string => (Math.round(value * 10) / 10).toFixed(1);

/** What a swap would have brought in, 'almond flour + allulose'; one that only leaves out brings nothing. */
const broughtBy = (foods: readonly Food[]): string =>
  foods.length === 0 ? 'less of it' : foods.map(({ name }) => name).join(' + ');

/** Closeness a swap costs for each gram of net carbs it takes out of a gram of the line. */
function price(candidate: Candidate, dish: Dish): number {
  const added = candidate.to.reduce(
    (sum, { food, ratio }) => sum + ratio * (netPerGram(food, dish.goals.rule) ?? 0),
    0,
  );
  return candidate.rule.cost / Math.max(candidate.part.net - added, 1e-6);
}

function whyNot(candidate: Candidate, dish: Dish, best: number): string {
  const section = dish.sections[candidate.part.section] ?? dish.main;
  if (candidate.part.base) {
    const caps = candidate.to.map(({ food }) => shareCap(dish, section, food) ?? 100);
    const least = Math.min(...caps);
    if (least < 30) return `at most ${least} % of the flour`;
  }
  if (price(candidate, dish) >= best) {
    return 'moves the dish further from the original for the same net carbs';
  }
  return candidate.part.base
    ? 'no closer to the original once gluten, fat, water, taste and allergens are weighed'
    : 'would be one more change for little gain';
}

/** Other swaps for the same line, and why they were passed over. At most six. */
function considered(model: PlanModel, part: Part, chosen: ReadonlySet<string>): string[] {
  const { dish } = model;
  const same = dish.candidates.filter((c) => c.part === part);
  const best = Math.min(...same.filter((c) => chosen.has(c.rule.id)).map((c) => price(c, dish)));
  const open = same
    .filter((c) => !chosen.has(c.rule.id))
    .sort((a, b) => a.rule.cost - b.rule.cost)
    .map((c) => `${broughtBy(c.to.map(({ food }) => food))}: ${whyNot(c, dish, best)}`);
  const refused = dish.refused
    .filter((r) => r.key === part.key)
    .map(({ rule, why }) => {
      const foods = rule.to.flatMap(({ food }) => dish.foods.byId(food) ?? []);
      return `${broughtBy(foods)}: ${why}`;
    });
  return [...new Set([...open.slice(0, 4), ...refused.slice(0, 2)])];
}

/** A package's own label needs no reminder to enter it. */
const cautionsOf = (cautions: readonly string[], to: readonly Amount[]): string[] =>
  cautions.filter(
    (text) => !(/package's label/.test(text) && to.every((a) => a.food.source.kind === 'user')),
  );

const allergensOf = (amounts: readonly Amount[]): Allergen[] =>
  [...new Set(amounts.flatMap((a) => a.food.allergens))].sort();

/** What an explanation must know of the way it stands in. */
export interface ServedAs {
  /** Servings this way makes, which may be more than the page's. */
  servings: number;
  /** Is a serving of it within the budget? */
  met: boolean;
}

/** What keeps the rest of a line where it is. */
function boundOf(dish: Dish, part: Part, met: boolean): string {
  if (isSetLine(dish.goals, part.key)) return 'as you set it';
  return met
    ? `as much as the ${one(dish.goals.budgetG)} g budget and the dish allow`
    : 'as much as this way of it leaves';
}

/** What of a line stays; what is gone has nothing that keeps it. */
function whatStays(dish: Dish, part: Part, keptGrams: number, met: boolean): string {
  if (keptGrams > 0)
    return `${grams(keptGrams)} ${part.food.name} stays, ${boundOf(dish, part, met)}.`;
  const bound = isSetLine(dish.goals, part.key) ? ', as you set it' : '';
  return `no ${part.food.name} stays${bound}.`;
}

function whySwap(
  model: PlanModel,
  choice: Choice,
  keptGrams: number,
  to: readonly Amount[],
  { servings, met }: ServedAs,
): string {
  const { dish } = model;
  const part = choice.candidate?.part;
  if (!part) return '';
  const each = (g: number, net: number): number => g * net * part.eaten;
  const per = (g: number, net: number): number => each(g, net) / servings;
  // As the dish is served on the page, which may be in larger pieces.
  const before = each(part.written, part.net) / dish.servings;
  const after =
    per(keptGrams, part.net) +
    to.reduce((sum, a) => sum + per(a.grams, netPerGram(a.food, dish.goals.rule) ?? 0), 0);
  const reach = whatStays(dish, part, keptGrams, met);
  const fall = `from ${one(before)} to ${one(Math.min(after, before))} g a serving`;
  if (to.length === 0) return `Less of it is enough: net carbs from this line fall ${fall}.`;
  const own = to.filter((a) => a.choice === choice);
  if (own.length === to.length) return `Net carbs from this line fall ${fall}; ${reach}`;
  // Of sweeteners it is the sweetness that counts: the intense ones weigh next to nothing.
  const worth = part.role === 'sweetness' ? sweetness : () => 1;
  const mass = (list: readonly Amount[]): number =>
    list.reduce((sum, a) => sum + a.grams * worth(a.food), 0);
  const share = Math.round((100 * mass(own)) / Math.max(mass(to), 1e-9));
  return `Makes up ${share} % of ${part.role === 'sweetness' ? 'the sweetness of ' : ''}what stands in for this line; together the net carbs fall ${fall}; ${reach}`;
}

/** The changes of a plan, largest saving of net carbs first, then additions and smaller amounts. */
export function swapsOf(
  model: PlanModel,
  values: Values,
  amounts: readonly Amount[],
  served: ServedAs,
): Swap[] {
  const { dish } = model;
  const inUse = ({ id }: Choice): boolean => (values.get(id) ?? 0) > TINY;
  const chosen = new Set(
    model.choices.flatMap((c) => (c.candidate && inUse(c) ? [c.candidate.rule.id] : [])),
  );
  const keptOf = new Map(
    amounts.flatMap((a) => (a.origin === 'kept' && a.key !== null ? [[a.key, a] as const] : [])),
  );
  const swaps: { swap: Swap; saved: number }[] = [];
  const swapped = new Set<string>();
  for (const choice of model.choices) {
    const { candidate } = choice;
    const to = amounts.filter((a) => a.choice === choice && a.origin === 'swap');
    if (!candidate) continue;
    const { part, rule } = candidate;
    const keptGrams = keptOf.get(part.key)?.grams ?? 0;
    const alone = !model.choices.some(
      (c) => c.candidate?.part === part && c !== choice && inUse(c),
    );
    const isLess =
      alone && rule.to.length === 0 && inUse(choice) && part.written - keptGrams > TINY;
    if (to.length === 0 && !isLess) continue;
    swapped.add(part.key);
    swaps.push({
      saved: (part.written - keptGrams) * part.net,
      swap: {
        id: rule.id,
        key: part.key,
        from: { foodId: part.food.id, food: part.food.name, grams: part.written },
        keptGrams,
        to: to.map((a) => ({ foodId: a.food.id, food: a.food.name, grams: a.grams })),
        why: whySwap(
          model,
          choice,
          keptGrams,
          amounts.filter((a) => a.key === part.key && a.origin === 'swap'),
          served,
        ),
        effect: rule.effect,
        ...(rule.method === '' ? {} : { method: rule.method }),
        considered: considered(model, part, chosen),
        allergens: allergensOf(to),
        cautions: cautionsOf(rule.cautions, to),
        source: rule.source,
      },
    });
  }
  const ordered = swaps.sort((a, b) => b.saved - a.saved).map((s) => s.swap);
  const added = amounts.flatMap((a) =>
    a.origin === 'add' && a.grams > 0 ? [addedSwap(a, a.grams, amounts, dish)] : [],
  );
  const raised: Swap[] = [];
  const less: Swap[] = [];
  for (const a of keptOf.values()) {
    if (a.key === null || swapped.has(a.key) || Math.abs(a.grams - a.original) < 1e-6) continue;
    if (a.grams > a.original)
      raised.push(addedSwap(a, Math.round((a.grams - a.original) * 10) / 10, amounts, dish));
    else less.push(lessSwap(a));
  }
  return [...ordered, ...added, ...raised, ...less];
}

/** Masses as planned items; what is added to a food the recipe has goes to that line. */
export function itemsOf(dish: Dish, amounts: readonly Amount[]): PlannedItem[] {
  const items: PlannedItem[] = [];
  const add = (key: string, a: Amount): void => {
    const same = items.find((item) => item.key === key && item.foodId === a.food.id);
    if (same) {
      same.grams = Math.round((same.grams + a.grams) * 1000) / 1000;
      return;
    }
    const range = dish.parts.find((p) => p.key === a.key)?.eatenRange ?? {
      low: 1,
      best: 1,
      high: 1,
    };
    items.push({
      key,
      foodId: a.food.id,
      foodName: a.food.name,
      grams: a.grams,
      eaten: { ...range },
      role: a.role,
      ...(a.key === null && dish.sections.length > 1 ? { part: a.section } : {}),
    });
  };
  for (const a of amounts) {
    if (a.grams <= 0) continue;
    const own = dish.parts.find(
      (p) =>
        p.food.id === a.food.id &&
        p.section === a.section &&
        p.eaten === 1 &&
        !p.fixed &&
        amounts.some((k) => k.key === p.key && k.origin === 'kept' && k.grams > 0),
    );
    add(a.key ?? own?.key ?? additionKey(a), a);
  }
  return items;
}
