import { useState } from 'preact/hooks';
import { storageMessage } from '../../store/failure.ts';
import { weighedDish } from '../../store/kept/kept-bakes.ts';
import { sameWork, saveRecipe } from '../../store/kept/saved.ts';
import type { Work } from '../../store/records.ts';
import type { Current } from '../../store/working/current.ts';
import type { SaveAnswer } from '../../store/working/keeper.ts';
import { useTaught } from '../../ui/hooks/use-lessons.ts';
import { useWork, type WorkState } from '../../ui/hooks/use-work.ts';
import { say } from '../../ui/words/say.ts';
import { hold } from './hold.ts';
import type { Kitchen, OpenRecipe } from './kitchen.ts';
import { type History, useHistory } from './use-history.ts';

/** A dish that was put on the scale without logging a bake; it holds for this state only. */
interface Weighed {
  work: Work;
  /** Grams of the recipe made once. */
  grams: number | null;
}

async function keepNow(kitchen: Kitchen, work: WorkState, history: History): Promise<SaveAnswer> {
  const adaptation = work.settle();
  if (!adaptation) return { ok: false, why: say('couldNotWorkOut') };
  try {
    const what = { ...work.current, adaptation };
    const saved = await saveRecipe(kitchen.store, what, history.savedId, Date.now());
    work.setSavedId(saved.id);
    await history.read(saved.id);
    kitchen.noteSaved();
    return { ok: true, id: saved.id };
  } catch (error) {
    return { ok: false, why: storageMessage(error) };
  }
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
  const known = { ownFoods: own.foods, aliases: names.map, weighed, taught };
  const work = useWork(start, known, hold);
  const { adaptation, current } = work;
  const open = adaptation && {
    work,
    adaptation,
    history,
    factor,
    setFactor,
    weigh: (grams: number | null) => setOnScale({ work: current, grams: grams && grams / factor }),
    keep: () => keepNow(kitchen, work, history),
  };
  return { work, open };
}
