/** What is kept, all on one scale: found by typing, put away with a way back, all of it in one file. */

import { useEffect, useRef, useState } from 'preact/hooks';
import type { WalkOptions } from '../../../../engine/index.ts';
import { storageMessage } from '../../../store/failure.ts';
import { bakesOf, weighedDish } from '../../../store/kept/kept-bakes.ts';
import { smallPhotos } from '../../../store/kept/photos.ts';
import {
  deleteRecipe,
  duplicateRecipe,
  getRecipe,
  restoreRecipe,
  retag,
  sayOfRecipe,
} from '../../../store/kept/saved.ts';
import { FIRST_ROWS, latestOnShelf, listShelf, type Shelf } from '../../../store/kept/shelf.ts';
import type { ShelfRow } from '../../../store/kept/shelf-row.ts';
import { taughtOf } from '../../../store/kept/taught-kept.ts';
import type { SavedRecipe } from '../../../store/records.ts';
import { FailureLine } from '../../../ui/controls/failure-line.tsx';
import { later } from '../../../ui/controls/later.tsx';
import { Transfer } from '../../../ui/kept/backup.tsx';
import { KeptList } from '../../../ui/kept/kept-list.tsx';
import { NotKeptList } from '../../../ui/kept/not-kept-list.tsx';
import type { SliceActs } from '../../../ui/kept/row-slice.tsx';
import { answerHere } from '../../../ui/solver/solver.ts';
import { say, sayCount } from '../../../ui/words/say.ts';
import type { Kitchen, PlaceProps } from '../kitchen.ts';
import { goTo } from '../use-place.ts';
import '../../../ui/styles/kept.css';

const SeveralPart = later(
  async () => (await import('../../../ui/kept/several-part.tsx')).SeveralPart,
);

/** What a kept recipe is worked out with, besides its own corrections. */
function useOptionsFor({ own, names, lessons, preferences }: Kitchen) {
  return (saved: SavedRecipe): WalkOptions => ({
    ownFoods: own.foods,
    aliases: names.map,
    person: preferences.person,
    corrections: saved.corrections,
    taught: taughtOf(lessons.lessons, lessons.own, lessons.off, saved.id),
  });
}

/** Weights kept in all. Own choice. */
const MOST_SLICES = 40;

/** A slice's figures are those of the bench: with the dish as it was weighed, and what bakes taught. */
function sliceActs(kitchen: Kitchen): SliceActs {
  const { store, preferences, prefer, own, names, lessons } = kitchen;
  return {
    figuresOf: async ({ id }) => {
      const saved = await getRecipe(store, id);
      if (!saved) return null;
      const { bakes } = await bakesOf(store, id);
      const { recipe, goals, corrections } = saved;
      const options = {
        ownFoods: own.foods,
        aliases: names.map,
        corrections,
        reworkedGrams: weighedDish(bakes, saved),
        taught: taughtOf(lessons.lessons, lessons.own, lessons.off, id),
      };
      return (await answerHere({ recipe, goals, options }))?.after ?? null;
    },
    recent: ({ id }) => {
      const first = preferences.slices.filter((one) => one.id === id);
      const rest = preferences.slices.filter((one) => one.id !== id);
      return [...new Set([...first, ...rest].map(({ grams }) => grams))];
    },
    onWeighed: ({ id }, grams) => {
      if (grams <= 0) return;
      const others = preferences.slices.filter((one) => one.id !== id || one.grams !== grams);
      prefer({ slices: [{ id, grams }, ...others].slice(0, MOST_SLICES) });
    },
  };
}

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

interface SeenShelf extends Shelf {
  /** Not only its latest rows, which are shown while the rest is read. */
  whole: boolean;
}

/** What was set is on the screen, or never will be because the page is not in sight. */
const painted = (): Promise<unknown> =>
  Promise.race([
    new Promise((done) => requestAnimationFrame(() => setTimeout(done))),
    new Promise((done) => setTimeout(done, 200)),
  ]);

