/**
 * Gathers the recipes of a tab by injecting the reader script; needs a click on the toolbar button. Small, as
 * it runs while the rest of the popup is still being loaded.
 */
import { browser } from 'wxt/browser';

/** What the script handed back from a tab; no tab, nothing. */
export interface Gathering {
  tabId: number | null;
  result: unknown;
}

/** The tab to read: `?tab=ID` (digits only), else the active one of this window. */
export async function tabToRead(query: string): Promise<number | null> {
  const asked = /^\d{1,15}$/.exec(new URLSearchParams(query).get('tab') ?? '');
  if (asked) return Number(asked[0]);
  const [tab] = await browser.tabs.query({ active: true, currentWindow: true });
  return tab?.id ?? null;
}

async function inject(tabId: number): Promise<unknown> {
  const results = await browser.scripting.executeScript({
    target: { tabId },
    files: ['/reader.js'],
  });
  return results[0]?.result;
}

/** @throws {Error} when the browser keeps the page closed to extensions. */
export async function gatherTab(query: string): Promise<Gathering> {
  const tabId = await tabToRead(query);
  return { tabId, result: tabId === null ? null : await inject(tabId) };
}
