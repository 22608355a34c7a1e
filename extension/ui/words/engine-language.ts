/** The language of the sentences that come from the engine, for the page that shows them. */
import { engineWords } from './engine-words.ts';
import { languageOf, locale } from './say.ts';

/**
 * `lang` of an element with a sentence of the engine's that has no words in the screen's language: left out on an
 * English screen, so that a screen reader stays in the user's own English there.
 */
export const engineLang = (): 'en' | undefined =>
  languageOf(locale()) === 'en' ? undefined : 'en';

/** A sentence of the engine's in the screen's language; with its `lang` where that is English still. */
export function toldHere(text: string): { text: string; lang: 'en' | undefined } {
  const told = engineWords()?.toldOnScreen(text, locale()) ?? null;
  return told === null ? { text, lang: engineLang() } : { text: told, lang: undefined };
}
