/** What the full view starts with. */
import { browser } from 'wxt/browser';
import type { Recipe } from '../../../engine/model.ts';
import { type Current, loadCurrent } from '../../store/current.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { listOwnFoods, type OwnFoods } from '../../store/own-foods.ts';
import {
  DEFAULT_PREFERENCES,
  goalsFrom,
  loadPreferences,
  type Preferences,
} from '../../store/prefs.ts';
import { emptyOldBin, getRecipe } from '../../store/saved.ts';

export interface Opening {
  preferences: Preferences;
  own: OwnFoods;
  /** The recipe to show, or null for none. */
  current: Current | null;
  /** What went wrong while opening, in plain words. */
  trouble: string | null;
}

/** `?id=` opens a saved recipe, `?paste` none, anything else the one being worked on. */
export async function openWith(store: Store, query: string, now: number): Promise<Opening> {
  const parameters = new URLSearchParams(query);
  const opening: Opening = {
    preferences: DEFAULT_PREFERENCES,
    own: { foods: [], damaged: 0 },
    current: null,
    trouble: null,
  };
  try {
    opening.preferences = await loadPreferences(browser.storage.local);
    await emptyOldBin(store, now);
    opening.own = await listOwnFoods(store);
    const id = parameters.get('id');
    if (id !== null) {
      const saved = await getRecipe(store, id);
      if (!saved) opening.trouble = 'That saved recipe is not here any more, or it is damaged.';
      else {
        const { recipe, goals, corrections } = saved;
        opening.current = { recipe, goals, corrections, savedId: saved.id };
      }
    } else if (!parameters.has('paste')) {
      opening.current = await loadCurrent(browser.storage.session);
    }
  } catch (error) {
    opening.trouble = storageMessage(error);
  }
  return opening;
}

/** A recipe that is worked on for the first time. */
export function fresh(recipe: Recipe, preferences: Preferences): Current {
  return { recipe, goals: goalsFrom(preferences), corrections: {}, savedId: null };
}
