/** Which unit the user's meter shows, and what was typed before in the other one. */
import type { Readings } from '../../../store/records.ts';
import { say } from '../../words/say.ts';
import type { Band } from './meter-picture.tsx';
import { inUnit, type MeterUnit, shownAs } from './meter-series.ts';

const UNITS: readonly MeterUnit[] = ['mg/dL', 'mmol/L'];

/** The same readings in another unit, as a meter would show them. */
export function readingsIn(readings: Readings, unit: MeterUnit): Readings {
  const turned = (value: number | null) =>
    value === null ? null : shownAs(inUnit(value, readings.unit, unit), unit);
  const { before, hour1, hour2 } = readings;
  return {
    ...readings,
    unit,
    before: turned(before),
    hour1: turned(hour1),
    hour2: turned(hour2),
  };
}

/** The band in another unit. */
export function bandIn(band: Band | null, from: MeterUnit, to: MeterUnit): Band | null {
  if (!band) return null;
  const turned = (value: number) => shownAs(inUnit(value, from, to), to);
  return { low: turned(band.low), high: turned(band.high) };
}

interface Props {
  unit: MeterUnit;
  onUnit(unit: MeterUnit): void;
}

export function MeterUnitSwitch({ unit, onUnit }: Props) {
  return (
    <fieldset class="acts">
      <legend class="hidden">{say('meterUnit')}</legend>
      {UNITS.map((one) => (
        <button
          key={one}
          type="button"
          class="button"
          aria-pressed={one === unit}
          onClick={() => one !== unit && onUnit(one)}
        >
          {one}
        </button>
      ))}
    </fieldset>
  );
}
