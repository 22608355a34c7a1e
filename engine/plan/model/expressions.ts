/** Linear expressions over the planner's variables: what each one adds to and takes from the dish. */
import type { Food, Role } from '../../model.ts';
import type { Dish, Part } from '../dish/dish.ts';

/** Grams of a food that one unit of a variable brings (positive) or removes (negative). */
export interface Change {
  food: Food;
  grams: number;
  eaten: number;
  base: boolean;
  role: Role;
  /** Ingredient the mass stands in for; null for an addition. */
  key: string | null;
  /** Section of the dish it goes into or comes out of. */
  section: number;
}

export interface Decision {
  id: string;
  changes: Change[];
}

export interface Linear {
  constant: number;
  terms: [string, number][];
}

export type Attribute = (change: Change) => number;

const asChange = (part: Part): Change => part;

/** The sum of an attribute (per gram) over the dish, as a linear expression divided by `per`. */
export function linear(
  dish: Dish,
  decisions: readonly Decision[],
  attribute: Attribute,
  per = 1,
): Linear {
  let constant = 0;
  for (const part of dish.parts) constant += part.grams * attribute(asChange(part));
  const terms: [string, number][] = [];
  for (const { id, changes } of decisions) {
    let sum = 0;
    for (const change of changes) sum += change.grams * attribute(change);
    if (Math.abs(sum / per) > 1e-9) terms.push([id, sum / per]);
  }
  return { constant: constant / per, terms };
}

/** An expression in another unit. */
export const scaled = (line: Linear, factor: number): Linear => ({
  constant: line.constant * factor,
  terms: line.terms.map(([id, value]) => [id, value * factor]),
});

/** `a + factor * b` as one expression. */
export function plus(a: Linear, b: Linear, factor: number): Linear {
  const terms = new Map(a.terms);
  for (const [id, value] of b.terms) terms.set(id, (terms.get(id) ?? 0) + factor * value);
  return { constant: a.constant + factor * b.constant, terms: [...terms] };
}

/** Value of an expression at given variable values. */
export const evaluate = (line: Linear, values: ReadonlyMap<string, number>): number =>
  line.terms.reduce((sum, [id, value]) => sum + value * (values.get(id) ?? 0), line.constant);
