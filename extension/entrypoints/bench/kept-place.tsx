import { useEffect, useRef, useState } from 'preact/hooks';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import type { SavedRecipe } from '../../store/records.ts';
import { deleteRecipe, listRecipes, restoreRecipe } from '../../store/saved.ts';
import { SavedList } from '../../ui/kept/saved-list.tsx';
import { Transfer } from './backup.tsx';

interface Props {
  store: Store;
  /** Goes up with each save, so that the list is read again. */
  saves: number;
  /** A file has been read in, which may hold packages too. */
  onImported(): void;
}

interface Lists {
  recipes: SavedRecipe[];
  deleted: SavedRecipe[];
  damaged: number;
}

async function readLists(store: Store): Promise<Lists> {
  const [kept, gone] = await Promise.all([
    listRecipes(store),
    listRecipes(store, { deleted: true }),
  ]);
  return { recipes: kept.recipes, deleted: gone.recipes, damaged: kept.damaged };
}

/** Saved recipes: open, delete with undo, export, import. */
export function Saved({ store, saves, onImported }: Props) {
  const [lists, setLists] = useState<Lists | null>(null);
  const [gone, setGone] = useState<SavedRecipe | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const attempt = async (job: () => Promise<unknown>) => {
    try {
      await job();
      setLists(await readLists(store));
      setFailure(null);
    } catch (error) {
      setFailure(storageMessage(error));
    }
  };
  useEffect(() => void attempt(async () => {}), [saves]);
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => undo.current?.focus(), [gone]);
  const remove = (saved: SavedRecipe) =>
    attempt(async () => {
      await deleteRecipe(store, saved.id, Date.now());
      setGone(saved);
    });
  const restore = (saved: SavedRecipe) =>
    attempt(async () => {
      await restoreRecipe(store, saved.id);
      setGone(null);
    });
  return (
    <section id="saved" class="no-print" aria-labelledby="saved-title">
      <h2 id="saved-title">Saved recipes</h2>
      <div role="status" class="undo">
        {gone && (
          <p>
            {gone.recipe.title} is deleted.{' '}
            <button type="button" ref={undo} onClick={() => restore(gone)}>
              Undo
            </button>
          </p>
        )}
      </div>
      {failure && (
        <p role="alert" class="failure">
          {failure}
        </p>
      )}
      {lists && lists.damaged > 0 && (
        <p role="alert" class="failure">
          {lists.damaged === 1 ? 'One saved recipe' : `${lists.damaged} saved recipes`} cannot be
          read. Nothing was removed: an export still holds what is stored.
        </p>
      )}
      {lists && <SavedList {...lists} onDelete={remove} onRestore={restore} />}
      <Transfer store={store} onImported={() => attempt(async () => onImported())} />
    </section>
  );
}
