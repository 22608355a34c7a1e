/** How much of each is kept, to be told before it is erased. */
import type { Store } from '../db.ts';
import { listWork, type WorkArea } from '../working/unsaved.ts';

export interface Amounts {
  recipes: number;
  bakes: number;
  packages: number;
  /** Recipes worked on, kept or not. */
  work: number;
}

/** @throws the storage layer's error. */
export async function amountsOf(store: Store, area: WorkArea): Promise<Amounts> {
  const [recipes, bakes, packages, work] = await Promise.all([
    store.recipes.count(),
    store.bakes.count(),
    store.foods.count(),
    listWork(area),
  ]);
  return { recipes, bakes, packages, work: work.length };
}
