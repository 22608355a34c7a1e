/**
 * Letters of the scripts that recipes are read in, as the inside of a character class. Engines take far longer
 * to compile `\p{L}` with `u` and `i` than these ranges, and a page is read once, on code not yet warm.
 */
export const LETTERS =
  'A-Za-z\u00aa\u00b5\u00ba\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u02af\u0300-\u036f\u0370-\u052f\u0590-\u06ff\u0900-\u0dff\u0e00-\u0eff\u1e00-\u1fff\u3040-\u30ff\u4e00-\u9fff\uac00-\ud7af';

/** One letter. */
export const LETTER = `[${LETTERS}]`;
/** One letter, figure or fraction sign. */
export const WORD = `[${LETTERS}\\d\u00bc-\u00be\u2150-\u215e]`;
