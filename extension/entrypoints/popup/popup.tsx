import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Food, Recipe } from '../../../engine/model.ts';
import { listAliases } from '../../store/aliases.ts';
import { type Current, loadCurrent, sameRecipe } from '../../store/current.ts';
import { openStore } from '../../store/db.ts';
import { listOwnFoods } from '../../store/kept-packages.ts';
import {
  DEFAULT_PREFERENCES,
  goalsFrom,
  loadPreferences,
  type Preferences,
} from '../../store/prefs.ts';
import type { Alias } from '../../store/records.ts';
import { findByPage } from '../../store/saved.ts';
import { Masthead } from '../../ui/controls/masthead.tsx';
import { Message } from '../../ui/controls/message.tsx';
import { openBench } from './open-bench.ts';
import { readTab, type TabAnswer } from './read-tab.ts';
import { Result } from './result.tsx';

interface Ready {
  start: Current;
  preferences: Preferences;
  ownFoods: readonly Food[];
  aliases: readonly Alias[];
}

/** Where to start with a recipe: what was asked of it last, in this session or when it was saved. */
async function prepare(recipe: Recipe): Promise<Ready> {
  // Neither is worth keeping the numbers from being shown.
  const preferences = await loadPreferences(browser.storage.local).catch(() => DEFAULT_PREFERENCES);
  const last = await loadCurrent(browser.storage.session).catch(() => null);
  const fresh: Current = {
    recipe,
    goals: goalsFrom(preferences),
    corrections: {},
    savedId: null,
  };
  const store = openStore();
  try {
    const [{ foods: ownFoods }, aliases] = await Promise.all([
      listOwnFoods(store),
      listAliases(store),
    ]);
    const known = { preferences, ownFoods, aliases };
    if (last && sameRecipe(last.recipe, recipe)) return { start: last, ...known };
    const saved = await findByPage(store, recipe);
    if (!saved) return { start: fresh, ...known };
    const { goals, id: savedId } = saved;
    const corrections = sameRecipe(saved.recipe, recipe) ? saved.corrections : {};
    return { start: { recipe, goals, corrections, savedId }, ...known };
  } catch {
    // A store that cannot be opened must not keep the numbers from being shown.
    return { start: fresh, preferences, ownFoods: [], aliases: [] };
  } finally {
    store.close();
  }
}

function NotRead({ answer }: { answer: Exclude<TabAnswer, { kind: 'recipes' }> }) {
  const none = answer.kind === 'none';
  return (
    <Message title={none ? 'No recipe found here' : 'This page cannot be read'} alert={!none}>
      <p>{answer.why}</p>
      {!none && (
        <p>
          You can still rework it: select the ingredients and the method on the page, copy them, and
          paste them in the full view.
        </p>
      )}
      <button type="button" class="primary" onClick={() => openBench('?paste')}>
        Paste a recipe in full view
      </button>
    </Message>
  );
}

function Choose({ recipes, onPick }: { recipes: Recipe[]; onPick(recipe: Recipe): void }) {
  return (
    <section class="message" aria-labelledby="choose-title">
      <h2 id="choose-title">This page has {recipes.length} recipes. Which one?</h2>
      <ul class="choices">
        {recipes.map((recipe, at) => (
          <li key={`${at}.${recipe.title}`}>
            <button type="button" onClick={() => onPick(recipe)}>
              {recipe.title}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Reads the current tab once, at opening, and shows a serving before and after. */
export function Popup() {
  const [answer, setAnswer] = useState<TabAnswer | null>(null);
  const [ready, setReady] = useState<Ready | null>(null);
  const pick = (recipe: Recipe) => void prepare(recipe).then(setReady);
  useEffect(() => {
    void readTab(location.search).then((found) => {
      setAnswer(found);
      const [only, second] = found.kind === 'recipes' ? found.recipes : [];
      if (only && !second) pick(only);
    });
  }, []);
  const several = answer?.kind === 'recipes' && answer.recipes.length > 1 ? answer.recipes : null;
  return (
    <>
      <Masthead>
        {ready && several && (
          <button type="button" onClick={() => setReady(null)}>
            Other recipes here
          </button>
        )}
      </Masthead>
      <main>
        {answer && answer.kind !== 'recipes' && <NotRead answer={answer} />}
        {!ready && several && <Choose recipes={several} onPick={pick} />}
        {!ready && (answer === null || (answer.kind === 'recipes' && !several)) && (
          <Message title="Reading the page…" />
        )}
        {ready && <Result {...ready} />}
      </main>
    </>
  );
}
