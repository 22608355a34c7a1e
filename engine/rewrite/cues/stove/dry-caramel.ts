/** Sugar melted dry: it melts far above the temperature at which a syrup is done. */

const MELTS =
  /\bsugar\b[^.]*\b(?:melt\w*|amber|caramel\w*)|\b(?:melt\w*|caramel\w*)\b[^.]*\bsugar\b/i;
const WET = /\b(?:water|cream|milk|butter|syrup|juice|honey|simmer\w*|boil\w*)\b/i;
const STOPS_AT =
  /,? (?:(?:and|et|en|y|e|og|och) )?(?:stop|stopp|bei|s'arrêter|parar|fermarsi|sluta)(?![\p{L}])[^,;{]*\{C:[\d-]+\}(?: aufhören)?,?/u;

/** Whether a sentence, with English key words, melts sugar by itself. */
export const isDryCaramel = (sentence: string): boolean =>
  MELTS.test(sentence) && !WET.test(sentence);

/** Advice on a syrup without its temperature. */
export const withoutSyrupHeat = (text: string): string => text.replace(STOPS_AT, '');
