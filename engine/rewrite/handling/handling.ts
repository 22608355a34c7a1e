/** What a swap says of the handling of its foods: which of its clauses hold for this dish. */
import type { Ingredient, Swap } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { thinsIcing } from '../cues/thin-icing.ts';
import { companionsOf, isCutUp } from '../naming/companions.ts';
import type { Mention } from '../naming/mention.ts';
import { shortName } from '../naming/method-names.ts';
import { isNamedIn } from '../wording/name-patterns.ts';
import { clauseHolds } from './spoken-handling.ts';

/** What a swap says of its handling, and the ingredient it is for. */
export interface Handling {
  swap: Swap;
  method: string;
  /** Whether each clause of the method holds for this dish. */
  holds: readonly boolean[];
  /** The method as it is told in English. */
  spoken: string;
  mention: Mention | undefined;
  /** Foods that came in and stand on other lines as well: their names alone do not say how much. */
  shared: ReadonlySet<string>;
  old: string;
  /** What it is done with, where that is more than what came in. */
  object?: string | undefined;
}

const own = (swap: Swap, ingredients: readonly Ingredient[]): Ingredient | undefined =>
  ingredients.find(({ key }) => key === swap.key);

const THINS = /\ban icing takes\b/i;

/** Clauses that hold for the dish; those of an icing only where the swapped sugar is one's. */
const clausesThatHold = (method: string, whole: string, thins: boolean): boolean[] =>
  method
    .split(/;\s*/)
    .map((clause) => clauseHolds(clause, whole) && (thins || !THINS.test(clause)));

/** A handling without the clauses that do not hold. */
export function heldClauses(text: string, holds: readonly boolean[]): string {
  if (holds.every(Boolean)) return text;
  const clauses = text.split(/;\s*/);
  if (clauses.length !== holds.length) return text;
  const kept = clauses
    .filter((_, at) => holds[at])
    .join('; ')
    .trim();
  return kept === '' || /[.!]$/.test(kept) ? kept : `${kept}.`;
}

/** The method without its clauses about the food that is left out altogether; in other languages it is known whole. */
function withoutGone(
  method: string,
  { keptGrams }: Swap,
  mention: Mention | undefined,
  byClause: boolean,
): string {
  if (mention === undefined || keptGrams > 0 || !isNamedIn(method, mention)) return method;
  if (!byClause) return '';
  const clauses = method.split(/;\s*/).filter((clause) => !isNamedIn(clause, mention));
  const text = clauses.join('; ');
  return text === '' || /[.!]$/.test(text) ? text : `${text}.`;
}

/** Foods of a swap that are in the dish for more than this line. */
function sharedFoods({ key, to }: Swap, { plan, whole = plan }: CueContext): Set<string> {
  const others = new Set(
    whole.items.flatMap((item) => (item.key !== key && item.grams > 0 ? [item.foodId] : [])),
  );
  return new Set(to.flatMap(({ foodId }) => (others.has(foodId) ? [foodId] : [])));
}

export function handlingOf(swap: Swap, context: CueContext, texts: readonly string[]): Handling {
  const { mentions, ingredients, method: said } = context;
  const mention = mentions.find(({ ingredient }) => ingredient.key === swap.key);
  const { method = '' } = swap;
  const kept = withoutGone(method, swap, mention, context.words === null);
  return {
    swap,
    method: kept,
    spoken: kept,
    holds: clausesThatHold(kept, said, thinsIcing(swap, context, texts)),
    mention,
    shared: sharedFoods(swap, context),
    old: own(swap, ingredients)?.item.name ?? swap.from?.food ?? '',
  };
}

/** Whether the words name one of the foods that came in. */
export const namesFood = (text: string, { to }: Swap): boolean =>
  to.some(({ food }) => {
    const [last = ''] = shortName(food).split(' ').slice(-1);
    return text.toLowerCase().includes(last.toLowerCase().slice(0, -1));
  });

const CUTS_FIRST = /^(?:grate|shred|slice|dice|chop|peel|cut|steam|boil|salt)\b/i;

/** What a handling is of: not what it says goes in with it. */
export function handledIn(swap: Swap): Swap['to'] {
  const aside = companionsOf(swap);
  const cut = CUTS_FIRST.test(swap.method ?? '')
    ? swap.to.filter((one) => isCutUp(one.foodId))
    : [];
  // Nobody grates an egg.
  return cut.length > 0 ? cut : swap.to.filter(({ foodId }) => !aside.has(foodId));
}
