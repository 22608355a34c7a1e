/** What repeated water corrections say about a flour. */
import type { Adaptation, Adjustment, Food, FoodFunction } from '../../model.ts';

/** Corrections that must agree before they are laid to the flour: own choice. */
const LEAST_CORRECTIONS = 2;
/** Least share of the flour base at which a correction can be laid to one flour: own choice. */
const LEAST_SHARE = 0.2;
/** Most that a flour's absorption is moved at once, g of water a gram: own choice. */
const MOST_SHIFT = 0.3;

/** Water corrections of one recipe, laid to one flour. */
interface Lesson {
  /** Accepted water corrections. */
  count: number;
  /** All of them together, percent of the flour base. */
  shiftPct: number;
  /** Share of the flour base that the flour makes, 0..1. */
  share: number;
}

const isWater = ({ lever, shiftPct }: Adjustment): boolean =>
  lever === 'water' && shiftPct !== null;

function lessonOf(food: Food, { goals, plan }: Adaptation): Lesson | null {
  const base = plan.items.filter(({ role }) => role === 'structure');
  const grams = (items: typeof base): number => items.reduce((sum, item) => sum + item.grams, 0);
  const all = grams(base);
  const share = all > 0 ? grams(base.filter(({ foodId }) => foodId === food.id)) / all : 0;
  const corrections = goals.adjustments.filter(isWater);
  if (share < LEAST_SHARE || corrections.length === 0) return null;
  const shiftPct = corrections.reduce((sum, one) => sum + (one.shiftPct ?? 0), 0);
  return { count: corrections.length, shiftPct, share };
}

/** The last version of each recipe: earlier ones carry the same corrections. */
const latest = (adaptations: readonly Adaptation[]): Adaptation[] => [
  ...new Map(
    adaptations.map((one) => [`${one.recipe.url ?? ''} ${one.recipe.title}`, one]),
  ).values(),
];

const tidy = (value: number): number => Math.round(value * 100) / 100;

function moved(absorption: NonNullable<FoodFunction['absorption']>, by: number) {
  const best = Math.max(0, tidy(absorption.best + by));
  return { low: Math.min(absorption.low, best), best, high: Math.max(absorption.high, best) };
}

/** The flour with what was learned, and how it was. */
export interface LearnedWater {
  food: Food;
  why: string;
  /** Water corrections it rests on; when the food is kept they should be taken off their recipes. */
  adjustmentIds: string[];
}

/**
 * A flour of the user's own whose water was put right twice or more, with its absorption (g of water a
 * gram) moved accordingly; null when there is nothing to learn: another food, fewer than two
 * corrections, corrections that disagree, or a flour that makes under a fifth of the flour base.
 * `adaptations`: saved versions in the order they were made; of one recipe the last counts.
 */
export function learnedWater(food: Food, adaptations: readonly Adaptation[]): LearnedWater | null {
  const fn = food.function;
  const own = food.source.kind === 'user' || food.source.kind === 'label';
  if (!own || fn === null || fn.absorption === null) return null;
  const recipes = latest(adaptations).flatMap((adaptation) => {
    const lesson = lessonOf(food, adaptation);
    return lesson === null ? [] : [{ adaptation, lesson }];
  });
  const lessons = recipes.map(({ lesson }) => lesson);
  const count = lessons.reduce((sum, lesson) => sum + lesson.count, 0);
  const signs = new Set(lessons.map(({ shiftPct }) => Math.sign(shiftPct)));
  if (count < LEAST_CORRECTIONS || signs.size !== 1 || signs.has(0)) return null;
  const mean =
    lessons.reduce((sum, { shiftPct, share }) => sum + shiftPct / 100 / share, 0) / lessons.length;
  const by = Math.max(-MOST_SHIFT, Math.min(MOST_SHIFT, mean));
  const absorption = moved(fn.absorption, by);
  if (absorption.best === fn.absorption.best) return null;
  const why =
    `${count} corrections asked for ${by > 0 ? 'more' : 'less'} water with ${food.name}: ` +
    `it seems to hold ${absorption.best} g of water a gram, not ${fn.absorption.best} g.`;
  const ids = recipes.flatMap(({ adaptation }) =>
    adaptation.goals.adjustments.filter(isWater).map(({ id }) => id),
  );
  return {
    food: {
      ...food,
      function: { ...fn, absorption, source: `${fn.source}; water from your bakes` },
    },
    why,
    adjustmentIds: [...new Set(ids)],
  };
}
