/** Scraps of a line that are left beside what stands in for it, and go as well. */
import type { Food, Role } from '../../../model.ts';
import type { Dish, Section } from '../../dish/dish.ts';
import { functionOf, gluten, starch } from '../../dish/food-figures.ts';
import { shareCap } from '../../model/rows/structure-rows.ts';
import { type Amount, total } from '../planned-masses.ts';
import { feedsYeast } from '../yeast.ts';

/** Below this share of a line, the rest of it goes as well: of a flour, of crumbs, of other foods. Own choice. */
const REMNANT = { base: 0.05, crumbs: 0.35, other: 0.15 };

/** g a serving, and share of the line, below which a rest of potatoes beside their stand-in is a token (common practice, no source). */
const TOKEN_POTATO = { grams: 30, share: 0.3 } as const;

/** A rest of sugar below this, g, and this share of its line is not worth a bag of its own on the scale, nor is a slight one. Own choice. */
const SWEET_REST = { grams: 15, share: 0.25, slight: 0.12 };

/** Share of a sweet line that is dropped as a scrap: within what a tongue tells. Own choice. */
export const SWEET_SCRAP = 0.06;

/** The same in a yeast dough, where so little feeds nothing. Own choice. */
const YEAST_SCRAP = 0.1;

/** Roles whose masses are held by a dose or a balance, so that a scrap of them stays. */
const AS_SOLVED: ReadonlySet<Role> = new Set(['fat', 'sweetness', 'salt']);

/**
 * Whether a dough can do with its stand-ins grown in place of kept flours: starch and gluten stay
 * above what it needs, and no flour goes above its share.
 */
function canSpare(
  exact: readonly Amount[],
  grown: ReadonlyMap<string, number>,
  section: Section,
  dish: Dish,
): boolean {
  const after = exact.flatMap((a): Amount[] => {
    const factor = a.key === null ? undefined : grown.get(a.key);
    if (factor === undefined) return [a];
    return a.origin === 'kept' ? [] : [{ ...a, grams: a.grams * factor }];
  });
  const percent = (list: readonly Amount[], of: (food: Food) => number): number =>
    (100 * total(list, (a) => (a.base ? of(a.food) : 0))) /
    Math.max(
      total(list, (a) => (a.base ? 1 : 0)),
      1e-9,
    );
  const { limits } = section;
  const holds = (of: (food: Food) => number, floor: number): boolean =>
    percent(after, of) >= Math.min(floor, percent(exact, of)) - 0.5;
  const within = after.every((a) => {
    if (!a.base || a.origin === 'kept') return true;
    const cap = shareCap(dish, section, a.food) ?? 100;
    return percent(after, (food) => (food.id === a.food.id ? 1 : 0)) <= cap + 0.5;
  });
  const fibre = (list: readonly Amount[]): number =>
    percent(list, (food) => functionOf(food).insolubleFibre);
  return (
    within &&
    holds(starch, limits.starch.strong) &&
    holds(gluten, limits.gluten?.hard ?? 0) &&
    fibre(after) <= Math.max(limits.inertFibre, fibre(exact)) + 0.5
  );
}

/** So little sugar left beside its stand-in that it does nothing; yeast and what sets by sugar keep theirs. */
const isRest = (grams: number, original: number, { limits, family }: Section): boolean =>
  grams <= (grams < SWEET_REST.grams ? SWEET_REST.share : SWEET_REST.slight) * original &&
  !limits.yeast &&
  family !== 'candy';

/** Lines of crumbs that something else stands in for. */
function crumbLines(exact: readonly Amount[], dish: Dish): Set<string> {
  const swapped = new Set(exact.flatMap((a) => (a.origin === 'swap' && a.key ? [a.key] : [])));
  const crumbs = dish.parts.filter((p) => p.class === 'breadcrumbs' && swapped.has(p.key));
  return new Set(crumbs.map(({ key }) => key));
}

/** What must stay of a line of a plate, g, so that it is no token. */
function leastOf({ key, original }: Amount, section: Section, { parts, servings }: Dish): number {
  const kind = parts.find((part) => part.key === key)?.class;
  if (section.dough || kind !== 'potatoes') return 0;
  return Math.min(TOKEN_POTATO.grams * servings, TOKEN_POTATO.share * original);
}

/** A scrap of a line that is left is replaced too, by what replaces the rest of it. */
export function withoutRemnants(exact: readonly Amount[], section: Section, dish: Dish): Amount[] {
  const dropped = new Set<string>();
  const grown = new Map<string, number>();
  const crumbs = crumbLines(exact, dish);
  for (const amount of exact) {
    const { origin, key, grams, original, base, role } = amount;
    const scrap = section.limits.yeast
      ? !feedsYeast(grams, section) && grams < YEAST_SCRAP * original
      : grams < SWEET_SCRAP * original;
    const sweet = role === 'sweetness' && key !== null && origin === 'kept' && grams > 0;
    if (sweet && scrap) dropped.add(key);
    else if (sweet && isRest(grams, original, section))
      grown.set(key, original / (original - grams));
    const other = crumbs.has(key ?? '') ? REMNANT.crumbs : REMNANT.other;
    const scrapOf = (base ? REMNANT.base : other) * original;
    const least = Math.max(scrapOf, leastOf(amount, section, dish));
    if (origin !== 'kept' || key === null || grams <= 0 || grams >= least || AS_SOLVED.has(role))
      continue;
    const factor = original / (original - grams);
    if (base && !canSpare(exact, new Map([...grown, [key, factor]]), section, dish)) continue;
    grown.set(key, factor);
  }
  return exact.map((a) => {
    // Its stand-in may be at its dose already, so it does not grow.
    if (a.key !== null && a.origin === 'kept' && dropped.has(a.key)) return { ...a, grams: 0 };
    const factor = a.key === null ? undefined : grown.get(a.key);
    if (factor === undefined) return a;
    return { ...a, grams: a.origin === 'kept' ? 0 : a.grams * factor };
  });
}
