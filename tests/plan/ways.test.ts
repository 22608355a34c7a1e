import { describe, expect, it } from 'vitest';
import type { Plan, Way } from '../../engine/model.ts';
import { recommendedWay, type WayFound } from '../../engine/plan/ways.ts';

/** A way of a dish of 4 servings, with 15 g as the budget. */
const found = (way: Way, closeness: number, net: number, servings = 4): WayFound => ({
  plan: {
    way,
    closeness,
    servings,
    budgetG: 15,
    met: (net * 4) / servings <= 15,
    shopping: [],
  } as unknown as Plan,
  net,
});

const recommended = (...[within, ...others]: [WayFound, ...WayFound[]]): Way =>
  recommendedWay(within, others, 4);

describe('the way we would take', () => {
  it('is within the budget where that is close to the original', () => {
    expect(recommended(found('within', 0.7, 14), found('smaller', 1, 25, 7))).toBe('within');
  });

  it('is a smaller piece where both reworks make another dish of it', () => {
    const heavy = [found('within', 0.3, 12), found('lighter', 0.5, 14)] as const;
    expect(recommended(heavy[0], heavy[1], found('smaller', 1, 33, 9))).toBe('smaller');
  });

  it('is the lighter of two heavy reworks where there is no other', () => {
    expect(recommended(found('within', 0.3, 12), found('lighter', 0.5, 14))).toBe('lighter');
  });
});
