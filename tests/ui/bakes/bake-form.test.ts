import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { bakeSymptoms } from '../../../engine/index.ts';
import { BakeForm, type BakeWords, today } from '../../../extension/ui/bakes/bake-form.tsx';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn;
let kept: BakeWords[] = [];
let units: string[] = [];

function show(answer: string | null, factor = 1, heat: 'C' | 'F' = 'C'): Drawn {
  kept = [];
  units = [];
  screen = drawn(
    h(BakeForm, {
      family: 'lean-yeast-bread',
      factor,
      meter: 'mg/dL',
      onMeterUnit: (unit) => units.push(unit),
      heat,
      onKeep: async (words) => {
        kept.push(words);
        return answer;
      },
    }),
  );
  return screen;
}

const submit = () =>
  act(async () => {
    const form = screen.root.querySelector('form');
    form?.dispatchEvent(new window.Event('submit', { bubbles: true, cancelable: true }));
  });

/** Opens every fold, as pressing their headings does. */
const openFolds = () =>
  act(() => {
    for (const fold of screen.root.querySelectorAll('details')) {
      fold.open = true;
      fold.dispatchEvent(new window.Event('toggle'));
    }
  });

const notes = () => screen.field('Your own words');

afterEach(() => screen.clear());

describe('telling of a bake', () => {
  it('takes degrees Fahrenheit where the oven has them, and keeps Celsius', async () => {
    const { type, root } = show(null, 1, 'F');
    openFolds();
    type('The oven was set to', '428');
    expect(screen.field('The oven was set to').value).toBe('428');
    type('A thermometer in it said', '20');
    expect(root.textContent).toMatch(/86.*752/);
    await submit();
    expect(kept[0]).toMatchObject({ ovenSetC: 220, ovenReadC: null });
  });

  it('hands over what was measured, and null for what was not', async () => {
    const { type } = show(null);
    openFolds();
    type('Whole dish after baking', '780');
    type('Water beyond the list', '-15');
    type('The oven was set to', '220');
    type('A thermometer in it said', '232');
    type('Cooled before cutting', '2.5');
    type('Your own words', 'A little pale.');
    await submit();
    expect(kept).toEqual([
      {
        day: today(),
        how: null,
        dishGrams: 780,
        pieces: null,
        sliceGrams: null,
        innerC: null,
        cooledHours: 2.5,
        extraWaterG: -15,
        ovenSetC: 220,
        ovenReadC: 232,
        minutes: null,
        symptoms: [],
        readings: null,
        notes: 'A little pale.',
      },
    ]);
    expect(notes().value).toBe('');
  });

  it('loses nothing when it could not be kept', async () => {
    const { type, root } = show('There is no room left on this disk.');
    type('Whole dish after baking', '780');
    type('Your own words', 'A little pale.');
    await submit();
    expect(root.querySelector('[role=alert]')?.textContent).toContain('no room left');
    expect(notes().value).toBe('A little pale.');
    expect(screen.field('Whole dish after baking').value).toBe('780');
  });

  it('is refused without a day', async () => {
    const { type, root } = show(null);
    type('Day', '');
    await submit();
    expect(kept).toEqual([]);
    expect(root.querySelector('[role=alert]')?.textContent).toContain('day of the bake');
  });

  it('lists what may go wrong with this kind of dish, and no more', () => {
    const { root } = show(null);
    openFolds();
    const listed = [...root.querySelectorAll('.boxes label')].map((one) => one.textContent?.trim());
    expect(listed.sort()).toEqual(
      bakeSymptoms('lean-yeast-bread')
        .map(({ label }) => label)
        .sort(),
    );
    expect(listed.length).toBeGreaterThan(5);
  });

  it('takes how it was with one press, and takes it back with another', async () => {
    const { root } = show(null);
    const press = (text: string) =>
      act(() =>
        [...root.querySelectorAll('button')].find((one) => one.textContent === text)?.click(),
      );
    press('so-so');
    await submit();
    expect(kept[0]?.how).toBe('so-so');
    press('good');
    press('good');
    await submit();
    expect(kept[1]?.how).toBeNull();
  });

  it('takes the very first reading in the unit that the meter shows', async () => {
    const { type, root } = show(null);
    openFolds();
    await act(() =>
      [...root.querySelectorAll('button')].find((one) => one.textContent === 'mmol/L')?.click(),
    );
    type('before', '6.1');
    type('1 hour', '8.2');
    await submit();
    expect(units).toEqual(['mmol/L']);
    expect(kept[0]?.readings).toMatchObject({ unit: 'mmol/L', before: 6.1, hour1: 8.2 });
  });

  it('turns what was typed when the unit is changed', async () => {
    const { type, root } = show(null);
    openFolds();
    type('before', '126');
    await act(() =>
      [...root.querySelectorAll('button')].find((one) => one.textContent === 'mmol/L')?.click(),
    );
    // 7.0 mmol/L are 126 mg/dL: WHO 2006, both figures given.
    expect(screen.field('before').value).toBe('7');
    await submit();
    expect(kept[0]?.readings).toMatchObject({ unit: 'mmol/L', before: 7 });
  });

  it('hands over meter readings as typed, and none when nothing was', async () => {
    const { type } = show(null);
    openFolds();
    type('before', '104');
    type('2 hours', '131');
    type('Piece you ate', '65');
    await submit();
    expect(kept[0]?.readings).toEqual({
      unit: 'mg/dL',
      before: 104,
      hour1: null,
      hour2: 131,
      pieceGrams: 65,
      besides: '',
    });
    openFolds();
    type('Eaten with it', 'soup');
    type('Eaten with it', ' ');
    await submit();
    expect(kept[1]?.readings).toBeNull();
  });

  it('says that a double recipe is told of as a whole', () => {
    expect(show(null, 2).root.textContent).toContain('Told of ×2 the recipe');
  });
});
