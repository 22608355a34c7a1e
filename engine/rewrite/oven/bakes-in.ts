/** Whether a sentence bakes something, by English key words. */

const BAKES = /\b(?:bake[ds]?|roast)\b/i;
const OVEN = /(?<!\bdutch )\boven\b/i;
/** An oven that only keeps things warm bakes nothing, nor one without heat or time. */
const KEEPS_WARM = /\bwarm\b/i;
const TELLS = /\d|\b(?:until|till|golden|hours?|preheated)\b/i;

export const bakesIn = (sentence: string): boolean =>
  BAKES.test(sentence) ||
  (OVEN.test(sentence) && TELLS.test(sentence) && !KEEPS_WARM.test(sentence));
