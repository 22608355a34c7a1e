/** Parts that a heading says may be left away: 'For the biscuits (optional)'. */
import { withoutAccents } from '../accents.ts';
import type { Line } from '../model.ts';
import { lexiconOf } from './words/lexicon.ts';
import { someOf, tokenize } from './words/tokens.ts';

/** What joins a second part to a title in the languages that are read. */
const JOINED = /\s(?:with|and|&|\+|mit|und|avec|et|con|y|e|com|met|en|med|och|og)\s(?<rest>.*)$/u;
/** Shorter words join others, or are too common to tell a part by. */
const LEAST_LETTERS = 4;

const wordsOf = (text: string): string[] =>
  (withoutAccents(text.toLowerCase()).match(/\p{L}+/gu) ?? []).filter(
    (word) => word.length >= LEAST_LETTERS,
  );

/** Then the dish has it, whatever its heading leaves open: 'Lemon posset with lemon shortbread' names the part 'For the lemon biscuits (optional)'. */
function isInTitle(heading: string, title: string): boolean {
  const behind = JOINED.exec(title.toLowerCase())?.groups?.rest;
  if (behind === undefined) return false;
  const said = new Set(wordsOf(behind));
  return wordsOf(heading).some((word) => said.has(word));
}

/** A line as it reads under its heading; what the title names as a part is needed all the same. */
export function underHeading(
  line: Line,
  { title, language }: { title: string; language: string | null },
): Line {
  if (line.optional || line.group === null) return line;
  const mayGo = someOf(tokenize(line.group), lexiconOf(language ?? 'en').optional);
  return mayGo && !isInTitle(line.group, title) ? { ...line, optional: true } : line;
}
