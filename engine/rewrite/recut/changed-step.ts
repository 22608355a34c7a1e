/** A step of a method put right for another number of pieces. */
import type { MethodNote, RewrittenStep } from '../../model.ts';
import { markedStep } from '../languages/unworded.ts';

export interface Method {
  steps: RewrittenStep[];
  methodNotes: MethodNote[];
}

export const changedTo = (step: RewrittenStep, after: string, why: string): RewrittenStep => ({
  ...step,
  after,
  change: step.before === null ? step.change : 'changed',
  why: step.why === null ? why : `${step.why} ${why}`,
});

/** A step of our own behind one of the method, where a language has no words for a sentence within it. */
export function stepBehind(method: Method, at: number, text: string, why: string): Method {
  const own = markedStep({
    section: method.steps[at]?.section ?? null,
    before: null,
    after: text,
    change: 'inserted',
    why,
  });
  return {
    steps: method.steps.toSpliced(at + 1, 0, own),
    methodNotes: method.methodNotes.map((note) =>
      note.step === null || note.step <= at ? note : { ...note, step: note.step + 1 },
    ),
  };
}

export const replaced = (method: Method, at: number, step: RewrittenStep): Method => ({
  ...method,
  steps: method.steps.with(at, step),
});
