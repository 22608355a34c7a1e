/**
 * Runs once in the page, on the user's click: gathers what its document says of recipes and hands
 * it back as plain data. Changes nothing, sends nothing, catches everything.
 */
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { gatherPage } from '../../engine/read/gather.ts';

/** Largest answer, in characters of JSON: some thousand times a long recipe. */
const MOST_CHARACTERS = 2_000_000;

export default defineUnlistedScript(() => {
  try {
    const started = performance.now();
    const result = gatherPage(document, {
      url: location.href,
      elapsedMs: () => performance.now() - started,
    });
    const json = JSON.stringify(result);
    // The popup has words of its own for a page without an answer: this is for whoever looks into it.
    if (json.length > MOST_CHARACTERS) return { ok: false, why: '' };
    return JSON.parse(json);
  } catch (error) {
    return { ok: false, why: `${error}` };
  }
});
