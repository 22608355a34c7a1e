/** What the bakes taught, as it was read from disk and as it changes from now on. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { BakeFacts, Lesson, Taught } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';
import type { Store } from '../../store/db.ts';
import { listFacts } from '../../store/kept/bake-facts-kept.ts';
import { lessonsOf, taughtOf } from '../../store/kept/taught-kept.ts';
import { afterPaint } from './after-paint.ts';

export interface Facts {
  facts: readonly BakeFacts[];
  reload(): void;
}

const NONE: readonly BakeFacts[] = [];

/** `start` is null when they are to be read so many milliseconds after the page is drawn. */
export function useFacts(start: readonly BakeFacts[] | null, store: Store, afterMs: number): Facts {
  const [facts, setFacts] = useState(start ?? NONE);
  const reload = () => void listFacts(store).then(setFacts, () => {});
  useEffect(() => (start === null ? afterPaint(reload, afterMs) : undefined), []);
  return { facts, reload };
}

export interface Lessons extends Facts {
  lessons: readonly Lesson[];
  /** Ids of what the plan is to leave alone. */
  off: readonly string[];
  /** Switches a lesson, or a change that a fault taught, on or off. */
  turn(id: string, on: boolean): void;
  own: readonly Food[];
}

interface Switches {
  off: readonly string[];
  onOff(off: string[]): void;
}

export function useLessons(
  { facts, reload }: Facts,
  own: readonly Food[],
  { off, onOff }: Switches,
): Lessons {
  const lessons = useMemo(() => lessonsOf(facts, own), [facts, own]);
  const turn = (id: string, on: boolean) => {
    const others = off.filter((one) => one !== id);
    onOff(on ? others : [...others, id]);
  };
  return { facts, reload, lessons, off, turn, own };
}

/** Lessons that are on for the recipe on the screen; the same object until one of them changes. */
export const useTaught = ({ lessons, own, off }: Lessons, recipeId: string | null): Taught =>
  useMemo(() => taughtOf(lessons, own, off, recipeId), [lessons, own, off, recipeId]);
