/** What is kept, all on one scale. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Store } from '../../../store/db.ts';
import { storageMessage } from '../../../store/failure.ts';
import type { SavedRecipe } from '../../../store/records.ts';
import { deleteRecipe, listRecipes, restoreRecipe } from '../../../store/saved.ts';
import { Transfer } from '../../../ui/kept/backup.tsx';
import { SavedList } from '../../../ui/kept/saved-list.tsx';
import { say, sayCount } from '../../../ui/words/say.ts';
import type { PlaceProps } from '../kitchen.ts';

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

interface Binned {
  gone: SavedRecipe | null;
  onUndo(saved: SavedRecipe): void;
}

/** What was just put away, with the way back. */
function Undo({ gone, onUndo }: Binned) {
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => undo.current?.focus(), [gone]);
  return (
    <div role="status" class="undo">
      {gone && (
        <p>
          {say('isPutAway', gone.recipe.title)}{' '}
          <button type="button" class="button" ref={undo} onClick={() => onUndo(gone)}>
            {say('undo')}
          </button>
        </p>
      )}
    </div>
  );
}

function useLists(store: Store, saves: number, imports: number) {
  const [lists, setLists] = useState<Lists | null>(null);
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
  useEffect(() => void attempt(async () => {}), [saves, imports]);
  return { lists, failure, attempt };
}

/** Kept recipes: open, put away with undo, put all in a file, read one in. */
export function KeptPlace({ kitchen }: PlaceProps) {
  const { store, saves, imports, noteImported } = kitchen;
  const { lists, failure, attempt } = useLists(store, saves, imports);
  const [gone, setGone] = useState<SavedRecipe | null>(null);
  const remove = (saved: SavedRecipe) =>
    void attempt(async () => {
      await deleteRecipe(store, saved.id, Date.now());
      setGone(saved);
    });
  const restore = (saved: SavedRecipe) =>
    void attempt(async () => {
      await restoreRecipe(store, saved.id);
      setGone(null);
    });
  return (
    <section class="place" id="kept-place">
      <h1>{say('placeKept')}</h1>
      <a class="button" href="#paste">
        {say('placePaste')}
      </a>
      <Undo gone={gone} onUndo={restore} />
      {failure && (
        <p role="alert" class="failure">
          {failure}
        </p>
      )}
      {lists && lists.damaged > 0 && (
        <p role="alert" class="failure">
          {sayCount('keptDamaged', lists.damaged)}
        </p>
      )}
      {lists && <SavedList {...lists} onDelete={remove} onRestore={restore} />}
      <Transfer store={store} onImported={() => void attempt(async () => noteImported())} />
    </section>
  );
}
