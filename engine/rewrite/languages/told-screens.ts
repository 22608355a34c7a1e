/** Whatever the engine says on a screen, in the screen's language: notes, reasons, swaps, faults of bakes, sources. */
import { shownNameOf } from '../../match/languages/shown-names.ts';
import cues from '../data/cues.json' with { type: 'json' };
import warnings from '../data/warnings.json' with { type: 'json' };
import noteWords from './data/note-words.json' with { type: 'json' };
import reasons from './data/reasons.json' with { type: 'json' };
import bakeFaults from './data/told-de/bake-faults.json' with { type: 'json' };
import lineReasons from './data/told-de/line-reasons.json' with { type: 'json' };
import smallWords from './data/told-de/small-words.json' with { type: 'json' };
import stepReasons from './data/told-de/step-reasons.json' with { type: 'json' };
import swapEffects from './data/told-de/swap-effects.json' with { type: 'json' };
import swapReasons from './data/told-de/swap-reasons.json' with { type: 'json' };
import { languageOfTag } from './language-tags.ts';
import { type Telling, telling } from './telling.ts';

/** Reasons of cues and warnings, whose words in other languages go by their ids. */
const cueReasons = (): [english: string, said: string][] =>
  reasons.flatMap(({ cues: ids, de }) =>
    [...cues, ...warnings]
      .filter(({ id }) => ids.includes(id))
      .map(({ why }): [string, string] => [why, de]),
  );

let german: Telling | null = null;

/** Made when first asked for: a screen in English needs none. */
function inGerman(): Telling {
  german ??= telling({
    sentences: [
      ...Object.entries(noteWords).map(([english, said]) => [english, said.de] as const),
      ...cueReasons(),
      ...[stepReasons, swapEffects, swapReasons, bakeFaults, lineReasons].flatMap((table) =>
        Object.entries<string>(table),
      ),
    ],
    words: smallWords,
    foodName: (english) => shownNameOf('de', english),
  });
  return german;
}

/** A sentence of the engine's in the language of a BCP 47 tag; null where that language has no words for it. */
export const toldOnScreen = (text: string, language: string): string | null =>
  languageOfTag(language) === 'de' ? inGerman()(text) : null;
