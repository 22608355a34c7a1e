import { describe, expect, it } from 'vitest';
import { adaptRecipe } from '../../../engine/index.ts';
import { withoutSwap } from '../../../extension/ui/recipe/without-swap.ts';
import { adaptedPage } from '../adapted.ts';

describe('the plan without a swap', () => {
  const adaptation = adaptedPage('hearth-loaf.html');
  const [swap] = adaptation.plan.swaps;
  if (!swap) throw new Error('nothing is swapped');
  const found = withoutSwap(adaptation, swap, {});

  it('is the one that ruling the swap out gives', () => {
    const { recipe, goals } = adaptation;
    const then = adaptRecipe(recipe, { ...goals, excludedSwaps: [swap.id] });
    expect(found).toMatchObject({
      met: then.plan.met,
      netCarbsG: then.after.perServing.netCarbsG,
    });
  });

  it('tells what comes in its place, and never the food that was ruled out', () => {
    const names = found?.instead.map(({ food }) => food) ?? [];
    expect(names.length).toBeGreaterThan(0);
    expect(names).not.toContain(swap.to[0]?.food);
  });

  it('names only parts that would change', () => {
    for (const { now, without } of found?.parts ?? []) expect(now).not.toBe(without);
    expect(found?.parts.length).toBeGreaterThan(0);
  });
});