const topOf = (rows: readonly ShelfRow[]): SeenShelf | null =>
  rows.length === 0 ? null : { rows: [...rows], bin: [], damaged: 0, whole: false };

function useShelf({ store, saves, imports, latest }: Kitchen) {
  // As the page was opened is as it still is, unless something was kept since.
  const [shelf, setShelf] = useState(saves === 0 && imports === 0 ? topOf(latest) : null);
  const [failure, setFailure] = useState<string | null>(null);
  const attempt = async (job: () => Promise<unknown>) => {
    try {
      await job();
      setShelf({ ...(await listShelf(store)), whole: true });
      setFailure(null);
    } catch (error) {
      setFailure(storageMessage(error));
    }
  };
  const showLatest = async () => {
    const top = shelf ?? topOf(await latestOnShelf(store, FIRST_ROWS));
    if (top === null) return;
    setShelf((now) => now ?? top);
    await painted();
  };
  useEffect(() => void attempt(shelf?.whole ? async () => {} : showLatest), [saves, imports]);
  return { shelf, failure, attempt };
}

export function KeptPlace({ kitchen }: PlaceProps) {
  const { store, noteImported } = kitchen;
  const { shelf, failure, attempt } = useShelf(kitchen);
  const [away, setAway] = useState<ShelfRow | null>(null);
  const [chosen, setChosen] = useState<ReadonlySet<string> | null>(null);
  const optionsFor = useOptionsFor(kitchen);
  const change = (job: () => Promise<unknown>, put: ShelfRow | null = null) =>
    void attempt(async () => {
      await job();
      setAway(put);
    });
  return (
    <section class="place kept" id="kept-place">
      <header class="place-head">
        <h1>{say('placeKept')}</h1>
        <div class="acts">
          {shelf && shelf.rows.length > 1 && (
            <button
              type="button"
              class="button"
              aria-pressed={chosen !== null}
              onClick={() => setChosen(chosen === null ? new Set() : null)}
            >
              {say('chooseSeveral')}
            </button>
          )}
          <a class="button" href="#paste">
            {say('placePaste')}
          </a>
        </div>
      </header>
      <Undo away={away} onUndo={({ id }) => change(() => restoreRecipe(store, id))} />
      <FailureLine text={failure} />
      <FailureLine text={shelf && shelf.damaged > 0 && sayCount('keptDamaged', shelf.damaged)} />
      {chosen !== null && (
        <SeveralPart
          store={store}
          ids={[...chosen]}
          budgetG={kitchen.preferences.budgetG}
          optionsFor={optionsFor}
          onBuy={(ids) => {
            kitchen.setBuyFor(ids);
            goTo('buy');
          }}
          onChanged={kitchen.noteSaved}
        />
      )}
      {shelf && (
        <KeptList
          chosen={chosen}
          onChoose={({ id }, isChosen) =>
            setChosen((now) => {
              const others = [...(now ?? [])].filter((one) => one !== id);
              return new Set(isChosen ? [...others, id] : others);
            })
          }
          photosOf={(ids) => smallPhotos(store, ids)}
          slices={sliceActs(kitchen)}
          rows={shelf.rows}
          whole={shelf.whole}
          bin={shelf.bin}
          onPutAway={(row) => change(() => deleteRecipe(store, row.id, Date.now()), row)}
          onRestore={({ id }) => change(() => restoreRecipe(store, id))}
          onDuplicate={({ id }) => change(() => duplicateRecipe(store, id, Date.now()))}
          onTags={({ id, tags: seen }, tags) => change(() => retag(store, id, seen, tags))}
          onWorked={({ id }, worked) => change(() => sayOfRecipe(store, id, { worked }))}
        />
      )}
      <NotKeptList store={store} />
      <Transfer
        store={store}
        preferences={kitchen.preferences}
        onSettings={kitchen.prefer}
        onImported={() => void attempt(async () => noteImported())}
      />
    </section>
  );
}
