/** What was worked on and is not in Kept as it stands, so that the user can go back to it or let it go. */
import type { Store } from '../db.ts';
import { getRecipe, sameWork } from '../kept/saved.ts';
import { type Held, listWork, type WorkArea } from './unsaved.ts';

async function isKept(store: Store, { current }: Held): Promise<boolean> {
  const saved = current.savedId === null ? null : await getRecipe(store, current.savedId);
  return saved !== null && sameWork(saved, current);
}

/** Newest first. @throws the storage layer's error. */
export async function listNotKept(store: Store, area: WorkArea): Promise<Held[]> {
  const held = await listWork(area);
  const kept = await Promise.all(held.map((one) => isKept(store, one)));
  return held.filter((_, at) => !kept[at]);
}
