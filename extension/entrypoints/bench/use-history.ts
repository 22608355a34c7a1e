import { useEffect, useState } from 'preact/hooks';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { type BakeLog, bakesOf, NO_BAKES } from '../../store/kept/kept-bakes.ts';
import { getRecipe, sayOfRecipe, sayOfVersion, versionsOf } from '../../store/kept/saved.ts';
import type { Said, SavedVersion, Work } from '../../store/records.ts';

export interface KeptState {
  work: Work;
  updatedAt: number;
  /** It lies in the bin. */
  away: boolean;
}

interface Kept {
  /** What is said of the state saved last; null while nothing is saved. */
  now: Said | null;
  /** The state saved last and when; null while nothing is saved. */
  state: KeptState | null;
  versions: readonly SavedVersion[];
  log: BakeLog;
}

const NOTHING: Kept = { now: null, state: null, versions: [], log: NO_BAKES };

export interface History extends Kept {
  /** Id of the saved recipe on the screen, or null. */
  savedId: string | null;
  failure: string | null;
  /** Reads again, or what is kept of another recipe. Rejects with the storage layer's error. */
  read(id?: string): Promise<void>;
  sayNow(said: Partial<Said>): void;
  say(version: SavedVersion, said: Partial<Said>): void;
}

async function readKept(store: Store, id: string): Promise<Kept> {
  const [recipe, versions, log] = await Promise.all([
    getRecipe(store, id),
    versionsOf(store, id),
    bakesOf(store, id),
  ]);
  return {
    now: recipe && { name: recipe.name, worked: recipe.worked, note: recipe.note },
    state: recipe && {
      work: recipe,
      updatedAt: recipe.updatedAt,
      away: recipe.deletedAt !== null,
    },
    versions,
    log,
  };
}

/** Versions and bakes of the saved recipe on the screen. */
export function useHistory(
  store: Store,
  startId: string | null,
  /** Goes up when the store was changed elsewhere, so that it is read again. */
  imports: number,
  onSaid: () => void,
): History {
  const [savedId, setSavedId] = useState(startId);
  const [kept, setKept] = useState<Kept>(NOTHING);
  const [failure, setFailure] = useState<string | null>(null);
  const read = async (id: string | null = savedId) => {
    setSavedId(id);
    setKept(id === null ? NOTHING : await readKept(store, id));
  };
  const told = (job: Promise<void>) =>
    void job.then(
      () => setFailure(null),
      (error) => setFailure(storageMessage(error)),
    );
  useEffect(() => told(read()), [imports]);
  const saying = (job: () => Promise<void>) =>
    told(
      job()
        .then(() => read())
        .then(onSaid),
    );
  return {
    ...kept,
    savedId,
    failure,
    read,
    sayNow: (said) => {
      if (savedId !== null) saying(() => sayOfRecipe(store, savedId, said, kept.now ?? {}));
    },
    say: (version, said) => saying(() => sayOfVersion(store, version.id, said)),
  };
}
