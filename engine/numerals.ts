/** Values of single numbers as kitchens write them: '2', '2,5', '1/2', '1 1/2', '1½'. */

/** Characters that are fractions (½, ⅔, ⅞), as the inside of a character class. */
export const FRACTION_SIGNS = '¼-¾⅐-⅞';

const MIXED = new RegExp(`^(\\d+)?\\s*(?:(\\d+)\\s?[/⁄∕]\\s?(\\d+)|([${FRACTION_SIGNS}]))$`);
const DECIMAL = /^\d*[.,]?\d+$/;

/** `over` divided by `under`, in digits; NaN when nothing can be divided. */
export function ratio(over: string, under: string): number {
  const divisor = Number(under);
  return divisor > 0 ? Number(over) / divisor : Number.NaN;
}

/** Value of a fraction sign; Unicode takes '½' apart into 1, a fraction slash and 2. */
export function fractionValue(sign: string): number {
  const [over = '', under = ''] = sign.normalize('NFKD').split('⁄');
  return ratio(over, under);
}

/**
 * Value of a text that is one number and nothing else: digits, a decimal with point or comma, a
 * fraction, or a whole number with a fraction. Null when it is none of these. Thousands are not
 * told from decimals here.
 */
export function numberValue(text: string): number | null {
  const trimmed = text.trim();
  if (DECIMAL.test(trimmed)) return Number(trimmed.replace(',', '.'));
  const parts = MIXED.exec(trimmed);
  if (!parts) return null;
  const [, whole = '0', over = '', under = '', sign] = parts;
  const part = sign === undefined ? ratio(over, under) : fractionValue(sign);
  return Number.isNaN(part) ? null : Number(whole) + part;
}
