/** Foods by the name the user's language has for them. */
import { engineWords } from './engine-words.ts';
import { languageOf, locale } from './say.ts';

/** `otherwise` is the food's own name, for languages and foods without another one. */
export const foodWord = (foodId: string, otherwise: string): string =>
  engineWords()?.foodNameIn(languageOf(locale()), foodId) ?? otherwise;
