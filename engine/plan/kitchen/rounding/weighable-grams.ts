/** Grams that a kitchen scale, spoons and whole eggs allow. */
import { hasTag } from '../../../foods/tags.ts';
import type { Role } from '../../../model.ts';
import { down, near, quarterTsp, SAME_SCOOP, stepFor, tidy, up } from '../kitchen-steps.ts';
import type { Amount } from '../planned-masses.ts';

/** One large egg without shell, g (USDA SR 171287). */
const EGG_G = 50;

/** Roles whose amounts are a measure of their own, not what is left of a swap. */
const MEASURED: ReadonlySet<Role> = new Set(['fat', 'salt', 'leavening', 'liquid']);

export function roundedGrams(amount: Amount, cautious: boolean, exact: boolean): number {
  const { grams, role, food, origin } = amount;
  if (origin === 'kept') {
    if (Math.abs(grams - amount.original) < 1e-6) return grams;
    const off = Math.abs(grams - amount.original) / amount.original;
    if (off < SAME_SCOOP && MEASURED.has(role)) return amount.original;
    const step = exact && amount.base ? Math.min(1, stepFor(role, grams)) : stepFor(role, grams);
    return (cautious || role === 'salt' ? down : near)(grams, step);
  }
  if (food.id === 'egg') return up(grams - 0.1 * EGG_G, EGG_G);
  if (role === 'binder' || hasTag(food, 'binder')) return Math.max(up(grams, quarterTsp(food)), 0);
  if ((food.function?.sweetness ?? 0) > 10) return grams < 0.05 ? 0 : near(grams, 0.1);
  // What a serving may hold of it is limited, so rounding must not add to it.
  if (food.function?.doseCapG) return down(grams, stepFor(role, grams));
  return near(grams, stepFor(role, grams));
}

/** What the rounding took from a kept flour goes to its first stand-in, so that the flour base keeps its mass. */
export function keepBase(amounts: Amount[], exact: readonly Amount[]): Amount[] {
  const missing = new Map<string, number>();
  exact.forEach((amount, at) => {
    const now = amounts[at];
    if (now && amount.base && amount.key !== null) {
      missing.set(amount.key, (missing.get(amount.key) ?? 0) + amount.grams - now.grams);
    }
  });
  return amounts.map((amount) => {
    const gap = amount.key === null ? 0 : (missing.get(amount.key) ?? 0);
    if (amount.origin !== 'swap' || !amount.base || amount.key === null || Math.abs(gap) < 0.5)
      return amount;
    missing.set(amount.key, 0);
    return { ...amount, grams: Math.max(0, tidy(amount.grams + near(gap, 1))) };
  });
}

/** A flour of which less than this share would go stays as it is. Own choice. */
const TRACE = 0.08;

export function withoutTraces(amounts: Amount[]): Amount[] {
  const traces = new Set(
    amounts.flatMap((a) =>
      a.base && a.origin === 'kept' && a.grams < a.original && a.grams > (1 - TRACE) * a.original
        ? [a.key]
        : [],
    ),
  );
  return amounts.flatMap((a) => {
    if (a.key === null || !traces.has(a.key)) return [a];
    return a.origin === 'kept' ? [{ ...a, grams: a.original }] : [];
  });
}
