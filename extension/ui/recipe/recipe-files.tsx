/** The reworked recipe on paper or as a file, in plain words. */
import { toCsv, toJsonLd, toMarkdown, toText } from '../../../engine/index.ts';
import type { Adaptation, Food } from '../../../engine/model.ts';
import { downloadText, fileName } from '../controls/download.ts';
import { say } from '../words/say.ts';
import type { AmountWish } from './shown-amounts.ts';

const FORMATS = [
  { word: 'saveAsText', ending: 'txt', type: 'text/plain', write: toText },
  { word: 'saveAsNotes', ending: 'md', type: 'text/markdown', write: toMarkdown },
  { word: 'saveAsRecipe', ending: 'json', type: 'application/ld+json', write: toJsonLd },
  { word: 'saveAsTable', ending: 'csv', type: 'text/csv', write: toCsv },
] as const;

interface Props {
  adaptation: Adaptation;
  /** As the list of ingredients on the screen is shown. */
  wish: AmountWish;
  ownFoods: readonly Food[];
}

/** Options of the writers; the page's own measures are none. */
const optionsOf = ({ wish: { factor, system }, ownFoods }: Omit<Props, 'adaptation'>) => ({
  factor,
  ownFoods,
  ...(system === 'page' ? {} : { system }),
});

export function RecipeFiles({ adaptation, wish, ownFoods }: Props) {
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
            downloadText(
              write(adaptation, optionsOf({ wish, ownFoods })),
              fileName(adaptation.recipe.title, ending),
              type,
            )
          }
        >
          {say(word)}
        </button>
      ))}
    </div>
  );
}
