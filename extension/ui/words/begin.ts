/** Sets the language of a page of the extension before it is drawn. */
import { browser } from 'wxt/browser';
import { DEFAULT_PREFERENCES, loadPreferences, type Preferences } from '../../store/prefs.ts';
import { locale, speak } from './say.ts';

/** Speaks the language the user chose, or the browser's. */
export function speakFor({ language }: Pick<Preferences, 'language'>): void {
  speak(language === 'auto' ? browser.i18n.getUILanguage() : language);
  document.documentElement.lang = locale();
}

/** Draws once the language is known; never rejects. */
export async function beginWith(draw: () => void): Promise<void> {
  speakFor(await loadPreferences(browser.storage.local).catch(() => DEFAULT_PREFERENCES));
  draw();
}
