import { Fragment } from 'preact';
import type { Adaptation, Tally } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import { FigureButton, type Opened, type Side, SourcePanel, useOpened } from './figure-sources.tsx';
import { figureRange, figureText, type NutrientRow, nutrientRows } from './format.ts';
import { Uncounted } from './uncounted.tsx';

interface CellProps {
  tally: Tally;
  side: Side;
  row: NutrientRow;
  opened: Opened;
}

function Cell({ tally, side, row, opened }: CellProps) {
  const figure = tally.perServing[row.nutrient];
  const range = figureRange(figure, row);
  const lowest = (tally.incomplete[row.nutrient]?.length ?? 0) > 0;
  return (
    <td class="figure">
      <FigureButton opened={opened} figure={{ side, row }} name={`${row.label} ${side}`}>
        {lowest && figure ? 'at least ' : ''}
        {figureText(figure, row)}
      </FigureButton>
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
  const opened = useOpened();
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
            <Fragment key={row.nutrient}>
              <tr class={row.nutrient === 'netCarbsG' ? 'strong' : ''}>
                <th scope="row" class={row.inner ? 'inner' : ''}>
                  {row.label} <span class="unit">{row.unit}</span>
                </th>
                <Cell tally={before} side="before" row={row} opened={opened} />
                <Cell tally={after} side="after" row={row} opened={opened} />
              </tr>
              {opened.figure?.row.nutrient === row.nutrient && (
                <tr class="sources-row">
                  <td colSpan={3}>
                    <SourcePanel opened={opened} servings={after.servings} />
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
      <p class="quiet">
        Counted by the {before.rule.region === 'us' ? 'US' : 'EU'} rule for net carbs. Smaller
        figures are the likely low and high. A dash means not known, never zero. Press a figure to
        see what it rests on.
      </p>
      <Uncounted before={before} after={after} />
    </section>
  );
}
