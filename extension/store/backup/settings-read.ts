/** The settings of a file: what of them can be read, to be taken or left. */
import { Preferences } from '../prefs.ts';

export interface ReadSettings {
  /** What taking them would change here; what cannot be read is left out. */
  change: Partial<Preferences>;
  /** How many settings cannot be read. */
  refused: number;
}

type Key = keyof Preferences;

const KEYS = Object.keys(Preferences.shape) as Key[];

/** Foods that are known neither here nor to the file are left out of the lists. */
function ofKnown(change: Partial<Preferences>, isKnown: (foodId: string) => boolean) {
  const { never, sweeteners } = change;
  return {
    ...change,
    ...(never ? { never: never.filter(({ foodId }) => isKnown(foodId)) } : {}),
    ...(sweeteners ? { sweeteners: sweeteners.filter(({ foodId }) => isKnown(foodId)) } : {}),
  };
}

/** Null when the file has none. Never throws. */
export function readSettings(
  settings: unknown,
  isKnown: (foodId: string) => boolean,
): ReadSettings | null {
  if (settings === undefined || settings === null) return null;
  if (typeof settings !== 'object' || Array.isArray(settings)) return { change: {}, refused: 1 };
  const given = settings as Record<string, unknown>;
  const there = KEYS.filter((key) => Object.hasOwn(given, key));
  // Without the fallback to a default, which would change what is set here.
  const good = there.flatMap((key) => {
    const read = Preferences.shape[key].unwrap().safeParse(given[key]);
    return read.success ? [[key, read.data] as const] : [];
  });
  const change: Partial<Preferences> = Object.fromEntries(good);
  return { change: ofKnown(change, isKnown), refused: there.length - good.length };
}
