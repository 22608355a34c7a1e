/** What to do where no recipe was read: look again, use what is selected, paste, or take up a kept one. */
import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { openStore } from '../../store/db.ts';
import { listShelf } from '../../store/kept/shelf.ts';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { gramsWords } from '../../ui/figures/format.ts';
import { EmptyBoard } from '../../ui/figures/loaf/empty-board.tsx';
import { RowLoaf } from '../../ui/figures/loaf/row-loaf.tsx';
import { say } from '../../ui/words/say.ts';
import { tabToRead } from './gather-tab.ts';
import { openBench } from './open-bench.ts';
import { WelcomeAlone } from './popup-welcome.tsx';
import type { TabAnswer } from './read-tab.ts';

/** As many as fit below the buttons. */
const LAST_KEPT = 3;

function useLastKept(): readonly ShelfRow[] {
  const [kept, setKept] = useState<readonly ShelfRow[]>([]);
  useEffect(() => {
    const store = openStore();
    listShelf(store)
      .then(
        ({ rows }) => setKept(rows.slice(0, LAST_KEPT)),
        () => {},
      )
      .finally(() => store.close());
  }, []);
  return kept;
}

function LastKept() {
  const kept = useLastKept();
  if (kept.length === 0) return null;
  const figures = kept.map((row) => row.figures);
  const fullG = Math.max(...figures.map((one) => (one ? Math.max(one.beforeG, one.afterG) : 0)), 1);
  return (
    <section class="last-kept" aria-labelledby="last-kept-title">
      <h3 id="last-kept-title">{say('lastKept')}</h3>
      <ul>
        {kept.map(({ id, title, language }, at) => {
          const row = figures[at];
          return (
            <li key={id}>
              <button
                type="button"
                class="button bare"
                onClick={() => void openBench(`?id=${encodeURIComponent(id)}`)}
              >
                <span lang={language ?? undefined} dir="auto">
                  {title}
                </span>
              </button>
              {row && <span class="soft">{gramsWords(row.afterG)}</span>}
              {row && <RowLoaf {...row} fullG={fullG} wide={160} />}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** The background reads the selection and opens it in the full page, as the page's own menu does. */
async function reworkSelected(): Promise<void> {
  const tabId = await tabToRead(location.search);
  await browser.runtime.sendMessage({ type: 'rework-selection', tabId });
  window.close();
}

interface Props {
  answer: Exclude<TabAnswer, { kind: 'recipes' }>;
  onAgain(): void;
}

export function NoRecipe({ answer, onAgain }: Props) {
  const none = answer.kind === 'none';
  return (
    <section class="message no-recipe" role={none ? 'status' : 'alert'}>
      <EmptyBoard />
      <h2>{say(none ? 'noRecipeHere' : 'pageClosed')}</h2>
      <p>{say(none ? 'noRecipeHereHow' : 'pageClosedHow')}</p>
      {none && (
        <>
          <button type="button" class="button first" onClick={onAgain}>
            {say('lookAgain')}
          </button>
          <button type="button" class="button" onClick={() => void reworkSelected()}>
            {say('useSelected')}
          </button>
        </>
      )}
      <button
        type="button"
        class={none ? 'button' : 'button first'}
        onClick={() => void openBench('?paste#paste')}
      >
        {say('placePaste')}
      </button>
      <LastKept />
      <WelcomeAlone />
    </section>
  );
}
