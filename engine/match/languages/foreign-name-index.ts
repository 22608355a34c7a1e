/**
 * Food names in other languages, ready to look up: `data/names/xx.json` lists them by food id,
 * `data/name-grammar.json` has each language's endings, link words and words of quality and state.
 */
import grammars from '../data/name-grammar.json' with { type: 'json' };
import cs from '../data/names/cs.json' with { type: 'json' };
import de from '../data/names/de.json' with { type: 'json' };
import el from '../data/names/el.json' with { type: 'json' };
import es from '../data/names/es.json' with { type: 'json' };
import fr from '../data/names/fr.json' with { type: 'json' };
import hu from '../data/names/hu.json' with { type: 'json' };
import it from '../data/names/it.json' with { type: 'json' };
import ja from '../data/names/ja.json' with { type: 'json' };
import nl from '../data/names/nl.json' with { type: 'json' };
import pl from '../data/names/pl.json' with { type: 'json' };
import pt from '../data/names/pt.json' with { type: 'json' };
import ru from '../data/names/ru.json' with { type: 'json' };
import sv from '../data/names/sv.json' with { type: 'json' };
import zh from '../data/names/zh.json' with { type: 'json' };
import type { State } from '../name-words.ts';
import { plainText } from '../normalise.ts';
import { folded } from './inflection.ts';

type Names = Readonly<Record<string, readonly string[]>>;

const FILES = { de, fr, es, it, nl, pt, sv, cs, el, ru, pl, hu, zh, ja };
type Code = keyof typeof FILES;

const UNSPACED: ReadonlySet<Code> = new Set(['zh', 'ja']);

/** Languages that share another one's file. */
const SHARED: Readonly<Record<string, Code>> = { da: 'sv', no: 'sv', nb: 'sv', nn: 'sv', sk: 'cs' };

export interface Word {
  text: string;
  folded: string;
  /** Stood behind a link word: 'amande' in 'poudre d'amande'. */
  linked: boolean;
}

export interface NameIndex {
  /** Its name in English, for reasons. */
  language: string;
  /** The food stands at the end of a name ('frische Hefe'), not at its start ('levure fraîche'). */
  headLast: boolean;
  quality: ReadonlySet<string>;
  states: ReadonlyMap<string, State>;
  /** Words before what the food lacks: 'sans', 'ohne'. */
  without: ReadonlySet<string>;
  /** Every word of the listed names. */
  vocabulary: ReadonlySet<string>;
  /** Its script sets no blanks between words: a name may stand anywhere in a run of signs. */
  unspaced: boolean;
  /** Words that take the juice, and those that take the peel, of a citrus fruit. */
  juice: ReadonlySet<string>;
  zest: ReadonlySet<string>;
  /** Words of a text, link words left out. */
  wordsOf: (text: string) => Word[];
  /** Food id of some words that are a whole name, in any inflection; null when they are none. */
  idOf: (words: readonly Word[]) => string | null;
  /** Are the words listed in this very spelling? */
  lists: (words: readonly Word[]) => boolean;
}

const STATES: readonly State[] = ['canned', 'cooked', 'dry', 'frozen', 'raw'];
/** Characters of a line that are looked at. */
const LONGEST = 300;
const ELIDED = /\b([dl]|dell|all|dall|nell|sull|un|qu)['’](?=\p{L})/giu;

const splitWords = (text: string): string[] =>
  plainText(text.replace(ELIDED, '$1 ')).match(/[\p{L}\d]+/gu) ?? [];

/** First wins; a key that stands for two foods stands for none. */
function unambiguous(entries: readonly (readonly [string, string])[]): Map<string, string | null> {
  const map = new Map<string, string | null>();
  for (const [key, id] of entries) {
    const known = map.get(key);
    map.set(key, known === undefined || known === id ? id : null);
  }
  return map;
}

function build(code: Code): NameIndex {
  const grammar = grammars[code];
  const links = new Set(splitWords(grammar.links));
  const endings = grammar.endings.split(' ');
  const fold = (word: string): string => folded(word, endings);
  const foldedSet = (list: string): Set<string> => new Set(splitWords(list).map(fold));

  const wordsOf = (text: string): Word[] => {
    const words: Word[] = [];
    let linked = false;
    for (const word of splitWords(text.slice(0, LONGEST))) {
      if (links.has(word)) linked = true;
      else {
        words.push({ text: word, folded: fold(word), linked });
        linked = false;
      }
    }
    return words;
  };
  const written = (words: readonly Word[]): string => words.map((word) => word.text).join(' ');
  const stems = (words: readonly Word[]): string => words.map((word) => word.folded).join(' ');
  // 'Paprika Pulver' and 'Paprikapulver' are one
  const joined = (words: readonly Word[]): string => fold(words.map((word) => word.text).join(''));

  const names: Names = FILES[code];
  const entries = Object.entries(names).flatMap(([id, list]) =>
    list.map((name) => [wordsOf(name), id] as const),
  );
  const keyed = (key: (words: readonly Word[]) => string) =>
    unambiguous(entries.map(([words, id]) => [key(words), id] as const));
  const exact = new Map(entries.map(([words, id]) => [written(words), id]));
  const inflected = keyed(stems);
  const compound = keyed(joined);
  return {
    language: grammar.english,
    headLast: grammar.headLast,
    quality: foldedSet(grammar.quality),
    states: new Map(
      STATES.flatMap((state) =>
        [...foldedSet(grammar[state])].map((word) => [word, state] as const),
      ),
    ),
    without: foldedSet(grammar.without),
    unspaced: UNSPACED.has(code),
    vocabulary: new Set(entries.flatMap(([words]) => words.map((word) => word.text))),
    juice: foldedSet(grammar.juice),
    zest: foldedSet(grammar.zest),
    wordsOf,
    lists: (words) => exact.has(written(words)),
    idOf: (words) =>
      words.length === 0
        ? null
        : (exact.get(written(words)) ??
          inflected.get(stems(words)) ??
          (words.slice(1).some((word) => word.linked) ? null : compound.get(joined(words))) ??
          null),
  };
}

const built = new Map<Code, NameIndex>();

function indexOf(code: Code): NameIndex {
  let index = built.get(code);
  if (!index) {
    index = build(code);
    built.set(code, index);
  }
  return index;
}

const isCode = (code: string): code is Code => Object.hasOwn(FILES, code);

function codeOf(language: string | null | undefined): Code | null {
  const primary = (language ?? '').toLowerCase().split(/[-_]/)[0] ?? '';
  if (isCode(primary)) return primary;
  return Object.hasOwn(SHARED, primary) ? (SHARED[primary] ?? null) : null;
}

/** The names of a BCP 47 tag's language, built on first use; null when there are none. */
export function nameIndex(language: string | null | undefined): NameIndex | null {
  const code = codeOf(language);
  return code && indexOf(code);
}

/** The names of every language but the tag's own. */
export function otherIndexes(language: string | null | undefined): NameIndex[] {
  const own = codeOf(language);
  return Object.keys(FILES)
    .filter(isCode)
    .filter((code) => code !== own)
    .map(indexOf);
}
