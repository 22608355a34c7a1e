import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/index.ts';
import type { Goals } from '../../../engine/model.ts';
import type { PantryFood } from '../../../extension/store/pantry-food.ts';
import { PantryField } from '../../../extension/ui/goals/pantry-field.tsx';
import { adaptedText } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

const LOAF =
  'Loaf\n\n500 g bread flour\n370 g water\n10 g salt\n7 g dry yeast\n\nBake.\n\nServes 12';
const gluten: PantryFood = { foodId: 'vital-wheat-gluten', foodName: 'vital wheat gluten' };
const fibre: PantryFood = { foodId: 'oat-fibre', foodName: 'oat fibre' };

let screen: Drawn | null = null;
let asked: Partial<Goals>[] = [];

function field(foods: readonly PantryFood[], planned: string[] | null) {
  const pantry = { foods, failure: null, add: () => {}, take: () => {}, reload: () => {} };
  const adaptation = adaptedText(LOAF, { pantry: planned });
  return h(PantryField, {
    adaptation,
    goals: adaptation.goals,
    table: foodTable(),
    pantry,
    onGoals: (change) => {
      asked.push(change);
    },
  });
}

function show(foods: readonly PantryFood[], planned: string[] | null): Drawn {
  asked = [];
  screen = drawn(field(foods, planned));
  return screen;
}

afterEach(() => screen?.clear());

describe('what is at home', () => {
  it('is worked in when the list changes', () => {
    const { draw } = show([gluten], ['vital-wheat-gluten']);
    expect(asked).toEqual([]);
    draw(field([gluten, fibre], ['vital-wheat-gluten']));
    expect(asked).toEqual([{ pantry: ['vital-wheat-gluten', 'oat-fibre'] }]);
  });

  it('does not change a recipe that was saved with another list, but says so', () => {
    const { root } = show([gluten, fibre], ['vital-wheat-gluten']);
    expect(asked).toEqual([]);
    expect(root.textContent).toContain('planned with another list');
  });

  it('leaves a plan alone that may use every food', () => {
    const { draw, root } = show([gluten], null);
    draw(field([gluten, fibre], null));
    expect(asked).toEqual([]);
    expect(root.textContent).not.toContain('another list');
  });
});
