/** What a food is called in a language of recipes, for those who read it: the first name that the language's file lists. */
import es from '../data/names/es.json' with { type: 'json' };
import fr from '../data/names/fr.json' with { type: 'json' };
import it from '../data/names/it.json' with { type: 'json' };
import nl from '../data/names/nl.json' with { type: 'json' };
import pt from '../data/names/pt.json' with { type: 'json' };
import sv from '../data/names/sv.json' with { type: 'json' };
import { shownName } from './shown-names.ts';

const NAMES: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  es,
  fr,
  it,
  nl,
  pt,
  sv,
};

/** A food's name, or null where the language or the food has none. */
export const foodNameIn = (language: string, foodId: string): string | null =>
  NAMES[language]?.[foodId]?.[0] ?? shownName(language, foodId);
