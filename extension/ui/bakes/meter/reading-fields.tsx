/** What the glucose meter showed after a piece; optional, kept beside the bake and not judged. */
import { useId } from 'preact/hooks';
import type { Readings } from '../../../store/records.ts';
import { NumberField } from '../../controls/number-field.tsx';
import { type MessageKey, say } from '../../words/say.ts';
import type { MeterUnit } from './meter-series.ts';
import { MeterUnitSwitch, readingsIn } from './meter-unit.tsx';

export const noReadings = (unit: MeterUnit): Readings => ({
  unit,
  before: null,
  hour1: null,
  hour2: null,
  pieceGrams: null,
  besides: '',
});

/** Null when nothing was typed, so that an empty form leaves no trace. */
export function typedReadings(readings: Readings): Readings | null {
  const { before, hour1, hour2, pieceGrams, besides } = readings;
  const typed = [before, hour1, hour2, pieceGrams].some((value) => value !== null);
  return typed || besides.trim() !== '' ? readings : null;
}

/** What meters can show: 20 to 600 mg/dL, from memory; a wider field, so that no reading is refused. */
const RANGE: Record<MeterUnit, { min: number; max: number }> = {
  'mg/dL': { min: 10, max: 1000 },
  'mmol/L': { min: 0.5, max: 55 },
};

const TIMES: readonly (readonly ['before' | 'hour1' | 'hour2', MessageKey])[] = [
  ['before', 'meterBefore'],
  ['hour1', 'meterHour1'],
  ['hour2', 'meterHour2'],
];

interface Props {
  readings: Readings;
  /** Goes up when the form is emptied. */
  round: number;
  onReadings(readings: Readings): void;
  /** The user's meter shows another unit. */
  onUnit(unit: MeterUnit): void;
}

export function ReadingFields({ readings, round, onReadings, onUnit }: Props) {
  const id = useId();
  const change = (part: Partial<Readings>) => onReadings({ ...readings, ...part });
  return (
    <>
      <p class="soft">{say('meterHow')}</p>
      <MeterUnitSwitch
        unit={readings.unit}
        onUnit={(unit) => {
          onReadings(readingsIn(readings, unit));
          onUnit(unit);
        }}
      />
      <div class="bake-measures">
        {TIMES.map(([name, label]) => (
          <NumberField
            key={`${name}.${readings.unit}.${round}`}
            label={say(label)}
            unit={readings.unit}
            {...RANGE[readings.unit]}
            value={readings[name]}
            onValue={(value) => change({ [name]: value })}
            onClear={() => change({ [name]: null })}
          />
        ))}
        <NumberField
          key={`piece.${round}`}
          label={say('meterPiece')}
          unit="g"
          min={1}
          max={100_000}
          value={readings.pieceGrams}
          onValue={(pieceGrams) => change({ pieceGrams })}
          onClear={() => change({ pieceGrams: null })}
        />
      </div>
      <div class="field wide">
        <label for={`${id}-besides`}>{say('meterBesides')}</label>
        <input
          id={`${id}-besides`}
          type="text"
          maxLength={500}
          value={readings.besides}
          onInput={({ currentTarget }) => change({ besides: currentTarget.value })}
        />
      </div>
    </>
  );
}
