import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { Bake } from '../../../../extension/store/records.ts';
import { MeterPart } from '../../../../extension/ui/bakes/meter/meter-part.tsx';
import { bandIn } from '../../../../extension/ui/bakes/meter/meter-unit.tsx';
import { sampleBake } from '../../../store/sample.ts';
import { type Drawn, drawn } from '../../screen.ts';

let screen: Drawn;
afterEach(() => screen.clear());

/** Six invented bakes, latest first, each with three readings. */
const BAKES: Bake[] = [6, 5, 4, 3, 2, 1].map((day) =>
  sampleBake({
    id: `bake-${day}`,
    day: `2026-03-0${day}`,
    netCarbsG: { low: 150, best: 180, high: 210 },
    factor: 1,
    dishGrams: 780,
    readings: {
      unit: 'mmol/L',
      before: 5 + day / 10,
      hour1: 7 + day / 10,
      hour2: 6 + day / 10,
      pieceGrams: 65,
      besides: '',
    },
  }),
);

let changes: object[] = [];
function show(band: { low: number; high: number } | null = null): HTMLElement {
  changes = [];
  screen = drawn(
    h(MeterPart, {
      bakes: BAKES,
      unit: 'mmol/L',
      band,
      onMeter: (change) => changes.push(change),
    }),
  );
  return screen.root;
}

describe('what the meter said', () => {
  it('shows every reading of the bakes in the picture as a figure', () => {
    const picture = show().querySelector('svg');
    const figures = [...(picture?.querySelectorAll('g text') ?? [])].map((one) => one.textContent);
    expect(figures.length).toBeGreaterThanOrEqual(12);
    expect(figures).toContain('5.6');
    expect(picture?.getAttribute('aria-label')).toContain('table below');
  });

  it('tells beside the picture what was predicted for each piece in it', () => {
    const lines = [...show().querySelectorAll('.meter-predicted li')].map((one) => one.textContent);
    expect(lines).toHaveLength(4);
    // By hand: 65 g of 780 g is a twelfth of 150 to 210 g: 12.5 to 17.5, told in whole grams outward.
    expect(lines[0]).toContain('15.0 g (12–18 g)');
  });

  it('has all bakes in the table, the rest of the picture with them', () => {
    const root = show();
    act(() => {
      for (const fold of root.querySelectorAll('details')) {
        fold.open = true;
        fold.dispatchEvent(new window.Event('toggle'));
      }
    });
    expect(root.querySelectorAll('tbody tr')).toHaveLength(BAKES.length);
  });

  it('draws a band only where one was typed, and turns it with the unit', () => {
    expect(show().querySelector('.meter-band')).toBeNull();
    screen.clear();
    const root = show({ low: 4, high: 10 });
    expect(root.querySelector('.meter-band')).not.toBeNull();
    act(() =>
      [...root.querySelectorAll('button')].find((one) => one.textContent === 'mg/dL')?.click(),
    );
    // 4 and 10 mmol/L are 72 and 180 mg/dL by the molar mass of glucose (180.156 g/mol).
    expect(changes).toEqual([{ meter: 'mg/dL', meterBand: { low: 72, high: 180 } }]);
    expect(bandIn(null, 'mmol/L', 'mg/dL')).toBeNull();
  });
});
