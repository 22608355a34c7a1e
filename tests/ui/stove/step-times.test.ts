import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepTimes } from '../../../extension/ui/stove/step-times.ts';

const seconds = (step: string) => stepTimes(step).map((one) => one.seconds);

describe('times in a step', () => {
  it.each([
    ['Knead for 5 minutes, then work in the butter.', [300]],
    ['Bake for 25–30 minutes until brown.', [1500]],
    ['Bake 1 hour and 30 minutes, then rest 10 minutes.', [5400, 600]],
    ['Rise 1½ hours; fold every 30 min.', [5400, 1800]],
    ['Whisk for 30 seconds.', [30]],
    ['Chill for 2 h.', [7200]],
    ['10 Minuten kneten, dann 1 Stunde 15 Minuten gehen lassen.', [600, 4500]],
    ['Laisser reposer 45 minutes puis cuire 20 à 25 minutes.', [2700, 1200]],
    ['Hornear 40 minutos.', [2400]],
    ['Cuocere per 12 minuti.', [720]],
    ['Grädda i 15 minuter.', [900]],
    ['A 5-minute rest.', [300]],
  ])('%s', (step, expected) => {
    expect(seconds(step)).toEqual(expected);
  });

  it.each([
    'Heat the oven to 180 °C.',
    'Add 250 g flour and 2 eggs.',
    'Stir in 5 mint leaves.',
    'Add 100 ml milk.',
    'Leave for 3 days.',
  ])('finds none in: %s', (step) => {
    expect(seconds(step)).toEqual([]);
  });

  it('names each length once, as the step says it', () => {
    expect(stepTimes('Bake 10 minutes, turn, bake 10 minutes more.')).toEqual([
      { text: '10 minutes', seconds: 600 },
    ]);
  });

  it('reads any text, and whole minutes as they are', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 999 }), (noise, minutes) => {
        expect(() => stepTimes(noise)).not.toThrow();
        expect(seconds(`Bake for ${minutes} minutes.`)).toEqual([minutes * 60]);
      }),
    );
  });
});
