/**
 * Data files of the line grammar. To add a language: write `data/languages/xx.json` with the keys of
 * `LanguageData` and list it in `LANGUAGES`. To add a unit or a word, add it to its list there.
 */
import cs from '../data/languages/cs.json' with { type: 'json' };
import de from '../data/languages/de.json' with { type: 'json' };
import el from '../data/languages/el.json' with { type: 'json' };
import en from '../data/languages/en.json' with { type: 'json' };
import es from '../data/languages/es.json' with { type: 'json' };
import fr from '../data/languages/fr.json' with { type: 'json' };
import hu from '../data/languages/hu.json' with { type: 'json' };
import it from '../data/languages/it.json' with { type: 'json' };
import ja from '../data/languages/ja.json' with { type: 'json' };
import nl from '../data/languages/nl.json' with { type: 'json' };
import nordic from '../data/languages/nordic.json' with { type: 'json' };
import pl from '../data/languages/pl.json' with { type: 'json' };
import pt from '../data/languages/pt.json' with { type: 'json' };
import ru from '../data/languages/ru.json' with { type: 'json' };
import zh from '../data/languages/zh.json' with { type: 'json' };
import units from '../data/units.json' with { type: 'json' };

/** Sets of words; the English file has every one of them, other files those that they need. */
export type WordSet = {
  [K in keyof typeof en]: (typeof en)[K] extends string ? K : never;
}[keyof typeof en];

/** Word lists are strings with a space between words and an underscore inside a word group. */
export type LanguageData = { [S in WordSet]?: string } & {
  numbers: Record<string, number>;
  /** Canonical name -> [kind, forms]. */
  units: Record<string, string[]>;
  /** Form -> [how many, canonical name]: local measures that are a multiple of one we know. */
  scaled?: Record<string, (string | number)[]>;
  /** Form -> [canonical name, foods]: a word that is this unit before these foods only ('filet d'huile'). */
  unitsBefore?: Record<string, string[]>;
  suffixUnits?: Record<string, string>;
  /** Frequent words of ingredient lines that tell the language of a line without a tag. */
  marks?: string;
  /** Letters beyond a-z that it uses; they decide between languages that share a line's words. */
  letters?: string;
  singulars?: Record<string, string>;
  exactUnits?: Record<string, string>;
};

/** Units that are written the same in every language. */
export const SHARED_UNITS: Record<string, { kind: string; forms: string }> = units;

export const ENGLISH: LanguageData = en;

export const WORD_SETS = Object.entries(en).flatMap(([key, words]) =>
  typeof words === 'string' ? [key as WordSet] : [],
);

export const LANGUAGES: Record<string, LanguageData> = {
  en: ENGLISH,
  de,
  fr,
  nl,
  es,
  it,
  pt,
  sv: nordic,
  da: nordic,
  nb: nordic,
  nn: nordic,
  no: nordic,
  cs,
  sk: cs,
  el,
  ru,
  pl,
  hu,
  zh,
  ja,
};
