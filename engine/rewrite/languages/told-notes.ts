/** Limits, notes, reasons and questions in the language of a recipe, by their English sentences: `data/note-words.json`. */
import { foodTable } from '../../foods/index.ts';
import { foodNameIn } from '../../match/languages/display-names.ts';
import noteWords from './data/note-words.json' with { type: 'json' };
import { type Language, languageOfTag } from './language-tags.ts';
import { localFoodName, methodWords } from './method-words.ts';
import { type Telling, telling } from './telling.ts';

const TELLINGS = new Map<Language, Telling>();

let ids: ReadonlyMap<string, string> | null = null;

function nameIn(tag: Language, english: string): string | null | undefined {
  ids ??= new Map(foodTable().foods.map(({ id, name }) => [name, id]));
  const id = ids.get(english);
  const words = methodWords(tag);
  if (id === undefined || words === null) return undefined;
  return localFoodName(id, words) ?? foodNameIn(tag, id);
}

function tellingIn(tag: Language): Telling {
  const known = TELLINGS.get(tag);
  if (known !== undefined) return known;
  const made = telling({
    sentences: Object.entries(noteWords).map(([english, said]) => [english, said[tag]] as const),
    words: {},
    foodName: (english) => nameIn(tag, english),
  });
  TELLINGS.set(tag, made);
  return made;
}

/** A limit, note, reason or question in the language of a BCP 47 tag; null where the language has no words for it. */
export function toldNote(text: string, language: string | null): string | null {
  const tag = languageOfTag(language);
  return tag === null ? null : tellingIn(tag)(text);
}
