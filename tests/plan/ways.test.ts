import { describe, expect, it } from 'vitest';
import type { Adaptation, Family, Plan, Tally, Way } from '../../engine/model.ts';
import sizes from '../../engine/plan/data/serving-sizes.json' with { type: 'json' };
import {
  fedPortions,
  mostServings,
  portionsOf,
  servingsFor,
  servingsThatFit,
} from '../../engine/plan/serving-size.ts';
import { recommendedWay, type WayFound } from '../../engine/plan/ways.ts';
import { adapted, type Pasted } from './pasted.ts';

/** A way of a dish of 4 servings, with 15 g as the budget. */
const found = (way: Way, closeness: number, net: number, servings = 4): WayFound => ({
  plan: {
    way,
    closeness,
    servings,
    family: { id: 'other' },
    budgetG: 15,
    met: (net * 4) / servings <= 15,
    shopping: [],
    swaps: [],
  } as unknown as Plan,
  net,
});

const recommended = (...[within, ...others]: [WayFound, ...WayFound[]]): Way =>
  recommendedWay(within, others, 4);

describe('the way we would take', () => {
  it('is within the budget where that is close to the original', () => {
    expect(recommended(found('within', 0.7, 14), found('smaller', 1, 25, 7))).toBe('within');
  });

  it('is the lighter one where fewer changes bring the same serving within the budget', () => {
    const changed = (way: WayFound, swaps: number): WayFound => ({
      ...way,
      plan: { ...way.plan, swaps: Array.from({ length: swaps }) } as unknown as Plan,
    });
    const within = changed(found('within', 0.66, 15), 4);
    expect(recommended(within, changed(found('lighter', 0.69, 14), 2))).toBe('lighter');
    expect(recommended(within, changed(found('lighter', 0.63, 14), 2))).toBe('lighter');
    expect(recommended(within, changed(found('lighter', 0.6, 14), 2))).toBe('within');
    expect(recommended(within, changed(found('lighter', 0.69, 20, 6), 2))).toBe('within');
  });

  it('is a smaller piece where both reworks make another dish of it', () => {
    const heavy = [found('within', 0.3, 12), found('lighter', 0.5, 14)] as const;
    expect(recommended(heavy[0], heavy[1], found('smaller', 1, 33, 9))).toBe('smaller');
  });

  it('is a heavy rework of ordinary foods rather than two thirds of a plate', () => {
    const heavy = found('within', 0.46, 15);
    expect(recommended(heavy, found('lighter', 0.66, 22, 6))).toBe('within');
    expect(recommended(heavy, found('lighter', 0.66, 18, 5))).toBe('lighter');
    expect(recommended(found('within', 0.42, 15), found('lighter', 0.66, 22, 6))).toBe('lighter');
  });

  it('is a heavy rework with one special product rather than two thirds of a plate, with two it is not', () => {
    const special = { foodId: 'konjac-rice', availability: 'speciality' };
    const buying = (closeness: number, count: number): WayFound => {
      const way = found('within', closeness, 15);
      const shopping = Array.from({ length: count }, () => special);
      return { ...way, plan: { ...way.plan, shopping } as unknown as Plan };
    };
    expect(recommended(buying(0.46, 1), found('lighter', 0.66, 22, 6))).toBe('within');
    expect(recommended(buying(0.46, 2), found('lighter', 0.66, 22, 6))).toBe('lighter');
  });

  it('is within where neither meets the budget and that leaves less above it', () => {
    const lighter = found('lighter', 0.8, 40);
    expect(recommended(found('within', 0.7, 24), lighter)).toBe('within');
    expect(recommended(found('within', 0.7, 24), found('lighter', 0.7, 18, 5))).toBe('lighter');
  });

  it('is the whole plate with a little less on it rather than two thirds of the original', () => {
    const smaller = found('smaller', 1, 20.6, 6);
    const less = (net: number, changes: number): WayFound => {
      const way = found('within', 0.92, net);
      return { ...way, plan: { ...way.plan, swaps: Array(changes) } as unknown as Plan };
    };
    expect(recommended(less(17.5, 1), smaller)).toBe('within');
    expect(recommended(less(20, 1), smaller)).toBe('smaller');
    expect(recommended(less(17.5, 0), smaller)).toBe('smaller');
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

/** An invented plate whose bread dough is out of reach beside little that can change. */
const FOLDED: Pasted = {
  title: 'Folded cheese pastries with gravy',
  family: ['other', 'thickened-sauce'],
  serves: 'Serves 4',
  lines: [
    '500 g puff pastry',
    '200 g cheddar',
    '60 g plain flour',
    '60 g butter',
    '800 ml chicken stock',
  ],
  steps: [
    'Fold the pastry around the cheese and bake 25 minutes at 200 °C.',
    'Melt the butter, stir in the flour and cook 2 minutes. Whisk in the stock and simmer until thick.',
    'Serve the pastries with the gravy.',
  ],
};

/** An invented plate somewhat above the budget, of which the fruit alone can be less. */
const FISH_WITH_PLUMS: Pasted = {
  title: 'Grilled cod with plum and carrot salad',
  family: ['other'],
  serves: 'Serves 2',
  lines: [
    '300 g cod',
    '220 g plums',
    '190 g carrots',
    '300 g tomatoes',
    '60 g red onion',
    '2 tbsp olive oil',
  ],
  steps: [
    'Slice plums, carrots, tomatoes and onion and toss the salad with the oil.',
    'Grill the cod 5 minutes a side and serve with the salad.',
  ],
};

describe('a dish that is a little above the budget', () => {
  it('takes less of what brings a good part of the excess', () => {
    const { plan } = adapted(FISH_WITH_PLUMS, { budgetG: 15, way: 'within' });
    expect(plan.swaps.map(({ from }) => from?.food)).toEqual(['plum']);
    expect(plan.servings).toBe(2);
  });
});

const RICE_TRIANGLES: Pasted = {
  title: 'Grilled onigiri',
  serves: 'Serves 4',
  lines: ['700 g cooked sushi rice', '20 g soy sauce'],
  steps: ['Press the rice into triangles, brush with the soy sauce and grill.'],
  family: ['rice-dish'],
};

describe('a dish that stays far above the budget', () => {
  it('stays as it is, with its figures, rather than change a little', () => {
    const { plan, ways } = adapted(FOLDED, { budgetG: 15 });
    expect(plan.swaps).toEqual([]);
    expect(plan.met).toBe(false);
    const codes = plan.limits.map(({ code }) => code);
    expect(codes).toContain('NOT_WORTHWHILE');
    expect(codes).not.toContain('MORE_SERVINGS');
    expect(ways.map(({ plan: { way } }) => way)).not.toContain('lighter');
  });

  it('speaks of no changes worth making where none is made', () => {
    const { plan } = adapted(RICE_TRIANGLES, { budgetG: 15 });
    expect(plan.swaps).toEqual([]);
    const texts = plan.limits.map(({ text }) => text).join(' ');
    expect(texts).toContain('almost nothing');
    expect(texts).not.toContain('changes worth making');
  });

  it('is reworked all the same where the user asks for more than the budget', () => {
    const { plan } = adapted(FOLDED, { budgetG: 15, sodiumLimitMg: 500 });
    expect(plan.limits.map(({ code }) => code)).not.toContain('NOT_WORTHWHILE');
  });
});

/** A dish of so many grams, a serving of which has so much energy. */
const weighing = (
  best: number,
  kcal = 0,
): Pick<Tally, 'cookedGrams' | 'rawGrams' | 'perServing'> => {
  const grams = { low: best, best, high: best };
  const energyKcal = { low: kcal, best: kcal, high: kcal };
  return {
    cookedGrams: grams,
    rawGrams: grams,
    perServing: { energyKcal } as Tally['perServing'],
  };
};

describe('the smallest serving', () => {
  it('of a plain dough that is several pieces for each guest is half as many', () => {
    const dish = {
      family: 'enriched-yeast-bread',
      servings: 4,
      method: '',
      flourShare: 0.46,
    } as const;
    const balls = portionsOf({ ...dish, title: 'Dough balls' }, weighing(960));
    expect(balls.most).toBe(8);
    const filled = portionsOf({ ...dish, title: 'Nut buns', flourShare: 0.2 }, weighing(960));
    expect(filled.most).toBe(8);
  });

  it('of pancakes is half of what the page gives a guest, never less than two small ones', () => {
    const few = { title: 'Pancakes', method: '', servings: 8, flourShare: 0.2 };
    expect(portionsOf({ ...few, family: 'pancake' }, weighing(1000)).most).toBe(16);
    expect(portionsOf({ ...few, servings: 4, family: 'pancake' }, weighing(830)).most).toBe(8);
    const dish = {
      family: 'pancake',
      title: 'Oat pancakes',
      servings: 4,
      method: '',
      flourShare: 0.2,
    } as const;
    expect(portionsOf(dish, weighing(1280)).most).toBe(8);
  });

  it('of bars is smaller than of a pie', () => {
    const dish = { family: 'pie-crust', method: '', servings: 10, flourShare: 0.2 } as const;
    const bars = portionsOf({ ...dish, title: 'Walnut bars' }, weighing(1500));
    const pie = portionsOf({ ...dish, title: 'Walnut pie' }, weighing(1500));
    expect(bars.most).toBe(20);
    expect(pie.most).toBe(16);
  });

  it('is cut in a number that a round tin is cut into', () => {
    const dish = {
      family: 'pie-crust',
      title: 'Plum pie',
      method: '',
      servings: 8,
      flourShare: 0.2,
    } as const;
    const portions = portionsOf(dish, weighing(1400));
    expect(mostServings(portions)).toBe(12);
    expect(servingsThatFit(20, 15, portions)).toBe(12);
  });

  it('is never cut in fourteen wedges, nor a loaf of yeast bread in slices that fall apart', () => {
    const cake = {
      family: 'cake',
      title: 'Hazelnut cake',
      method: 'Grease a springform pan.',
      servings: 7,
      flourShare: 0.2,
    } as const;
    const round = portionsOf(cake, weighing(1400));
    expect(mostServings(round)).toBe(12);
    expect(servingsThatFit(28, 15, round)).toBe(null);
    expect(servingsThatFit(28, 15, portionsOf({ ...cake, servings: 8 }, weighing(1400)))).toBe(16);
    const method = 'Shape the dough and lay it in a loaf tin.';
    const loaf = { ...cake, family: 'enriched-yeast-bread', title: 'Oat bread', method } as const;
    expect(portionsOf({ ...loaf, servings: 14 }, weighing(1100)).most).toBe(20);
    expect(portionsOf({ ...loaf, servings: 22 }, weighing(1100)).most).toBe(22);
  });

  it('is the page’s own where a smaller plate is far too much all the same', () => {
    const dish = {
      family: 'rice-dish',
      title: 'Rice bowl',
      method: '',
      servings: 4,
      flourShare: 0,
    } as const;
    const portions = portionsOf(dish, weighing(1800));
    expect(servingsFor(48, 15, portions)).toBe(4);
    expect(servingsFor(27, 15, portions)).toBe(5);
    const pizza = portionsOf({ ...dish, title: 'Pizza', flourShare: 0.3 }, weighing(1800));
    expect(servingsFor(48, 15, pizza)).toBe(5);
    const pair = portionsOf({ ...dish, servings: 2 }, weighing(900));
    expect(servingsFor(20, 15, pair)).toBe(2);
  });

  it('is the page’s own where a smaller meal is too much all the same', () => {
    const dish = { family: 'pasta-dish', method: '', servings: 4, flourShare: 0 } as const;
    const meal = portionsOf({ ...dish, title: 'Pasta with ham' }, weighing(1800, 700));
    expect(servingsFor(22, 15, meal)).toBe(4);
    expect(servingsFor(18.5, 15, meal)).toBe(5);
    expect(servingsFor(19.5, 15, meal)).toBe(5);
    const bowl = portionsOf(
      { ...dish, title: 'Rice pudding', savoury: false },
      weighing(1800, 700),
    );
    expect(servingsFor(27, 15, bowl)).toBe(6);
  });

  it('is one of a number that is easily shared out where there are many plates', () => {
    const dish = {
      family: 'rice-dish',
      title: 'Stuffed peppers',
      method: '',
      flourShare: 0,
    } as const;
    const many = portionsOf({ ...dish, servings: 8 }, weighing(3200));
    expect(servingsThatFit(20, 15, many)).toBe(null);
    expect(servingsThatFit(17, 15, many)).toBe(10);
    const more = portionsOf({ ...dish, servings: 10 }, weighing(4000));
    expect(servingsThatFit(16, 15, more)).toBe(12);
  });

  it('meets a stomach twice where it is a bite', () => {
    const dish = {
      family: 'cookie',
      title: 'Thins',
      method: '',
      servings: 20,
      flourShare: 0.4,
    } as const;
    const { most, doses } = portionsOf(dish, weighing(800));
    expect([most, doses]).toEqual([40, 20]);
  });

  it.each(Object.keys(sizes.pieces) as Family[])('of %s is never below half of one', (family) => {
    const dish = { family, title: 'Test bake', method: '', servings: 10, flourShare: 0.4 } as const;
    for (const grams of [900, 1900, 4000]) {
      const portions = portionsOf(dish, weighing(grams));
      const few = family === 'tortilla' ? 3 : 2;
      expect(mostServings(portions)).toBeLessThanOrEqual(few * 10);
      expect(servingsThatFit(29, 15, portions) ?? 0).toBeLessThanOrEqual(few * 10);
    }
  });

  it('of dumplings is two thirds of the page’s', () => {
    const dish = { family: 'fresh-pasta', title: 'Cheese dumplings', method: '' } as const;
    expect(portionsOf({ ...dish, servings: 8, flourShare: 0.3 }, weighing(3000)).most).toBe(12);
  });

  it('of a round cake is a wedge that stands', () => {
    const cake = { family: 'cake', title: 'Hazelnut cake', servings: 12, flourShare: 0.2 } as const;
    const tin = (method: string): number => portionsOf({ ...cake, method }, weighing(1600)).most;
    expect(tin('Divide between two 9-inch round cake pans.')).toBe(16);
    expect(tin('Eine Springform fetten.')).toBe(16);
    expect(tin('Pour into a 9x13 inch pan.')).toBe(24);
    const many = { ...cake, servings: 16, method: 'Grease a bundt pan.' };
    expect(portionsOf(many, weighing(2400)).most).toBe(16);
    const pies = { ...cake, family: 'custard', title: 'Banana pie', servings: 16 } as const;
    const method = 'Spread the cream over the two pies.';
    expect(servingsThatFit(18, 15, portionsOf({ ...pies, method }, weighing(2400)))).toBe(20);
    expect(servingsThatFit(19.2, 15, portionsOf({ ...pies, method }, weighing(2400)))).toBe(24);
  });

  it('of a square tin is two thirds of the page’s, of large pieces 60 g', () => {
    const cake = { family: 'cake', title: 'Plum crumb cake', flourShare: 0.25 } as const;
    const method = 'Line an 8-inch square baking pan.';
    expect(portionsOf({ ...cake, servings: 12, method }, weighing(1000)).most).toBe(18);
    expect(portionsOf({ ...cake, servings: 8, method }, weighing(1000)).most).toBe(16);
    const bars = { ...cake, family: 'pie-crust', title: 'Rhubarb crumble bars' } as const;
    expect(portionsOf({ ...bars, servings: 16, method: '' }, weighing(1300)).most).toBe(24);
  });

  it('of what is baked each in its cup is two thirds, of large ones half', () => {
    const dish = { family: 'cake', title: 'Orange cupcakes', method: '', flourShare: 0.2 } as const;
    expect(portionsOf({ ...dish, servings: 12 }, weighing(1000)).most).toBe(18);
    expect(portionsOf({ ...dish, servings: 6 }, weighing(1500)).most).toBe(12);
  });

  it('of a large creamy sweet is three fifths of the page’s', () => {
    const dish = { family: 'custard', title: 'Bread pudding', method: '', flourShare: 0 } as const;
    expect(portionsOf({ ...dish, servings: 12 }, weighing(3600)).most).toBe(20);
  });

  it('of a loaf is a slice two thirds as thick', () => {
    const dish = { family: 'quick-bread', title: 'Pear loaf', method: '' } as const;
    const most = (servings: number, method = ''): number =>
      portionsOf({ ...dish, method, servings, flourShare: 0.3 }, weighing(1200)).most;
    expect(most(10)).toBe(16);
    expect(most(12)).toBe(18);
    expect(most(16)).toBe(18);
    expect(most(16, 'Grease 2 loaf pans.')).toBe(26);
  });

  it('of a meal keeps the energy of one', () => {
    const dish = { family: 'rice-dish', title: 'Rice pan', method: '', flourShare: 0 } as const;
    const plates = portionsOf({ ...dish, servings: 4 }, weighing(1800, 700));
    expect(plates.most).toBe(5);
    expect(fedPortions(plates, 700).most).toBe(5);
    expect(fedPortions(plates, 400).most).toBe(4);
    const many = portionsOf({ ...dish, servings: 8 }, weighing(3600, 700));
    expect(many.most).toBe(10);
    expect(fedPortions(many, 400).most).toBe(9);
    const sweet = portionsOf({ ...dish, servings: 8, savoury: false }, weighing(3600, 300));
    expect([sweet.most, sweet.leastKcal]).toEqual([12, 0]);
    const side = portionsOf({ ...dish, servings: 4 }, weighing(1800, 300));
    expect(fedPortions(side, 250).most).toBe(5);
    expect(fedPortions(side, 200).most).toBe(4);
    const glass = { ...dish, family: 'other', servings: 1 } as const;
    expect(portionsOf({ ...glass, title: 'Plum smoothie' }, weighing(500, 300)).most).toBe(2);
    expect(portionsOf({ ...glass, title: 'Bean pot' }, weighing(500, 500)).most).toBe(1);
    const cake = portionsOf({ ...dish, family: 'cake', servings: 8 }, weighing(1000, 500));
    expect(fedPortions(cake, 100).most).toBe(cake.most);
  });
});
