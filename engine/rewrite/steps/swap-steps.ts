/** Handling that a single swap calls for, as steps before the one that uses what came in. */
import type { Ingredient, RewrittenStep, Swap } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { fill } from '../cues/cue-text.ts';
import { isPrepared } from '../cues/fitting-cues.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import {
  joinedWith,
  localFoodName,
  localHandling,
  type MethodWords,
} from '../languages/method-words.ts';
import type { Mention } from '../naming/mention.ts';
import { capital, isMade, listOf, shortName } from '../naming/method-names.ts';
import { namePattern } from '../naming/name-patterns.ts';

const own = (swap: Swap, ingredients: readonly Ingredient[]): Ingredient | undefined =>
  ingredients.find(({ key }) => key === swap.key);

/** What a swap says of its handling, and the ingredient it is for. */
interface Handling {
  swap: Swap;
  method: string;
  /** Whether each clause of the method holds for this dish. */
  holds: readonly boolean[];
  mention: Mention | undefined;
  old: string;
}

const BAKES = /\b(?:bake|baked|baking|oven|roast(?:ed|ing)?)\b/i;

/** Clauses that hold for the dish: nothing is baked longer that no oven sees. */
const clausesThatHold = (method: string, whole: string): boolean[] =>
  method
    .split(/;\s*/)
    .map((clause) => !/\bbake \d+ minutes longer\b/i.test(clause) || BAKES.test(whole));

/** A handling without the clauses that do not hold. */
function heldClauses(text: string, holds: readonly boolean[]): string {
  if (holds.every(Boolean)) return text;
  const clauses = text.split(/;\s*/);
  if (clauses.length !== holds.length) return text;
  const kept = clauses
    .filter((_, at) => holds[at])
    .join('; ')
    .trim();
  return kept === '' || /[.!]$/.test(kept) ? kept : `${kept}.`;
}

function handlingOf(swap: Swap, { mentions, ingredients, method: said }: CueContext): Handling {
  const mention = mentions.find(({ ingredient }) => ingredient.key === swap.key);
  const { method = '' } = swap;
  // Words about the food that is left out altogether hold no more.
  const speaksOfGone =
    mention !== undefined && swap.keptGrams <= 0 && namePattern(mention).test(method);
  const kept = speaksOfGone ? '' : method;
  return {
    swap,
    method: kept,
    holds: clausesThatHold(kept, said),
    mention,
    old: own(swap, ingredients)?.item.name ?? swap.from?.food ?? '',
  };
}

/** 'Eggplant, in place of the lasagne sheets: slice it'; 'Make the curd, in place of ..., of egg and butter: stir it'. */
function englishText({ swap, method: whole, holds, mention, old }: Handling): string | null {
  const method = heldClauses(whole, holds);
  const list = listOf([...new Set(swap.to.map(({ food }) => shortName(food)))]);
  const name = mention?.newName;
  const lower = `${method.charAt(0).toLowerCase()}${method.slice(1)}`;
  const place = `${swap.keptGrams > 0 ? 'for part of' : 'in place of'} the ${old}`;
  if (name && isMade(name)) {
    const made = `Make the ${name} ${place}, of ${list}`;
    return method === '' ? `${made}.` : `${made}: ${lower}`;
  }
  return method === '' ? null : `${capital(list)}, ${place}: ${lower}`;
}

/** The same in another language; null where its handling has not been put into it. */
function localText({ swap, method, holds, old }: Handling, words: MethodWords): string | null {
  const whole = localHandling(method, words);
  if (whole === null) return null;
  const local = heldClauses(whole, holds);
  if (local === '') return null;
  const names = swap.to.map(({ foodId, food }) => localFoodName(foodId, words) ?? shortName(food));
  const frame = swap.keptGrams > 0 ? words.swaps.partly : words.swaps.instead;
  return capital(
    frame
      .replace('{list}', joinedWith([...new Set(names)], words.and))
      .replace('{old}', old)
      .replace('{method}', local),
  );
}

/** The step for one swap; in English, and marked so, where the recipe's language has no words for it. */
function stepOf(handling: Handling, context: CueContext): RewrittenStep | null {
  const { words } = context;
  const local = words === null ? null : localText(handling, words);
  const text = local ?? englishText(handling);
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

/** Index of the first step that takes the swapped ingredient; the part's first when none does. */
const placeOf = ({ key }: Swap, { course }: CueContext): number =>
  (key === null ? undefined : course.named.get(key)?.[0]) ?? course.firstStep;

/** Steps for what swaps say of the handling of their foods, each once, unless a cue of the method tells it already. */
export function swapSteps(context: CueContext): Insertion[] {
  const steps = new Map<string, Insertion>();
  for (const swap of context.plan.swaps) {
    const same = `${swap.id}.${swap.method}`;
    if (steps.has(same) || isPrepared(swap, context)) continue;
    const step = stepOf(handlingOf(swap, context), context);
    if (step !== null)
      steps.set(same, { at: placeOf(swap, context), rank: RANKS.use, behind: null, step });
  }
  return [...steps.values()];
}
