/** Holds what is on the screen, also over an end of the browser, under an address that shows it again. */
import { browser } from 'wxt/browser';
import type { Current } from '../../store/working/current.ts';
import { type Held, type WorkHolder, workHolder } from '../../store/working/unsaved.ts';

let holder: WorkHolder = workHolder(browser.storage.local, null);

/** What was held before, with which this page goes on; a reload of its address brings it back. */
export function goOnWith(held: Held): void {
  holder = workHolder(browser.storage.local, held);
  show(held);
}

const show = ({ id }: Held): void =>
  history.replaceState(null, '', `${location.pathname}?work=${id}${location.hash}`);

/**
 * Holds a new state and makes this page's address the one that shows it.
 * @throws the storage layer's error; the page still works, but a reload would lose the change.
 */
export async function hold(current: Current): Promise<void> {
  show(await holder.hold(current));
}
