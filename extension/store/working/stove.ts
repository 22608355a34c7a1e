/** Where the cook is in each recipe, and what timers run, in `storage.local`: a reload loses none of it. */
import * as z from 'zod';
import type { Recipe } from '../../../engine/model.ts';
import type { Area } from '../prefs.ts';

const KEY = 'stove';
/** Recipes whose place is remembered. Own choice. */
const MOST = 20;

export const StoveTimer = z.object({
  id: z.string().max(100),
  /** What it is for: the step's first words. */
  name: z.string().max(200),
  seconds: z.number().positive(),
  /** Milliseconds since 1970 UTC. */
  endsAt: z.number().int().nonnegative(),
});
export type StoveTimer = z.infer<typeof StoveTimer>;

export const StovePage = z.object({
  /** Step in sight, from 0. */
  at: z.number().int().nonnegative().catch(0),
  /** Keys of ingredient lines that are at hand. */
  ticked: z.array(z.string()).catch([]),
  timers: z.array(StoveTimer).catch([]),
});
export type StovePage = z.infer<typeof StovePage>;

export const FIRST_PAGE: StovePage = { at: 0, ticked: [], timers: [] };

/** Newest last. */
const Pages = z.array(z.object({ recipe: z.string(), page: StovePage })).catch([]);

/** What tells recipes apart here: where it was read, and its title. */
export const stoveKey = ({ url, title }: Pick<Recipe, 'url' | 'title'>): string =>
  `${url ?? ''} ${title}`.slice(0, 500);

const loadPages = async (area: Area) => Pages.parse((await area.get(KEY))[KEY] ?? []);

/** @throws the storage layer's error. */
export async function loadStove(area: Area, recipe: string): Promise<StovePage> {
  return (await loadPages(area)).find((one) => one.recipe === recipe)?.page ?? FIRST_PAGE;
}

/** @throws the storage layer's error; nothing is changed then. */
export async function storeStove(area: Area, recipe: string, page: StovePage): Promise<void> {
  const others = (await loadPages(area)).filter((one) => one.recipe !== recipe);
  await area.set({ [KEY]: [...others, { recipe, page }].slice(-MOST) });
}

/** A timer, and the recipe it belongs to by its `stoveKey`. */
export interface TimerOf {
  recipe: string;
  timer: StoveTimer;
}

/** The timers of every recipe. @throws the storage layer's error. */
export async function loadTimers(area: Area): Promise<TimerOf[]> {
  const pages = await loadPages(area);
  return pages.flatMap(({ recipe, page }) => page.timers.map((timer) => ({ recipe, timer })));
}

/** Takes a timer away. @throws the storage layer's error; nothing is changed then. */
export async function dropTimer(area: Area, { recipe, timer }: TimerOf): Promise<void> {
  const page = await loadStove(area, recipe);
  const timers = page.timers.filter(({ id }) => id !== timer.id);
  await storeStove(area, recipe, { ...page, timers });
}
