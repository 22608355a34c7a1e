/** What a serving gives, in two short lists: what the budget counts, and what else is in it. */
import type { Adaptation, Tally } from '../../../../engine/model.ts';
import type { Preferences } from '../../../store/prefs.ts';
import { portionWord } from '../../words/portion.ts';
import { midSentence, say } from '../../words/say.ts';
import { figureText, likelyText, type NutrientRow, nutrientRows, short } from '../format.ts';
import {
  FigureButton,
  type Opened,
  type Side,
  SourcePanel,
  useOpened,
} from '../sources/figure-sources.tsx';
import { Uncounted } from '../uncounted.tsx';
import { GiveHeads, GiveRow } from './give-row.tsx';

interface FigureProps {
  tally: Tally;
  side: Side;
  row: NutrientRow;
  opened: Opened;
}

/** 'at least' where lines lack the figure, so that the total is a lower bound. */
const boundOf = ({ perServing, incomplete }: Tally, { nutrient }: NutrientRow): string =>
  perServing[nutrient] && (incomplete[nutrient]?.length ?? 0) > 0 ? say('atLeastHead') : '';

function Figure({ tally, side, row, opened }: FigureProps) {
  const figure = tally.perServing[row.nutrient];
  const name = `${say(row.word)}, ${say(side === 'before' ? 'loafBefore' : 'loafNow')}`;
  return (
    <FigureButton opened={opened} figure={{ side, row }} name={name}>
      {figureText(figure, row)}
    </FigureButton>
  );
}

interface Props {
  adaptation: Adaptation;
  preferences: Preferences;
}

/** Rows that say nothing where a dish has none of it: sugar alcohols and allulose. */
const worthARow = ({ before, after }: Adaptation, { nutrient }: NutrientRow): boolean =>
  (nutrient !== 'polyolsG' && nutrient !== 'alluloseG') ||
  [before, after].some(({ perServing }) => perServing[nutrient]?.high !== 0);

/** Whether the figure reads differently now. */
const hasChanged = ({ before, after }: Adaptation, row: NutrientRow): boolean =>
  figureText(before.perServing[row.nutrient], row) !==
  figureText(after.perServing[row.nutrient], row);

interface GroupProps {
  title: string;
  rows: readonly NutrientRow[];
  adaptation: Adaptation;
  opened: Opened;
}

function Group({ title, rows, adaptation, opened }: GroupProps) {
  const { before, after } = adaptation;
  return (
    <section class="gives-group">
      <h3>{title}</h3>
      <ul class="give-list">
        <GiveHeads />
        {rows.map((row) => (
          <GiveRow
            key={row.nutrient}
            strong={row.nutrient === 'netCarbsG'}
            now={<Figure tally={after} side="after" row={row} opened={opened} />}
            unit={row.unit}
            name={midSentence(say(row.word))}
            bound={boundOf(after, row)}
            wasBound={boundOf(before, row)}
            was={<Figure tally={before} side="before" row={row} opened={opened} />}
            changed={hasChanged(adaptation, row)}
            range={likelyText(after.perServing[row.nutrient], row)}
          >
            {opened.figure?.row.nutrient === row.nutrient && (
              <SourcePanel opened={opened} adaptation={adaptation} />
            )}
          </GiveRow>
        ))}
      </ul>
    </section>
  );
}

/** Whose figures are struck out; pieces of another size are named. */
function struckWords({ before, after }: Adaptation): string {
  const piece =
    before.servings === after.servings ? '' : say('oneOf', short(before.servings), '').trim();
  return say('struckIsBefore', piece === '' ? say('itWas') : midSentence(piece));
}

export function ServingGives({ adaptation, preferences }: Props) {
  const { before, after } = adaptation;
  const opened = useOpened();
  const rows = nutrientRows(preferences).filter((row) => worthARow(adaptation, row));
  const shared = { adaptation, opened };
  return (
    <section class="nutrition" aria-label={say('whatGives', portionWord(adaptation))}>
      <div class="gives-groups">
        <Group title={say('givesCounted')} rows={rows.filter((row) => row.counted)} {...shared} />
        <Group title={say('givesRest')} rows={rows.filter((row) => !row.counted)} {...shared} />
      </div>
      <p class="soft">
        {rows.some((row) => hasChanged(adaptation, row)) && struckWords(adaptation)}{' '}
        {say('howToReadFigures')} {say(before.rule.region === 'us' ? 'countedByUs' : 'countedByEu')}
      </p>
      <Uncounted before={before} after={after} />
    </section>
  );
}
