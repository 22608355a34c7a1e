/** Batters that no egg sets: what wheat does not hold in them, nothing does. */
import { hasTag } from '../../foods/tags.ts';
import type { Food, Role } from '../../model.ts';
import { water } from '../dish/food-figures.ts';

/** Liquid, share of the flour base, from which a mix is poured rather than shaped (common practice, no source). */
const POURED = 0.9;

/** Largest share of nuts and seeds, percent of the flour base, that such a batter still sets with (common practice, no source). */
export const EGGLESS_SHARE_PCT = 25;

/**
 * Liquid that goes where a fifth or more of the flour is nuts or seeds: half as large a share of it, between
 * these (common practice, no source).
 */
const LESS_LIQUID = { from: 0.2, perShare: 0.5, least: 0.18, most: 0.22 } as const;

interface Mixed {
  base: boolean;
  role: Role;
  food: Food;
  grams: number;
}

const sum = (list: readonly Mixed[], of: (one: Mixed) => number): number =>
  list.reduce((all, one) => all + one.grams * of(one), 0);

const isFlour = ({ base }: Mixed): number => (base ? 1 : 0);
const poured = ({ role, food }: Mixed): number => (role === 'liquid' ? water(food) : 0);

/** Whether these lines of a part are a batter without egg. */
export function isEgglessBatter(lines: readonly Mixed[]): boolean {
  const flour = sum(lines, isFlour);
  const isPoured = flour > 0 && sum(lines, poured) >= POURED * flour;
  return isPoured && lines.every(({ role }) => role !== 'egg');
}

/** Share of the liquid that is one food's where that food makes the batter: of a list without headings the rest may be a sauce's. Own choice. */
const MAIN_LIQUID = 0.9;

const hasOneLiquid = (lines: readonly Mixed[]): boolean =>
  Math.max(...lines.map((one) => one.grams * poured(one))) >= MAIN_LIQUID * sum(lines, poured);

/** Liquid, g, that a batter without egg does with less of after the change; 0 for any other. */
export function lessLiquid(
  before: readonly Mixed[],
  after: readonly (Mixed & { origin: string })[],
): number {
  if (!isEgglessBatter(before) || !hasOneLiquid(before)) return 0;
  const heavy = after.filter(
    ({ origin, food }) => origin === 'swap' && hasTag(food, 'heavy-flour'),
  );
  const share = sum(heavy, isFlour) / Math.max(sum(after, isFlour), 1);
  const { from, perShare, least, most } = LESS_LIQUID;
  if (share < from) return 0;
  return sum(before, poured) * Math.min(most, Math.max(least, perShare * share));
}
