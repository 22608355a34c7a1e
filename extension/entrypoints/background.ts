/** Saves recipes for the popup. It keeps no state of its own and starts nothing by itself. */
import { browser } from 'wxt/browser';
import { defineBackground } from 'wxt/utils/define-background';
import { openStore } from '../store/db.ts';
import { answerSave } from '../store/keeper.ts';

export default defineBackground(() => {
  browser.runtime.onMessage.addListener((message: unknown) => {
    if ((message as { type?: unknown } | null)?.type !== 'save') return undefined;
    const store = openStore();
    return answerSave(store, message, Date.now()).finally(() => store.close());
  });
});
