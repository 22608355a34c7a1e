import { browser } from 'wxt/browser';
import { type Current, storeCurrent } from '../../store/current.ts';

/**
 * Holds what is on the screen for as long as the browser is open, and makes this page's address the
 * one that shows it: a reload then brings it back, not the saved recipe or the empty page before it.
 */
export function hold(current: Current): void {
  // Without room to hold it the page still works; only a reload would lose unsaved changes.
  storeCurrent(browser.storage.session, current).then(
    () => history.replaceState(null, '', `${location.pathname}${location.hash}`),
    () => {},
  );
}
