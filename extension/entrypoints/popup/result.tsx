import { useEffect, useMemo, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Adaptation, Food } from '../../../engine/model.ts';
import { type Current, storeCurrent } from '../../store/current.ts';
import { openStore } from '../../store/db.ts';
import { SaveAnswer, type SaveRequest } from '../../store/keeper.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { Alias } from '../../store/records.ts';
import { Message } from '../../ui/controls/message.tsx';
import { CarbStrip } from '../../ui/figures/carb-strip.tsx';
import { Cautions } from '../../ui/figures/cautions-list.tsx';
import { Headline } from '../../ui/figures/headline.tsx';
import { NutrientTable } from '../../ui/figures/nutrient-table.tsx';
import { TraceContext, useLazyTrace } from '../../ui/figures/trace-context.ts';
import { GoalsBar } from '../../ui/goals/goals-bar.tsx';
import { useNames, type WithStore } from '../../ui/hooks/use-names.ts';
import { useWork } from '../../ui/hooks/use-work.ts';
import { SaveButton } from '../../ui/kept/save-button.tsx';
import { SwapList } from '../../ui/recipe/swap-list.tsx';
import { UncertainLines } from '../../ui/recipe/uncertain-lines.tsx';
import { openBench } from './open-bench.ts';

interface Props {
  start: Current;
  preferences: Preferences;
  ownFoods: readonly Food[];
  aliases: readonly Alias[];
}

async function save(current: Current, adaptation: Adaptation, id: string): Promise<SaveAnswer> {
  const { recipe, goals, corrections } = current;
  const request: SaveRequest = {
    type: 'save',
    id,
    work: { recipe, goals, corrections, adaptation },
  };
  try {
    return SaveAnswer.parse(await browser.runtime.sendMessage(request));
  } catch {
    return { ok: false, why: 'The background of the extension did not answer. Try again.' };
  }
}

const withStore: WithStore = async (job) => {
  const store = openStore();
  try {
    return await job(store);
  } finally {
    store.close();
  }
};

/** One recipe in the popup. */
export function Result({ start, preferences, ownFoods, aliases }: Props) {
  const [notHeld, setNotHeld] = useState(false);
  const keep = (current: Current) =>
    void storeCurrent(browser.storage.session, current).then(
      () => setNotHeld(false),
      () => setNotHeld(true),
    );
  // Chosen here, so that a second try after a lost answer does not save a second recipe.
  const newId = useMemo(() => crypto.randomUUID(), [start]);
  const names = useNames(aliases, withStore);
  const work = useWork(start, { ownFoods, aliases: names.map }, keep);
  const { current, adaptation, table } = work;
  const trace = useLazyTrace(adaptation, ownFoods);
  useEffect(() => keep(start), [start]);
  if (!adaptation) {
    return (
      <Message title="This recipe could not be worked out" alert>
        <p>Nothing is wrong with the page. Open it in full to see what was read.</p>
      </Message>
    );
  }
  const saveNow = async () => {
    const answer = await save(current, adaptation, current.savedId ?? newId);
    if (answer.ok) work.setSavedId(answer.id);
    return answer;
  };
  return (
    <TraceContext.Provider value={trace}>
      <p class="dish" lang={current.recipe.language ?? undefined}>
        {current.recipe.title}
      </p>
      <Headline adaptation={adaptation} />
      <GoalsBar adaptation={adaptation} onGoals={work.changeGoals} />
      <CarbStrip adaptation={adaptation} />
      <SwapList adaptation={adaptation} />
      <NutrientTable adaptation={adaptation} preferences={preferences} />
      <UncertainLines
        adaptation={adaptation}
        table={table}
        options={work.options}
        names={names}
        onCorrect={work.correct}
      />
      <Cautions adaptation={adaptation} />
      <footer class="actions">
        <SaveButton what={adaptation} again={current.savedId !== null} save={saveNow} />
        <button
          type="button"
          disabled={notHeld && current.savedId === null}
          onClick={() => openBench(notHeld ? `?id=${current.savedId}` : '')}
        >
          Open in full
        </button>
        {notHeld && (
          <p role="alert" class="failure">
            The browser has no room to hand this recipe to the full view. Save it, then it opens as
            it was saved.
          </p>
        )}
      </footer>
    </TraceContext.Provider>
  );
}
