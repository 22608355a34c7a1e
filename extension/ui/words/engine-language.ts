/** The language of the sentences that come from the engine, for the page that shows them. */
import { languageOf, locale } from './say.ts';

/**
 * `lang` of an element with a sentence of the engine's, which are all English: left out on an English
 * screen, so that a screen reader stays in the user's own English there.
 */
export const engineLang = (): 'en' | undefined =>
  languageOf(locale()) === 'en' ? undefined : 'en';
