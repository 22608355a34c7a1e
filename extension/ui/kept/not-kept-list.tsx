/** Recipes that were worked on and not kept: back to them, or let go for good. */

import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { listNotKept } from '../../store/working/not-kept.ts';
import { forgetWork, type Held } from '../../store/working/unsaved.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { Fold } from '../controls/fold.tsx';
import { say, sayCount } from '../words/say.ts';

/** The one on this page is not among them: it is in sight in its own place. */
const isElsewhere = ({ id }: Held): boolean =>
  new URLSearchParams(location.search).get('work') !== id;

function useNotKept(store: Store) {
  const [held, setHeld] = useState<Held[]>([]);
  const [failure, setFailure] = useState<string | null>(null);
  const read = async (first: () => Promise<void> = async () => {}) => {
    try {
      await first();
      setHeld((await listNotKept(store, browser.storage.local)).filter(isElsewhere));
      setFailure(null);
    } catch (error) {
      setFailure(storageMessage(error));
    }
  };
  useEffect(() => void read(), []);
  const forget = (ids: readonly string[]) =>
    void read(() => forgetWork(browser.storage.local, ids));
  return { held, failure, forget };
}

export function NotKeptList({ store }: { store: Store }) {
  const { held, failure, forget } = useNotKept(store);
  if (failure) {
    return <FailureLine text={failure} />;
  }
  if (held.length === 0) return null;
  return (
    <Fold title={sayCount('notKeptTitle', held.length)} aside={say('notKeptHow')} name="not-kept">
      {() => (
        <>
          <ul class="bin">
            {held.map(({ id, current }) => (
              <li key={id}>
                <a
                  class="button bare"
                  href={`/bench.html?work=${id}#recipe`}
                  lang={current.recipe.language ?? undefined}
                  dir="auto"
                >
                  {current.recipe.title}
                </a>
                <button type="button" class="button" onClick={() => forget([id])}>
                  {say('forget')}
                  <span class="hidden">{say('ofFood', current.recipe.title)}</span>
                </button>
              </li>
            ))}
          </ul>
          {held.length > 1 && (
            <button type="button" class="button" onClick={() => forget(held.map(({ id }) => id))}>
              {say('forgetAllOfThese')}
            </button>
          )}
        </>
      )}
    </Fold>
  );
}
