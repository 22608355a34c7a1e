/** States of the work before and after the one on the screen, for undo and redo. */
import type { Current } from '../../store/working/current.ts';

export interface Past {
  /** Oldest first. */
  before: readonly Current[];
  /** The next one to come back last. */
  after: readonly Current[];
}

/** Steps that can be taken back; own choice. */
const MOST = 100;

/** A change was made: what was undone before it is gone. */
export const recorded = ({ before }: Past, current: Current): Past => ({
  before: [...before, current].slice(-MOST),
  after: [],
});

export interface Moved {
  past: Past;
  state: Current;
}

/** One step back, or null when there is none. */
export function undone({ before, after }: Past, current: Current): Moved | null {
  const state = before.at(-1);
  return state
    ? { state, past: { before: before.slice(0, -1), after: [...after, current] } }
    : null;
}

/** One step forward again, or null when there is none. */
export function redone({ before, after }: Past, current: Current): Moved | null {
  const state = after.at(-1);
  return state
    ? { state, past: { before: [...before, current], after: after.slice(0, -1) } }
    : null;
}
