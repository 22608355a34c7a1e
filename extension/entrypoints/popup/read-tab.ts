/** Reads the recipes of a tab by injecting the reader script; needs a click on the toolbar button. */
import { browser } from 'wxt/browser';
import * as z from 'zod';
import { Recipe, withLanguage } from '../../../engine/index.ts';

const Answer = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), recipes: z.array(Recipe) }),
  z.object({ ok: z.literal(false), why: z.string() }),
]);

export type TabAnswer =
  | { kind: 'recipes'; recipes: Recipe[] }
  /** The page was read and holds no recipe. */
  | { kind: 'none'; why: string }
  /** The browser does not let extensions read this page, or reading failed. */
  | { kind: 'refused'; why: string };

/** The tab to read: `?tab=ID` (digits only), else the active one of this window. */
export async function tabToRead(query: string): Promise<number | null> {
  const asked = /^\d{1,15}$/.exec(new URLSearchParams(query).get('tab') ?? '');
  if (asked) return Number(asked[0]);
  const [tab] = await browser.tabs.query({ active: true, currentWindow: true });
  return tab?.id ?? null;
}

const refused = (why: string): TabAnswer => ({ kind: 'refused', why });

async function inject(tabId: number): Promise<unknown> {
  const results = await browser.scripting.executeScript({
    target: { tabId },
    files: ['/reader.js'],
  });
  return results[0]?.result;
}

/** Never rejects. */
export async function readTab(query: string): Promise<TabAnswer> {
  try {
    const tabId = await tabToRead(query);
    if (tabId === null) return refused('There is no page in this window.');
    const answer = Answer.safeParse(await inject(tabId));
    if (!answer.success) return refused('The browser gave no answer from this page.');
    if (!answer.data.ok) return { kind: 'none', why: answer.data.why };
    if (answer.data.recipes.length === 0) {
      return { kind: 'none', why: 'No recipe was found on this page.' };
    }
    return { kind: 'recipes', recipes: answer.data.recipes.map(withLanguage) };
  } catch {
    return refused(
      'Browsers keep their own pages, stores and some documents closed to extensions.',
    );
  }
}
