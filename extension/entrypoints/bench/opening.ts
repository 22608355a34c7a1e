/** What the full view starts with. */
import { browser } from 'wxt/browser';
import type { BakeFacts } from '../../../engine/index.ts';
import type { Recipe } from '../../../engine/model.ts';
import { openStore, type Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { listAliases } from '../../store/kept/aliases.ts';
import { listFacts } from '../../store/kept/bake-facts-kept.ts';
import { listOwnFoods, type OwnFoods } from '../../store/kept/kept-packages.ts';
import { listPantry } from '../../store/kept/pantry.ts';
import { emptyOldBin, getRecipe, sameWork } from '../../store/kept/saved.ts';
import { FIRST_ROWS, latestOnShelf } from '../../store/kept/shelf.ts';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import type { PantryFood } from '../../store/pantry-food.ts';
import {
  DEFAULT_PREFERENCES,
  goalsFrom,
  loadPreferences,
  type Preferences,
} from '../../store/prefs.ts';
import type { Alias } from '../../store/records.ts';
import type { Current } from '../../store/working/current.ts';
import { type Held, listWork, loadWork } from '../../store/working/unsaved.ts';
import { say } from '../../ui/words/say.ts';
import { goOnWith } from './hold.ts';
import { type Place, placeOf, START } from './place-names.ts';

export interface Opening {
  preferences: Preferences;
  own: OwnFoods;
  aliases: readonly Alias[];
  pantry: readonly PantryFood[];
  /** Rows of the dishes kept last where the page is opened on them, so that it draws them at once; else empty. */
  latest: readonly ShelfRow[];
  /** What the bakes measured; null when they are to be read once the page is drawn. */
  facts: readonly BakeFacts[] | null;
  /** The recipe to show, or null for none. */
  current: Current | null;
  /** Another recipe with changes that were not saved, or null. */
  unsaved: { id: string; title: string } | null;
  /** What went wrong while opening, in plain words. */
  trouble: string | null;
  /** Where to begin when the address names no place. */
  place: Place;
}

export interface Begun {
  store: Store;
  /** Comes when another tab has taken the store over. */
  taken: Promise<void>;
}

/** Opens the store of this page while the page itself is still being made ready. */
export function beginStore(): Begun {
  let take = () => {};
  const taken = new Promise<void>((done) => {
    take = done;
  });
  const store = openStore(() => take());
  // Whoever reads it first tells what went wrong.
  store.open().catch(() => {});
  return { store, taken };
}

/** Milliseconds after opening. Own choice. */
const BIN_AFTER = 5000;

async function savedCurrent(store: Store, id: string): Promise<Current | null> {
  const saved = await getRecipe(store, id);
  if (!saved) return null;
  const { recipe, goals, corrections } = saved;
  return { recipe, goals, corrections, savedId: saved.id };
}

/** What was worked on last, unless just that is saved. */
async function lastUnsaved(store: Store): Promise<Opening['unsaved']> {
  const [last] = await listWork(browser.storage.local);
  if (!last) return null;
  const { current, id } = last;
  const saved = current.savedId === null ? null : await getRecipe(store, current.savedId);
  return saved && sameWork(saved, current) ? null : { id, title: current.recipe.title };
}

/** The work that the address names, or what was worked on last; this page goes on with it. */
async function heldWork(id: string | null): Promise<Held | null> {
  const area = browser.storage.local;
  const held = id === null ? ((await listWork(area))[0] ?? null) : await loadWork(area, id);
  if (held) goOnWith(held);
  return held;
}

/**
 * `?id=` opens a saved recipe, `?work=` one being worked on, `?paste` none, anything else the last one
 * worked on. What cannot be read is told of and does not keep the rest from opening.
 */
export async function openWith(
  store: Store,
  { search, hash }: Pick<Location, 'search' | 'hash'>,
  now: number,
): Promise<Opening> {
  const parameters = new URLSearchParams(search);
  let trouble: string | null = null;
  const attempt = async <T>(job: () => Promise<T>, otherwise: T): Promise<T> => {
    try {
      return await job();
    } catch (error) {
      trouble ??= storageMessage(error);
      return otherwise;
    }
  };
  // What has been in the bin for a month can wait until the page stands.
  setTimeout(() => void emptyOldBin(store, now).catch(() => {}), BIN_AFTER);
  const [preferences, own, aliases, pantry, latest] = await Promise.all([
    attempt(() => loadPreferences(browser.storage.local), DEFAULT_PREFERENCES),
    attempt(() => listOwnFoods(store), { foods: [], damaged: 0 }),
    attempt(() => listAliases(store), []),
    attempt(() => listPantry(store), []),
    // What cannot be read here is told of by the list itself.
    placeOf(hash) === 'kept' ? latestOnShelf(store, FIRST_ROWS).catch(() => []) : [],
  ]);
  const id = parameters.get('id');
  let current: Current | null = null;
  let unsaved: Opening['unsaved'] = null;
  if (id !== null) {
    current = await attempt(() => savedCurrent(store, id), null);
    unsaved = await attempt(() => lastUnsaved(store), null);
    if (!current) trouble ??= say('keptIsGone');
  } else if (!parameters.has('paste')) {
    const work = parameters.get('work');
    current = (await attempt(() => heldWork(work), null))?.current ?? null;
    if (!current && work !== null) trouble ??= say('workIsGone');
  }
  const place = current ? 'recipe' : parameters.has('paste') ? 'paste' : START;
  // A recipe is worked out with what bakes taught; a list is not held up by thousands of them.
  const facts = current ? await attempt(() => listFacts(store), []) : null;
  return { preferences, own, aliases, pantry, latest, facts, current, unsaved, trouble, place };
}

/** A recipe that is worked on for the first time. */
export function fresh(recipe: Recipe, preferences: Preferences): Current {
  return { recipe, goals: goalsFrom(preferences), corrections: {}, savedId: null };
}
