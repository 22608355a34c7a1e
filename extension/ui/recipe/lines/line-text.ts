/** An ingredient line in its parts: the amount that is read first, the food, and the rest. */

export interface LineText {
  /** '175 g', '1 cup'; '' when the line begins with its food. */
  amount: string;
  /** The same amount in another measure: '1⅓ cups'. */
  extra: string;
  /** Words between amount and food: 'large', 'fine'. */
  kind: string;
  name: string;
  /** ', soft' */
  rest: string;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
/** A number with its unit at the start of what stands before the name. */
const MEASURED =
  /^((?:about |ca\. |etwa )?[\d¼½¾⅓⅔⅛⅜⅝⅞][\d¼½¾⅓⅔⅛⅜⅝⅞.,/ –-]*(?:\s?(?:g|kg|mg|ml|dl|cl|l|oz|lbs?|cups?|tbsp|tsp|pints?|quarts?|EL|TL|Tassen?|Prisen?)\b\.?)?)\s*(.*)$/iu;
/** A leading number with at most one short word after it, where no name is found in the line. */
const LEADING = /^([\d¼½¾⅓⅔⅛⅜⅝⅞][\d¼½¾⅓⅔⅛⅜⅝⅞.,/–-]*(?:\s?\p{L}{1,5}\b\.?)?)\s+(?=\S)/u;

function placeOf(text: string, names: readonly string[]): { at: number; name: string } | null {
  for (const name of names) {
    if (name.trim() === '') continue;
    // To the end of the word: 'carrot' names the carrots of a line.
    const pattern = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name.trim())}\\p{L}*`, 'iu');
    const found = pattern.exec(text);
    if (found) return { at: found.index, name: found[0] };
  }
  return null;
}

function headOf(head: string): Omit<LineText, 'name' | 'rest'> {
  const bracket = /^(.*?)\s*\(([^()]*)\)\s*(.*)$/.exec(head);
  const extra = bracket?.[2]?.trim() ?? '';
  const bare = bracket ? `${bracket[1]} ${bracket[3]}` : head;
  const measured = MEASURED.exec(bare.trim());
  return measured
    ? { amount: measured[1]?.trim() ?? '', extra, kind: measured[2]?.trim() ?? '' }
    : { amount: bare.trim(), extra, kind: '' };
}

/** The parts of a line whose food goes by one of these names, likeliest first. */
export function lineText(text: string, names: readonly string[]): LineText {
  const place = placeOf(text, names);
  if (place) {
    const rest = text.slice(place.at + place.name.length);
    return { ...headOf(text.slice(0, place.at)), name: place.name, rest };
  }
  const leading = LEADING.exec(text);
  if (!leading) return { amount: '', extra: '', kind: '', name: text, rest: '' };
  return {
    amount: leading[1] ?? '',
    extra: '',
    kind: '',
    name: text.slice(leading[0].length),
    rest: '',
  };
}
