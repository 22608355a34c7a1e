/** What is not counted and something else is to be served in place of. */
import type { MissingLine, Verdict } from '../../model.ts';
import { kindOf } from './missing-kinds.ts';
import { pastWith } from './verdict-word.ts';

const WRAPS = 'tortillas or wraps';

/** What takes a serving past its budget when it is eaten with it; of a dish that is too much, wraps that no line counts. */
export function replaceable(verdict: Verdict): MissingLine[] {
  const past = pastWith(verdict);
  if (past.length > 0 || verdict.state !== 'tooMuch') return past;
  return verdict.missing.flatMap((line) => {
    const isWrap = kindOf(line.kind ?? '')?.kind === WRAPS && (line.netCarbsG?.low ?? 0) > 0;
    return isWrap ? [{ ...line, kind: WRAPS }] : [];
  });
}
