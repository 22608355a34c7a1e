/** What may still be read out of a name in another language that is not known as it stands. */
import type { FoodTable } from '../../foods/index.ts';
import { editDistance } from '../slips.ts';
import type { NameIndex, Word } from './foreign-name-index.ts';

/** Letters of a compound's first part, and of the end that may be a food: shorter ones tell nothing. */
const SHORTEST_START = 3;
const SHORTEST_END = 4;
/** A shorter word with another letter is another word. */
const SHORTEST_SLIP = 7;

/** Groups in which a further name only tells the kind. */
const OF_KINDS: ReadonlySet<string> = new Set(['grains', 'meat', 'fish', 'vegetables', 'legumes']);

/** Whether one may be a kind of the other: 'Orzo-Nudeln', but not 'Mandelmilch'. */
export function isAkin(id: string, other: string, foods: FoodTable): boolean {
  const group = foods.byId(id)?.group;
  return id === other || (OF_KINDS.has(group ?? '') && group === foods.byId(other)?.group);
}

/** Words without what the food is free of: 'sans sucre ajouté', 'ohne Zucker'. */
export const withoutLacking = (words: readonly Word[], index: NameIndex): readonly Word[] =>
  words.filter((word, at) => {
    const before = words[at - 1];
    return !index.without.has(word.folded) && !(before && index.without.has(before.folded));
  });

/** The food a compound ends in, when its first part is none of another group: 'Rindshackfleisch'. */
function compoundEnd(word: Word, index: NameIndex, foods: FoodTable): string | null {
  for (let cut = SHORTEST_START; cut <= word.text.length - SHORTEST_END; cut += 1) {
    const id = index.idOf(index.wordsOf(word.text.slice(cut)));
    if (id === null) continue;
    const start = index.idOf(index.wordsOf(word.text.slice(0, cut)));
    return start === null || isAkin(start, id, foods) ? id : null;
  }
  return null;
}

/** The food of the last word's end, in languages that join words; null in others. */
export function endOfCompound(
  words: readonly Word[],
  index: NameIndex,
  foods: FoodTable,
): string | null {
  const last = words[words.length - 1];
  return last && index.headLast ? compoundEnd(last, index, foods) : null;
}

/** Signs that alone are a name too rarely to be looked for inside another: 'oil', 'water', 'rice'. */
const SHORTEST_INSIDE = 2;

/** The longest listed name inside a run of signs without blanks, the last of equals; null when none is. */
export function longestInside(words: readonly Word[], index: NameIndex): string | null {
  const text = words.map((word) => word.text).join('');
  let best = '';
  let place = -1;
  for (const name of index.vocabulary) {
    if (name.length < Math.max(SHORTEST_INSIDE, best.length)) continue;
    const at = text.lastIndexOf(name);
    if (at < 0 || (name.length === best.length && at < place)) continue;
    best = name;
    place = at;
  }
  return best === '' ? null : best;
}

/** Words with slips of the pen mended, one letter each; null when there is nothing to mend. */
export function withoutSlips(words: readonly Word[], index: NameIndex): readonly Word[] | null {
  let isMended = false;
  const mended = words.map((word) => {
    if (word.text.length < SHORTEST_SLIP || index.vocabulary.has(word.text)) return word;
    for (const known of index.vocabulary) {
      if (known.charAt(0) !== word.text.charAt(0) || known.length < SHORTEST_SLIP) continue;
      if (editDistance(word.text, known, 1) > 1) continue;
      isMended = true;
      return { ...word, ...index.wordsOf(known)[0], linked: word.linked };
    }
    return word;
  });
  return isMended ? mended : null;
}
