/** Letters without their accents, so that 'PREPARACION' and 'preparación' are one word. */

const PLAIN = /^[\x20-\x7e]*$/;

/** The text with every accent taken off; case, signs and letters without accents stay ('ø', 'ß', 'ł'). */
export function withoutAccents(text: string): string {
  if (PLAIN.test(text)) return text;
  // Syllables of Korean come apart as accented letters do, and are put together again.
  return text.normalize('NFD').replace(/\p{M}/gu, '').normalize('NFC');
}
