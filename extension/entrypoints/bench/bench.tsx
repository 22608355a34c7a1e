import { useEffect, useMemo, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { type Current, storeCurrent } from '../../store/current.ts';
import { openStore } from '../../store/db.ts';
import { listOwnFoods, type OwnFoods } from '../../store/own-foods.ts';
import { Masthead } from '../../ui/masthead.tsx';
import { Message } from '../../ui/message.tsx';
import { PasteBox } from '../../ui/paste-box.tsx';
import { fresh, type Opening, openWith } from './opening.ts';
import { Packages } from './packages.tsx';
import { Saved } from './saved.tsx';
import { Workbench } from './workbench.tsx';

/** The full view: one recipe, a place to paste another, and the saved ones. */
export function Bench() {
  const [stale, setStale] = useState(false);
  const store = useMemo(() => openStore(() => setStale(true)), []);
  const [opening, setOpening] = useState<Opening | null>(null);
  const [current, setCurrent] = useState<Current | null>(null);
  const [own, setOwn] = useState<OwnFoods>({ foods: [], damaged: 0 });
  const [round, setRound] = useState(0);
  const [saves, setSaves] = useState(0);
  useEffect(() => {
    void openWith(store, location.search, Date.now()).then((found) => {
      setOpening(found);
      setCurrent(found.current);
      setOwn(found.own);
      if (found.current) document.title = `${found.current.recipe.title} – Crumbshift`;
    });
  }, []);
  const show = (next: Current) => {
    setCurrent(next);
    setRound(round + 1);
    document.title = `${next.recipe.title} – Crumbshift`;
    void storeCurrent(browser.storage.session, next);
    window.scrollTo(0, 0);
  };
  return (
    <>
      <Masthead>
        <nav aria-label="Parts of this page" class="no-print">
          {current && <a href="#recipe">Recipe</a>}
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
        {opening?.trouble && (
          <Message title="Not everything could be opened" alert>
            <p>{opening.trouble}</p>
          </Message>
        )}
        {!opening && <Message title="Opening…" />}
        {opening && current && (
          <Workbench
            key={round}
            start={current}
            preferences={opening.preferences}
            ownFoods={own.foods}
            store={store}
            onSaved={() => setSaves(saves + 1)}
          />
        )}
        {opening && (
          <section id="paste" class="no-print" aria-labelledby="paste-title">
            <h2 id="paste-title">Paste a recipe</h2>
            <PasteBox onRecipe={(recipe) => show(fresh(recipe, opening.preferences))} />
          </section>
        )}
        {opening && <Packages store={store} own={own} onChanged={setOwn} />}
        {opening && (
          <Saved
            store={store}
            saves={saves}
            onImported={() => void listOwnFoods(store).then(setOwn, () => {})}
          />
        )}
      </main>
    </>
  );
}
