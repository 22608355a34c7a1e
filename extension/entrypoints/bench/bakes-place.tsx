import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { adaptRecipe, proposeAdjustments, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Adjustment, Goals } from '../../../engine/model.ts';
import type { Current } from '../../store/current.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { type BakeLog, deleteBake, saveBake } from '../../store/kept-bakes.ts';
import type { Bake } from '../../store/records.ts';
import { BakeForm, type BakeWords } from '../../ui/bakes/bake-form.tsx';
import { BakeList } from '../../ui/bakes/bake-list.tsx';
import { bakeOf } from '../../ui/bakes/bake-summary.ts';
import { cookWords } from '../../ui/bakes/dish-words.ts';
import { Proposals } from '../../ui/bakes/proposals.tsx';
import { dayText } from '../../ui/figures/format.ts';

interface Props {
  store: Store;
  current: Current;
  adaptation: Adaptation;
  options: WalkOptions;
  log: BakeLog;
  /** How much of the recipe is made, as chosen above. */
  factor: number;
  /** Reads the log again. */
  onLogged(): Promise<void>;
  onGoals(goals: Partial<Goals>): void;
}

/** What to change after a bake, judged by the plan that was baked, not by the one on the screen. */
function proposalsAfter(bake: Bake | undefined, options: WalkOptions): Adjustment[] {
  if (!bake || bake.symptoms.length === 0) return [];
  const { recipe, goals, corrections } = bake.baked;
  try {
    const baked = adaptRecipe(recipe, goals, { ...options, corrections });
    const { innerC, cooledHours } = bake;
    return proposeAdjustments(baked, bake.symptoms, {
      innerC,
      cooledHours,
      ...(options.ownFoods ? { ownFoods: options.ownFoods } : {}),
    });
  } catch (error) {
    console.error(error);
    return [];
  }
}

/** The bake log of a saved recipe: tell of a bake, see what it says, take up what it asks for. */
export function Bakes(props: Props) {
  const { store, current, adaptation, options, log, factor, onLogged, onGoals } = props;
  const [said, setSaid] = useState('');
  const [gone, setGone] = useState<Bake | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const form = useRef<HTMLDetailsElement>(null);
  useEffect(() => undo.current?.focus(), [gone]);
  const { savedId, goals } = current;
  const latest = log.bakes[0];
  const asked = useMemo(
    () => proposalsAfter(latest, options),
    [latest, options.ownFoods, options.aliases],
  );
  const proposals = asked.filter(({ id }) => goals.adjustments.every((one) => one.id !== id));
  const attempt = async (job: () => Promise<void>): Promise<string | null> => {
    try {
      await job();
      await onLogged();
      setFailure(null);
      return null;
    } catch (error) {
      return storageMessage(error);
    }
  };
  const keep = async (words: BakeWords): Promise<string | null> => {
    if (savedId === null) return 'Save the recipe first.';
    const why = await attempt(() =>
      saveBake(
        store,
        bakeOf(words, current, adaptation, { recipeId: savedId, factor, now: Date.now() }),
      ),
    );
    if (why === null) {
      setGone(null);
      if (form.current) form.current.open = false;
      form.current?.querySelector('summary')?.focus();
      setSaid(`The bake of ${dayText(words.day)} is kept.`);
    }
    return why;
  };
  const remove = async (bake: Bake) => {
    const why = await attempt(() => deleteBake(store, bake.id));
    setFailure(why);
    if (why !== null) return;
    setSaid('');
    setGone(bake);
  };
  const bringBack = async (bake: Bake) => {
    const why = await attempt(() => saveBake(store, bake));
    setFailure(why);
    if (why === null) setGone(null);
  };
  const adjust = (adjustments: Adjustment[], words: string) => {
    onGoals({ adjustments });
    setSaid(words);
    // The pressed button is gone now; focus goes to the head of the log.
    heading.current?.focus();
  };
  const accept = (one: Adjustment) =>
    adjust(
      [...goals.adjustments, one],
      'Taken up: the recipe above is worked out with it. Save this version to keep it.',
    );
  const withdraw = (one: Adjustment) =>
    adjust(
      goals.adjustments.filter(({ id }) => id !== one.id),
      'Withdrawn: the recipe above is worked out without it.',
    );
  return (
    <section class="bake-log no-print" aria-labelledby="bakes-title" id="bakes">
      <h2 id="bakes-title" ref={heading} tabIndex={-1}>
        Bake log
      </h2>
      {savedId === null ? (
        <p>Save the recipe, then tell here how each bake came out.</p>
      ) : (
        <details ref={form}>
          <summary>{cookWords(adaptation.plan.family.id).did}</summary>
          <BakeForm family={adaptation.plan.family.id} factor={factor} onKeep={keep} />
        </details>
      )}
      <div role="status" class="undo">
        {said !== '' && <p>{said}</p>}
        {gone && (
          <p>
            The bake of {dayText(gone.day)} is removed.{' '}
            <button type="button" ref={undo} onClick={() => void bringBack(gone)}>
              Undo
            </button>
          </p>
        )}
      </div>
      {failure && (
        <p role="alert" class="failure">
          {failure}
        </p>
      )}
      {log.damaged > 0 && (
        <p role="alert" class="failure">
          {log.damaged === 1 ? 'One bake' : `${log.damaged} bakes`} cannot be read. Nothing was
          removed: an export still holds what is stored.
        </p>
      )}
      <BakeList
        bakes={log.bakes}
        adaptation={adaptation}
        onServings={(servings) => onGoals({ servings })}
        onRemove={(bake) => void remove(bake)}
      />
      <Proposals
        proposals={proposals}
        accepted={goals.adjustments}
        onAccept={accept}
        onWithdraw={withdraw}
      />
    </section>
  );
}
