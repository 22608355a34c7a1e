/** An oven that is lit before a dough has rested: told beside it to wait. */
import type { RewrittenStep } from '../../model.ts';
import { statedTime } from '../cues/stated-time.ts';
import { keyed, type MethodWords } from '../languages/method-words.ts';
import { withReason } from '../steps/step-reasons.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { bakesIn } from './bakes-in.ts';

const ENGLISH = {
  text: 'The dough rests first, further down: light the oven only when that is nearly over.',
  why: 'An oven that is lit now waits for the dough.',
};

/** Lights the oven, and bakes nothing yet. */
const LIGHTS = /\bpre-?heat\w*\b|\b(?:heat|turn on|set|light|crank)\b[^.;]*\boven\b/i;
const BAKES =
  /\bbak(?:e[ds]?|ing)\b(?! (?:sheets?|trays?|pans?|dish|tins?|paper|stone|steel|rack))/i;
/** 'Once the dough is chilled, preheat …': lit in time. */
const IN_TIME =
  /^\W*(?:once|when|after|while|as soon as)\b|\bbefore (?:the|they|it|you)\b|\bfryer\b/i;
const WAITS = /\b(?:chill|refrigerat\w*|rest|stand)\b/i;
const DOUGH = /\bdough\b/i;
/** A rest that an oven can wait for, minutes. Own choice. */
const SHORT = 20;

interface Said {
  at: number;
  behind: number;
  /** With English key words. */
  text: string;
}

const said = (steps: readonly RewrittenStep[], words: MethodWords | null): Said[] =>
  steps.flatMap(({ after }, at) =>
    sentencesOf(after).map((sentence, behind) => ({
      at,
      behind,
      text: words === null ? sentence : keyed(sentence, words),
    })),
  );

/** The last sentence that lights the oven before a dough's rest, with no bake between; null when it is lit in time. */
function litEarly(all: readonly Said[]): Said | null {
  let lit: Said | null = null;
  for (const one of all) {
    const { text } = one;
    if (lit !== null && WAITS.test(text) && DOUGH.test(text)) {
      if ((statedTime(text)?.high ?? 0) > SHORT) return lit;
    }
    if (LIGHTS.test(text) && !BAKES.test(text)) lit = IN_TIME.test(text) ? null : one;
    else if (BAKES.test(text) && bakesIn(text)) lit = null;
  }
  return null;
}

/** The steps with a word beside an oven that would wait for a dough to rest. */
export function withLateOven(
  steps: readonly RewrittenStep[],
  words: MethodWords | null,
): RewrittenStep[] {
  if (steps.every(({ change }) => change === 'kept')) return [...steps];
  const lit = litEarly(said(steps, words));
  const step = lit === null ? undefined : steps[lit.at];
  if (lit === null || step === undefined) return [...steps];
  const { text, why } = words?.lateOven ?? ENGLISH;
  const now = withReason(step, withSentence(step.after, lit.behind, text), why);
  return steps.with(
    lit.at,
    step.before === null ? { ...now, change: step.change } : now,
  ) as RewrittenStep[];
}
