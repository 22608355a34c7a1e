/** The entry in the page's context menu and the key that do the same: rework what is selected. */
import { browser } from 'wxt/browser';
import { reworkSelection } from './selected-text.ts';

const ENTRY = 'rework-selection';

/** Shown only where text is selected. */
export async function addMenu(): Promise<void> {
  await browser.contextMenus.removeAll();
  browser.contextMenus.create({
    id: ENTRY,
    title: browser.i18n.getMessage('reworkSelection'),
    contexts: ['selection'],
  });
}

interface Tab {
  id?: number | undefined;
}

export async function onMenu(info: { menuItemId: string | number }, tab?: Tab): Promise<void> {
  if (info.menuItemId === ENTRY) await reworkSelection(tab?.id);
}

export async function onCommand(command: string, tab?: Tab): Promise<void> {
  if (command === ENTRY) await reworkSelection(tab?.id);
}
