/** Answers the pages of the extension, its menu entry and its keys. It keeps no state of its own. */
import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { openStore } from '../../store/db.ts';
import { answerSave } from '../../store/working/keeper.ts';
import { speakAsAsked } from '../../ui/words/begin.ts';
import { onBrowserStart } from './at-start.ts';
import { addMenu, onCommand, onMenu } from './menu.ts';
import { markTab, watchPermission } from './page-marks.ts';
import { reworkSelection } from './selected-text.ts';
import { isOwnPage, isOwnScript } from './senders.ts';

export default defineBackground(() => {
  // Listeners stand here, at the top, so that the browser wakes this script for each of them.
  browser.runtime.onInstalled.addListener(() => void addMenu());
  browser.contextMenus.onClicked.addListener((info, tab) => void onMenu(info, tab));
  browser.commands.onCommand.addListener((command, tab) => void onCommand(command, tab));
  browser.runtime.onStartup.addListener(() => void onBrowserStart());
  watchPermission();
  browser.runtime.onMessage.addListener((message: unknown, sender) => {
    const type = (message as { type?: unknown } | null)?.type;
    if (type === 'mark' && isOwnScript(sender, browser.runtime.id)) {
      void markTab(message, sender.tab?.id);
      return undefined;
    }
    // Whatever else is asked may read and write what the user keeps: pages of the extension only.
    if (!isOwnPage(sender, browser.runtime.id, browser.runtime.getURL('/'))) return undefined;
    if (type === 'rework-selection') {
      const { tabId } = message as { tabId?: unknown };
      return reworkSelection(typeof tabId === 'number' ? tabId : undefined);
    }
    if (type !== 'save') return undefined;
    const store = openStore();
    return speakAsAsked()
      .then(() => answerSave(store, message, Date.now()))
      .finally(() => store.close());
  });
});
