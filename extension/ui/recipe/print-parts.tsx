/** What stands on paper only: the verdict in words, figures of a serving and of 100 g, cautions. */
import type { Adaptation } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import { cautionTexts } from '../figures/cautions-list.tsx';
import { figureText, nutrientRows, short } from '../figures/format.ts';
import { engineLang } from '../words/engine-language.ts';
import { portionStart, portionsText } from '../words/portion.ts';
import { midSentence, say } from '../words/say.ts';
import { factorText } from './shown-amounts.ts';

/** Rows of a label that fit one line of paper each; the parts of carbohydrate are told by net carbs. */
const ON_PAPER = ['netCarbsG', 'energyKcal', 'fatG', 'fiberG', 'sugarsG', 'proteinG', 'sodiumMg'];

interface Props {
  adaptation: Adaptation;
  preferences: Preferences;
  factor: number;
}

/** Figures in one run of text: a table would take half the sheet. */
export function PrintFigures({ adaptation, preferences, factor }: Props) {
  const { after, goals } = adaptation;
  const rows = nutrientRows(preferences).filter(({ nutrient }) => ON_PAPER.includes(nutrient));
  const told = (figures: Adaptation['after']['perServing']) =>
    rows.map(
      (row) =>
        `${midSentence(say(row.word))} ${figureText(figures[row.nutrient], row)} ${row.unit}`,
    );
  return (
    <div class="print-only print-figures">
      <p>
        {say('printMakes', portionsText(adaptation))}
        {factor !== 1 && ` (${factorText(factor)})`} {say('printBudget', short(goals.budgetG))}
      </p>
      <p>
        <b>{portionStart(adaptation)}:</b> {told(after.perServing).join(', ')}.
      </p>
      {after.per100gCooked && (
        <p>
          <b>100 g:</b> {told(after.per100gCooked).join(', ')}.
        </p>
      )}
    </div>
  );
}

/** As many cautions as leave room for the recipe. Own choice. */
const MOST_CAUTIONS = 4;

export function PrintCautions({ adaptation }: Pick<Props, 'adaptation'>) {
  return (
    <div class="print-only print-cautions">
      <p>
        {say('notForDoses')}{' '}
        {cautionTexts(adaptation)
          .slice(0, MOST_CAUTIONS - 1)
          .map(({ text, byEngine }) => (
            <span key={text} lang={byEngine ? engineLang() : undefined}>
              {text}{' '}
            </span>
          ))}
        {say('careTeam')}
      </p>
    </div>
  );
}
