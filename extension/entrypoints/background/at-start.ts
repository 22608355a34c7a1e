/** What is done when the browser starts. */
import { browser } from 'wxt/browser';
import { forgetLookedAt } from '../../store/working/unsaved.ts';

/** Without a permission for tabs only those of the extension tell their address. */
async function ownTabs(): Promise<string[]> {
  const root = browser.runtime.getURL('/');
  const tabs = await browser.tabs.query({});
  return tabs.flatMap(({ url }) => (url?.startsWith(root) ? [url] : []));
}

/** Never rejects: what could not be let go now is let go at the next start. */
export async function onBrowserStart(): Promise<void> {
  try {
    await forgetLookedAt(browser.storage.local, await ownTabs());
  } catch {
    // The storage is closed or full; the pages say so when they are opened.
  }
}
