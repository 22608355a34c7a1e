/** Errors of the storage layer in plain words. */

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

/** What to tell the user about a failed save, read or delete. */
export function storageMessage(error: unknown): string {
  if (isStorageFull(error)) {
    return 'There is no room left on this disk, so nothing was changed. What was saved before is still there. Free some space, or export your recipes to a file and delete some, then try again.';
  }
  const { name, message } = named(error);
  if (name === 'VersionError' || name === 'DatabaseClosedError') {
    return 'Another tab holds a newer version of your recipes. Reload this page and try again.';
  }
  const detail = typeof message === 'string' && message !== '' ? ` (${message})` : '';
  return `The browser could not store this${detail}. What was saved before is still there.`;
}
