/** Sets the language of a page or worker of the extension before it says anything. */
import { browser } from 'wxt/browser';
import { DEFAULT_PREFERENCES, loadPreferences } from '../../store/prefs.ts';
import { locale, speak } from './say.ts';

/** Speaks the language the user chose, or the browser's; never rejects. */
export async function speakAsAsked(): Promise<void> {
  const { language } = await loadPreferences(browser.storage.local).catch(
    () => DEFAULT_PREFERENCES,
  );
  speak(language === 'auto' ? browser.i18n.getUILanguage() : language);
}

/** Draws a page once its language is known. */
export async function beginWith(draw: () => void): Promise<void> {
  await speakAsAsked();
  document.documentElement.lang = locale();
  draw();
}
