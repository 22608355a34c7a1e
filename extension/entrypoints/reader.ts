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
    if (json.length > MOST_CHARACTERS) {
      return {
        ok: false,
        why: 'This page holds too much to read. Select the recipe, copy it, and paste it in the full view.',
      };
    }
    return JSON.parse(json);
  } catch (error) {
    return { ok: false, why: `The page could not be read (${String(error).slice(0, 200)}).` };
  }
});
