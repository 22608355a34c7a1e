/** What is kept, all on one scale: found by typing, put away with a way back, all of it in one file. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Store } from '../../../store/db.ts';
import { storageMessage } from '../../../store/failure.ts';
import {
  deleteRecipe,
  duplicateRecipe,
  restoreRecipe,
  retag,
  sayOfRecipe,
} from '../../../store/kept/saved.ts';
import { listShelf, type Shelf } from '../../../store/kept/shelf.ts';
import type { ShelfRow } from '../../../store/kept/shelf-row.ts';
import { Transfer } from '../../../ui/kept/backup.tsx';
import { KeptList } from '../../../ui/kept/kept-list.tsx';
import { NotKeptList } from '../../../ui/kept/not-kept-list.tsx';
import { say, sayCount } from '../../../ui/words/say.ts';
import type { PlaceProps } from '../kitchen.ts';
import '../../../ui/styles/kept.css';

interface UndoProps {
  away: ShelfRow | null;
  onUndo(row: ShelfRow): void;
}

/** What was just put away, with the way back. */
function Undo({ away, onUndo }: UndoProps) {
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => undo.current?.focus(), [away]);
  return (
    <div role="status" class="undo">
      {away && (
        <p>
          {say('isPutAway', away.title)}{' '}
          <button type="button" class="button" ref={undo} onClick={() => onUndo(away)}>
            {say('undo')}
          </button>
        </p>
      )}
    </div>
  );
}

function useShelf(store: Store, saves: number, imports: number) {
  const [shelf, setShelf] = useState<Shelf | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const attempt = async (job: () => Promise<unknown>) => {
    try {
      await job();
      setShelf(await listShelf(store));
      setFailure(null);
    } catch (error) {
      setFailure(storageMessage(error));
    }
  };
  useEffect(() => void attempt(async () => {}), [saves, imports]);
  return { shelf, failure, attempt };
}

export function KeptPlace({ kitchen }: PlaceProps) {
  const { store, saves, imports, noteImported } = kitchen;
  const { shelf, failure, attempt } = useShelf(store, saves, imports);
  const [away, setAway] = useState<ShelfRow | null>(null);
  const change = (job: () => Promise<unknown>, put: ShelfRow | null = null) =>
    void attempt(async () => {
      await job();
      setAway(put);
    });
  return (
    <section class="place kept" id="kept-place">
      <header class="place-head">
        <h1>{say('placeKept')}</h1>
        <a class="button" href="#paste">
          {say('placePaste')}
        </a>
      </header>
      <Undo away={away} onUndo={({ id }) => change(() => restoreRecipe(store, id))} />
      {failure && (
        <p role="alert" class="failure">
          {failure}
        </p>
      )}
      {shelf && shelf.damaged > 0 && (
        <p role="alert" class="failure">
          {sayCount('keptDamaged', shelf.damaged)}
        </p>
      )}
      {shelf && (
        <KeptList
          rows={shelf.rows}
          bin={shelf.bin}
          onPutAway={(row) => change(() => deleteRecipe(store, row.id, Date.now()), row)}
          onRestore={({ id }) => change(() => restoreRecipe(store, id))}
          onDuplicate={({ id }) => change(() => duplicateRecipe(store, id, Date.now()))}
          onTags={({ id, tags: seen }, tags) => change(() => retag(store, id, seen, tags))}
          onWorked={({ id }, worked) => change(() => sayOfRecipe(store, id, { worked }))}
        />
      )}
      <NotKeptList store={store} />
      <Transfer store={store} onImported={() => void attempt(async () => noteImported())} />
    </section>
  );
}
