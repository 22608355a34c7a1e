/** The pieces that a page says it makes: dozens, jars of a size, what is made of them in turn. */
import type { Recipe } from '../../model.ts';

export const DOZEN = 12;

/** '3 8-oz jars': how large one is, not how many. */
const SIZE_OF_ONE = /(\d+)\s?-?\s?(?:oz|ounces?|ml|g|inch)\b/i;
/** '20 biscuits = 10 sandwiches': what is eaten stands last. */
const MAKES_IN_TURN = /=\s*(?:about )?(\d{1,3})\s+(\p{L}[\p{L}'’ -]*)$/u;

/** '3 dozen', '2-3 dozen cookies', 'zwei Dutzend': twelve of what it names, the middle of a range. */
const BY_THE_DOZEN = /^(?:dozens?|dutzend)\b\s*(?:of )?/i;
const DOZEN_RANGE = /(\d+)\s*(?:-|–|to|or|bis)\s*(\d+)\s*(?:dozen|dutzend)/i;

function fromDozens(pieces: Recipe['yield']['pieces'], text: string | null) {
  if (pieces === null || !BY_THE_DOZEN.test(pieces.noun)) return pieces;
  const [, low, high] = DOZEN_RANGE.exec(text ?? '') ?? [];
  const dozens = low === undefined ? pieces.count : (Number(low) + Number(high)) / 2;
  return {
    count: Math.floor(dozens * DOZEN),
    noun: pieces.noun.replace(BY_THE_DOZEN, '') || 'pieces',
  };
}

/** The pieces of the yield, as its words mean them. */
export function piecesOf({ pieces: counted, text }: Recipe['yield']): Recipe['yield']['pieces'] {
  const pieces = fromDozens(counted, text);
  const [, count, noun = ''] = MAKES_IN_TURN.exec(text ?? '') ?? [];
  if (pieces !== null && count !== undefined) return { count: Number(count), noun };
  const size = Number(SIZE_OF_ONE.exec(text ?? '')?.[1]);
  return pieces !== null && pieces.noun === 'pieces' && size === pieces.count ? null : pieces;
}
