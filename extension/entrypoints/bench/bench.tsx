/** The full page: places round one recipe on the bench. */
import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Store } from '../../store/db.ts';
import { listOwnFoods } from '../../store/kept/kept-packages.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { Current } from '../../store/working/current.ts';
import { stoveKey } from '../../store/working/stove.ts';
import { Message } from '../../ui/controls/message.tsx';
import { Working } from '../../ui/controls/working.tsx';
import { TraceContext, useLazyTrace } from '../../ui/figures/sources/trace-context.ts';
import { useFacts, useLessons } from '../../ui/hooks/use-lessons.ts';
import { useNames } from '../../ui/hooks/use-names.ts';
import { usePantry } from '../../ui/hooks/use-pantry.ts';
import { ElsewhereTimers } from '../../ui/stove/elsewhere-timers.tsx';
import { say, sayWith } from '../../ui/words/say.ts';
import { hold } from './hold.ts';
import type { Kitchen, OpenRecipe } from './kitchen.ts';
import { NotStoredLines, useWriting } from './not-stored.tsx';
import { type Begun, type Opening, openWith } from './opening.ts';
import type { Place } from './place-names.ts';
import { PlaceView } from './place-view.tsx';
import { Shell } from './shell.tsx';
import { useOpenRecipe } from './use-open-recipe.ts';
import { goTo, usePlace } from './use-place.ts';

interface OpenedProps {
  store: Store;
  opening: Opening;
  /** Another tab has taken the store over. */
  stale: boolean;
}

/** The list of what is kept is read first: thousands of bakes must not stand before it, ms. Own choice. */
const LIST_FIRST = 800;

/** What the places share, as it was read from disk and as it changes from now on. */
function useKitchen(
  { store, opening }: OpenedProps,
  here: Place,
  show: (current: Current) => void,
): Kitchen & Pick<ReturnType<typeof useWriting>, 'notStored'> {
  const [own, setOwn] = useState(opening.own);
  const [preferences, setPreferences] = useState(opening.preferences);
  const [saves, setSaves] = useState(0);
  const [imports, setImports] = useState(0);
  const [buyFor, setBuyFor] = useState<readonly string[]>([]);
  const names = useNames(opening.aliases, (job) => job(store));
  const pantry = usePantry(opening.pantry, store);
  const facts = useFacts(opening.facts, store, here === 'kept' ? LIST_FIRST : 0);
  const { notStored, watchWork, storeSettings } = useWriting(browser.storage.local);
  const prefer = (change: Partial<Preferences>) => {
    setPreferences((now) => ({ ...now, ...change }));
    void storeSettings(change);
  };
  const lessons = useLessons(facts, own.foods, {
    off: preferences.lessonsOff,
    onOff: (lessonsOff) => prefer({ lessonsOff }),
  });
  return {
    store,
    latest: opening.latest,
    preferences,
    prefer,
    hold: (held) => watchWork(hold(held)),
    notStored,
    lessons,
    own,
    setOwn,
    names,
    pantry,
    saves,
    noteSaved: () => setSaves((count) => count + 1),
    imports,
    buyFor,
    setBuyFor,
    noteImported: () => {
      setImports((count) => count + 1);
      void listOwnFoods(store).then(setOwn, () => {});
      names.reload();
      pantry.reload();
      facts.reload();
    },
    show,
  };
}

function Troubles({ opening, stale }: Omit<OpenedProps, 'store'>) {
  return (
    <>
      {stale && (
        <Message title={say('reloadPage')} alert>
          <p>{say('newerTab')}</p>
        </Message>
      )}
      {opening.trouble && (
        <Message title={say('notAllOpened')} alert>
          <p>{opening.trouble}</p>
        </Message>
      )}
      {opening.unsaved !== null && (
        <p class="unsaved">
          {sayWith('leftUnsaved', opening.unsaved.title)}{' '}
          <a href={`/bench.html?work=${opening.unsaved.id}#recipe`}>{say('backToIt')}</a>
        </p>
      )}
    </>
  );
}

interface WithRecipeProps {
  kitchen: Kitchen;
  start: Current;
  children(open: OpenRecipe | null, failed: boolean): preact.ComponentChildren;
}

/** Works the recipe out, and lends its sources to every figure below. */
function WithRecipe({ kitchen, start, children }: WithRecipeProps) {
  const { work, open } = useOpenRecipe(kitchen, start);
  const trace = useLazyTrace(work.adaptation, kitchen.own.foods);
  return <TraceContext.Provider value={trace}>{children(open, work.failed)}</TraceContext.Provider>;
}

function Opened(props: OpenedProps) {
  const [current, setCurrent] = useState(props.opening.current);
  const [round, setRound] = useState(0);
  const here = usePlace(props.opening.place);
  const kitchen = useKitchen(props, here, (next) => {
    setCurrent(next);
    setRound(round + 1);
    kitchen.hold(next);
    goTo('recipe');
    scrollTo(0, 0);
  });
  const notStored = <NotStoredLines {...kitchen.notStored} />;
  const troubles = <Troubles opening={props.opening} stale={props.stale} />;
  if (!current) {
    return (
      <Shell here={here} title={null}>
        {troubles}
        <ElsewhereTimers area={browser.storage.local} atStove={null} />
        <PlaceView here={here} kitchen={kitchen} open={null} state="none" />
        {notStored}
      </Shell>
    );
  }
  return (
    <Shell here={here} title={current.recipe.title}>
      {troubles}
      <ElsewhereTimers
        area={browser.storage.local}
        atStove={here === 'stove' ? stoveKey(current.recipe) : null}
      />
      <WithRecipe key={round} kitchen={kitchen} start={current}>
        {(open, failed) => (
          <PlaceView
            here={here}
            kitchen={kitchen}
            open={open}
            state={open ? 'open' : failed ? 'failed' : 'working'}
          />
        )}
      </WithRecipe>
      {notStored}
    </Shell>
  );
}

export function Bench({ store, taken }: Begun) {
  const [stale, setStale] = useState(false);
  const [opening, setOpening] = useState<Opening | null>(null);
  useEffect(() => {
    void openWith(store, location, Date.now()).then(setOpening);
    void taken.then(() => setStale(true));
  }, []);
  if (opening) return <Opened store={store} opening={opening} stale={stale} />;
  return (
    <main>
      <Working title={say('opening')} />
    </main>
  );
}
