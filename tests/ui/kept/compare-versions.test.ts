import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { changeTexts, foodChanges } from '../../../extension/ui/kept/compare-versions.ts';
import { adaptedText } from '../adapted.ts';

const LOAF =
  'Loaf\n\n500 g bread flour\n370 g water\n10 g salt\n7 g dry yeast\n\nMix.\nBake.\n\nServes 12';
const tight = adaptedText(LOAF, { budgetG: 12 });
const loose = adaptedText(LOAF, { budgetG: 20 });

/** The plan with amounts of our choosing, so that the words can be checked by hand. */
function withGrams(from: Adaptation, grams: Record<string, number>, netG: number): Adaptation {
  const items = from.plan.items.map((item) => ({
    ...item,
    grams: grams[item.foodId] ?? item.grams,
  }));
  const netCarbsG = { low: netG - 1, best: netG, high: netG + 1 };
  return {
    ...from,
    plan: { ...from.plan, items },
    after: { ...from.after, perServing: { ...from.after.perServing, netCarbsG } },
  };
}

describe('what changed from one version to another', () => {
  it('is said by food, the largest first, then the figures', () => {
    const then = withGrams(tight, { 'bread-flour': 200, water: 400 }, 14.2);
    const now = withGrams(tight, { 'bread-flour': 160, water: 415 }, 13);
    expect(changeTexts(then, now)).toEqual([
      expect.stringMatching(/^40 g less bread flour.*, 15 g more water.*$/i),
      '1.2 g less net carbs a serving',
    ]);
  });

  it('names what came and what went', () => {
    const then = withGrams(tight, { water: 0 }, 10);
    const dry = {
      ...tight,
      plan: { ...tight.plan, items: tight.plan.items.filter(({ foodId }) => foodId !== 'water') },
    };
    const now = withGrams(tight, { water: 300 }, 10);
    expect(foodChanges(then, now)).toEqual([
      { part: null, foods: [expect.objectContaining({ foodId: 'water', was: 0, now: 300 })] },
    ]);
    expect(changeTexts(then, now)[0]).toMatch(/^300 g water, new/i);
    expect(changeTexts(now, withGrams(dry, {}, 10))[0]).toMatch(/^no more water.* \(300 g\)$/i);
  });

  it('tells parts apart where the dish has several', () => {
    const [first, ...rest] = tight.plan.items;
    if (!first) throw new Error('no items');
    const parts = [
      { title: 'Crust', family: tight.plan.family.id, why: '', keys: [first.key] },
      { title: 'Filling', family: tight.plan.family.id, why: '', keys: rest.map(({ key }) => key) },
    ];
    const then = { ...tight, plan: { ...tight.plan, parts } };
    const now = withGrams(then, { [first.foodId]: first.grams + 25, salt: 40 }, 10);
    const texts = changeTexts(then, now);
    expect(texts[0]).toMatch(/^Crust: 25 g more /);
    expect(texts[1]).toMatch(/^Filling: .* more .*salt/i);
  });

  it('covers every food that two plans weigh differently', () => {
    const foods = foodChanges(tight, loose).flatMap((part) => part.foods);
    const gramsIn = ({ plan }: Adaptation, id: string) =>
      plan.items.reduce((sum, item) => sum + (item.foodId === id ? item.grams : 0), 0);
    const ids = new Set([...tight.plan.items, ...loose.plan.items].map(({ foodId }) => foodId));
    const differing = [...ids].filter((id) => gramsIn(tight, id) !== gramsIn(loose, id));
    expect(foods.map(({ foodId }) => foodId).sort()).toEqual(differing.sort());
    expect(differing.length).toBeGreaterThan(0);
    expect(changeTexts(tight, loose)).toContain('budget 20 g, it was 12 g');
  });

  it('is nothing between a version and itself', () => {
    expect(changeTexts(tight, tight)).toEqual([]);
  });
});
