/** The kept dishes, their loaves on one scale, and those put away. */
import { useEffect, useState } from 'preact/hooks';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { arrowKeys } from '../controls/arrow-keys.ts';
import { Fold } from '../controls/fold.tsx';
import { EmptyBoard } from '../figures/loaf/empty-board.tsx';
import { say, sayCount } from '../words/say.ts';
import { KeptRow, type RowActs } from './kept-row.tsx';
import { KeptSearch } from './search-form.tsx';
import { EVERYTHING, findKept, tagsOf } from './search-kept.ts';

/** Rows drawn at once; more come when asked for, so that thousands open as fast as ten. Own choice. */
const ROWS_AT_ONCE = 40;

/** Grams at the right end: the longest dough of the list, no more than a few budgets. */
const fullOf = (rows: readonly ShelfRow[]): number =>
  Math.max(
    1,
    ...rows.map(({ figures }) =>
      figures ? Math.min(Math.max(figures.beforeG, figures.afterG), 6 * figures.budgetG + 1) : 0,
    ),
  );

/** Budget of the last dish above that has figures. */
const budgetAbove = (rows: readonly ShelfRow[], at: number): number | undefined =>
  rows.slice(0, at).findLast(({ figures }) => figures !== null)?.figures?.budgetG;

interface ListActs extends RowActs {
  /** Small photos of these recipes. */
  photosOf(ids: readonly string[]): Promise<Record<string, string>>;
}

/** Photos come after the rows: none is waited for. */
function usePhotos(
  rows: readonly ShelfRow[],
  photosOf: ListActs['photosOf'],
): Record<string, string> {
  const [photos, setPhotos] = useState<Record<string, string>>({});
  const ids = rows.map(({ id }) => id).join(' ');
  useEffect(() => {
    photosOf(rows.map(({ id }) => id)).then(setPhotos, () => setPhotos({}));
  }, [ids]);
  return photos;
}

function Rows({ rows, photosOf, ...acts }: ListActs & { rows: readonly ShelfRow[] }) {
  const [shown, setShown] = useState(ROWS_AT_ONCE);
  const photos = usePhotos(rows.slice(0, shown), photosOf);
  const fullG = fullOf(rows.slice(0, shown));
  return (
    <>
      <ul class="kept-list" onKeyDown={arrowKeys('.kept-link')}>
        {rows.slice(0, shown).map((row, at) => (
          <KeptRow
            key={row.id}
            row={row}
            fullG={fullG}
            photo={photos[row.id] ?? null}
            labelled={budgetAbove(rows, at) !== row.figures?.budgetG}
            {...acts}
          />
        ))}
      </ul>
      {rows.length > shown && (
        <button type="button" class="button" onClick={() => setShown(shown + ROWS_AT_ONCE)}>
          {sayCount('moreDishes', rows.length - shown)}
        </button>
      )}
    </>
  );
}

interface Props extends ListActs {
  rows: readonly ShelfRow[];
  /** All rows are here, not only the latest: what is said of their number waits for that. */
  whole: boolean;
  bin: readonly ShelfRow[];
  onRestore(row: ShelfRow): void;
}

export function KeptList({ rows, whole, bin, onRestore, ...acts }: Props) {
  const [wanted, setWanted] = useState(EVERYTHING);
  const found = findKept(rows, wanted);
  return (
    <>
      {rows.length === 0 && (
        <>
          <EmptyBoard />
          <p>{say('nothingKept')}</p>
        </>
      )}
      {rows.length > 0 && <KeptSearch wanted={wanted} tags={tagsOf(rows)} onWanted={setWanted} />}
      <p class="hidden" role="status">
        {whole && sayCount('dishesFound', found.length)}
      </p>
      {whole && rows.length > 0 && found.length === 0 && <p>{say('noDishFound')}</p>}
      <Rows rows={found} {...acts} />
      {bin.length > 0 && (
        <Fold title={sayCount('binTitle', bin.length)} aside={say('binHow')} name="bin">
          {() => (
            <ul class="bin">
              {bin.map((row) => (
                <li key={row.id}>
                  <span lang={row.language ?? undefined} dir="auto">
                    {row.title}
                  </span>
                  <button type="button" class="button" onClick={() => onRestore(row)}>
                    {say('bringBack')}
                    <span class="hidden">{say('ofFood', row.title)}</span>
                  </button>
                </li>
              ))}
            </ul>
          )}
        </Fold>
      )}
    </>
  );
}
