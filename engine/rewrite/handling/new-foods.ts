/** How new foods are handled, for a page that has no method. */
import type { Swap } from '../../model.ts';
import { concerns } from '../cues/cue-applies.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { fill, textOf } from '../cues/cue-text.ts';
import { fittingCues } from '../cues/fitting-cues.ts';
import { localFoodName } from '../languages/method-words.ts';
import { capital, shortName } from '../naming/method-names.ts';
import { handlingOf } from './handling.ts';
import { stepOf } from './handling-step.ts';

/** What a cue or the swap itself says of a swap's foods; null where neither does. */
function saidOf(swap: Swap, context: CueContext): string | null {
  const cue = fittingCues(context).find((one) => one.handles === true && concerns(one, swap));
  if (cue !== undefined) return fill(textOf(cue, context), context);
  return stepOf(handlingOf(swap, context, []), context, '')?.after ?? null;
}

/** The text with the food's name in front, unless it has it. */
function named(text: string, { foodId, food }: Swap['to'][number], { words }: CueContext): string {
  const name = (words === null ? null : localFoodName(foodId, words)) ?? shortName(food);
  const [last = name] = name.split(' ').slice(-1);
  if (text.toLowerCase().includes(last.toLowerCase())) return text;
  return `${capital(name)}: ${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}

/** How the new foods of each swap are handled, by the swap's key. */
export function newFoodTexts(context: CueContext): Map<string, string> {
  const texts = new Map<string, string>();
  for (const swap of context.plan.swaps) {
    const [main] = swap.to;
    const text = main === undefined ? null : saidOf(swap, context);
    if (main === undefined || swap.key === null || text === null || text === '') continue;
    texts.set(swap.key, named(text, main, context));
  }
  return texts;
}
