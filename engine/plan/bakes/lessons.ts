/** What a series of bakes taught: water of a flour or a dish, the baked weight, how far the oven is off. */
import * as z from 'zod';
import type { BakeFacts } from './bake-facts.ts';

/** Bakes that must have measured a thing before it is a lesson: own choice. */
const LEAST_BAKES = 2;
/** The latest bakes that count; earlier ones are taken to be of another flour bag or season. Own choice. */
const LAST_BAKES = 3;
/** Least share of the flours at which water is laid to one of them: own choice. */
const LEAST_SHARE = 0.2;
/** Water that is worth a change, and the most a lesson may ask for, g for each 100 g of flour: own choice. */
const LEAST_WATER = 1;
const MOST_WATER = 25;
/** Oven off by less than this is within what a dial shows, °C: own choice. */
const LEAST_OVEN_C = 5;
/** More than this is a mistyped reading, °C: own choice. */
const MOST_OVEN_C = 60;
/** What a kitchen scale and a hot tin leave open, share of what went in: own choice. */
const WEIGHING = 0.01;

/**
 * One thing the bakes taught. `value`: water in g for each 100 g of flour, beyond what the plan reckons;
 * baked weight as a share of what went in; oven in °C above what it is set to. Low and high span the
 * bakes it rests on.
 */
export const Lesson = z.object({
  id: z.string(),
  of: z.enum(['flour-water', 'dish-water', 'dish-weight', 'family-weight', 'oven']),
  /** Food id, recipe id or family; '' for the oven. */
  subject: z.string(),
  value: z.number(),
  low: z.number(),
  high: z.number(),
  /** Bakes it rests on, latest first. */
  bakes: z.array(z.string()),
  /** Earlier bakes that measured the same and no longer count. */
  earlier: z.number().int().nonnegative(),
});
export type Lesson = z.infer<typeof Lesson>;

interface Measured {
  bake: BakeFacts;
  value: number;
}

const later = (a: BakeFacts, b: BakeFacts): number =>
  a.day === b.day ? b.addedAt - a.addedAt : a.day < b.day ? 1 : -1;

function lessonFrom(
  of: Lesson['of'],
  subject: string,
  measured: readonly Measured[],
): Lesson | null {
  if (measured.length < LEAST_BAKES) return null;
  const last = [...measured].sort((a, b) => later(a.bake, b.bake)).slice(0, LAST_BAKES);
  const values = last.map(({ value }) => value);
  return {
    id: subject === '' ? of : `${of}:${subject}`,
    of,
    subject,
    value: values.reduce((sum, value) => sum + value, 0) / values.length,
    low: Math.min(...values),
    high: Math.max(...values),
    bakes: last.map(({ bake }) => bake.id),
    earlier: measured.length - last.length,
  };
}

/** Every group's measurements, in the order the bakes came. */
function grouped(list: readonly { key: string; measured: Measured }[]): Map<string, Measured[]> {
  const groups = new Map<string, Measured[]>();
  for (const { key, measured } of list) {
    const group = groups.get(key);
    if (group) group.push(measured);
    else groups.set(key, [measured]);
  }
  return groups;
}

/** The flour of the user's own that a bake's water is laid to: the largest, when it is large enough. */
function flourOf({ plan }: BakeFacts, own: ReadonlySet<string>): string | null {
  const all = Object.entries(plan?.flours ?? {});
  const total = all.reduce((sum, [, grams]) => sum + grams, 0);
  const mine = all.filter(([id, grams]) => own.has(id) && grams >= LEAST_SHARE * total);
  return mine.sort(([, a], [, b]) => b - a)[0]?.[0] ?? null;
}

/** Water beyond the plan without lessons, g for each 100 g of the flour it is laid to. */
function waterMeasured(bake: BakeFacts, flour: string | null): number | null {
  const { plan, extraWaterG } = bake;
  if (plan === null || extraWaterG === null) return null;
  const base = Object.values(plan.flours).reduce((sum, grams) => sum + grams, 0);
  const grams = flour === null ? base : (plan.flours[flour] ?? 0);
  return grams > 0 ? (100 * (plan.taughtWaterG + extraWaterG)) / grams : null;
}

function waterLessons(bakes: readonly BakeFacts[], own: ReadonlySet<string>): Lesson[] {
  const list = bakes.flatMap((bake) => {
    const flour = flourOf(bake, own);
    const value = waterMeasured(bake, flour);
    if (value === null) return [];
    const key = flour === null ? `dish-water ${bake.recipeId}` : `flour-water ${flour}`;
    return [{ key, measured: { bake, value } }];
  });
  return [...grouped(list)].flatMap(([key, measured]) => {
    const at = key.indexOf(' ');
    const of = key.startsWith('dish') ? 'dish-water' : 'flour-water';
    const lesson = lessonFrom(of, key.slice(at + 1), measured);
    if (lesson === null || Math.abs(lesson.value) < LEAST_WATER) return [];
    const value = Math.max(-MOST_WATER, Math.min(MOST_WATER, lesson.value));
    return [{ ...lesson, value }];
  });
}

/** What was left of what went in; null when it was not weighed, or cannot be. */
function shareLeft({ rawGrams, dishGrams, extraWaterG }: BakeFacts): number | null {
  if (rawGrams === null || dishGrams === null) return null;
  const share = dishGrams / (rawGrams + (extraWaterG ?? 0));
  return share > 0.3 && share < 4 ? share : null;
}

function weightLessons(bakes: readonly BakeFacts[]): Lesson[] {
  const weighed = bakes.flatMap((bake) => {
    const value = shareLeft(bake);
    return value === null ? [] : [{ bake, value }];
  });
  const byDish = grouped(weighed.map((measured) => ({ key: measured.bake.recipeId, measured })));
  const byFamily = grouped(
    weighed.flatMap((measured) => {
      const family = measured.bake.plan?.family;
      return family === undefined ? [] : [{ key: family, measured }];
    }),
  );
  const all = [
    ...[...byDish].map(([id, measured]) => lessonFrom('dish-weight', id, measured)),
    ...[...byFamily].map(([id, measured]) => lessonFrom('family-weight', id, measured)),
  ];
  return all.flatMap((lesson) =>
    lesson === null
      ? []
      : [{ ...lesson, low: lesson.low - WEIGHING, high: lesson.high + WEIGHING }],
  );
}

function ovenLesson(bakes: readonly BakeFacts[]): Lesson[] {
  const read = bakes.flatMap((bake) => {
    const { ovenSetC, ovenReadC } = bake;
    if (ovenSetC === null || ovenReadC === null) return [];
    const value = ovenReadC - ovenSetC;
    return Math.abs(value) > MOST_OVEN_C ? [] : [{ bake, value }];
  });
  const lesson = lessonFrom('oven', '', read);
  return lesson === null || Math.abs(lesson.value) < LEAST_OVEN_C ? [] : [lesson];
}

/**
 * What the bakes taught, each resting on the last three that measured it and on two at least. `own` are
 * ids of the user's packages: water is laid to one of them where it makes a fifth of the flours or more,
 * else to the dish. Pure; the order of the bakes does not matter.
 */
export function lessonsFrom(bakes: readonly BakeFacts[], own: ReadonlySet<string>): Lesson[] {
  return [...waterLessons(bakes, own), ...weightLessons(bakes), ...ovenLesson(bakes)];
}
