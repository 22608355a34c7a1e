/** Where a whole bake is said to be cut into its number: where the page cuts it, else before it is served. */
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { HEATS } from './piece-words.ts';
import { lastOwnSentence } from './recut-places.ts';

/** A page that cuts and does not say how many: 'cut into squares', 'slice into wedges'. */
const IN_PIECES =
  /\b(?<cuts>(?:cut|slice)(?: (?:it|the \w+(?: \w+)?))?(?: up)? into)(?<size>(?: (?:small|thin|even|equal|neat|individual))?) (?<pieces>bars|squares|slices|wedges|pieces|triangles|portions)\b/i;
/** 'Slice and serve'. */
const BARE =
  /(?<!\b(?:to|can|then you) )\b(?<cuts>cut|slice)(?<then>,? (?:and|&|then) (?:serve|enjoy)\b)/i;
/** 'Dust with cocoa and serve': it is cut in between. */
const AND_SERVE = /(?<!\b(?:to|can|before|and) \w+),? and (?<serves>(?:serve|enjoy)\b)/i;
const SERVES_FIRST = /^(?:\S+ (?:&|and) )?(?:to )?(?:serve|enjoy)\b/i;

export interface CutText {
  now: number;
  /** What a piece is called: 'slices', 'pieces'. */
  pieces: string;
  /** The sentence that says it by itself. */
  sentence: string;
}

/** The step that cuts the baked whole into what it does not count; -1 when none does. */
export const cuttingStep = (texts: readonly string[]): number => {
  const bakes = texts.findLastIndex((text) => HEATS.test(text));
  return texts.findLastIndex((text, at) => at >= bakes && IN_PIECES.test(text));
};

/** A step with the number of pieces in the sentence that cuts, else before the one that serves, else at its end. */
export function withCut(text: string, { now, pieces, sentence }: CutText): string {
  if (IN_PIECES.test(text)) return text.replace(IN_PIECES, `$<cuts> ${now}$<size> $<pieces>`);
  if (BARE.test(text)) return text.replace(BARE, `$<cuts> into ${now} ${pieces}$<then>`);
  const serves = sentencesOf(text).findIndex((one) => SERVES_FIRST.test(one.trim()));
  if (serves >= 0) return withSentence(text, serves - 1, sentence);
  if (AND_SERVE.test(text))
    return text.replace(AND_SERVE, `, cut it into ${now} ${pieces} and $<serves>`);
  return withSentence(text, lastOwnSentence(text), sentence);
}
