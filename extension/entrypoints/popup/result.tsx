/** One recipe in the popup: the verdict, what to do, what to mind; below it the figures. */

import { useEffect, useMemo, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { FoodTable } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { openStore } from '../../store/db.ts';
import type { Current } from '../../store/working/current.ts';
import { SaveAnswer, type SaveRequest } from '../../store/working/keeper.ts';
import { workHolder } from '../../store/working/unsaved.ts';
import { Foot } from '../../ui/about/foot.tsx';
import { FailureLine } from '../../ui/controls/failure-line.tsx';
import { Fold } from '../../ui/controls/fold.tsx';
import { Message } from '../../ui/controls/message.tsx';
import { Working } from '../../ui/controls/working.tsx';
import { AllergenAlert } from '../../ui/figures/allergens/allergen-alert.tsx';
import { AsItIsCard } from '../../ui/figures/as-it-is-card.tsx';
import { Cautions } from '../../ui/figures/cautions-list.tsx';
import { Concerns, NotCounted, Questions } from '../../ui/figures/concerns.tsx';
import { ServingGives } from '../../ui/figures/gives/serving-gives.tsx';
import { GraveLine, graveMark, graveText } from '../../ui/figures/grave.tsx';
import { CarbSources } from '../../ui/figures/sources/carb-sources.tsx';
import { TraceContext, useLazyTrace } from '../../ui/figures/sources/trace-context.ts';
import { VerdictCard } from '../../ui/figures/verdict-card.tsx';
import { GoalSteppers } from '../../ui/goals/goal-steppers.tsx';
import { useFoodTable } from '../../ui/hooks/use-food-table.ts';
import { useNames, type WithStore } from '../../ui/hooks/use-names.ts';
import { useWork, type WorkState } from '../../ui/hooks/use-work.ts';
import { KeepButton } from '../../ui/kept/keep-button.tsx';
import { ChangeList } from '../../ui/recipe/change-list.tsx';
import { wayDown } from '../../ui/ways/way-down.ts';
import { betterWays, WaySwitch, WaysOut, wayMeaning } from '../../ui/ways/way-switch.tsx';
import { portionWord } from '../../ui/words/portion.ts';
import { say } from '../../ui/words/say.ts';
import { openBench } from './open-bench.ts';
import { PopupHead } from './popup-head.tsx';
import { PopupWelcome } from './popup-welcome.tsx';
import type { Ready } from './prepare.ts';

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
    return { ok: false, why: say('backgroundSilent') };
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

type BenchPlace = '#stove' | '#recipe';

interface BarProps {
  work: WorkState;
  newId: string;
  /** The browser has no room to hand the recipe over. */
  notHeld: boolean;
  openAt(place: BenchPlace): void;
}

/** Cook this, Keep, Whole recipe: always in sight. */
function Bar({ work, newId, notHeld, openAt }: BarProps) {
  const { current } = work;
  const keep = async (): Promise<SaveAnswer> => {
    const adaptation = await work.settle();
    if (!adaptation) return { ok: false, why: say('couldNotWorkOut') };
    const answer = await save(current, adaptation, current.savedId ?? newId);
    if (answer.ok) work.setSavedId(answer.id);
    return answer;
  };
  const closed = notHeld && current.savedId === null;
  // What must be decided first has the one filled button.
  const undecided = (work.adaptation?.stillContains.length ?? 0) > 0;
  const tooMuch = work.adaptation?.verdict.state === 'tooMuch';
  return (
    <footer class="popup-bar">
      <FailureLine text={notHeld && say('noRoomToHand')} />
      <button
        type="button"
        class={undecided || tooMuch ? 'button wide' : 'button first'}
        disabled={closed}
        onClick={() => openAt('#stove')}
      >
        {say(tooMuch ? 'cookAnyway' : 'cookThis')}
      </button>
      <KeepButton what={work.options} again={current.savedId !== null} keep={keep} />
      <button type="button" class="button" disabled={closed} onClick={() => openAt('#recipe')}>
        {say('wholeRecipe')}
      </button>
    </footer>
  );
}

interface ViewProps {
  work: WorkState;
  adaptation: Adaptation;
  /** Null where nothing is avoided. */
  table: FoodTable | null;
  preferences: Ready['preferences'];
  openLine(): void;
}

/** All that matters, in the first 500 px. */
function AtOnce({ work, adaptation, table, openLine }: Omit<ViewProps, 'preferences'>) {
  const uncounted = adaptation.before.uncounted.length + adaptation.after.uncounted.length > 0;
  // What stands above the changes takes from their room.
  const crowded = uncounted || betterWays(adaptation).length > 0;
  // The switch waits until it is known what goes in.
  const settled = adaptation.stillContains.length === 0;
  return (
    <>
      <Questions adaptation={adaptation} onSay={openLine} />
      {table && (
        <AllergenAlert
          adaptation={adaptation}
          table={table}
          onGoals={work.changeGoals}
          onLine={openLine}
        />
      )}
      <VerdictCard adaptation={adaptation} aside={wayDown(adaptation)} />
      <GraveLine adaptation={adaptation} />
      <GoalSteppers adaptation={adaptation} goals={work.current.goals} onGoals={work.changeGoals} />
      <WaysOut adaptation={adaptation} onGoals={work.changeGoals} />
      <section class="what-you-do" aria-labelledby="do-title">
        <div class="do-head">
          <div>
            <h2 id="do-title">{say('whatYouDo')}</h2>
            {settled && <p class="way-meaning">{wayMeaning(adaptation)}</p>}
          </div>
          {settled && <WaySwitch adaptation={adaptation} onGoals={work.changeGoals} />}
        </div>
        <ChangeList adaptation={adaptation} mostLines={crowded ? 2 : 4} />
      </section>
      <NotCounted adaptation={adaptation} onSay={openLine} />
      <Concerns adaptation={adaptation} brief={graveText(adaptation) !== null} />
    </>
  );
}

function Below({ adaptation, preferences }: Pick<ViewProps, 'adaptation' | 'preferences'>) {
  return (
    <>
      <section class="gives">
        <h2>{say('whatGives', portionWord(adaptation))}</h2>
        <ServingGives adaptation={adaptation} preferences={preferences} />
      </section>
      <p class="care soft">{say('careTeam')}</p>
      <Fold name="sources" title={say('whereFiguresCome')}>
        {() => <CarbSources adaptation={adaptation} />}
      </Fold>
      <Fold name="cautions" title={say('cautions')} grave={graveMark(adaptation)}>
        {() => <Cautions adaptation={adaptation} />}
      </Fold>
    </>
  );
}

/** Holds the work for the full page under an id; says when the browser has no room for it. */
function useHeld({ start, held }: Pick<Ready, 'start' | 'held'>) {
  const [id, setId] = useState(held?.id ?? null);
  const [notHeld, setNotHeld] = useState(false);
  const holder = useMemo(() => workHolder(browser.storage.local, held), [held]);
  const hold = (current: Current) =>
    void holder.hold(current).then(
      (now) => {
        setId(now.id);
        setNotHeld(false);
      },
      () => setNotHeld(true),
    );
  useEffect(() => hold(start), [start]);
  return { id, notHeld, hold };
}

interface Props extends Ready {
  /** Back to the other recipes of the page, where there are any. */
  onOthers: (() => void) | null;
}

export function Result({ onOthers, ...ready }: Props) {
  const { start, held, ownFoods, aliases, taught } = ready;
  const [preferences, setPreferences] = useState(ready.preferences);
  const [asking, setAsking] = useState(false);
  const { id, notHeld, hold } = useHeld({ start, held });
  // Chosen here, so that a second try after a lost answer does not keep a second recipe.
  const newId = useMemo(() => crypto.randomUUID(), [start]);
  const names = useNames(aliases, withStore);
  const work = useWork(
    start,
    { ownFoods, aliases: names.map, person: preferences.person, taught },
    hold,
  );
  const { current } = work;
  const avoids = current.goals.avoid.length > 0 || (work.adaptation?.stillContains.length ?? 0) > 0;
  const table = useFoodTable(avoids, ownFoods);
  // Figures without what brings an allergen would be half of what must be known.
  const adaptation = avoids && !table ? null : work.adaptation;
  const trace = useLazyTrace(adaptation, ownFoods);
  // Not held yet is only not known yet: the full page begins with what was held last.
  const here = notHeld
    ? (`?id=${current.savedId}` as const)
    : id === null
      ? ''
      : (`?work=${id}` as const);
  const openAt = (place: BenchPlace) => void openBench(`${here}${place}`);
  return (
    <TraceContext.Provider value={trace}>
      <PopupHead
        title={current.recipe.title}
        language={current.recipe.language}
        onAsk={asking || preferences.welcomed ? undefined : () => setAsking(true)}
      />
      <main aria-busy={work.busy}>
        {onOthers && (
          <button type="button" class="button bare others" onClick={onOthers}>
            {say('otherRecipes')}
          </button>
        )}
        {!adaptation && !work.failed && (
          <>
            {work.asItIs && <AsItIsCard asItIs={work.asItIs} />}
            <Working title={say('workingOut')} />
          </>
        )}
        {work.failed && (
          <Message title={say('couldNotWorkOut')} alert>
            <p>{say('openToSee')}</p>
          </Message>
        )}
        {adaptation && (
          <>
            {asking && (
              <PopupWelcome
                asked
                start={ready.preferences}
                onAnswer={(next, goals) => {
                  setPreferences(next);
                  if (Object.keys(goals).length > 0) work.changeGoals(goals);
                }}
              />
            )}
            <AtOnce
              work={work}
              adaptation={adaptation}
              table={table}
              openLine={() => openAt('#recipe')}
            />
            <Below adaptation={adaptation} preferences={preferences} />
          </>
        )}
        <Foot onOpen={(place) => void openBench(place)} />
      </main>
      <Bar work={work} newId={newId} notHeld={notHeld} openAt={openAt} />
    </TraceContext.Provider>
  );
}
