/** What one serving is called: a roll, a slice, or simply a serving. */
import type { Adaptation } from '../../../engine/model.ts';
import { short } from '../figures/format.ts';
import { type MessageKey, say, sayCount } from './say.ts';

/** English nouns of a yield, singular; the rest of the world's nouns are servings. */
const NOUNS: readonly [pattern: RegExp, one: MessageKey, several: MessageKey][] = [
  [/^(rolls?|buns?|brötchen)$/i, 'aRoll', 'rolls'],
  [/^(slices?|scheiben?)$/i, 'aSlice', 'slices'],
  [/^(muffins?|cupcakes?)$/i, 'aMuffin', 'muffins'],
  [/^(cookies?|biscuits?|kekse?)$/i, 'aCookie', 'cookies'],
  [/^(pancakes?|crepes?|crêpes?|pfannkuchen)$/i, 'aPancake', 'pancakes'],
  [/^(waffles?|waffeln?)$/i, 'aWaffle', 'waffles'],
  [/^(pieces?|squares?|bars?|wedges?|brownies?|stücke?)$/i, 'aPiece', 'pieces'],
];

const nounOf = ({ recipe, after }: Adaptation): (typeof NOUNS)[number] | null => {
  const { pieces } = recipe.yield;
  if (pieces === null || pieces.count !== after.servings) return null;
  const last = pieces.noun.trim().split(/\s+/).at(-1) ?? '';
  return NOUNS.find(([pattern]) => pattern.test(last)) ?? null;
};

/** 'a roll', to stand in a sentence. */
export const portionWord = (adaptation: Adaptation): string =>
  say(nounOf(adaptation)?.[1] ?? 'aServing');

/** 'A roll', to begin one. */
export function portionStart(adaptation: Adaptation): string {
  const word = portionWord(adaptation);
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
}

/** 'rolls', to stand after their number. */
export const portionNoun = (adaptation: Adaptation, count: number): string =>
  sayCount(nounOf(adaptation)?.[2] ?? 'servings', count);

/** '12 rolls' */
export const portionsText = (adaptation: Adaptation): string =>
  `${short(adaptation.after.servings)} ${portionNoun(adaptation, adaptation.after.servings)}`;
