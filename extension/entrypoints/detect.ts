/**
 * Looks whether the page may hold a recipe, and tells the background; registered only when the user
 * has allowed it. It reads headings and scripts, changes nothing and hands over no more than yes or no.
 */
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { mayHoldRecipe } from '../../engine/read/document/recipe-signs.ts';

/** Milliseconds that a page gets to draw what it loads after its address has changed. */
const SETTLE = 1_500;
/** Looks at one page at most: some pages change their address without end. */
const MOST_LOOKS = 40;

/** Named by both browsers; the library that smooths them over is larger than this script. */
declare const chrome: { runtime?: { sendMessage(message: object): unknown } };

/** What a script in a page sees of the browser's history of addresses. */
type WithNavigation = Window & { navigation?: EventTarget };

export default defineUnlistedScript(() => {
  if (!/html/.test(document.contentType)) return;
  let said = false;
  let looks = 0;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const look = () => {
    looks += 1;
    const found = mayHoldRecipe(document);
    if (found === said || !chrome.runtime?.sendMessage) return;
    said = found;
    try {
      chrome.runtime.sendMessage({ type: 'mark', found });
    } catch {
      // The extension was updated or removed while the page was open.
    }
  };
  const lookLater = () => {
    if (looks >= MOST_LOOKS) return;
    clearTimeout(waiting);
    waiting = setTimeout(() => requestIdleCallback(look, { timeout: SETTLE }), SETTLE);
  };
  look();
  // Some pages draw their text after they have loaded; one more look is enough for those.
  if (!said) lookLater();
  const { navigation } = window as WithNavigation;
  navigation?.addEventListener('currententrychange', lookLater);
  if (!navigation) addEventListener('popstate', lookLater);
});
