import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { Adaptation, MethodNote } from '../../../engine/model.ts';
import { cookedMethod } from '../../../extension/ui/recipe/cooked-method.ts';
import { Method } from '../../../extension/ui/recipe/method.tsx';
import { StoveStep } from '../../../extension/ui/stove/stove-step.tsx';
import { speak } from '../../../extension/ui/words/say.ts';
import { adaptedText } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

const note = (step: number | null, text: string | null): MethodNote => ({
  key: '0',
  foodId: 'wheat-flour',
  food: 'flour',
  part: null,
  grams: 120,
  step,
  told: step === null ? 'unnamed' : 'named',
  text,
});

const plain = adaptedText(
  'Flat bread\nServes 4\nIngredients\n200 g wheat flour\n120 ml water\nMethod\nMix the flour and water.\nBake for 20 minutes at 200 °C.',
);
const adaptation: Adaptation = {
  ...plain,
  steps: [
    {
      section: null,
      before: 'Stir 200 g flour into 120 ml water.',
      after: 'Stir 90 g almond flour into 120 ml water.',
      change: 'changed',
      why: 'The flour is another one.',
    },
    {
      section: null,
      before: 'Bake for 20 minutes.',
      after: 'Bake for 20 minutes.',
      change: 'kept',
      why: null,
    },
  ],
  methodNotes: [
    note(0, 'The steps tell where 60 g of 120 g go in; the rest is not told.'),
    note(0, 'The steps tell where 60 g of 120 g go in; the rest is not told.'),
    note(1, null),
    note(null, 'No step names the psyllium.'),
    note(9, 'Belongs to a step that is gone.'),
  ],
};

let screen: Drawn | null = null;
function show(child: Parameters<typeof drawn>[0]): Drawn {
  screen = drawn(child);
  return screen;
}

afterEach(() => {
  screen?.clear();
  speak('en');
});

describe('the method as it is cooked', () => {
  it('takes its amounts, and those of its notes, times the factor', () => {
    const { steps, told } = cookedMethod(adaptation, 2);
    expect(steps.map(({ after }) => after)).toEqual([
      'Stir 180 g almond flour into 240 ml water.',
      'Bake for 20 minutes.',
    ]);
    expect(steps[0]?.told).toEqual([
      'The steps tell where 120 g of 240 g go in; the rest is not told.',
    ]);
    expect(steps[1]?.told).toHaveLength(1);
    expect(told).toEqual(['No step names the psyllium.', 'Belongs to a step that is gone.']);
  });

  it('is the method itself at once the recipe', () => {
    const { steps } = cookedMethod(adaptation, 1);
    expect(steps.map(({ after }) => after)).toEqual(adaptation.steps.map(({ after }) => after));
    expect(steps[1]?.told).toEqual([]);
  });

  it('shows notes beside their step and above the method, and marks only what the rework changed', () => {
    const { root } = show(h(Method, { adaptation, factor: 2 }));
    const lists = [...root.querySelectorAll('.told')];
    expect(lists[0]?.closest('.step')).toBeNull();
    expect(lists[0]?.textContent).toContain('No step names the psyllium.');
    expect(lists[1]?.closest('.step')?.textContent).toContain('180 g almond flour');
    expect([...root.querySelectorAll('b.new')].map((one) => one.textContent)).toEqual(['180 g']);
    expect(root.querySelector('.factor-note')?.textContent).toContain('×2');
  });

  it('says nothing of a factor where the recipe is made once', () => {
    const { root } = show(h(Method, { adaptation, factor: 1 }));
    expect(root.querySelector('.factor-note')).toBeNull();
  });

  it.each([
    ['de', 'en'],
    ['en', null],
  ])('at the stove of a screen in %s has notes and reason with lang %s', (language, lang) => {
    speak(language);
    const [step] = cookedMethod(adaptation, 2).steps;
    if (!step) throw new Error('no step');
    const props = { step, at: 0, count: 2, factor: 2, language: 'en', onTimer: () => {} };
    const { root } = show(h(StoveStep, props));
    expect(root.querySelector('.stove-text')?.textContent).toContain('180 g almond flour');
    expect(root.querySelector('.told')?.textContent).toContain('120 g of 240 g');
    for (const name of ['.told', '.stove-why'])
      expect(root.querySelector(`${name} span`)?.getAttribute('lang')).toBe(lang);
  });
});
