import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { foodTable } from '../../../../engine/index.ts';
import type { Goals } from '../../../../engine/model.ts';
import { AllergenAlert } from '../../../../extension/ui/figures/allergens/allergen-alert.tsx';
import { adaptedText } from '../../adapted.ts';
import { type Drawn, drawn } from '../../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

/** Invented cake with eggs, butter and walnuts. */
const CAKE = `Quay Cake

Serves 8

Ingredients
250 g plain flour
200 g sugar
120 g butter
4 eggs
100 g chopped walnuts
2 tsp baking powder

Method
1. Beat the butter, sugar and eggs, then stir in the flour and baking powder.
2. Scatter the walnuts over the top.
3. Bake at 180 C for 40 minutes.`;

const GOALS: Partial<Goals> = { budgetG: 14, avoid: ['egg', 'milk', 'tree nuts'] };

function alert() {
  const looked: string[] = [];
  let asked: Partial<Goals> = {};
  const onGoals = (goals: Partial<Goals>) => {
    asked = goals;
  };
  const adaptation = adaptedText(CAKE, GOALS);
  const table = foodTable();
  const onLine = (key: string) => void looked.push(key);
  screen = drawn(h(AllergenAlert, { adaptation, table, onGoals, onLine }));
  const buttons = [...screen.root.querySelectorAll('button')];
  const press = (name: RegExp) =>
    void act(() => buttons.find(({ textContent }) => name.test(textContent ?? ''))?.click());
  return {
    names: buttons.map(({ textContent }) => textContent),
    press,
    looked,
    asked: () => asked,
  };
}

describe('the alert of what is never eaten', () => {
  it('has a way for each line, and leaves out only what the dish can do without', () => {
    const { names, press, looked } = alert();
    for (const food of ['butter', 'egg', 'walnuts'])
      expect(names).toContainEqual(expect.stringMatching(new RegExp(`^Look at ${food}`)));
    expect(names.filter((name) => name?.startsWith('Leave out'))).toEqual(['Leave out walnuts']);
    press(/^Look at egg/);
    press(/^Look at butter/);
    expect(looked).toEqual(['3', '2']);
  });

  it('leaves a line out of list, method, figures and what is still contained', () => {
    const { press, asked } = alert();
    press(/^Leave out walnuts/);
    expect(asked()).toEqual({ leftOut: ['4'] });
    for (const way of ['within', 'lighter', 'smaller'] as const) {
      const wishes = { ...GOALS, way, cautious: false };
      const without = adaptedText(CAKE, { ...wishes, ...asked() });
      expect(without.lines.find(({ key }) => key === '4')).toMatchObject({ change: 'removed' });
      expect(without.stillContains.map(({ allergen }) => allergen)).not.toContain('tree nuts');
      expect(without.allergensRemoved).toContain('tree nuts');
      expect(without.after.contributions.map(({ key }) => key)).not.toContain('4');
      // The method either lacks it or says to leave it out where it goes in.
      const method = without.steps.map(({ after }) => after);
      for (const step of method)
        if (/walnuts/.test(step)) expect(step).toMatch(/Leave out the walnuts/);
      // The recipe as it stands is told as the page has it.
      expect(without.before).toEqual(adaptedText(CAKE, wishes).before);
    }
  });
});
