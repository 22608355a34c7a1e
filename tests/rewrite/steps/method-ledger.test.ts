/** The ledger of every food, and the order of steps, on our own recipes. */
import { describe, expect, it } from 'vitest';
import { type Adaptation, DEFAULT_GOALS } from '../../../engine/model.ts';
import { readText } from '../../../engine/read/index.ts';
import { adaptRecipe } from '../../../engine/walk.ts';
import { PASTED, textOf } from '../../plan/pasted.ts';
import { orderFaults } from '../method-order.ts';

const adaptations: [string, Adaptation][] = PASTED.flatMap((pasted) => {
  const result = readText(textOf(pasted));
  const recipe = result.ok ? result.recipes[0] : undefined;
  if (recipe === undefined) return [];
  return [[pasted.title, adaptRecipe(recipe, { ...DEFAULT_GOALS, way: 'within' })]];
});

const isReworked = ({ plan }: Adaptation): boolean => plan.swaps.length > 0;

describe('the ledger of our recipes', () => {
  it('has recipes that are reworked', () => {
    expect(adaptations.filter(([, one]) => isReworked(one)).length).toBeGreaterThan(50);
  });

  it.each(adaptations)('%s: every planned food has one entry with its grams', (_, adaptation) => {
    const { plan, methodNotes, steps } = adaptation;
    const present = plan.items.filter(({ grams }) => grams > 0);
    const entries = methodNotes.filter(({ told }) => told !== 'gone');
    expect(entries.map(({ key, foodId, grams }) => ({ key, foodId, grams }))).toEqual(
      present.map(({ key, foodId, grams }) => ({ key, foodId, grams })),
    );
    for (const { step } of entries) if (step !== null) expect(steps[step]).toBeDefined();
  });

  it.each(adaptations)('%s: what no step puts in is said', (_, { methodNotes, lines, steps }) => {
    const changed = new Set(
      lines.filter(({ change }) => change !== 'kept').map(({ key }) => key.split('>')[0]),
    );
    const silent = methodNotes.filter(
      ({ told, text, key }) => told === 'unnamed' && text === null && changed.has(key),
    );
    expect(steps.length === 0 ? [] : silent).toEqual([]);
  });

  it.each(adaptations)('%s: nothing stands in the wrong order', (_, adaptation) => {
    expect(orderFaults(adaptation)).toEqual([]);
  });
});

describe('the order of steps', () => {
  const sample = adaptations.find(([, one]) => isReworked(one))?.[1];
  const step = (after: string, before: string | null) => ({
    section: null,
    before,
    after,
    change: before === null ? ('inserted' as const) : ('changed' as const),
    why: null,
  });

  it.each([
    ['foil', [step('Cool completely. If it browns fast, cover the top with foil.', 'Cool.')]],
    ['twice', [step('Add the flour flour.', 'Add the flour.')]],
    ['verb', [step('Add the stir for a minute.', 'Add the rice and stir for a minute.')]],
    ['list', [step('Add the salt, , and oil.', 'Add the salt, rice and oil.')]],
    [
      'sum',
      [step('Bake for 20 minutes. In the cooler oven it takes 2-4 minutes longer.', 'Bake.')],
    ],
    ['rest', [step('Chill the dough for 30-60 minutes.', null), step('Mix all.', 'Mix all.')]],
  ])('is seen to be wrong: %s', (_, steps) => {
    expect(sample).toBeDefined();
    if (sample !== undefined) expect(orderFaults({ ...sample, steps })).toHaveLength(1);
  });
});
