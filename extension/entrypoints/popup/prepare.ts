/** Where to start with a recipe: what was asked of it last, in this session or when it was kept. */
import { browser } from 'wxt/browser';
import type { Food, Recipe } from '../../../engine/model.ts';
import { listAliases } from '../../store/aliases.ts';
import { type Current, loadCurrent, sameRecipe } from '../../store/current.ts';
import { openStore } from '../../store/db.ts';
import { listOwnFoods } from '../../store/kept-packages.ts';
import {
  DEFAULT_PREFERENCES,
  goalsFrom,
  loadPreferences,
  type Preferences,
} from '../../store/prefs.ts';
import type { Alias } from '../../store/records.ts';
import { findByPage } from '../../store/saved.ts';

export interface Ready {
  start: Current;
  preferences: Preferences;
  ownFoods: readonly Food[];
  aliases: readonly Alias[];
}

/** Never rejects: a store that cannot be opened must not keep the numbers from being shown. */
export async function prepare(recipe: Recipe): Promise<Ready> {
  const preferences = await loadPreferences(browser.storage.local).catch(() => DEFAULT_PREFERENCES);
  const last = await loadCurrent(browser.storage.session).catch(() => null);
  const fresh: Current = { recipe, goals: goalsFrom(preferences), corrections: {}, savedId: null };
  const store = openStore();
  try {
    const [{ foods: ownFoods }, aliases] = await Promise.all([
      listOwnFoods(store),
      listAliases(store),
    ]);
    const known = { preferences, ownFoods, aliases };
    if (last && sameRecipe(last.recipe, recipe)) return { start: last, ...known };
    const saved = await findByPage(store, recipe);
    if (!saved) return { start: fresh, ...known };
    const { goals, id: savedId } = saved;
    const corrections = sameRecipe(saved.recipe, recipe) ? saved.corrections : {};
    return { start: { recipe, goals, corrections, savedId }, ...known };
  } catch {
    return { start: fresh, preferences, ownFoods: [], aliases: [] };
  } finally {
    store.close();
  }
}
