/** Remarks of the page that hold of what it had: a brand, a pattern of its count. */
import type { Mention } from '../naming/mention.ts';
import { isMade } from '../naming/method-names.ts';
import { literal } from './name-patterns.ts';

/** 'Depending on the type and brand of biscuits you use, …': what is made has no brand. */
function withoutBrand(text: string, name: string): string {
  const lead = new RegExp(
    `\\bdepending on the (?:type|brand|kind)(?: (?:and|or) (?:type|brand|kind))? of (?:the )?${literal(name)}(?: (?:that )?you[^,.]*)?,\\s*(\\p{L})`,
    'giu',
  );
  return text.replace(lead, (_, first: string) => first.toUpperCase());
}

/** ', laying 4 vertically and 1 horizontally': counted by the page's number of sheets. */
const LAID =
  /,? (?:laying|placing|arranging|lay|place|arrange) (?:them )?\d+ (?:of them )?(?:vertical|horizontal|length|cross|width)\w*(?:,| and|, and) \d+ (?:of them )?(?:vertical|horizontal|length|cross|width)\w*/gi;

const isShared = ({ changed, items }: Mention): boolean => changed && items.length > 1;

/** A step without remarks that no longer hold of what came in. */
export function withoutPageRemarks(text: string, named: readonly Mention[]): string {
  const made = named.flatMap(({ newName }) =>
    newName !== null && isMade(newName) ? [newName] : [],
  );
  const unbranded = made.reduce(withoutBrand, text);
  return named.some(isShared) ? unbranded.replace(LAID, '') : unbranded;
}
