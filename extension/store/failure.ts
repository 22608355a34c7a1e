/** Errors of the storage layer in plain words. */
import { say } from '../ui/words/say.ts';

interface Named {
  name?: unknown;
  message?: unknown;
  inner?: unknown;
}

const named = (value: unknown): Named => (typeof value === 'object' && value !== null ? value : {});

/**
 * True when the disk or the quota is full. Dexie reports it as `QuotaExceededError` in Firefox and
 * as `AbortError` with that as its inner error in Chromium (Dexie documentation).
 */
export function isStorageFull(error: unknown): boolean {
  const outer = named(error);
  return outer.name === 'QuotaExceededError' || named(outer.inner).name === 'QuotaExceededError';
}

/** What a full disk under Chromium may say and no more: on writing, and on opening. */
const VAGUE: ReadonlySet<string> = new Set(['AbortError', 'UnknownError']);

/** What to tell the user about a failed save, read or delete. */
export function storageMessage(error: unknown): string {
  if (isStorageFull(error)) return say('diskFull');
  const { name, message } = named(error);
  const inner = named(named(error).inner).name;
  if (name === 'NewerDataError' || inner === 'NewerDataError') return say('newerData');
  if (VAGUE.has(String(name)) || VAGUE.has(String(inner))) return say('storeStopped');
  if (name === 'VersionError' || name === 'DatabaseClosedError') return say('newerTab');
  return typeof message === 'string' && message !== ''
    ? say('couldNotStoreBecause', message)
    : say('couldNotStore');
}
