/** What is not counted and something else is to be served in place of. */
import type { MissingLine, Verdict } from '../../model.ts';
import { pastWith } from './verdict-word.ts';

/** A wrap that a leaf can stand in for: no naan beside a curry. */
const WRAP = /\b(?:tortillas?|taco shells?|wraps?)\b/i;

/** What takes a serving past its budget when it is eaten with it; of a dish that is too much, wraps that no line counts. */
export function replaceable(verdict: Verdict): MissingLine[] {
  const past = pastWith(verdict);
  if (past.length > 0 || verdict.state !== 'tooMuch') return past;
  return verdict.missing.flatMap((line) => {
    const isWrap = WRAP.test(line.kind ?? '') && WRAP.test(line.text);
    return isWrap && (line.netCarbsG?.low ?? 0) > 0
      ? [{ ...line, kind: 'tortillas or wraps' }]
      : [];
  });
}
