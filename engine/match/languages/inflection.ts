/** Declined and plural forms of a word in one form: 'Karotten' and 'Karotte', 'râpées' and 'râpé'. */

/** What is left of a word when its endings are off; shorter stems tell nothing. */
const SHORTEST = 4;

/**
 * The word without its endings, taken off one after the other, longest first. Both sides of a
 * comparison are folded, so the result need not be a word.
 */
export function folded(word: string, endings: readonly string[]): string {
  let stem = word;
  for (;;) {
    const end = endings.find((e) => stem.endsWith(e) && stem.length - e.length >= SHORTEST);
    if (end === undefined) return stem;
    stem = stem.slice(0, -end.length);
  }
}
