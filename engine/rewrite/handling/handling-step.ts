/** A handling as a step of the method, in the recipe's language. */
import type { RewrittenStep } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { fill } from '../cues/cue-text.ts';
import {
  joinedWith,
  localFoodName,
  localHandling,
  type MethodWords,
} from '../languages/method-words.ts';
import { capital, shortName } from '../naming/method-names.ts';
import { englishText } from './english-handling.ts';
import { type Handling, handledIn, heldClauses } from './handling.ts';
import { isTold, withObject } from './spoken-handling.ts';

/** The same in another language; null where its handling has not been put into it. */
function localText({ swap, method, holds, old }: Handling, words: MethodWords): string | null {
  const whole = localHandling(method, words);
  if (whole === null) return null;
  const local = heldClauses(whole, holds);
  if (local === '') return null;
  // 'In den letzten 10 Minuten zugeben' says what only where its English does.
  if (isTold(swap.method ?? '') && withObject(method, old) === null) return capital(local);
  const names = handledIn(swap).map(
    ({ foodId, food }) => localFoodName(foodId, words) ?? shortName(food),
  );
  const frame = swap.keptGrams > 0 ? words.swaps.partly : words.swaps.instead;
  return capital(
    frame
      .replace('{list}', joinedWith([...new Set(names)], words.and))
      .replace('{old}', old)
      .replace('{method}', local),
  );
}

/** The step for one swap; in English, and marked so, where the recipe's language has no words for it. */
export function stepOf(
  handling: Handling,
  context: CueContext,
  place: string,
): RewrittenStep | null {
  const { words } = context;
  const local = words === null ? null : localText(handling, words);
  const text = local ?? englishText(handling, context.method, place);
  if (text === null) return null;
  const why =
    words === null
      ? `What comes in is handled otherwise than the ${handling.old || 'original'}.`
      : words.swaps.why.replace('{old}', handling.old);
  const inEnglish = words !== null && local === null;
  return {
    section: null,
    before: null,
    after: fill(text, inEnglish ? { ...context, words: null } : context),
    change: 'inserted',
    why,
    ...(inEnglish ? { lang: 'en' } : {}),
  };
}
