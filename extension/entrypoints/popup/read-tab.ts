/** Reads the recipes of a tab by injecting the reader script; needs a click on the toolbar button. */
import { browser } from 'wxt/browser';
import * as z from 'zod';
import { finishReading, type Gathered, type NothingFound, Recipe } from '../../../engine/index.ts';

/** What the script in the page hands back, as far as it has to be known before it is finished. */
const Answer = z.discriminatedUnion('ok', [
  z.looseObject({ ok: z.literal(true), recipes: z.array(z.looseObject({})) }),
  z.object({ ok: z.literal(false), why: z.string() }),
]);
const Recipes = z.array(Recipe);

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
    // The script is our own; what it gathered is checked as recipes once it is finished.
    const read = finishReading(answer.data as Gathered | NothingFound);
    if (!read.ok) return { kind: 'none', why: read.why };
    const recipes = Recipes.safeParse(read.recipes);
    return recipes.success
      ? { kind: 'recipes', recipes: recipes.data }
      : refused('The page could not be read.');
  } catch {
    return refused(
      'Browsers keep their own pages, stores and some documents closed to extensions.',
    );
  }
}
