/** What smaller pieces of the same dough ask of the steps that scoop and bake them. */
import type { RewrittenStep } from '../../model.ts';
import { bakeMinutes } from '../oven/oven-heat.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { withFullTrays, withSmallerCutter } from './smaller-measures.ts';
import { withSmallerScoops } from './smaller-scoops.ts';

/** From this share (0..1) of the page's size on a piece is baked like the page's. Own choice. */
const MUCH_SMALLER = 0.72;
const LONGER = /In the cooler oven it takes [\d-]+ minutes longer\./;

/** Minutes after which smaller pieces are looked at first: with the square root of their share (common practice, no source). */
const lookAfter = (minutes: number, share: number): number =>
  Math.max(1, Math.floor(minutes * Math.sqrt(share)));

/** The bake of smaller pieces: no time is added to it, and it is looked at sooner. */
function sooner(text: string, share: number): string {
  if (share > MUCH_SMALLER || !LONGER.test(text)) return text;
  const minutes = sentencesOf(text)
    .filter((sentence) => /\bbake/i.test(sentence))
    .map(bakeMinutes)
    .find((one) => one !== null);
  const look = `Look at the smaller ones after about ${lookAfter(minutes ?? 0, share)} minutes.`;
  return text.replace(LONGER, minutes === undefined ? '' : look).trim();
}

/** The steps with scoops and times for pieces of this share (0..1) of the page's size. */
export const fitToSize = (steps: readonly RewrittenStep[], share: number): RewrittenStep[] =>
  steps.map((step) => {
    if (step.before === null) return step;
    const made = withFullTrays(withSmallerCutter(step.after, share), share);
    const after = sooner(withSmallerScoops(made, share), share);
    return after === step.after ? step : { ...step, after, change: 'changed' };
  });
