/** Handling that a single swap calls for, as steps before the one that uses what came in. */
import type { Ingredient, Swap } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { fill } from '../cues/cue-text.ts';
import { isPrepared } from '../cues/fitting-cues.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import { capital, isMade, listOf, shortName } from '../naming/method-names.ts';
import { namePattern } from '../naming/name-patterns.ts';

const own = (swap: Swap, ingredients: readonly Ingredient[]): Ingredient | undefined =>
  ingredients.find(({ key }) => key === swap.key);

/** 'Eggplant, in place of the lasagne sheets: slice it'; 'Make the curd, in place of ..., of egg and butter: stir it'. */
function sentence(swap: Swap, context: CueContext): string | null {
  const { method = '' } = swap;
  const mention = context.mentions.find(({ ingredient }) => ingredient.key === swap.key);
  // Words about the food that is left out altogether hold no more.
  const speaksOfGone =
    mention !== undefined && swap.keptGrams <= 0 && namePattern(mention).test(method);
  const list = listOf([...new Set(swap.to.map(({ food }) => shortName(food)))]);
  const name = mention?.newName;
  const old = own(swap, context.ingredients)?.item.name ?? swap.from?.food ?? '';
  const lower = `${method.charAt(0).toLowerCase()}${method.slice(1)}`;
  const place = `${swap.keptGrams > 0 ? 'for part of' : 'in place of'} the ${old}`;
  if (name && isMade(name)) {
    const made = `Make the ${name} ${place}, of ${list}`;
    return method === '' ? `${made}.` : `${made}: ${lower}`;
  }
  return method === '' || speaksOfGone ? null : `${capital(list)}, ${place}: ${lower}`;
}

/** Index of the first step that takes the swapped ingredient; the part's first when none does. */
const placeOf = ({ key }: Swap, { course }: CueContext): number =>
  (key === null ? undefined : course.named.get(key)?.[0]) ?? course.firstStep;

/**
 * Steps for what swaps say of the handling of their foods, each once, unless a cue of the method
 * tells it already. The texts are English.
 */
export function swapSteps(context: CueContext): Insertion[] {
  const steps = new Map<string, Insertion>();
  for (const swap of context.plan.swaps) {
    const text = isPrepared(swap, context) ? null : sentence(swap, context);
    if (text === null) continue;
    const after = fill(text, { ...context, words: null });
    const why = `What comes in is handled otherwise than the ${own(swap, context.ingredients)?.item.name ?? 'original'}.`;
    const step = { section: null, before: null, after, change: 'inserted', why } as const;
    const same = `${swap.id}.${swap.method}`;
    if (!steps.has(same))
      steps.set(same, { at: placeOf(swap, context), rank: RANKS.use, behind: null, step });
  }
  return [...steps.values()];
}
