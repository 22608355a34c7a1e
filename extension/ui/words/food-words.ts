/** Foods by the name the user's language has for them. */
import { engineWords } from './engine-words.ts';
import { languageOf, locale } from './say.ts';

/** `otherwise` is the food's own name, for languages without another one; a package of the user's keeps the name they gave it. */
export function foodWord(foodId: string, otherwise: string): string {
  const words = engineWords();
  return words?.shownName('en', foodId) === otherwise
    ? (words.shownName(languageOf(locale()), foodId) ?? otherwise)
    : otherwise;
}
