import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, type Goals } from '../../../engine/model.ts';
import type { Preferences } from '../../../extension/store/prefs.ts';
import { LimitFields } from '../../../extension/ui/goals/limit-fields.tsx';
import { type Drawn, drawn } from '../screen.ts';

type Units = Pick<Preferences, 'energy' | 'sodium'>;

let screen: Drawn | null = null;
let asked: Partial<Goals> = {};

function show(preferences: Units, goals: Partial<Goals> = {}): Drawn {
  const all = { ...DEFAULT_GOALS, ...goals };
  asked = {};
  screen = drawn(
    h(LimitFields, {
      goals: all,
      preferences,
      onGoals: (change) => {
        asked = change;
      },
    }),
  );
  return screen;
}

afterEach(() => screen?.clear());

describe('limits of a serving', () => {
  it('are typed in the units of the label and asked for in those of the plan', () => {
    const { type } = show({ energy: 'kcal', sodium: 'sodium' });
    type('At most this much sodium', '480');
    expect(asked).toEqual({ sodiumLimitMg: 480 });
    type('At most this much energy', '220');
    expect(asked).toEqual({ energyLimitKcal: 220 });
    type('At least this much fibre', '4.5');
    expect(asked).toEqual({ fibreFloorG: 4.5 });
  });

  // Regulation (EU) 1169/2011, Annex I: salt is sodium times 2.5; 1 kcal is 4.184 kJ.
  it('as salt and kJ: 1.5 g salt are 600 mg sodium, 418.4 kJ are 100 kcal', () => {
    const { type, field } = show(
      { energy: 'kJ', sodium: 'salt' },
      { sodiumLimitMg: 400, energyLimitKcal: 200 },
    );
    expect(field('At most this much salt').value).toBe('1');
    expect(field('At most this much energy').value).toBe('836.8');
    type('At most this much salt', '1.5');
    expect(asked.sodiumLimitMg).toBeCloseTo(600, 9);
    type('At most this much energy', '418.4');
    expect(asked.energyLimitKcal).toBeCloseTo(100, 9);
  });

  it('are lifted by an empty field, which is not a limit of nothing', () => {
    const { type } = show({ energy: 'kcal', sodium: 'sodium' }, { fibreFloorG: 6 });
    type('At least this much fibre', '');
    expect(asked).toEqual({ fibreFloorG: null });
  });

  it('keep the last good number while the text is none', () => {
    const { type, root } = show({ energy: 'kcal', sodium: 'sodium' }, { fibreFloorG: 6 });
    type('At least this much fibre', '900');
    expect(asked).toEqual({});
    expect(root.textContent).toContain('A number from 0 to 100.');
  });
});
