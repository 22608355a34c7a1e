/** Parts of an ingredient in the method's words: 'half the sugar', 'the remaining water'. */

const UNITS: Record<string, string> = {
  gram: 'g',
  gramme: 'g',
  tablespoon: 'tbsp',
  teaspoon: 'tsp',
  ounce: 'oz',
  pound: 'lb',
};
/** A unit's short form: 'tablespoons' -> 'tbsp'. */
export const unitOf = (text: string | undefined): string | null => {
  if (text === undefined) return null;
  const bare = text.toLowerCase().replace(/s$/, '');
  return UNITS[bare] ?? bare;
};

const WORDS: readonly (readonly [RegExp, number])[] = [
  [/^two[ -]thirds$|^2\/3$|^⅔$/, 2 / 3],
  [/^three[ -](quarters|fourths)$|^3\/4$|^¾$/, 3 / 4],
  [/third$|^1\/3$|^⅓$/, 1 / 3],
  [/(quarter|fourth)$|^1\/4$|^¼$/, 1 / 4],
  [/half$|^1\/2$|^½$/, 1 / 2],
];

/** Matches 'half of the ', 'a third of the ' in front of a name; the words are the group `share`. */
export const SHARE = String.raw`(?:(?:about\s+)?(?<share>two[ -]thirds|three[ -](?:quarters|fourths)|(?:(?:a|one)[ -])?(?:half|third|quarter|fourth)|[123]\/[234]|[¼½¾⅓⅔])\s+(?:of\s+)?the\s+)`;

/** Matches 'the remaining ', 'the rest of the ' in front of a name. */
export const REST = String.raw`(?:(?:the\s+)?(?<rest>remaining|remainder\s+of\s+the|rest\s+of\s+the|other\s+half\s+of\s+the)\s+)`;

/** The share (0..1) that words name, or null. */
export function shareOf(words: string): number | null {
  const low = words.toLowerCase().trim();
  return WORDS.find(([pattern]) => pattern.test(low))?.[1] ?? null;
}
