/** Runs once in the page when the user asks for it: hands back what is selected, as lines of text. */
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { selectedText } from '../../engine/read/document/text-of-selection.ts';

export default defineUnlistedScript(() => {
  try {
    return {
      text: selectedText(document),
      url: location.href,
      language: document.documentElement.lang,
      title: document.querySelector('h1')?.textContent?.trim().slice(0, 300) ?? '',
    };
  } catch {
    return null;
  }
});
