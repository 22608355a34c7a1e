import { useCallback, useState } from 'preact/hooks';
import { weighedDish } from '../../store/bakes.ts';
import type { Current } from '../../store/current.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import type { SaveAnswer } from '../../store/keeper.ts';
import { withoutLearned } from '../../store/lesson.ts';
import type { OwnFoods } from '../../store/own-foods.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { Work } from '../../store/records.ts';
import { sameWork, saveRecipe } from '../../store/saved.ts';
import { CarbStrip } from '../../ui/carb-strip.tsx';
import { Cautions } from '../../ui/cautions.tsx';
import { Closeness } from '../../ui/closeness.tsx';
import { DishKind } from '../../ui/dish-kind.tsx';
import { Frontier } from '../../ui/frontier.tsx';
import { GoalsBar } from '../../ui/goals-bar.tsx';
import { Headline } from '../../ui/headline.tsx';
import { Message } from '../../ui/message.tsx';
import { Method } from '../../ui/method.tsx';
import { NutrientTable } from '../../ui/nutrient-table.tsx';
import { RecipeFiles } from '../../ui/recipe-files.tsx';
import { RecipeRows } from '../../ui/recipe-rows.tsx';
import { SaveButton } from '../../ui/save-button.tsx';
import { StatedFigures } from '../../ui/stated-figures.tsx';
import { SwapList } from '../../ui/swap-list.tsx';
import { TraceContext, useLazyTrace } from '../../ui/trace-context.ts';
import { UncertainLines } from '../../ui/uncertain-lines.tsx';
import type { Names } from '../../ui/use-names.ts';
import type { Pantry } from '../../ui/use-pantry.ts';
import { useWork } from '../../ui/use-work.ts';
import { WeighSlice } from '../../ui/weigh-slice.tsx';
import { Bakes } from './bakes.tsx';
import { Credit } from './credit.tsx';
import { hold } from './hold.ts';
import { LearnedWater } from './learned-water.tsx';
import { useHistory } from './use-history.ts';
import { Versions } from './versions.tsx';
import { Wishes } from './wishes.tsx';

interface Props {
  start: Current;
  preferences: Preferences;
  own: OwnFoods;
  names: Names;
  pantry: Pantry;
  store: Store;
  /** Goes up with each file read in. */
  imports: number;
  onPreferences(change: Partial<Preferences>): void;
  /** Something was saved: lists of saved recipes are read again. */
  onSaved(): void;
  /** Packages were changed on disk. */
  onOwnChanged(): void;
}

/** A dish that was put on the scale without logging a bake; it holds for this state only. */
interface Weighed {
  work: Work;
  grams: number | null;
}

/** One recipe in full. */
export function Workbench(props: Props) {
  const { start, preferences, own, names, pantry, store, onSaved } = props;
  const [savedId, setSavedId] = useState(start.savedId);
  const history = useHistory(store, savedId, props.imports, onSaved);
  const [onScale, setOnScale] = useState<Weighed | null>(null);
  const [factor, setFactor] = useState(1);
  const { bakes } = history.log;
  const weighed = useCallback(
    (work: Work) =>
      onScale && sameWork(onScale.work, work) ? onScale.grams : weighedDish(bakes, work),
    [onScale, bakes],
  );
  const work = useWork(start, { ownFoods: own.foods, aliases: names.map, weighed }, hold);
  const { current, adaptation, table, options, changeGoals } = work;
  const trace = useLazyTrace(adaptation, own.foods);
  const { goals } = current;
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
      setSavedId(saved.id);
      await history.reload(saved.id);
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
    <TraceContext.Provider value={trace}>
      <article id="recipe">
        <Credit recipe={current.recipe} />
        <div class="bench-top">
          <div>
            <Headline adaptation={adaptation} />
            <CarbStrip adaptation={adaptation} />
          </div>
          <div class="bench-goals no-print">
            <GoalsBar adaptation={adaptation} onGoals={changeGoals} />
            <DishKind goals={goals} plan={adaptation.plan} onGoals={changeGoals} />
            <div class="actions">
              <SaveButton what={adaptation} again={savedId !== null} save={save} />
              <RecipeFiles adaptation={adaptation} />
            </div>
            <Wishes
              adaptation={adaptation}
              preferences={preferences}
              table={table}
              pantry={pantry}
              onGoals={changeGoals}
            />
          </div>
        </div>
        <RecipeRows
          adaptation={adaptation}
          wish={{ system: preferences.amounts, factor }}
          ownFoods={own.foods}
          onWish={({ system, factor: next }) => {
            setFactor(next);
            if (system !== preferences.amounts) props.onPreferences({ amounts: system });
          }}
          onPin={pin}
        />
        <Method adaptation={adaptation} factor={factor} />
        <div class="bench-pair">
          <SwapList
            adaptation={adaptation}
            onForbid={(id) => changeGoals({ excludedSwaps: [...goals.excludedSwaps, id] })}
          />
          <div>
            <NutrientTable adaptation={adaptation} preferences={preferences} />
            <Frontier adaptation={adaptation} onBudget={(budgetG) => changeGoals({ budgetG })} />
            <Closeness adaptation={adaptation} />
          </div>
        </div>
        <WeighSlice
          adaptation={adaptation}
          factor={factor}
          dishGrams={options.reworkedGrams ? options.reworkedGrams * factor : null}
          onDish={(grams) => setOnScale({ work: current, grams: grams && grams / factor })}
        />
        <StatedFigures adaptation={adaptation} />
        <UncertainLines
          adaptation={adaptation}
          table={table}
          options={options}
          names={names}
          onCorrect={work.correct}
        />
        <Cautions adaptation={adaptation} />
        {history.failure && (
          <p role="alert" class="failure">
            {history.failure}
          </p>
        )}
        <Bakes
          store={store}
          current={current}
          adaptation={adaptation}
          options={options}
          log={history.log}
          factor={factor}
          onLogged={() => history.reload()}
          onGoals={changeGoals}
        />
        <LearnedWater
          store={store}
          own={own}
          adaptation={adaptation}
          options={options}
          savedId={savedId}
          onKept={(lesson) => {
            changeGoals({ adjustments: withoutLearned(goals.adjustments, lesson) });
            props.onOwnChanged();
            onSaved();
          }}
        />
        <Versions
          now={history.now}
          versions={history.versions}
          adaptation={adaptation}
          onSayNow={history.sayNow}
          onSay={history.say}
          onTake={({ recipe, goals: old, corrections }) =>
            work.replace({ recipe, goals: old, corrections, savedId })
          }
        />
      </article>
    </TraceContext.Provider>
  );
}
