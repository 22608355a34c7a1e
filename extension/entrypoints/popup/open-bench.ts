import { browser } from 'wxt/browser';

/** Opens the full view in a tab of its own and closes the popup. */
export async function openBench(query: '' | '?paste' | `?id=${string}` = ''): Promise<void> {
  await browser.tabs.create({ url: browser.runtime.getURL(`/bench.html${query}`) });
  window.close();
}
