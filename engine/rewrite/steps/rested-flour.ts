/** Flour and water that stand together before the rest goes in. */
import type { RewrittenStep } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { restsFirst } from '../cues/fitting-cues.ts';
import type { Mention } from '../naming/mention.ts';
import { withoutWord } from '../wording/leave-out.ts';
import { isNamedIn, namePattern } from '../wording/name-patterns.ts';

const UNITES = /\b(mix|stir|combine|work|knead|put|add|make|bring)\b/i;

const waterOf = (mentions: readonly Mention[]): Mention | undefined =>
  mentions.find(({ ingredient }) => ingredient.match?.foodId === 'water');

/** The text without the water, where it goes in with the flour; null where it does not. */
function withoutWater(text: string, water: Mention): string | null {
  if (!/\bflours?\b/i.test(text) || !UNITES.test(text)) return null;
  return (
    water.names
      .filter((name) => namePattern({ ...water, names: [name] }).test(text))
      .map((name) => withoutWord(text, name))
      .find((shorter) => shorter !== null) ?? null
  );
}

/** A starter is stirred into the water, which the flour cannot have drunk by then. */
const LEAVEN = /\b(?:starter|levain|leaven|poolish|biga)\b/i;

/** Whether flour and water can stand first: the method brings them together in one step, or names no water. */
export function autolyses(texts: readonly string[], mentions: readonly Mention[]): boolean {
  const water = waterOf(mentions);
  if (water === undefined || texts.some((text) => LEAVEN.test(text))) return false;
  const first = texts.find((text) => isNamedIn(text, water));
  return first === undefined || withoutWater(first, water) !== null;
}

/** Flour and water already stand together: the first step that unites them says so. */
function rested(step: RewrittenStep, { mentions }: CueContext): RewrittenStep | null {
  const water = waterOf(mentions);
  const without = water === undefined ? null : withoutWater(step.after, water);
  if (without === null) return null;
  const after = without.replace(/\b(flours?)\b/i, 'rested $1');
  const why = [step.why, 'Flour and water are together already.'].filter((one) => one !== null);
  return { ...step, after, change: 'changed', why: why.join(' ') };
}

/** The first step that takes up the rested dough, marked so; the others as they are. */
export function afterRest(steps: readonly RewrittenStep[], context: CueContext): RewrittenStep[] {
  if (context.words !== null || !restsFirst(context)) return [...steps];
  const at = steps.findIndex((step) => rested(step, context) !== null);
  return steps.map((step, index) => (index === at ? (rested(step, context) ?? step) : step));
}
