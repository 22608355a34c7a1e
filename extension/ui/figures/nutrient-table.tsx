/** What a serving gives, before and after, with the likely range and what is not in it. */
import { Fragment } from 'preact';
import type { Adaptation, Tally } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import { portionStart } from '../words/portion.ts';
import { say } from '../words/say.ts';
import { figureRange, figureText, type NutrientRow, nutrientRows, short } from './format.ts';
import {
  FigureButton,
  type Opened,
  type Side,
  SourcePanel,
  useOpened,
} from './sources/figure-sources.tsx';
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
  const name = `${say(row.word)}, ${say(side === 'before' ? 'loafBefore' : 'loafNow')}`;
  const text = figureText(figure, row);
  return (
    <td class={`figure ${side}`}>
      <FigureButton opened={opened} figure={{ side, row }} name={name}>
        {lowest && figure ? say('atLeast', text) : text}
      </FigureButton>
      {range !== '' && <span class="range"> {range}</span>}
    </td>
  );
}

interface Props {
  adaptation: Adaptation;
  preferences: Preferences;
}

/** Pieces of another size than before are named in the heads. */
function Head({ adaptation }: Pick<Props, 'adaptation'>) {
  const { before, after } = adaptation;
  const piece = ({ servings }: Tally) =>
    before.servings !== after.servings && (
      <span class="piece">{say('oneOf', short(servings))}</span>
    );
  return (
    <thead>
      <tr>
        <th scope="col">
          <span class="hidden">{say('nutrient')}</span>
        </th>
        <th scope="col" class="figure">
          {say('loafNow')} {piece(after)}
        </th>
        <th scope="col" class="figure">
          {say('loafBefore')} {piece(before)}
        </th>
      </tr>
    </thead>
  );
}

function Rows({ adaptation, preferences, opened }: Props & { opened: Opened }) {
  const { before, after } = adaptation;
  return (
    <tbody>
      {nutrientRows(preferences).map((row) => (
        <Fragment key={row.nutrient}>
          <tr class={row.nutrient === 'netCarbsG' ? 'strong' : ''}>
            <th scope="row" class={row.inner ? 'inner' : ''}>
              {say(row.word)} <span class="unit">{row.unit}</span>
            </th>
            <Cell tally={after} side="after" row={row} opened={opened} />
            <Cell tally={before} side="before" row={row} opened={opened} />
          </tr>
          {opened.figure?.row.nutrient === row.nutrient && (
            <tr class="sources-row">
              <td colSpan={3}>
                <SourcePanel opened={opened} adaptation={adaptation} />
              </td>
            </tr>
          )}
        </Fragment>
      ))}
    </tbody>
  );
}

export function NutrientTable({ adaptation, preferences }: Props) {
  const { before, after } = adaptation;
  const opened = useOpened();
  return (
    <section class="nutrition" aria-label={say('whatGives', portionStart(adaptation))}>
      <table class="nutrients">
        <Head adaptation={adaptation} />
        <Rows adaptation={adaptation} preferences={preferences} opened={opened} />
      </table>
      <p class="soft">{say(before.rule.region === 'us' ? 'countedByUs' : 'countedByEu')}</p>
      <p class="soft">{say('howToReadFigures')}</p>
      <Uncounted before={before} after={after} />
    </section>
  );
}
