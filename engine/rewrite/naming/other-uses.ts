/** Where a food's word in a method is a verb or part of another word. */
import type { Mention } from './mention.ts';

/** 'flour the board', 'lightly floured', 'butter a tin': the word is a verb there. */
const VERB_AFTER =
  /^\s+(?:the|a|an|your|each)\s+(?:work|surface|board|counter|bench|table|tin|pan|dish|tray|mould|mold|ramekin|baking|inside|sides|bottom|bowl)\b/i;
/** 'no dry flour is left': what is looked at, not an amount. */
const SEEN_BEFORE =
  /(?:lightly|generously|\bdry|\braw|streaks? of|traces? of|pockets? of|patches of|specks? of) $/i;

/** True when a name in the text is put to use as a verb, or is part of another word. */
export function isOtherUse(text: string, start: number, end: number): boolean {
  const before = text.slice(0, start);
  const after = text.slice(end);
  return (
    VERB_AFTER.test(after) || /^\s+(?:cooking\s+)?water\b/i.test(after) || SEEN_BEFORE.test(before)
  );
}

/** 'konjac rice' is not renamed once more for its 'rice'. */
export function isNamedAlready({ newName, changed }: Mention, text: string, end: number): boolean {
  if (!changed || newName === null) return false;
  return text.slice(0, end).toLowerCase().endsWith(newName.toLowerCase());
}
