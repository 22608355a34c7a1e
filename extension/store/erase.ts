/** Everything the extension keeps on this computer, gone. */
import type { Store } from './db.ts';

interface Clearable {
  clear(): Promise<void>;
}

/**
 * The database first: when that fails, nothing else is taken.
 * @throws the storage layer's error.
 */
export async function eraseAll(store: Store, areas: readonly Clearable[]): Promise<void> {
  await store.delete();
  await Promise.all(areas.map((area) => area.clear()));
}
