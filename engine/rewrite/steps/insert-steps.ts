/** Puts steps and sentences into a method where they belong. */
import type { RewrittenStep } from '../../model.ts';
import type { Insertion } from '../cues/insertion.ts';
import { literal } from '../wording/name-patterns.ts';
import { withSentence } from '../wording/sentences.ts';

/** Each text once, where it stands first. */
function saidOnce(insertions: readonly Insertion[]): Insertion[] {
  const said = new Set<string>();
  return insertions
    .toSorted((a, b) => a.at - b.at)
    .filter(({ step }) => !said.has(step.after) && said.add(step.after));
}

const joinedWhy = (a: string | null, b: string | null): string | null =>
  a === null || b === null || a.includes(b) ? (a ?? (b === '' ? null : b)) : `${a} ${b}`;

/** A step with sentences put in, the last of them first so that the places of the others stay right. */
function withSentences(step: RewrittenStep, sentences: readonly Insertion[]): RewrittenStep {
  let now = step;
  for (const { behind, step: added } of sentences
    .toReversed()
    .toSorted((a, b) => (b.behind ?? 0) - (a.behind ?? 0))) {
    const after = withSentence(now.after, behind ?? 0, added.after);
    now = { ...now, after, change: 'changed', why: joinedWhy(now.why, added.why) };
  }
  return now;
}

/** A step of which nothing is left to do, in English or with a language's word for what is left out. */
const isEmptied = (text: string, leaveOut: string | null): boolean =>
  /^Skip this step:/.test(text) ||
  (leaveOut !== null && new RegExp(`^[^.:]+: ${literal(leaveOut)}\\.$`, 'u').test(text));

/** A step of the page that tells another handling now. */
const takingOver = (own: RewrittenStep, instead: RewrittenStep): RewrittenStep => ({
  ...own,
  after: instead.after,
  change: 'changed',
  why: joinedWhy(instead.why, own.why),
});

/** The steps with what is put in before each, or within; a heading stays with its first own step. */
export function withInsertions(
  steps: readonly RewrittenStep[],
  insertions: readonly Insertion[],
  leaveOut: string | null = null,
): RewrittenStep[] {
  const once = saidOnce(insertions);
  const result: RewrittenStep[] = [];
  for (let at = 0; at <= steps.length; at += 1) {
    const own = steps[at];
    const here = once.filter((one) => one.at === at).sort((a, b) => a.rank - b.rank);
    for (const { step, rank } of here.filter(({ behind }) => behind === null)) {
      // What follows a step stays under its heading.
      const section = (rank === 0 ? steps[at - 1] : (own ?? steps[at - 1]))?.section ?? null;
      result.push({ ...step, section });
    }
    if (own === undefined) continue;
    const instead = isEmptied(own.after, leaveOut) ? result.at(-1) : undefined;
    if (instead?.before === null && here.some(({ step }) => step.after === instead.after)) {
      result[result.length - 1] = takingOver(own, instead);
      continue;
    }
    if (isEmptied(own.after, leaveOut)) {
      result.push(own);
      continue;
    }
    result.push(
      withSentences(
        own,
        here.filter(({ behind }) => behind !== null),
      ),
    );
  }
  return result;
}
