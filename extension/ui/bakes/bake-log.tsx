/** The bake log of a kept recipe: tell of a bake, see what it says, take up what it asks for. */

import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { adaptRecipe, proposeAdjustments, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Adjustment, Goals } from '../../../engine/model.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { type BakeLog, deleteBake, saveBake } from '../../store/kept/kept-bakes.ts';
import type { Bake } from '../../store/records.ts';
import type { Current } from '../../store/working/current.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { dayText } from '../figures/format.ts';
import { say, sayCount } from '../words/say.ts';
import { answeredSymptoms, waitsForAnother } from './answered-symptoms.ts';
import { BakeForm, type BakeWords } from './bake-form.tsx';
import { BakeList } from './bake-list.tsx';
import { bakeOf } from './bake-summary.ts';
import { cookWords } from './dish-words.ts';
import type { Heat } from './heat-scale.ts';
import type { MeterUnit } from './meter/meter-series.ts';
import { Proposals } from './proposals.tsx';

interface Props {
  store: Store;
  current: Current;
  adaptation: Adaptation;
  options: WalkOptions;
  log: BakeLog;
  /** How much of the recipe is made. */
  factor: number;
  /** Unit of the user's meter. */
  meter: MeterUnit;
  onMeterUnit(unit: MeterUnit): void;
  /** Scale of the user's oven. */
  heat: Heat;
  /** Reads the log again. */
  onLogged(): Promise<void>;
  onGoals(goals: Partial<Goals>): void;
}

/** What to change after a bake, judged by the plan that was baked, not by the one on the screen. */
function proposalsAfter(bakes: readonly Bake[], options: WalkOptions): Adjustment[] {
  const bake = bakes[0];
  const symptoms = answeredSymptoms(bakes);
  if (!bake || symptoms.length === 0) return [];
  const { recipe, goals, corrections } = bake.baked;
  try {
    const baked = adaptRecipe(recipe, goals, { ...options, corrections });
    const { innerC, cooledHours } = bake;
    return proposeAdjustments(baked, symptoms, {
      innerC,
      cooledHours,
      ...(options.ownFoods ? { ownFoods: options.ownFoods } : {}),
    });
  } catch (error) {
    console.error(error);
    return [];
  }
}

/** Writing to the log: what was said of it, what was removed, what failed. */
function useLogging({ store, current, adaptation, factor, onLogged }: Props) {
  const [said, setSaid] = useState('');
  const [gone, setGone] = useState<Bake | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
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
    const recipeId = current.savedId;
    if (recipeId === null) return say('keepFirst');
    const bake = bakeOf(words, current, adaptation, { recipeId, factor, now: Date.now() });
    const why = await attempt(() => saveBake(store, bake));
    if (why !== null) return why;
    setGone(null);
    setSaid(say('bakeKept', dayText(words.day)));
    return null;
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
  return { said, setSaid, gone, failure, keep, remove, bringBack };
}

type Logging = ReturnType<typeof useLogging>;

/** What was done last, with the way back. */
function LogState({ logging, damaged }: { logging: Logging; damaged: number }) {
  const { said, gone, failure, bringBack } = logging;
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => undo.current?.focus(), [gone]);
  return (
    <>
      <div role="status" class="undo">
        {said !== '' && <p>{said}</p>}
        {gone && (
          <p>
            {say('bakeRemoved', dayText(gone.day))}{' '}
            <button type="button" class="button" ref={undo} onClick={() => void bringBack(gone)}>
              {say('undo')}
            </button>
          </p>
        )}
      </div>
      <FailureLine text={failure} />
      <FailureLine text={damaged > 0 && sayCount('bakesDamaged', damaged)} />
    </>
  );
}

function TellOfBake(props: Props & { logging: Logging }) {
  const { adaptation, factor, meter, onMeterUnit, heat, current, logging } = props;
  const form = useRef<HTMLDetailsElement>(null);
  const family = adaptation.plan.family.id;
  if (current.savedId === null) return <p>{say('keepFirst')}</p>;
  const keep = async (words: BakeWords) => {
    const why = await logging.keep(words);
    if (why !== null) return why;
    if (form.current) form.current.open = false;
    form.current?.querySelector('summary')?.focus();
    return null;
  };
  return (
    <details ref={form} class="plain-fold">
      <summary>{cookWords(family).did}</summary>
      <BakeForm
        family={family}
        factor={factor}
        meter={meter}
        onMeterUnit={onMeterUnit}
        heat={heat}
        onKeep={keep}
      />
    </details>
  );
}

export function BakeLogPart(props: Props) {
  const { current, adaptation, options, log, onGoals } = props;
  const { goals } = current;
  const logging = useLogging(props);
  const head = useRef<HTMLDivElement>(null);
  const asked = useMemo(
    () => proposalsAfter(log.bakes, options),
    [log.bakes, options.ownFoods, options.aliases],
  );
  const adjust = (adjustments: Adjustment[], words: string) => {
    onGoals({ adjustments });
    logging.setSaid(words);
    // The pressed button is gone now; focus goes to the head of the log.
    head.current?.focus();
  };
  return (
    <div class="bake-log" ref={head} tabIndex={-1}>
      <TellOfBake {...props} logging={logging} />
      <LogState logging={logging} damaged={log.damaged} />
      <BakeList
        store={props.store}
        bakes={log.bakes}
        adaptation={adaptation}
        heat={props.heat}
        onServings={(servings) => onGoals({ servings })}
        onRemove={(bake) => void logging.remove(bake)}
      />
      {waitsForAnother(log.bakes) && <p class="soft">{say('glucoseOnce')}</p>}
      <Proposals
        proposals={asked.filter(({ id }) => goals.adjustments.every((one) => one.id !== id))}
        onAccept={(one) => adjust([...goals.adjustments, one], say('changeTaken'))}
      />
    </div>
  );
}
