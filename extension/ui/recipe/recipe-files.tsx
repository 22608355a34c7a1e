/** The reworked recipe on paper or as a file, in plain words. */
import { toCsv, toJsonLd, toMarkdown, toText } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { downloadText, fileName } from '../controls/download.ts';
import { say } from '../words/say.ts';

const FORMATS = [
  { word: 'saveAsText', ending: 'txt', type: 'text/plain', write: toText },
  { word: 'saveAsNotes', ending: 'md', type: 'text/markdown', write: toMarkdown },
  { word: 'saveAsRecipe', ending: 'json', type: 'application/ld+json', write: toJsonLd },
  { word: 'saveAsTable', ending: 'csv', type: 'text/csv', write: toCsv },
] as const;

export function RecipeFiles({ adaptation }: { adaptation: Adaptation }) {
  return (
    <div class="acts files">
      <button type="button" class="button" onClick={() => window.print()}>
        {say('print')}
      </button>
      {FORMATS.map(({ word, ending, type, write }) => (
        <button
          key={word}
          type="button"
          class="button"
          onClick={() =>
            downloadText(write(adaptation), fileName(adaptation.recipe.title, ending), type)
          }
        >
          {say(word)}
        </button>
      ))}
    </div>
  );
}
