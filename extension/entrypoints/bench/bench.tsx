import { useEffect, useMemo, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Current } from '../../store/current.ts';
import { openStore, type Store } from '../../store/db.ts';
import { listOwnFoods } from '../../store/kept-packages.ts';
import { type Preferences, storePreferences } from '../../store/prefs.ts';
import { Masthead } from '../../ui/controls/masthead.tsx';
import { Message } from '../../ui/controls/message.tsx';
import { PasteBox } from '../../ui/controls/paste-box.tsx';
import { useNames } from '../../ui/hooks/use-names.ts';
import { usePantry } from '../../ui/hooks/use-pantry.ts';
import { NamesList } from '../../ui/packages/names-list.tsx';
import { hold } from './hold.ts';
import { Saved } from './kept-place.tsx';
import { fresh, type Opening, openWith } from './opening.ts';
import { Packages } from './packages-place.tsx';
import { Workbench } from './workbench.tsx';

const titled = (current: Current | null) => {
  if (current) document.title = `${current.recipe.title} – Crumbshift`;
};

interface OpenProps {
  store: Store;
  opening: Opening;
  /** Another tab has taken the store over. */
  stale: boolean;
}

/** The full view once everything is read from disk. */
function Opened({ store, opening, stale }: OpenProps) {
  const [current, setCurrent] = useState(opening.current);
  const [own, setOwn] = useState(opening.own);
  const [preferences, setPreferences] = useState(opening.preferences);
  const [round, setRound] = useState(0);
  const [saves, setSaves] = useState(0);
  const [imports, setImports] = useState(0);
  const names = useNames(opening.aliases, (job) => job(store));
  const pantry = usePantry(opening.pantry, store);
  const prefer = (change: Partial<Preferences>) => {
    const next = { ...preferences, ...change };
    setPreferences(next);
    // Not kept is not lost: it holds while this page is open.
    void storePreferences(browser.storage.local, next).catch(() => {});
  };
  const readOwn = () => void listOwnFoods(store).then(setOwn, () => {});
  const show = (next: Current) => {
    setCurrent(next);
    setRound(round + 1);
    titled(next);
    hold(next);
    window.scrollTo(0, 0);
  };
  return (
    <>
      <Masthead>
        <nav aria-label="Parts of this page" class="no-print">
          {current && <a href="#recipe">Recipe</a>}
          {current && <a href="#bakes">Bake log</a>}
          <a href="#paste">Paste</a>
          <a href="#packages">Packages</a>
          <a href="#saved">Saved</a>
          <a href="/options.html">Preferences</a>
        </nav>
      </Masthead>
      <main>
        {stale && (
          <Message title="Reload this page" alert>
            <p>Another tab has updated the store of recipes.</p>
          </Message>
        )}
        {opening.trouble && (
          <Message title="Not everything could be opened" alert>
            <p>{opening.trouble}</p>
          </Message>
        )}
        {opening.unsaved !== null && (
          <p class="unsaved no-print">
            “{opening.unsaved}” was left unsaved. <a href="/bench.html">Go back to it</a>
          </p>
        )}
        {current && (
          <Workbench
            key={round}
            start={current}
            preferences={preferences}
            onPreferences={prefer}
            own={own}
            names={names}
            pantry={pantry}
            store={store}
            imports={imports}
            onSaved={() => setSaves((count) => count + 1)}
            onOwnChanged={readOwn}
          />
        )}
        <section id="paste" class="no-print" aria-labelledby="paste-title">
          <h2 id="paste-title">Paste a recipe</h2>
          <PasteBox onRecipe={(recipe) => show(fresh(recipe, preferences))} />
        </section>
        <Packages store={store} own={own} onChanged={setOwn} />
        <NamesList names={names} />
        <Saved
          store={store}
          saves={saves}
          onImported={() => {
            setImports(imports + 1);
            readOwn();
            names.reload();
            pantry.reload();
          }}
        />
      </main>
    </>
  );
}

/** The full view: one recipe, a place to paste another, and what is kept. */
export function Bench() {
  const [stale, setStale] = useState(false);
  const store = useMemo(() => openStore(() => setStale(true)), []);
  const [opening, setOpening] = useState<Opening | null>(null);
  useEffect(() => {
    void openWith(store, location.search, Date.now()).then((found) => {
      setOpening(found);
      titled(found.current);
    });
  }, []);
  if (opening) return <Opened store={store} opening={opening} stale={stale} />;
  return (
    <>
      <Masthead />
      <main>
        <Message title="Opening…" />
      </main>
    </>
  );
}
