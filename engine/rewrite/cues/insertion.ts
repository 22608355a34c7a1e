/** Steps that are put into a method, and their places. */
import type { RewrittenStep } from '../../model.ts';
import type { Cue } from './cue.ts';

export interface Insertion {
  /** Index in the original method of the step it stands before; its length is the end. */
  at: number;
  /** Among insertions of one place: what opens the method, what follows a step, what precedes the next. */
  rank: number;
  step: RewrittenStep;
}

/** A step of our own. */
export const inserted = (text: string, why: string): RewrittenStep => ({
  section: null,
  before: null,
  after: text,
  change: 'inserted',
  why,
});

/** Order of the places a cue may have. */
export const RANKS = ['start', 'after', 'end', 'before'];

/** Where a cue goes: the index of the step it stands before; `length` is the end; null is nowhere. */
export function placeOf(cue: Cue, texts: readonly string[]): number | null {
  if (cue.place === 'start' || texts.length === 0) return 0;
  if (cue.place === 'end' || cue.where === undefined) return texts.length;
  const pattern = new RegExp(cue.where, 'i');
  const all = texts.flatMap((text, at) => (pattern.test(text) ? [at] : []));
  const prefers = cue.prefers === undefined ? null : new RegExp(cue.prefers, 'i');
  const best = prefers === null ? [] : all.filter((at) => prefers.test(texts[at] ?? ''));
  const hits = best.length > 0 ? best : all;
  const first = hits[0];
  const last = hits.at(-1);
  if (first === undefined || last === undefined) {
    if (cue.anyway !== true) return null;
    return cue.place === 'before' ? 0 : texts.length;
  }
  if (cue.place === 'before') return first;
  return (cue.first === true ? first : last) + 1;
}
