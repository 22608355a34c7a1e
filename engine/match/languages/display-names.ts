/** What a food is called in a language, for those who read it: the first name that the language's file lists. */
import de from '../data/names/de.json' with { type: 'json' };
import es from '../data/names/es.json' with { type: 'json' };
import fr from '../data/names/fr.json' with { type: 'json' };
import it from '../data/names/it.json' with { type: 'json' };
import nl from '../data/names/nl.json' with { type: 'json' };
import pt from '../data/names/pt.json' with { type: 'json' };
import sv from '../data/names/sv.json' with { type: 'json' };
import shown from '../data/shown-names-de.json' with { type: 'json' };

/** Names by language and food id; the second file has foods that no page calls by one settled name. */
const NAMES: Record<string, readonly Record<string, string | readonly string[]>[]> = {
  de: [de, shown],
  es: [es],
  fr: [fr],
  it: [it],
  nl: [nl],
  pt: [pt],
  sv: [sv],
};

/** A food's name, or null where the language or the food has none. */
export function foodNameIn(language: string, foodId: string): string | null {
  for (const names of NAMES[language] ?? []) {
    const found = names[foodId];
    const name = typeof found === 'string' ? found : found?.[0];
    if (name !== undefined) return name;
  }
  return null;
}
