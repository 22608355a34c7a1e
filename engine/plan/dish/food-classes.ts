/** Which class of the tables a food belongs to, and the role it usually plays: `data/classes.json`. */
import type { Food, Role } from '../../model.ts';
import classRows from '../data/classes.json' with { type: 'json' };

interface FoodClass {
  class: string;
  role: Role;
  named?: readonly string[];
  foods: readonly string[];
}

const CLASSES = classRows as readonly FoodClass[];

const classById = new Map(CLASSES.flatMap((row) => row.foods.map((id) => [id, row] as const)));
const classByName = new Map(
  CLASSES.flatMap((row) => (row.named ?? []).map((word) => [word, row] as const)),
);

/** The last word of a food's name. */
const headOf = (name: string): string => /[a-z]+$/.exec(name.trim().toLowerCase())?.[0] ?? '';

/** The class of a food and its usual role, or null when it is in none; own foods go by the last word of their name. */
export function classOf(food: Food): { class: string; role: Role } | null {
  const own = food.source.kind === 'label' || food.source.kind === 'user';
  return classById.get(food.id) ?? (own ? classByName.get(headOf(food.name)) : undefined) ?? null;
}

/** Whole eggs, whites and yolks, fresh or dried. */
export const isEgg = (food: Food): boolean => classOf(food)?.class === 'eggs';
