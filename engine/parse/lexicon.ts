/** The words of a language, compiled once from its data file. How to add one: see language-data.ts. */
import { ENGLISH, LANGUAGES, type LanguageData, SHARED_UNITS } from './language-data.ts';

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
  name: string;
  kind: UnitKind;
}

const SETS = [
  'articles',
  'vague',
  'sizes',
  'fill',
  'approx',
  'ranges',
  'plus',
  'of',
  'and',
  'or',
  'each',
  'around',
  'times',
  'more',
  'extracts',
  'from',
  'prep',
  'prepAdverbs',
  'prepWith',
  'descriptors',
  'noteStarts',
  'noteHeads',
  'purposeStarts',
  'purposeVerbs',
  'referenceWords',
  'optional',
  'heads',
  'needHead',
  'purposeAny',
  'cuts',
  'cutWords',
  'orNote',
  'origin',
  'prepTails',
  'trailPairs',
  'onlyNote',
  'keepPairs',
  'keepLast',
  'prepPairs',
  'fillBeforeUnit',
  'headingStarts',
] as const;
export type WordSet = (typeof SETS)[number];

export type Lexicon = { [S in WordSet]: ReadonlySet<string> } & {
  language: string;
  numbers: ReadonlyMap<string, number>;
  /** Irregular plural -> singular. */
  singulars: ReadonlyMap<string, string>;
  /** By lower-case form; words of a form are joined by one space. */
  units: ReadonlyMap<string, Unit>;
  /** Forms that only count in this very case ('T' against 't'). */
  exactUnits: ReadonlyMap<string, Unit>;
  /** First words of unit forms that have several words. */
  unitStarts: ReadonlySet<string>;
};

/** Words of a data string; an underscore stands for a space inside one form. */
function words(list: string | undefined): string[] {
  return list ? list.split(' ').map((w) => w.replaceAll('_', ' ')) : [];
}

function addUnit(units: Map<string, Unit>, name: string, kind: string, forms: string): void {
  const unit: Unit = { name, kind: kind as UnitKind };
  for (const form of words(forms)) units.set(form, unit);
}

function compile(language: string, data: LanguageData): Lexicon {
  const units = new Map<string, Unit>();
  for (const [name, unit] of Object.entries(SHARED_UNITS))
    addUnit(units, name, unit.kind, unit.forms);
  for (const [name, [kind = 'piece', forms = '']] of Object.entries(data.units))
    addUnit(units, name, kind, forms);
  const exactUnits = new Map<string, Unit>();
  for (const [form, name] of Object.entries(data.exactUnits ?? {}))
    exactUnits.set(form, { name, kind: 'volume' });
  const starts = [...units.keys()].filter((form) => form.includes(' '));
  const sets = {} as Record<WordSet, ReadonlySet<string>>;
  for (const set of SETS) sets[set] = new Set(words(data[set]));
  return {
    ...sets,
    language,
    numbers: new Map(Object.entries(data.numbers)),
    singulars: new Map(Object.entries(data.singulars ?? {})),
    units,
    exactUnits,
    unitStarts: new Set(starts.map((form) => form.slice(0, form.indexOf(' ')))),
  };
}

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
