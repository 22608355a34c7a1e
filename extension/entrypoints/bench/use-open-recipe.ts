import { useEffect, useState } from 'preact/hooks';
import { storageMessage } from '../../store/failure.ts';
import { weighedDish } from '../../store/kept/kept-bakes.ts';
import { sameWork, saveState } from '../../store/kept/saved.ts';
import type { Work } from '../../store/records.ts';
import type { Current } from '../../store/working/current.ts';
import type { SaveAnswer } from '../../store/working/keeper.ts';
import { useFoodTable } from '../../ui/hooks/use-food-table.ts';
import { useTaught } from '../../ui/hooks/use-lessons.ts';
import { useNever } from '../../ui/hooks/use-never.ts';
import { useWork, type WorkState } from '../../ui/hooks/use-work.ts';
import { say } from '../../ui/words/say.ts';
import type { Kitchen, OpenRecipe } from './kitchen.ts';
import { type History, useHistory } from './use-history.ts';

/** A dish that was put on the scale without logging a bake; it holds for this state only. */
interface Weighed {
  work: Work;
  /** Grams of the recipe made once. */
  grams: number | null;
}

interface Keeping {
  kitchen: Kitchen;
  work: WorkState;
  history: History;
  /** Another page kept another state meanwhile. */
  onElsewhere(): void;
}

async function keepNow(
  { kitchen, work, history, onElsewhere }: Keeping,
  auto: boolean,
): Promise<SaveAnswer> {
  const adaptation = await work.settle();
  if (!adaptation) return { ok: false, why: say('couldNotWorkOut') };
  try {
    const what = { ...work.current, adaptation };
    const known = history.state?.updatedAt ?? null;
    const how = { known, auto };
    const { saved, elsewhere } = await saveState(
      kitchen.store,
      what,
      history.savedId,
      Date.now(),
      how,
    );
    if (elsewhere) onElsewhere();
    work.setSavedId(saved.id);
    await history.read(saved.id);
    kitchen.noteSaved();
    return { ok: true, id: saved.id };
  } catch (error) {
    return { ok: false, why: storageMessage(error) };
  }
}

/** Rest after a change before it is written by itself, ms. Own choice. */
const AUTO_AFTER = 2500;

/** Writes what was changed on a kept recipe once the user rests; gives what went wrong. */
function useAutosave(keeping: Keeping, isKept: boolean): string | null {
  const { work, history } = keeping;
  const [failure, setFailure] = useState<string | null>(null);
  const due =
    history.state !== null && !history.state.away && !isKept && !work.busy && work.canUndo;
  useEffect(() => {
    if (!due) return;
    const timer = setTimeout(() => {
      void keepNow(keeping, true).then((answer) => setFailure(answer.ok ? null : answer.why));
    }, AUTO_AFTER);
    return () => clearTimeout(timer);
  }, [due, work.current]);
  return failure;
}

/** The recipe on the bench; `open` is null until it is worked out for the first time. */
export function useOpenRecipe(
  kitchen: Kitchen,
  start: Current,
): { work: WorkState; open: OpenRecipe | null } {
  const { store, own, names } = kitchen;
  const history = useHistory(store, start.savedId, kitchen.imports, kitchen.noteSaved);
  const [onScale, setOnScale] = useState<Weighed | null>(null);
  const [factor, setFactor] = useState(1);
  const taught = useTaught(kitchen.lessons, history.savedId);
  // Several weighed bakes are better than the last one alone.
  const bySeries = taught.lessons.some(
    ({ of, subject }) => of === 'dish-weight' && subject === history.savedId,
  );
  const logged = (work: Work) => (bySeries ? null : weighedDish(history.log.bakes, work));
  const weighed = (work: Work) =>
    onScale && sameWork(onScale.work, work) ? onScale.grams : logged(work);
  const { person } = kitchen.preferences;
  const known = { ownFoods: own.foods, aliases: names.map, person, weighed, taught };
  const work = useWork(start, known, kitchen.hold);
  const { adaptation, current } = work;
  const neverUse = useNever(current.goals.excludedFoods, {
    never: kitchen.preferences.never,
    onNever: (never) => kitchen.prefer({ never }),
  });
  const [elsewhere, setElsewhere] = useState(false);
  const keeping = { kitchen, work, history, onElsewhere: () => setElsewhere(true) };
  const isKept = history.state !== null && sameWork(history.state.work, current);
  const notWritten = useAutosave(keeping, isKept);
  const table = useFoodTable(true, own.foods);
  const open = adaptation &&
    table && {
      work,
      table,
      adaptation,
      history,
      factor,
      setFactor,
      weigh: (grams: number | null) =>
        setOnScale({ work: current, grams: grams && grams / factor }),
      neverUse,
      isKept,
      elsewhere,
      notWritten,
      keep: () => keepNow(keeping, false),
    };
  return { work, open };
}
