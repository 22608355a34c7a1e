import { toCsv, toJsonLd, toMarkdown, toText } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { downloadText, fileName } from '../controls/download.ts';

const FORMATS = [
  { label: 'Text', ending: 'txt', type: 'text/plain', write: toText },
  { label: 'Markdown', ending: 'md', type: 'text/markdown', write: toMarkdown },
  { label: 'JSON-LD', ending: 'json', type: 'application/ld+json', write: toJsonLd },
  { label: 'CSV', ending: 'csv', type: 'text/csv', write: toCsv },
] as const;

/** The reworked recipe as a file, or on paper. */
export function RecipeFiles({ adaptation }: { adaptation: Adaptation }) {
  return (
    <div class="files no-print">
      <button type="button" onClick={() => window.print()}>
        Print
      </button>
      {FORMATS.map(({ label, ending, type, write }) => (
        <button
          key={label}
          type="button"
          onClick={() =>
            downloadText(write(adaptation), fileName(adaptation.recipe.title, ending), type)
          }
        >
          {label}
          <span class="hidden"> file of the reworked recipe</span>
        </button>
      ))}
    </div>
  );
}
