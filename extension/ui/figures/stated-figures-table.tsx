import { compareStated, type StatedRow } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { amount, nutrientRows } from './format.ts';

const VERDICTS: Record<NonNullable<StatedRow['verdict']>, string> = {
  close: 'close to ours',
  somewhat: 'somewhat apart',
  differs: 'far from ours',
};

/** The page's own nutrition, word for word, beside our figures for the original. */
export function StatedFigures({ adaptation }: { adaptation: Adaptation }) {
  const { recipe, before } = adaptation;
  const compared = compareStated(recipe, before);
  if (!compared) return null;
  // Theirs are shown in their own unit, ours in the same one: kcal and mg, whatever is preferred.
  const rows = new Map(
    nutrientRows({ energy: 'kcal', sodium: 'sodium' }).map((row) => [row.nutrient, row]),
  );
  return (
    <section class="stated" aria-labelledby="stated-title">
      <h2 id="stated-title">What the page says</h2>
      <p class="quiet">
        The publisher's figures for{' '}
        {compared.per === '100 g' ? '100 g' : 'one serving of the original'}, word for word
        {compared.servingText && ` (serving: ${compared.servingText})`}. They are not used in any
        figure here.
      </p>
      <table class="plain">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col" class="figure">
              Page
            </th>
            <th scope="col" class="figure">
              Ours
            </th>
            <th scope="col" class="verdict-column">
              Between them
            </th>
          </tr>
        </thead>
        <tbody>
          {compared.rows.map(({ nutrient, theirs, ours, verdict, likelyReason }) => (
            <tr key={nutrient}>
              <th scope="row">{rows.get(nutrient)?.label ?? nutrient}</th>
              <td class="figure" lang={recipe.language ?? undefined}>
                {theirs.text}
              </td>
              <td class="figure">
                {ours === null ? 'not known' : `${amount(ours)} ${rows.get(nutrient)?.unit ?? ''}`}
              </td>
              <td class="verdict-column">
                {verdict === null ? 'cannot be compared' : VERDICTS[verdict]}
                {likelyReason && <span class="quiet">. {likelyReason}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {compared.notes.length > 0 && (
        <ul class="limits">
          {[...new Set(compared.notes.map(({ text }) => text))].map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
