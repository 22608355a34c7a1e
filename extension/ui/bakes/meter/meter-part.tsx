/** What the meter said, over several bakes: a picture, and the same as a table. */
import type { Interval } from '../../../../engine/model.ts';
import type { Bake } from '../../../store/records.ts';
import { Fold } from '../../controls/fold.tsx';
import { NumberField } from '../../controls/number-field.tsx';
import { amount, dayText, rangeText, short } from '../../figures/format.ts';
import { say } from '../../words/say.ts';
import { type Band, MeterPicture, MOST_DRAWN } from './meter-picture.tsx';
import { type MeterSeries, type MeterUnit, meterFigure, meterSeries } from './meter-series.ts';
import { bandIn, MeterUnitSwitch } from './meter-unit.tsx';

interface Props {
  bakes: readonly Bake[];
  unit: MeterUnit;
  band: Band | null;
  onMeter(change: { meter?: MeterUnit; meterBand?: Band | null }): void;
}

/** The band is only what the user types; none is proposed. */
function BandFields({ unit, band, onMeter }: Omit<Props, 'bakes'>) {
  const set = (change: Partial<Band>) => {
    const next = { low: band?.low ?? Number.NaN, high: band?.high ?? Number.NaN, ...change };
    // One end alone is no band yet: the other starts where this one is.
    const low = Number.isNaN(next.low) ? next.high : next.low;
    const high = Number.isNaN(next.high) ? next.low : next.high;
    onMeter({ meterBand: { low: Math.min(low, high), high: Math.max(low, high) } });
  };
  return (
    <div class="bake-measures">
      {(['low', 'high'] as const).map((end) => (
        <NumberField
          key={end}
          label={say(end === 'low' ? 'meterBandLow' : 'meterBandHigh')}
          unit={unit}
          min={0.5}
          max={1000}
          value={band?.[end] ?? null}
          onValue={(value) => set({ [end]: value })}
          onClear={() => onMeter({ meterBand: null })}
        />
      ))}
    </div>
  );
}

function predictedText(predicted: Interval): string {
  const range = rangeText(predicted);
  return `${amount(predicted.best)} g${range && ` (${range})`}`;
}

/** What was expected of each piece whose readings are drawn. */
function Predicted({ series }: { series: readonly MeterSeries[] }) {
  const known = series
    .slice(0, MOST_DRAWN)
    .flatMap(({ id, day, predicted }) => (predicted ? [{ id, day, predicted }] : []));
  if (known.length === 0) return null;
  return (
    <>
      <p>{say('meterPredicted')}</p>
      <ul class="meter-predicted">
        {known.map(({ id, day, predicted }) => (
          <li key={id}>
            {dayText(day)}: {predictedText(predicted)}
          </li>
        ))}
      </ul>
    </>
  );
}

function MeterTable({ series, unit }: { series: readonly MeterSeries[]; unit: MeterUnit }) {
  const at = ({ points }: MeterSeries, hours: number): string => {
    const point = points.find((one) => one.hours === hours);
    return point ? meterFigure(point.value, unit) : '–';
  };
  return (
    <div class="table-wide">
      <table>
        <caption class="hidden">{say('meterTitle')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('day')}</th>
            <th scope="col">{say('meterBefore')}</th>
            <th scope="col">{say('meterHour1')}</th>
            <th scope="col">{say('meterHour2')}</th>
            <th scope="col">{say('meterPiece')}</th>
            <th scope="col">{say('meterPredicted')}</th>
            <th scope="col">{say('meterBesides')}</th>
          </tr>
        </thead>
        <tbody>
          {series.map((one) => (
            <tr key={one.id}>
              <th scope="row">{dayText(one.day)}</th>
              <td>{at(one, 0)}</td>
              <td>{at(one, 1)}</td>
              <td>{at(one, 2)}</td>
              <td>{one.pieceGrams === null ? '–' : `${short(one.pieceGrams)} g`}</td>
              <td>{one.predicted ? predictedText(one.predicted) : '–'}</td>
              <td>{one.besides || '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

export function MeterPart({ bakes, unit, band, onMeter }: Props) {
  const series = meterSeries(bakes, unit);
  if (series.length === 0) return null;
  return (
    <section class="meter-part" aria-labelledby="meter-title">
      <h2 id="meter-title">{say('meterTitle')}</h2>
      <p class="soft">{say('meterNotAdvice')}</p>
      <MeterPicture series={series} unit={unit} band={band} />
      <Predicted series={series} />
      <MeterUnitSwitch
        unit={unit}
        onUnit={(next) => onMeter({ meter: next, meterBand: bandIn(band, unit, next) })}
      />
      <Fold title={say('meterBand')} name="band">
        {() => <BandFields unit={unit} band={band} onMeter={onMeter} />}
      </Fold>
      <Fold title={say('meterTable')} name="meter-table">
        {() => <MeterTable series={series} unit={unit} />}
      </Fold>
    </section>
  );
}
