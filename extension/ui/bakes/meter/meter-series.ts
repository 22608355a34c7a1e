/** Readings of several bakes in one unit, beside the net carbs that were predicted for the piece. */
import type { Interval } from '../../../../engine/model.ts';
import type { Bake, Readings } from '../../../store/records.ts';

export type MeterUnit = Readings['unit'];

/** mg/dL of 1 mmol/L of glucose: molar mass 180.156 g/mol (IUPAC standard atomic weights), a tenth. */
const MG_DL_PER_MMOL_L = 18.0156;

/** A reading in another unit; the same unit leaves it as it was typed. */
export function inUnit(value: number, from: MeterUnit, to: MeterUnit): number {
  if (from === to) return value;
  return to === 'mg/dL' ? value * MG_DL_PER_MMOL_L : value / MG_DL_PER_MMOL_L;
}

export interface MeterPoint {
  hours: 0 | 1 | 2;
  value: number;
}

export interface MeterSeries {
  id: string;
  day: string;
  points: MeterPoint[];
  besides: string;
  pieceGrams: number | null;
  /** Net carbs predicted for the piece, g; null when piece or dish was not weighed. */
  predicted: Interval | null;
}

function predictedOf({ netCarbsG, factor, dishGrams, readings }: Bake): Interval | null {
  const piece = readings?.pieceGrams ?? null;
  if (netCarbsG === null || dishGrams === null || piece === null) return null;
  const share = (piece / dishGrams) * factor;
  return {
    low: netCarbsG.low * share,
    best: netCarbsG.best * share,
    high: netCarbsG.high * share,
  };
}

/** Bakes that have a reading, latest first, as they are given. */
export function meterSeries(bakes: readonly Bake[], unit: MeterUnit): MeterSeries[] {
  return bakes.flatMap((bake): MeterSeries[] => {
    const { readings } = bake;
    if (!readings) return [];
    const at = (hours: MeterPoint['hours'], value: number | null): MeterPoint[] =>
      value === null ? [] : [{ hours, value: inUnit(value, readings.unit, unit) }];
    const points = [...at(0, readings.before), ...at(1, readings.hour1), ...at(2, readings.hour2)];
    if (points.length === 0) return [];
    return [
      {
        id: bake.id,
        day: bake.day,
        points,
        besides: readings.besides,
        pieceGrams: readings.pieceGrams,
        predicted: predictedOf(bake),
      },
    ];
  });
}

/** As meters show it: whole mg/dL, tenths of mmol/L. */
export const shownAs = (value: number, unit: MeterUnit): number =>
  unit === 'mg/dL' ? Math.round(value) : Math.round(value * 10) / 10;

/** The same, to be read. */
export const meterFigure = (value: number, unit: MeterUnit): string =>
  shownAs(value, unit).toFixed(unit === 'mg/dL' ? 0 : 1);
