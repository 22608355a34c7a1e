import { describe, expect, it } from 'vitest';
import type { Adaptation, Plan, Way } from '../../engine/model.ts';
import { recommendedWay, type WayFound } from '../../engine/plan/ways.ts';
import { adapted, type Pasted } from './pasted.ts';

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

/** An invented recipe: cake and topping are both sweet. */
const CREAMED: Pasted = {
  title: 'Plum layer cake',
  serves: 'Makes 12 slices',
  family: ['cake'],
  lines: [
    '250 g plain flour',
    '300 g caster sugar',
    '2 tsp baking powder',
    '240 ml water',
    '120 ml oil',
    'For the topping:',
    '225 g cream cheese',
    '180 ml double cream',
    '120 g icing sugar',
  ],
  steps: [
    'Whisk the flour, sugar and baking powder. Stir in the water and the oil.',
    'Bake at 180 C for 30 minutes. Leave to cool.',
    'Beat the cream cheese with the icing sugar, whip in the cream and spread it on the cake.',
  ],
};

const lighter = (recipe: Pasted): Adaptation => adapted(recipe, { budgetG: 15, way: 'lighter' });

const sweeteners = ({ plan }: Adaptation): string[] =>
  plan.shopping.map(({ foodId }) => foodId).filter((id) => /allulose|erythritol|xylitol/.test(id));

describe('a light plan', () => {
  it('sweetens cake and topping with one kind of sweetener', () => {
    const made = lighter(CREAMED);
    expect(made.plan.swaps.filter(({ to }) => to.length > 0).length).toBeGreaterThan(1);
    const kinds = new Set(sweeteners(made).map((id) => /allulose|erythritol/.exec(id)?.[0]));
    expect(kinds.size).toBe(1);
  });

  it('counts what a stomach bears by the piece it is cut into', () => {
    const { plan } = lighter(CREAMED);
    expect(plan.servings).toBeGreaterThan(12);
    expect(plan.stomach.sweetenersG).toBeLessThanOrEqual(15);
    const whole = plan.stomach.sweetenersG * plan.servings;
    expect(whole).toBeGreaterThan(12 * 15);
  });

  it('changes three lines at most', () => {
    const lines = new Set(
      lighter(CREAMED).plan.swaps.flatMap(({ key, to }) => (to.length > 0 ? [key] : [])),
    );
    expect(lines.size).toBeLessThanOrEqual(3);
  });
});
