import type { Adaptation, Nutrients } from '../../engine/model.ts';
import type { Preferences } from '../store/prefs.ts';
import { figureRange, figureText, type NutrientRow, nutrientRows } from './format.ts';
import { Uncounted } from './uncounted.tsx';

function Cell({ value, row, lowest }: { value: Nutrients; row: NutrientRow; lowest: boolean }) {
  const figure = value[row.nutrient];
  const range = figureRange(figure, row);
  return (
    <td class="figure">
      {lowest && figure ? 'at least ' : ''}
      {figureText(figure, row)}
      {range !== '' && <span class="range"> {range}</span>}
    </td>
  );
}

interface Props {
  adaptation: Adaptation;
  preferences: Preferences;
}

/** One serving before and after, with low and high, and what is not in it. */
export function NutrientTable({ adaptation, preferences }: Props) {
  const { before, after } = adaptation;
  return (
    <section aria-labelledby="nutrients-title">
      <h2 id="nutrients-title">One serving</h2>
      <table class="plain nutrients">
        <thead>
          <tr>
            <th scope="col">A serving has</th>
            <th scope="col" class="figure">
              Before
            </th>
            <th scope="col" class="figure">
              After
            </th>
          </tr>
        </thead>
        <tbody>
          {nutrientRows(preferences).map((row) => (
            <tr key={row.nutrient} class={row.nutrient === 'netCarbsG' ? 'strong' : ''}>
              <th scope="row" class={row.inner ? 'inner' : ''}>
                {row.label} <span class="unit">{row.unit}</span>
              </th>
              <Cell
                value={before.perServing}
                row={row}
                lowest={(before.incomplete[row.nutrient]?.length ?? 0) > 0}
              />
              <Cell
                value={after.perServing}
                row={row}
                lowest={(after.incomplete[row.nutrient]?.length ?? 0) > 0}
              />
            </tr>
          ))}
        </tbody>
      </table>
      <p class="quiet">
        Counted by the {before.rule.region === 'us' ? 'US' : 'EU'} rule for net carbs. Smaller
        figures are the likely low and high. A dash means not known, never zero.
      </p>
      <Uncounted before={before} after={after} />
    </section>
  );
}
