/** What every food of the table is called on a screen. A new language is one more name of each row. */
import data from '../data/shown-names.json' with { type: 'json' };

type Row = Readonly<Record<string, string>>;

const ROWS: Readonly<Record<string, Row>> = data;

/** A food's name in a language of two letters; null where the table does not know the food or the language. */
export const shownName = (language: string, foodId: string): string | null =>
  ROWS[foodId]?.[language] ?? null;

/** As the method calls it: 'hearts of palm, canned' without what stands behind the comma. */
const short = (name: string): string => name.split(',')[0] ?? name;

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

let byEnglish: ReadonlyMap<string, Row> | null = null;

/** The same by the English name, however it begins; undefined for the user's own foods. */
export function shownNameOf(language: string, english: string): string | undefined {
  byEnglish ??= new Map(
    Object.values(ROWS).flatMap(({ en = '', ...row }) => [
      [short(en), row],
      [en, row],
    ]),
  );
  return (byEnglish.get(english) ?? byEnglish.get(lowered(english)))?.[language];
}
