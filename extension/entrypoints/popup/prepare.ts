/** Where to start with a recipe: what was asked of it last, in this session or when it was kept. */
import { browser } from 'wxt/browser';
import type { BakeFacts, Taught } from '../../../engine/index.ts';
import type { Food, Recipe } from '../../../engine/model.ts';
import { openStore, type Store } from '../../store/db.ts';
import { listAliases } from '../../store/kept/aliases.ts';
import { listFacts } from '../../store/kept/bake-facts-kept.ts';
import { listOwnFoods } from '../../store/kept/kept-packages.ts';
import { findByPage } from '../../store/kept/saved.ts';
import { lessonsOf, taughtOf } from '../../store/kept/taught-kept.ts';
import {
  DEFAULT_PREFERENCES,
  goalsFrom,
  loadPreferences,
  type Preferences,
} from '../../store/prefs.ts';
import type { Alias } from '../../store/records.ts';
import { type Current, sameRecipe } from '../../store/working/current.ts';
import { findWork, type Held } from '../../store/working/unsaved.ts';

export interface Ready {
  start: Current;
  /** Where `start` is held already, else null. */
  held: Held | null;
  preferences: Preferences;
  ownFoods: readonly Food[];
  aliases: readonly Alias[];
  /** What bakes taught. */
  taught: Taught;
}

/** What the user has taught it, whatever the recipe is. */
interface AtHome {
  ownFoods: readonly Food[];
  aliases: readonly Alias[];
  facts: readonly BakeFacts[];
}

/** What is read while the page is: it hangs on no recipe. */
export interface Kitchen {
  preferences: Preferences;
  store: Store;
  /** Null when the store cannot be read. */
  atHome: AtHome | null;
}

async function atHomeIn(store: Store): Promise<AtHome> {
  const [{ foods: ownFoods }, aliases, facts] = await Promise.all([
    listOwnFoods(store),
    listAliases(store),
    // What bakes taught is a help, not a need.
    listFacts(store).catch(() => []),
  ]);
  return { ownFoods, aliases, facts };
}

/** Opens the store, which `prepare` closes. Never rejects. */
export async function openKitchen(): Promise<Kitchen> {
  const store = openStore();
  const [preferences, atHome] = await Promise.all([
    loadPreferences(browser.storage.local).catch(() => DEFAULT_PREFERENCES),
    atHomeIn(store).catch(() => null),
  ]);
  return { preferences, store, atHome };
}

/** Never rejects: a store that cannot be opened must not keep the numbers from being shown. */
export async function prepare(recipe: Recipe, kitchen: Promise<Kitchen>): Promise<Ready> {
  const [{ preferences, store, atHome }, held] = await Promise.all([
    kitchen,
    findWork(browser.storage.local, recipe).catch(() => null),
  ]);
  const fresh: Current = { recipe, goals: goalsFrom(preferences), corrections: {}, savedId: null };
  const without: Ready = {
    start: held?.current ?? fresh,
    held,
    preferences,
    ownFoods: [],
    aliases: [],
    taught: taughtOf([], [], [], null),
  };
  try {
    if (!atHome) return without;
    const { ownFoods, aliases, facts } = atHome;
    const lessons = lessonsOf(facts, ownFoods);
    const of = (savedId: string | null) =>
      taughtOf(lessons, ownFoods, preferences.lessonsOff, savedId);
    const known = { held, preferences, ownFoods, aliases };
    if (held) return { start: held.current, ...known, taught: of(held.current.savedId) };
    const saved = await findByPage(store, recipe);
    if (!saved) return { start: fresh, ...known, taught: of(null) };
    const { goals, id: savedId } = saved;
    const corrections = sameRecipe(saved.recipe, recipe) ? saved.corrections : {};
    return { start: { recipe, goals, corrections, savedId }, ...known, taught: of(savedId) };
  } catch {
    return without;
  } finally {
    store.close();
  }
}
