/** Handling that a single swap calls for, as steps before the one that uses what came in. */
import type { Swap } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { isPrepared } from '../cues/fitting-cues.ts';
import type { Insertion } from '../cues/insertion.ts';
import { shortName } from '../naming/method-names.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { besidePage, cookedFirst, cookedLater } from './beside-page.ts';
import { withoutRoasting } from './done-by-page.ts';
import { type Handling, handlingOf } from './handling.ts';
import { IN_WATER, insertionOf, placeOf, sentenceOf } from './handling-place.ts';
import { stepOf } from './handling-step.ts';
import { BY_PACKET, heldFor, withoutSifting } from './spoken-handling.ts';

/** Whether all that came in is bought like pasta, with its own directions. */
const boilsAsPasta = ({ to }: Swap): boolean =>
  to.length > 0 &&
  to.every(({ food }) => /noodle|pasta|spaghetti|couscous|rice$/i.test(shortName(food)));

/** Sentences of all steps that name what came in. */
const sentencesNaming = ({ mention }: Handling, texts: readonly string[]): string[] => {
  const name = mention?.newName ?? null;
  if (name === null) return [];
  return texts.flatMap(sentencesOf).filter((sentence) => sentence.includes(name));
};

/** A pot that goes on cooking with what comes in needs no other one. */
const COOKS_ON = /\bcontinue (?:to (?:cook|simmer|boil)|cooking|simmering|boiling)\b/i;

/** Nothing is sifted for a step that does not name it. */
const isIdle = (
  { key, method = '' }: Swap,
  { course }: CueContext,
  texts: readonly string[],
): boolean =>
  /^sift\b/i.test(method) &&
  key !== null &&
  (course.named.get(key) ?? []).length === 0 &&
  !texts.some((text) => ICING_OF_ALL.test(text));

/** What takes icing sugar without its name. */
const ICING_OF_ALL =
  /\b(?:frosting|icing|glaze|topping|cream|filling) ingredients\b|\ball (?:of )?(?:the )?ingredients\b/i;

/** Stirred in raw by a step behind the boiling that names it: that is told already. */
function goesInLater(
  { method = '' }: Swap,
  { mention }: Handling,
  texts: readonly string[],
  at: number,
): boolean {
  if (!/^stir in raw\b/i.test(method)) return false;
  const own = mention?.ingredient.match?.foodId;
  const names = (mention?.items ?? []).flatMap(({ foodId, foodName }) =>
    foodId === own ? [] : [shortName(foodName)],
  );
  return texts.some((text, step) => step > at && names.some((name) => text.includes(name)));
}

/**
 * What swaps say of the handling of their foods, each once, unless a cue of the method tells it already.
 * `texts`: the method's own steps as they read now.
 */
export function swapSteps(context: CueContext, texts: readonly string[]): Insertion[] {
  const steps = new Map<string, Insertion>(cookedFirst(context, texts));
  for (const swap of context.plan.swaps) {
    const same = `${swap.id}.${swap.method}`;
    if (steps.has(same) || isPrepared(swap, context)) continue;
    if (isIdle(swap, context, texts)) continue;
    const at = placeOf(swap, context, texts);
    const text = texts[at] ?? '';
    const whole = handlingOf(swap, context, texts);
    if (goesInLater(swap, whole, texts, at)) continue;
    const sentence = sentencesOf(text)[sentenceOf(text, whole)] ?? '';
    if (IN_WATER.test(whole.method) && COOKS_ON.test(sentence)) continue;
    const beside = besidePage(whole, context, texts);
    if (beside === 'nothing') continue;
    if (beside !== null) {
      steps.set(same, beside);
      continue;
    }
    const method =
      context.words === null ? withoutRoasting(whole.method, whole.mention, texts) : whole.method;
    const spoken = heldFor(method, sentence);
    if (spoken === '' && whole.method !== '') continue;
    const sifted = context.words === null ? withoutSifting(spoken, sentence) : null;
    const handling =
      sifted === null
        ? { ...whole, method, spoken }
        : { ...whole, method, spoken: sifted, holds: whole.holds.slice(1) };
    if (
      boilsAsPasta(swap) &&
      [sentence, ...sentencesNaming(whole, texts)].some((one) => BY_PACKET.test(one))
    )
      continue;
    const step = stepOf(handling, context, text);
    if (step === null) continue;
    const put = insertionOf(handling, text, at, step);
    const cooked = cookedLater(put, whole, context, texts);
    steps.set(same, cooked === null ? put : cooked.first);
    if (cooked !== null) steps.set(`${same} cooked`, cooked.last);
  }
  return [...steps.values()];
}
