/** Masses of a solved plan: what stays of each line, what stands in for it, what is added. */
import type { Food, Role } from '../../model.ts';
import type { Dish, Part, Section } from '../dish/dish.ts';
import type { Choice } from '../model/decisions.ts';
import type { PlanModel } from '../model/plan-model.ts';

export interface Amount {
  /** Ingredient key, or null for an addition. */
  key: string | null;
  food: Food;
  grams: number;
  eaten: number;
  base: boolean;
  role: Role;
  origin: 'kept' | 'swap' | 'add';
  /** The choice it comes from; null for what stays. */
  choice: Choice | null;
  /** Original grams of the line, for what stays. */
  original: number;
  section: number;
  /** What the user accepted after a bake that changed this amount, in words. */
  asked?: string;
  /** Why the kitchen changed this amount, in words, when the role does not say it. */
  because?: string;
}

const TINY = 1e-6;

const THIN_ICING = 'Half of it is enough, spread thinly over the top.';

const kept = (part: Part, grams: number): Amount => ({
  key: part.key,
  food: part.food,
  grams,
  eaten: part.eaten,
  base: part.base,
  role: part.role,
  origin: 'kept',
  choice: null,
  original: part.written,
  section: part.section,
  ...(part.grams < part.written ? { because: THIN_ICING } : {}),
});

/** A food that is added, of no line. */
export const added = (
  food: Food,
  grams: number,
  role: Role,
  section: number,
  because?: string,
): Amount => ({
  key: null,
  food,
  grams,
  eaten: 1,
  base: false,
  role,
  origin: 'add',
  choice: null,
  original: 0,
  section,
  ...(because === undefined ? {} : { because }),
});

/** An addition of a food that a swap brings anyway goes with the swap. */
function merged(brought: readonly Amount[]): Amount[] {
  const list: Amount[] = [];
  for (const amount of brought) {
    const at = list.findIndex(
      (a) =>
        a.origin === 'swap' &&
        a.food.id === amount.food.id &&
        a.role === amount.role &&
        a.section === amount.section,
    );
    const same = list[at];
    if (amount.origin === 'add' && same) list[at] = { ...same, grams: same.grams + amount.grams };
    else list.push(amount);
  }
  return list;
}

/** Exact masses for the values of a solution, before kitchen rounding. */
export function amountsOf(model: PlanModel, values: ReadonlyMap<string, number>): Amount[] {
  const gone = new Map<string, number>();
  const brought: Amount[] = [];
  for (const choice of model.choices) {
    const value = values.get(choice.id) ?? 0;
    if (value <= TINY) continue;
    for (const change of choice.changes) {
      if (change.grams < 0 && change.key !== null) {
        gone.set(change.key, (gone.get(change.key) ?? 0) - change.grams * value);
      } else if (change.grams > 0) {
        const origin = choice.kind === 'add' ? 'add' : 'swap';
        const { key, food, eaten, base, role, section } = change;
        brought.push({
          key,
          food,
          grams: change.grams * value,
          eaten,
          base,
          role,
          origin,
          choice,
          original: 0,
          section,
        });
      }
    }
  }
  const staying = model.dish.parts.map((part) => {
    const left = part.grams - (gone.get(part.key) ?? 0);
    return kept(part, left < TINY * part.grams ? 0 : left);
  });
  return [...staying, ...merged(brought)];
}

/** The original recipe in the same shape. */
export const originalAmounts = (dish: Dish): Amount[] =>
  dish.parts.map((part) => kept(part, part.grams));

/** Sum of an attribute per gram over amounts. */
export function total(amounts: readonly Amount[], attribute: (amount: Amount) => number): number {
  return amounts.reduce((sum, amount) => sum + amount.grams * attribute(amount), 0);
}

/** The original amounts of one section. */
export const originalOf = (dish: Dish, section: Section): Amount[] =>
  originalAmounts(dish).filter((a) => a.section === section.id);
