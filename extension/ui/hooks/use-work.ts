import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Taught, WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Food, Goals, Person } from '../../../engine/model.ts';
import type { Work } from '../../store/records.ts';
import type { Current } from '../../store/working/current.ts';
import type { Correction } from '../recipe/lines/correct-line.tsx';
import type { AsItIs } from '../solver/questions.ts';
import { answerHere, ask } from '../solver/solver.ts';
import { type Past, recorded, redone, undone } from './work-past.ts';

/** What the user has taught it. Packages or names that are another object count as changed. */
export interface Known {
  ownFoods: readonly Food[];
  /** Name to food id. */
  aliases: Record<string, string>;
  /** Grams of the dish on the scale when exactly this was baked, or null. */
  weighed?: (work: Work) => number | null;
  /** What the user has said of themselves; another object counts as changed. */
  person: Person;
  /** What bakes taught; another object counts as changed. */
  taught?: Taught;
}

/** `solved` is null until the first answer, and holds null when there is none. */
interface Solved {
  adaptation: Adaptation | null;
  options: WalkOptions;
}

export interface WorkState {
  current: Current;
  /** The last answer; null before the first one, and when the engine could not work the recipe out. */
  adaptation: Adaptation | null;
  /** What is known before the first answer; null when there is nothing to say yet. */
  asItIs: AsItIs | null;
  /** The answer on the screen is to an earlier question. */
  busy: boolean;
  /** The recipe could not be worked out. */
  failed: boolean;
  /** What the adaptation is made with. */
  options: WalkOptions;
  changeGoals(goals: Partial<Goals>): void;
  correct(key: string, correction: Correction | null): void;
  setSavedId(id: string): void;
  replace(current: Current): void;
  canUndo: boolean;
  canRedo: boolean;
  undo(): void;
  redo(): void;
  /** The answer to what is asked now, worked out at once when it is still under way. */
  settle(): Promise<Adaptation | null>;
}

/** The work on the screen with the states before and after it. */
interface Standing {
  current: Current;
  past: Past;
}

const NO_PAST: Past = { before: [], after: [] };

/** The answer to a question, worked out beside the page; `settle` works it out in the page. */
function useSolved({ recipe, goals }: Current, options: WalkOptions) {
  const [solved, setSolved] = useState<Solved | null>(null);
  const [asItIs, setAsItIs] = useState<AsItIs | null>(null);
  const latest = useRef<Solved | null>(null);
  const newest = useRef(options);
  newest.current = options;
  const question = { recipe, goals, options };
  const take = (adaptation: Adaptation | null): Solved => {
    const taken = { adaptation, options };
    latest.current = taken;
    setSolved(taken);
    return taken;
  };
  const isSettled = () => latest.current?.options === options;
  const hearer = {
    onAnswer: (answer: Adaptation | null) => void (isSettled() || take(answer)),
    onEarly: (early: AsItIs) => void (latest.current || setAsItIs(early)),
  };
  useEffect(() => ask(question, hearer), [options]);
  return {
    solved,
    asItIs,
    busy: solved?.options !== options,
    settle: async (): Promise<Solved> => {
      if (latest.current?.options === options) return latest.current;
      const adaptation = await answerHere(question);
      // Another question may be on the screen by now.
      return newest.current === options ? take(adaptation) : { adaptation, options };
    },
  };
}

/**
 * The recipe being worked on and its adaptation, worked out again after every change; every change
 * can be undone. `onChange` receives each new state, for keeping.
 */
export function useWork(
  start: Current,
  { ownFoods, aliases, person, weighed, taught }: Known,
  onChange: (current: Current) => void,
): WorkState {
  const [{ current, past }, setStanding] = useState<Standing>({ current: start, past: NO_PAST });
  // What was done last counts, drawn or not: two quick presses are two steps.
  const latest = useRef<Standing>({ current, past });
  const { recipe, goals, corrections } = current;
  const reworkedGrams = weighed?.(current) ?? null;
  const options = useMemo<WalkOptions>(
    () => ({
      ownFoods,
      aliases,
      person,
      corrections,
      reworkedGrams,
      ...(taught ? { taught } : {}),
    }),
    [recipe, goals, corrections, ownFoods, aliases, person, reworkedGrams, taught],
  );
  const { solved, asItIs, busy, settle } = useSolved(current, options);
  const stand = (next: Standing) => {
    latest.current = next;
    setStanding(next);
    onChange(next.current);
  };
  const update = (change: (current: Current) => Current) => {
    const { current: old, past: earlier } = latest.current;
    stand({ current: change(old), past: recorded(earlier, old) });
  };
  const step = (move: typeof undone) => {
    const { current: old, past: earlier } = latest.current;
    const moved = move(earlier, old);
    if (moved) stand({ past: moved.past, current: { ...moved.state, savedId: old.savedId } });
  };
  return {
    current,
    adaptation: solved?.adaptation ?? null,
    asItIs,
    busy,
    failed: solved !== null && solved.adaptation === null && !busy,
    options,
    changeGoals: (change) => update((old) => ({ ...old, goals: { ...old.goals, ...change } })),
    correct: (key, correction) =>
      update((old) => {
        const { [key]: earlier, ...others } = old.corrections;
        if (!correction) return { ...old, corrections: others };
        // Grams typed right after a food was chosen keep the food.
        return { ...old, corrections: { ...others, [key]: { ...earlier, ...correction } } };
      }),
    setSavedId: (savedId) =>
      stand({ ...latest.current, current: { ...latest.current.current, savedId } }),
    replace: (next) => update(() => next),
    canUndo: past.before.length > 0,
    canRedo: past.after.length > 0,
    undo: () => step(undone),
    redo: () => step(redone),
    settle: async () => (await settle()).adaptation,
  };
}
