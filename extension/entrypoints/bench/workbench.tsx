import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Food } from '../../../engine/model.ts';
import { type Current, storeCurrent } from '../../store/current.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import type { SaveAnswer } from '../../store/keeper.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { SavedVersion } from '../../store/records.ts';
import { saveRecipe, versionsOf } from '../../store/saved.ts';
import { CarbStrip } from '../../ui/carb-strip.tsx';
import { Cautions } from '../../ui/cautions.tsx';
import { Frontier } from '../../ui/frontier.tsx';
import { GoalsBar } from '../../ui/goals-bar.tsx';
import { Headline } from '../../ui/headline.tsx';
import { Message } from '../../ui/message.tsx';
import { Method } from '../../ui/method.tsx';
import { NutrientTable } from '../../ui/nutrient-table.tsx';
import { RecipeFiles } from '../../ui/recipe-files.tsx';
import { RecipeRows } from '../../ui/recipe-rows.tsx';
import { SaveButton } from '../../ui/save-button.tsx';
import { SwapList } from '../../ui/swap-list.tsx';
import { UncertainLines } from '../../ui/uncertain-lines.tsx';
import { useWork } from '../../ui/use-work.ts';
import { Credit } from './credit.tsx';
import { Versions } from './versions.tsx';
import { Wishes } from './wishes.tsx';

interface Props {
  start: Current;
  preferences: Preferences;
  ownFoods: readonly Food[];
  store: Store;
  onSaved(): void;
}

const keep = (current: Current) => void storeCurrent(browser.storage.session, current);

/** One recipe in full. */
export function Workbench({ start, preferences, ownFoods, store, onSaved }: Props) {
  const work = useWork(start, ownFoods, keep);
  const { current, adaptation, table, changeGoals } = work;
  const { goals, savedId } = current;
  const [versions, setVersions] = useState<SavedVersion[]>([]);
  const readVersions = async (id: string | null) => {
    setVersions(id === null ? [] : await versionsOf(store, id).catch(() => []));
  };
  useEffect(() => void readVersions(savedId), [savedId]);
  if (!adaptation) {
    return (
      <Message title="This recipe could not be worked out" alert>
        <p>Paste it below instead; lines with an amount, a unit and a name are read best.</p>
      </Message>
    );
  }
  const save = async (): Promise<SaveAnswer> => {
    try {
      const saved = await saveRecipe(store, { ...current, adaptation }, savedId, Date.now());
      work.setSavedId(saved.id);
      await readVersions(saved.id);
      onSaved();
      return { ok: true, id: saved.id };
    } catch (error) {
      return { ok: false, why: storageMessage(error) };
    }
  };
  const pin = (key: string, on: boolean) => {
    const others = goals.pinned.filter((one) => one !== key);
    changeGoals({ pinned: on ? [...others, key] : others });
  };
  return (
    <article id="recipe">
      <Credit recipe={current.recipe} />
      <div class="bench-top">
        <Headline adaptation={adaptation} />
        <div class="bench-goals">
          <GoalsBar adaptation={adaptation} onGoals={changeGoals} />
          <div class="actions no-print">
            <SaveButton what={adaptation} again={savedId !== null} save={save} />
            <RecipeFiles adaptation={adaptation} />
          </div>
          <Wishes goals={goals} family={adaptation.plan.family} onGoals={changeGoals} />
        </div>
      </div>
      <CarbStrip adaptation={adaptation} />
      <RecipeRows adaptation={adaptation} onPin={pin} />
      <Method adaptation={adaptation} />
      <div class="bench-pair">
        <SwapList
          adaptation={adaptation}
          onForbid={(id) => changeGoals({ excludedSwaps: [...goals.excludedSwaps, id] })}
        />
        <div>
          <NutrientTable adaptation={adaptation} preferences={preferences} />
          <Frontier adaptation={adaptation} onBudget={(budgetG) => changeGoals({ budgetG })} />
        </div>
      </div>
      <UncertainLines adaptation={adaptation} table={table} onCorrect={work.correct} />
      <Cautions adaptation={adaptation} />
      <Versions
        versions={versions}
        onTake={({ recipe, goals: old, corrections }) =>
          work.replace({ recipe, goals: old, corrections, savedId })
        }
      />
    </article>
  );
}
