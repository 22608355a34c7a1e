/** The page's own nutrition, word for word, beside our figures for the original. */
import { compareStated, type StatedRow } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { type MessageKey, say } from '../words/say.ts';
import { amount, nutrientRows } from './format.ts';

const VERDICTS: Record<NonNullable<StatedRow['verdict']>, MessageKey> = {
  close: 'statedClose',
  somewhat: 'statedSomewhat',
  differs: 'statedFar',
};

// Theirs are shown in their own unit, ours in the same one: kcal and mg, whatever is preferred.
const ROWS = new Map(
  nutrientRows({ energy: 'kcal', sodium: 'sodium' }).map((row) => [row.nutrient, row]),
);

function Row({ row, language }: { row: StatedRow; language: string | undefined }) {
  const { nutrient, theirs, ours, verdict, likelyReason } = row;
  const shown = ROWS.get(nutrient);
  return (
    <tr>
      <th scope="row">{shown ? say(shown.word) : nutrient}</th>
      <td class="figure" lang={language} dir="auto">
        {theirs.text}
      </td>
      <td class="figure">
        {ours === null ? say('notKnown') : `${amount(ours)} ${shown?.unit ?? ''}`}
      </td>
      <td class="verdict-column">
        {say(verdict === null ? 'statedCannot' : VERDICTS[verdict])}
        {likelyReason && <span class="soft">. {likelyReason}</span>}
      </td>
    </tr>
  );
}

export function StatedFigures({ adaptation }: { adaptation: Adaptation }) {
  const { recipe, before } = adaptation;
  const compared = compareStated(recipe, before);
  if (!compared) return null;
  const language = recipe.language ?? undefined;
  return (
    <section class="stated">
      <h3>{say('whatPageSays')}</h3>
      <p class="soft">
        {say(compared.per === '100 g' ? 'statedPer100' : 'statedPerServing')}
        {compared.servingText && ` (${compared.servingText})`} {say('statedNotUsed')}
      </p>
      <table class="nutrients">
        <thead>
          <tr>
            <th scope="col">{say('nutrient')}</th>
            <th scope="col" class="figure">
              {say('statedPage')}
            </th>
            <th scope="col" class="figure">
              {say('statedOurs')}
            </th>
            <th scope="col" class="verdict-column">
              {say('statedBetween')}
            </th>
          </tr>
        </thead>
        <tbody>
          {compared.rows.map((row) => (
            <Row key={row.nutrient} row={row} language={language} />
          ))}
        </tbody>
      </table>
      {compared.notes.length > 0 && (
        <ul class="notes">
          {[...new Set(compared.notes.map(({ text }) => text))].map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
