import type { NameKeys } from './name-keys.ts';

/** The keys of the built-in foods' names, which a build puts here; null where nothing was built. */
export const READY_KEYS: NameKeys | null = null;
