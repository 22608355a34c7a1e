/** The user's preferences, in `storage.local`. */
import * as z from 'zod';
import { Allergen, DEFAULT_GOALS, type Goals, NetCarbRule, Person } from '../../engine/model.ts';
import { PantryFood } from './pantry-food.ts';

const KEY = 'preferences';

export const Preferences = z.object({
  budgetG: z.number().min(0).max(500).catch(DEFAULT_GOALS.budgetG),
  rule: NetCarbRule.catch(DEFAULT_GOALS.rule),
  avoid: z.array(Allergen).catch([]),
  /** What the user has said of themselves, for the cautions. */
  person: Person.catch(Person.parse({})),
  energy: z.enum(['kcal', 'kJ']).catch('kcal'),
  sodium: z.enum(['sodium', 'salt']).catch('sodium'),
  /** How amounts of ingredients are shown: as the recipe has them, or in one system. */
  amounts: z.enum(['page', 'metric', 'us']).catch('page'),
  /** Scale of the user's oven. */
  heat: z.enum(['C', 'F']).catch('C'),
  /** Language of the screens; 'auto' goes by the browser's. */
  language: z.enum(['auto', 'en', 'de']).catch('auto'),
  /** Where the user lives, by what labels say there. */
  country: z.enum(['us', 'ca', 'uk', 'de', 'eu', 'au', 'other']).catch('other'),
  /** Foods that are never added. */
  never: z.array(PantryFood).catch([]),
  /** Sweeteners liked, best first; none leaves the order to the plan. */
  sweeteners: z.array(PantryFood).catch([]),
  /** Unit of the user's glucose meter, and the band the user likes to be in, in that unit. */
  meter: z.enum(['mg/dL', 'mmol/L']).catch('mg/dL'),
  meterBand: z.object({ low: z.number(), high: z.number() }).nullable().catch(null),
  /** Slices weighed lately, latest first: of which recipe, and their grams. */
  slices: z.array(z.object({ id: z.string(), grams: z.number().positive() })).catch([]),
  /** Ids of lessons from bakes that the plan is to leave alone. */
  lessonsOff: z.array(z.string()).catch([]),
  /** The first questions were answered or skipped. */
  welcomed: z.boolean().catch(false),
});
export type Preferences = z.infer<typeof Preferences>;

export const DEFAULT_PREFERENCES: Preferences = Preferences.parse({});

/** Whether the user has set anything here, beyond having been asked. */
export const isSettled = (preferences: Preferences): boolean =>
  JSON.stringify({ ...preferences, welcomed: false }) !== JSON.stringify(DEFAULT_PREFERENCES);

/** The part of `browser.storage.local` that is used here. */
export interface Area {
  get(key: string): Promise<Record<string, unknown>>;
  set(values: Record<string, unknown>): Promise<void>;
}

/** Preferences as stored; what is missing or damaged falls back to its default. */
export async function loadPreferences(area: Area): Promise<Preferences> {
  const stored = (await area.get(KEY))[KEY];
  const read = Preferences.safeParse(stored ?? {});
  return read.success ? read.data : DEFAULT_PREFERENCES;
}

/** Each area's last change: the next one reads only what that one has written. */
const lastChange = new WeakMap<Area, Promise<void>>();

/**
 * Changes what is given and leaves the rest as it is on disk now, where another window may have changed it.
 * @throws the storage layer's error; nothing is changed then.
 */
export function storePreferences(area: Area, change: Partial<Preferences>): Promise<void> {
  const merge = async () => {
    const now = await loadPreferences(area);
    await area.set({ [KEY]: Preferences.parse({ ...now, ...change }) });
  };
  const stored = (lastChange.get(area) ?? Promise.resolve()).then(merge, merge);
  lastChange.set(area, stored);
  return stored;
}

/** Goals for a recipe that is opened for the first time. */
export function goalsFrom({ budgetG, rule, avoid, never, sweeteners }: Preferences): Goals {
  return {
    ...DEFAULT_GOALS,
    budgetG,
    rule,
    avoid,
    excludedFoods: never.map(({ foodId }) => foodId),
    sweeteners: sweeteners.map(({ foodId }) => foodId),
  };
}
