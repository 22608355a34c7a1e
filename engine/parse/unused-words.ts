/**
 * What a line's reading has used. A reading holds tokens, never loose text, so whatever no part of it
 * holds can be found here and kept as a note: nothing that a line says is lost.
 */
import type { Lexicon } from './words/lexicon.ts';
import { isMark, type Token } from './words/tokens.ts';

/** Small words that say nothing by themselves where no part of the reading took them up. */
const isSilent = (t: Token, lex: Lexicon): boolean =>
  isMark(t) || (lex.silent.has(t.low) && !lex.fill.has(t.low));

const isJoint = (t: Token, lex: Lexicon): boolean => lex.or.has(t.low) || lex.ranges.has(t.low);

/** The run without the small words at its edges; a leading 'or' stays with what follows it, and 'up to' is whole. */
function trim(run: readonly Token[], lex: Lexicon): Token[] {
  let from = 0;
  let to = run.length;
  if (run.every((t) => isSilent(t, lex) || isJoint(t, lex))) return [];
  for (let t = run[to - 1]; t && (isSilent(t, lex) || lex.or.has(t.low)); t = run[to - 1]) to--;
  for (let t = run[from]; from < to && t && isSilent(t, lex); t = run[from]) from++;
  // 'a little' keeps its article
  if (lex.vague.has(run[from]?.low ?? '') && lex.articles.has(run[from - 1]?.low ?? '')) from--;
  return run.slice(from, to);
}

/** Runs of neighbouring tokens of the line that `held` does not contain, in order. */
export function unheld(
  line: readonly Token[],
  held: readonly (readonly Token[])[],
  lex: Lexicon,
): Token[][] {
  const start = line[0]?.index ?? 0;
  const taken = new Uint8Array(line.length);
  for (const tokens of held) for (const t of tokens) taken[t.index - start] = 1;
  const runs: Token[][] = [];
  let run: Token[] = [];
  for (let i = 0; i <= line.length; i++) {
    const t = line[i];
    if (t && taken[i] !== 1) run.push(t);
    else if (run.length > 0) {
      const words = trim(run, lex);
      if (words.length > 0) runs.push(words);
      run = [];
    }
  }
  return runs;
}
