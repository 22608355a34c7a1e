import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/index.ts';
import type { Goals } from '../../../engine/model.ts';
import { PrintTold } from '../../../extension/ui/recipe/print-told.tsx';
import { adaptedText } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

/** Invented cake with egg and milk, nuts where flour was, and lines that no figure has. */
const CAKE = `Quay Cake

Serves 8

Ingredients
250 g plain flour
200 g sugar
120 g butter
4 eggs
2 tsp baking powder
fresh basil
1 batch of dumpling dough
some lemon balm
sprig of woodruff

Method
1. Beat the butter, sugar and eggs, then stir in the flour and baking powder.
2. Bake at 180 C for 40 minutes.`;

const onPaper = (goals: Partial<Goals> = {}): string => {
  const adaptation = adaptedText(CAKE, { budgetG: 12, ...goals });
  screen = drawn(h(PrintTold, { adaptation, table: foodTable() }));
  return screen.root.textContent ?? '';
};

describe('the paper says below the verdict', () => {
  it('what the dish still contains of what is never eaten, and what brings it', () => {
    const told = onPaper({ avoid: ['egg', 'milk'] });
    expect(told).toContain('Still contains');
    expect(told).toMatch(/egg/);
    expect(told).toMatch(/It comes with .*butter/);
  });

  it('what it now contains', () => {
    const told = onPaper();
    expect(told).toMatch(/Now contains .*nuts/);
    expect(told).not.toContain('Still contains');
  });

  it('every line that is not counted, what may weigh on the verdict first', () => {
    const told = onPaper();
    const uncounted = told.slice(told.indexOf('Not counted:'));
    expect(uncounted).toMatch(/^Not counted: .*dumpling dough/);
    for (const name of ['basil', 'lemon balm', 'woodruff']) {
      expect(uncounted).toContain(name);
      expect(uncounted.indexOf(name)).toBeGreaterThan(uncounted.indexOf('dumpling'));
    }
    expect(uncounted).not.toContain('more');
  });
});
