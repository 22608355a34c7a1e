import { browser } from 'wxt/browser';

/** What may stand behind the address of the full page: a query, a place, or both. */
type Address =
  | ''
  | `#${'kept' | 'settings' | 'stove' | 'recipe' | 'paste' | 'figures-made' | 'privacy'}`
  | `?paste${'' | '#paste'}`
  | `?id=${string}`
  | `?work=${string}`;

/** Opens the full page in a tab of its own and closes the popup. */
export async function openBench(address: Address = ''): Promise<void> {
  await browser.tabs.create({ url: browser.runtime.getURL(`/bench.html${address}`) });
  window.close();
}
