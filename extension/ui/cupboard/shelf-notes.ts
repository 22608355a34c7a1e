/** What a speciality is, what else it is called, and how it is stored, in the screens' language. */
import { languageOf, locale } from '../words/say.ts';
import data from './data/shelf-notes.json' with { type: 'json' };

type Words = Record<ReturnType<typeof languageOf>, string>;

interface Row {
  is: Words;
  called: Words;
  storing: Words;
}

const GOODS = new Map<string, Row>(Object.entries(data.goods));
/** Needed less often: told where they are bought, not listed for a bare cupboard. */
const FURTHER = new Map<string, Row>(Object.entries(data.further));

export interface ShelfNote {
  is: string;
  called: string;
  storing: string;
}

/** Null for foods that need no introduction. */
export function shelfNote(foodId: string): ShelfNote | null {
  const row = GOODS.get(foodId) ?? FURTHER.get(foodId);
  const language = languageOf(locale());
  return row
    ? { is: row.is[language], called: row.called[language], storing: row.storing[language] }
    : null;
}

/** Ids of all goods that have a note, for a cupboard that is still bare. */
export const notedGoods = (): string[] => [...GOODS.keys()];

/** Ids of everything that has a note. */
export const allNoted = (): string[] => [...GOODS.keys(), ...FURTHER.keys()];
