/** A note for dishes of small pieces (dumplings, meatballs) whose count stands for servings. */
import { LETTER } from '../../letters.ts';
import type { Note, Recipe } from '../../model.ts';
import dishes from '../data/piece-dishes.json' with { type: 'json' };

const wholeWords = (words: string): string => `(?<!${LETTER})(?:${words})(?!${LETTER})`;
/** Chinese and Japanese leave no blanks between words. */
const PIECES = new RegExp(`${wholeWords(dishes.pieces)}|${dishes.unbroken}`, 'iu');
/** 'Dumpling sauce' is poured, not counted. */
const BESIDES = new RegExp(wholeWords(dishes.besides), 'iu');
/** Share of a usual portion below which a serving of such a dish is one piece. Own choice. */
const ONE_PIECE_BELOW = 0.5;

/**
 * Says that one serving is one piece: for a dish named after small pieces of which a serving, before
 * cooking (what water such pieces take up is not well known), is below half of what is usually eaten at
 * one time. Nothing for any other dish, nor where nothing was weighed.
 */
export function pieceServingNotes(
  { title }: Recipe,
  servings: number,
  rawGrams: number | null,
): Note[] {
  if (rawGrams === null || !(rawGrams > 0) || !(servings > 1)) return [];
  if (!PIECES.test(title) || BESIDES.test(title)) return [];
  const grams = rawGrams / servings;
  if (grams >= ONE_PIECE_BELOW * dishes.portionGrams) return [];
  const text = `One serving here looks like one piece, about ${Math.round(grams)} g before cooking. Six pieces have six times these figures; set the servings to the plates you fill.`;
  return [{ code: 'SERVING_IS_PIECE', text, key: null }];
}
