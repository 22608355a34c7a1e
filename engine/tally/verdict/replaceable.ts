/** What is not counted and something else is to be served in place of. */
import type { MissingLine, Verdict } from '../../model.ts';
import { pastWith } from './verdict-word.ts';

/** A wrap that a leaf can stand in for: no naan beside a curry. */
const WRAP = /\b(?:tortillas?|taco shells?|wraps?)\b/i;

/** A side that is mostly starch. */
const SIDE =
  /\b(?:naan|bread|breads|baguette|ciabatta|toast|rolls|pitt?as?|noodles|pasta|spaghetti|potato(?:es)?|fries|chips|quinoa|couscous|brot|pain|pan|pane|brood|bröd|brød)\b/i;
const RICE = /\brice\b(?!,? ?(?:wine|vinegar|flour|paper|noodles|milk|bran|syrup))/i;

/** What stands in place of a line of a dish that is too much, by the kind it is spoken of; null for what belongs in it. */
function kindInPlace({ kind, text, beside }: MissingLine): string | null {
  if (WRAP.test(kind ?? '') && WRAP.test(text)) return 'tortillas or wraps';
  if (beside !== true) return null;
  if (RICE.test(text)) return 'rice or grain';
  return SIDE.test(text) ? kind : null;
}

/** What takes a serving past its budget when it is eaten with it; of a dish that is too much, its sides and wraps that no line counts. */
export function replaceable(verdict: Verdict): MissingLine[] {
  const past = pastWith(verdict);
  if (past.length > 0 || verdict.state !== 'tooMuch') return past;
  return verdict.missing.flatMap((line) => {
    const kind = (line.netCarbsG?.low ?? 0) > 0 ? kindInPlace(line) : null;
    return kind === null ? [] : [{ ...line, kind }];
  });
}
