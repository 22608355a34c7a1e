/**
 * Marks tabs that may hold a recipe, for those who switched that on. The permission to see pages is the
 * switch: with it the script that looks is registered, without it there is none.
 */
import { browser } from 'wxt/browser';
import { ALL_PAGES } from '../../ui/settings/all-pages.ts';

const SCRIPT = 'detect';
/** A quiet grey that carries white text (contrast 7.0). */
const MARK_COLOUR = '#515a63';

/** Registers the script, or takes it away, as the permission says. */
async function follow(): Promise<void> {
  const allowed = await browser.permissions.contains(ALL_PAGES);
  const registered = await browser.scripting.getRegisteredContentScripts({ ids: [SCRIPT] });
  if (allowed && registered.length === 0) {
    await browser.scripting.registerContentScripts([
      {
        id: SCRIPT,
        js: ['/detect.js'],
        matches: [...ALL_PAGES.origins],
        runAt: 'document_idle',
        persistAcrossSessions: true,
      },
    ]);
  }
  if (!allowed && registered.length > 0)
    await browser.scripting.unregisterContentScripts({ ids: [SCRIPT] });
}

/** Follows the permission from now on, also when it is given or taken in the browser's own settings. */
export function watchPermission(): void {
  const now = () => void follow();
  browser.permissions.onAdded.addListener(now);
  browser.permissions.onRemoved.addListener(now);
  browser.runtime.onInstalled.addListener(now);
  browser.runtime.onStartup.addListener(now);
}

/** Sets or clears the mark of a tab; the browser itself clears it when the tab goes to another page. */
export async function markTab(message: unknown, tabId: number | undefined): Promise<void> {
  if (tabId === undefined) return;
  const found = (message as { found?: unknown }).found === true;
  const title = browser.i18n.getMessage(found ? 'recipeHere' : 'extensionName');
  try {
    await browser.action.setBadgeBackgroundColor({ tabId, color: MARK_COLOUR });
    await browser.action.setBadgeText({ tabId, text: found ? '•' : '' });
    await browser.action.setTitle({ tabId, title });
  } catch {
    // The tab is gone.
  }
}
