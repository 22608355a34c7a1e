import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bake } from '../../../../extension/store/records.ts';
import {
  inUnit,
  meterFigure,
  meterSeries,
} from '../../../../extension/ui/bakes/meter/meter-series.ts';
import { sampleBake } from '../../../store/sample.ts';

/** An invented reading. */
const readings = (changes: Partial<NonNullable<Bake['readings']>> = {}): Bake['readings'] => ({
  unit: 'mmol/L',
  before: 6.1,
  hour1: 8.2,
  hour2: null,
  pieceGrams: 65,
  besides: '',
  ...changes,
});

describe('meter readings', () => {
  it('turn into the other unit by the molar mass of glucose', () => {
    // 5.5 mmol/L are 99 mg/dL, 7.0 are 126: WHO 2006, definition of diabetes, both figures given.
    expect(Math.round(inUnit(5.5, 'mmol/L', 'mg/dL'))).toBe(99);
    expect(Math.round(inUnit(7, 'mmol/L', 'mg/dL'))).toBe(126);
    expect(meterFigure(inUnit(126, 'mg/dL', 'mmol/L'), 'mmol/L')).toBe('7.0');
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), (value) => {
        const there = inUnit(value, 'mmol/L', 'mg/dL');
        expect(inUnit(there, 'mg/dL', 'mmol/L')).toBeCloseTo(value, 9);
      }),
    );
  });

  it('stand beside what was predicted for the piece', () => {
    const bake = sampleBake({
      netCarbsG: { low: 150, best: 180, high: 210 },
      factor: 1,
      dishGrams: 780,
      readings: readings(),
    });
    const [one] = meterSeries([bake], 'mmol/L');
    expect(one?.points).toEqual([
      { hours: 0, value: 6.1 },
      { hours: 1, value: 8.2 },
    ]);
    // By hand: 65 g of 780 g is a twelfth.
    expect(one?.predicted).toEqual({ low: 12.5, best: 15, high: 17.5 });
  });

  it('predict nothing where the dish or the piece was not weighed, and leave out bakes without a reading', () => {
    const bakes = [
      sampleBake({ id: 'a', dishGrams: null, readings: readings() }),
      sampleBake({ id: 'b', readings: readings({ pieceGrams: null }) }),
      sampleBake({
        id: 'c',
        readings: readings({ before: null, hour1: null, besides: 'soup' }),
      }),
      sampleBake({ id: 'd', readings: null }),
    ];
    const series = meterSeries(bakes, 'mmol/L');
    expect(series.map(({ id, predicted }) => [id, predicted])).toEqual([
      ['a', null],
      ['b', null],
    ]);
  });
});
