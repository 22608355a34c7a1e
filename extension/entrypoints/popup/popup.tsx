/** Reads the current tab once, at opening, and shows a serving before and after. */
import { useEffect, useState } from 'preact/hooks';
import type { Recipe } from '../../../engine/model.ts';
import { Foot } from '../../ui/about/foot.tsx';
import { LoafDefs } from '../../ui/figures/loaf/loaf-defs.tsx';
import { sayCount } from '../../ui/words/say.ts';
import { type Gathering, gatherTab } from './gather-tab.ts';
import { NoRecipe } from './no-recipe.tsx';
import { openBench } from './open-bench.ts';
import { PopupHead } from './popup-head.tsx';
import { openKitchen, prepare, type Ready } from './prepare.ts';
import { readTab, type TabAnswer } from './read-tab.ts';
import { Result } from './result.tsx';
import { WorkingHead } from './working-head.tsx';

function Choose({ recipes, onPick }: { recipes: Recipe[]; onPick(recipe: Recipe): void }) {
  return (
    <section class="message" aria-labelledby="choose-title">
      <h2 id="choose-title">{sayCount('severalRecipes', recipes.length)}</h2>
      <ul class="choices">
        {recipes.map((recipe, at) => (
          <li key={`${at}.${recipe.title}`}>
            <button type="button" class="choice" onClick={() => onPick(recipe)}>
              <b lang={recipe.language ?? undefined} dir="auto">
                {recipe.title}
              </b>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface Reading {
  answer: TabAnswer | null;
  ready: Ready | null;
  pick(recipe: Recipe): void;
  again(): void;
  forget(): void;
}

/** The tab is read at once, by what was gathered while this was loaded, and again when the user asks for it. */
function useReading(first: Promise<Gathering>): Reading {
  const [answer, setAnswer] = useState<TabAnswer | null>(null);
  const [ready, setReady] = useState<Ready | null>(null);
  const [round, setRound] = useState(0);
  const pick = (recipe: Recipe, kitchen = openKitchen()) =>
    void prepare(recipe, kitchen).then(setReady);
  useEffect(() => {
    const kitchen = openKitchen();
    void readTab(round === 0 ? first : gatherTab(location.search)).then((found) => {
      setAnswer(found);
      const [only, second] = found.kind === 'recipes' ? found.recipes : [];
      if (only && !second) pick(only, kitchen);
      else void kitchen.then(({ store }) => store.close());
    });
  }, [round]);
  return {
    answer,
    ready,
    pick: (recipe) => pick(recipe),
    again: () => {
      setAnswer(null);
      setRound(round + 1);
    },
    forget: () => setReady(null),
  };
}

export function Popup({ first }: { first: Promise<Gathering> }) {
  const { answer, ready, pick, again, forget } = useReading(first);
  const recipes = answer?.kind === 'recipes' ? answer.recipes : [];
  const several = recipes.length > 1;
  if (ready) {
    return (
      <>
        <LoafDefs />
        <Result {...ready} onOthers={several ? forget : null} />
      </>
    );
  }
  if (answer === null || (answer.kind === 'recipes' && !several)) {
    return (
      <>
        <LoafDefs />
        <WorkingHead title={recipes[0]?.title ?? null} />
      </>
    );
  }
  return (
    <>
      <LoafDefs />
      <PopupHead title="Crumbshift" language={null} />
      <main>
        {answer.kind === 'recipes' ? (
          <Choose recipes={recipes} onPick={pick} />
        ) : (
          <NoRecipe answer={answer} onAgain={again} />
        )}
        <Foot onOpen={(place) => void openBench(place)} />
      </main>
    </>
  );
}
