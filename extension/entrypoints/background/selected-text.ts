/** Reads the selected text of a tab and opens it in the full view. */
import { browser } from 'wxt/browser';
import * as z from 'zod';
import { readText } from '../../../engine/read/index.ts';
import { goalsFrom, loadPreferences } from '../../store/prefs.ts';
import { keepUnread, type Unread } from '../../store/working/unread.ts';
import { storeWork } from '../../store/working/unsaved.ts';
import { speakAsAsked } from '../../ui/words/begin.ts';
import { say } from '../../ui/words/say.ts';

/** What the script in the page hands over; see `selection.ts` beside the reader. */
const Selected = z.object({
  text: z.string().max(400_000),
  url: z.string(),
  language: z.string(),
  title: z.string(),
});
type Selected = z.infer<typeof Selected>;

/** The longest selection among the page and its frames of the same origin; null when there is none. */
async function selectedIn(tabId: number): Promise<Selected | null> {
  const results = await browser.scripting.executeScript({
    target: { tabId, allFrames: true },
    files: ['/selection.js'],
  });
  let longest: Selected | null = null;
  for (const { result } of results) {
    const found = Selected.safeParse(result);
    if (found.success && found.data.text.length > (longest?.text.length ?? 0)) longest = found.data;
  }
  return longest;
}

const open = (query: `?work=${string}` | '?paste#paste') =>
  browser.tabs.create({ url: browser.runtime.getURL(`/bench.html${query}`) });

async function openUnread(unread: Unread): Promise<void> {
  await keepUnread(browser.storage.session, unread);
  await open('?paste#paste');
}

async function openRead({ text, url, language, title }: Selected): Promise<void> {
  const result = readText(text, { url, language, title });
  const recipe = result.ok ? result.recipes[0] : undefined;
  if (!recipe) {
    return openUnread({ text, why: `${say('selectionNoRecipe')} ${say('noLinesFound')}` });
  }
  const goals = goalsFrom(await loadPreferences(browser.storage.local));
  const current = { recipe, goals, corrections: {}, savedId: null };
  const { id } = await storeWork(browser.storage.local, current, null);
  await open(`?work=${id}`);
}

/** Never rejects: what cannot be read is said in the full view. */
export async function reworkSelection(tabId: number | undefined): Promise<void> {
  await speakAsAsked();
  try {
    const selected = tabId === undefined ? null : await selectedIn(tabId);
    await (selected ? openRead(selected) : openUnread({ text: '', why: say('nothingSelected') }));
  } catch {
    await openUnread({ text: '', why: say('pageRefused') });
  }
}
