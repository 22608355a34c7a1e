/** What the places of the full page share: the store, the user's things, and the recipe on the bench. */
import type { FoodTable } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import type { Store } from '../../store/db.ts';
import type { OwnFoods } from '../../store/kept/kept-packages.ts';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { Current } from '../../store/working/current.ts';
import type { SaveAnswer } from '../../store/working/keeper.ts';
import type { Lessons } from '../../ui/hooks/use-lessons.ts';
import type { Names } from '../../ui/hooks/use-names.ts';
import type { Pantry } from '../../ui/hooks/use-pantry.ts';
import type { WorkState } from '../../ui/hooks/use-work.ts';
import type { History } from './use-history.ts';

export interface Kitchen {
  store: Store;
  /** Rows of the dishes kept last, as the page was opened on them; empty where it was opened elsewhere. */
  latest: readonly ShelfRow[];
  preferences: Preferences;
  /** Holds the work on the screen over a reload; tells when there is no room. */
  hold(current: Current): void;
  /** Takes a change of preferences at once and keeps it. */
  prefer(change: Partial<Preferences>): void;
  own: OwnFoods;
  setOwn(own: OwnFoods): void;
  names: Names;
  pantry: Pantry;
  /** What the bakes taught. */
  lessons: Lessons;
  /** Goes up with each save, so that lists of kept recipes are read again. */
  saves: number;
  noteSaved(): void;
  /** A file was read in: everything on disk may be new. */
  noteImported(): void;
  /** Goes up with each file read in. */
  imports: number;
  /** Ids of kept dishes that the list to buy starts with. */
  buyFor: readonly string[];
  setBuyFor(ids: readonly string[]): void;
  /** Puts another recipe on the bench and goes to it. */
  show(current: Current): void;
}

/** The recipe on the bench. */
export interface OpenRecipe {
  work: WorkState;
  /** All foods, the user's own among them. */
  table: FoodTable;
  adaptation: Adaptation;
  history: History;
  /** How much of the recipe is made. */
  factor: number;
  setFactor(factor: number): void;
  /** Grams of all that is made, from the scale; null takes it back. */
  weigh(grams: number | null): void;
  /** Puts a food on the list of what is never used; undoing the change that goes with it takes it off. */
  neverUse(food: { id: string; name: string }): void;
  /** What is on the screen is on disk. */
  isKept: boolean;
  /** Another window kept another state of it meanwhile. */
  elsewhere: boolean;
  /** Why a change could not be written by itself, or null. */
  notWritten: string | null;
  keep(): Promise<SaveAnswer>;
}

export interface PlaceProps {
  kitchen: Kitchen;
  /** Null when no recipe is open, or none could be worked out. */
  open: OpenRecipe | null;
}
