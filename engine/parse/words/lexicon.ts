/** The words of a language, compiled once from its data file. How to add one: see language-data.ts. */
import {
  ENGLISH,
  LANGUAGES,
  type LanguageData,
  SHARED_UNITS,
  WORD_SETS,
  type WordSet,
} from './language-data.ts';
import { lowAt, type Token } from './tokens.ts';

export type UnitKind =
  | 'mass'
  | 'volume'
  | 'length'
  | 'small'
  | 'piece'
  | 'trail'
  | 'noun'
  | 'container';

export interface Unit {
  /** Canonical name, as in `Amount.unit`. */
  name: string;
  kind: UnitKind;
  /** What one of it is in `name`, when a word is not the unit itself ('Pfund' is 500 g). */
  scale: number;
}

/** Sets that are put together from others. */
const UNIONS = {
  /** Words that join foods. */
  joints: ['and', 'or'],
  /** Words of which a part is made that is nothing but preparation. */
  preparing: ['prep', 'prepAdverbs', 'prepWith', 'and'],
  /** Words that only describe what follows. */
  describing: ['descriptors', 'sizes'],
  /** Words that name no food by themselves. */
  unnamed: ['prepAdverbs', 'sizes', 'and', 'or'],
  /** Words that make a number after them part of a phrase: 'cut into 2 cm', 'or 200 g'. */
  leading: ['or', 'plus', 'and', 'noteStarts', 'cutWords'],
  /** Words that say nothing where no part of a reading took them up. */
  silent: ['of', 'articles', 'and', 'plus', 'approx'],
} as const satisfies Record<string, readonly WordSet[]>;

export type Lexicon = { [S in WordSet | keyof typeof UNIONS]: ReadonlySet<string> } & {
  language: string;
  numbers: ReadonlyMap<string, number>;
  /** End of a compound word -> unit: '-zehen' in 'Knoblauchzehen'. */
  suffixUnits: readonly (readonly [string, string])[];
  /** Irregular plural -> singular. */
  singulars: ReadonlyMap<string, string>;
  /** By lower-case form; words of a form are joined by one space. */
  units: ReadonlyMap<string, Unit>;
  /** By canonical name. */
  byName: ReadonlyMap<string, Unit>;
  /** Forms that only count in this very case ('T' against 't'). */
  exactUnits: ReadonlyMap<string, Unit>;
  /** Forms that are a unit of their own before some foods: 'filet' before 'huile' is a drizzle. */
  unitsBefore: ReadonlyMap<string, { unit: Unit; foods: ReadonlySet<string> }>;
  /** First words of two-word entries in any set, so that pairs are only built where one can match. */
  phraseStarts: ReadonlySet<string>;
  /** First words of unit forms that have several words. */
  unitStarts: ReadonlySet<string>;
};

/** Words of a data string; an underscore stands for a space inside one form. */
function words(list: string | undefined): string[] {
  return list ? list.split(' ').map((w) => w.replaceAll('_', ' ')) : [];
}

/** Entries of a part that a language's file may leave out. */
const entriesOf = <T>(part: Readonly<Record<string, T>> | undefined): [string, T][] =>
  Object.entries(part ?? {});

function addUnit(units: Map<string, Unit>, name: string, kind: string, forms: string): void {
  const unit: Unit = { name, kind: kind as UnitKind, scale: 1 };
  for (const form of words(forms)) units.set(form, unit);
}

const shared = new Map<string, Unit>();
for (const [name, unit] of entriesOf(SHARED_UNITS)) addUnit(shared, name, unit.kind, unit.forms);

function compile(language: string, data: LanguageData): Lexicon {
  const units = new Map(shared);
  for (const [name, [kind = 'piece', forms = '']] of entriesOf(data.units))
    addUnit(units, name, kind, forms);
  const byName = new Map([...units.values()].map((unit) => [unit.name, unit]));
  for (const [form, [scale = 1, name = '']] of entriesOf(data.scaled)) {
    const base = byName.get(String(name));
    if (base) units.set(form, { ...base, scale: Number(scale) });
  }
  const exactUnits = new Map<string, Unit>();
  for (const [form, name] of entriesOf(data.exactUnits))
    exactUnits.set(form, { name, kind: 'volume', scale: 1 });
  const unitsBefore = new Map<string, { unit: Unit; foods: ReadonlySet<string> }>();
  for (const [form, [name = '', foods = '']] of entriesOf(data.unitsBefore)) {
    const unit = byName.get(name) ?? { name, kind: 'small', scale: 1 };
    unitsBefore.set(form, { unit, foods: new Set(words(foods)) });
  }
  const starts = [...units.keys()].filter((form) => form.includes(' '));
  const sets = {} as Record<WordSet | keyof typeof UNIONS, ReadonlySet<string>>;
  const phraseStarts = new Set<string>();
  for (const set of WORD_SETS) {
    sets[set] = new Set(words(data[set]));
    for (const entry of sets[set])
      if (entry.includes(' ')) phraseStarts.add(entry.slice(0, entry.indexOf(' ')));
  }
  for (const [name, parts] of Object.entries(UNIONS))
    sets[name as keyof typeof UNIONS] = new Set(parts.flatMap((part) => [...sets[part]]));
  return {
    ...sets,
    language,
    numbers: new Map(entriesOf(data.numbers)),
    suffixUnits: entriesOf(data.suffixUnits),
    singulars: new Map(entriesOf(data.singulars)),
    units,
    byName,
    exactUnits,
    unitsBefore,
    phraseStarts,
    unitStarts: new Set(starts.map((form) => form.slice(0, form.indexOf(' ')))),
  };
}

/** Whether two words that follow each other stand in a set as one entry. */
export function hasPair(
  set: ReadonlySet<string>,
  first: string,
  second: string,
  lex: Lexicon,
): boolean {
  return lex.phraseStarts.has(first) && set.has(`${first} ${second}`);
}

/** Whether the token at `i` and the one after it stand in a set as one entry. */
export const isPairAt = (
  set: ReadonlySet<string>,
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): boolean => hasPair(set, lowAt(tokens, i), lowAt(tokens, i + 1), lex);

/** Whether an entry of a set, of one word or two, stands at `i`. */
export const isEntryAt = (
  set: ReadonlySet<string>,
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): boolean => set.has(lowAt(tokens, i)) || isPairAt(set, tokens, i, lex);

/** Value of the number word at `i`; 0 when none stands there. */
export const numberWord = (tokens: readonly Token[], i: number, lex: Lexicon): number =>
  lex.numbers.get(lowAt(tokens, i)) ?? 0;

const compiled = new Map<string, Lexicon>();

/** The lexicon of a BCP 47 tag ('de-AT' reads as 'de'); English for a language that has no data. */
export function lexiconOf(language: string | null | undefined): Lexicon {
  const primary = (language ?? 'en').slice(0, 2).toLowerCase();
  const data = LANGUAGES[primary];
  const code = data ? primary : 'en';
  let lexicon = compiled.get(code);
  if (!lexicon) {
    lexicon = compile(code, data ?? ENGLISH);
    compiled.set(code, lexicon);
  }
  return lexicon;
}
