/** A sweet bake that stays above its budget in its smallest piece: what a cook would still take. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, type Pasted } from '../pasted.ts';

const FROSTED: Pasted = {
  title: 'Vanilla cupcakes',
  serves: 'Makes 12',
  lines: [
    'For the batter:',
    '180 g plain flour',
    '320 g sugar',
    '6 g baking powder',
    '115 g butter',
    '120 ml milk',
    '2 eggs',
    'For the top:',
    '230 g cream cheese',
    '80 g butter',
    '360 g icing sugar',
  ],
  steps: [
    'Cream butter and sugar, beat in the eggs, then flour, baking powder and milk.',
    'Bake in a muffin tin with liners 20 minutes at 175 °C.',
    'Beat cream cheese, butter and icing sugar and spread over the cold cakes.',
  ],
  family: ['cake'],
};

const JAM_LAYERS: Pasted = {
  title: 'Layer sponge with cream',
  serves: 'Serves 12',
  lines: [
    '100 g self-raising flour',
    '100 g caster sugar',
    '3 eggs',
    '1 tbsp milk',
    '280 g orange marmalade',
    'For the cream:',
    '300 ml double cream',
    '80 g icing sugar',
  ],
  steps: [
    'Whisk eggs and caster sugar until thick, fold in flour and milk and bake in a round cake tin 20 minutes at 180 °C.',
    'Warm the marmalade and spread it over the cold sponge.',
    'Whip the cream with the icing sugar and spread it on top.',
  ],
  family: ['cake'],
};

const CRUMBLE: Pasted = {
  title: 'Gooseberry rhubarb crumble',
  serves: 'Serves 4',
  lines: [
    'For the filling:',
    '400 g rhubarb',
    '110 g sugar',
    '15 g cornstarch',
    'For the topping:',
    '70 g plain flour',
    '100 g brown sugar',
    '60 g butter',
  ],
  steps: [
    'Toss the rhubarb with the sugar and cornstarch in a dish.',
    'Rub flour, brown sugar and butter together and strew over the rhubarb.',
    'Bake 35 minutes at 180 °C.',
  ],
  family: ['pie-crust'],
};

const FILLED_ROLLS: Pasted = {
  title: 'Spiced walnut rolls',
  serves: 'Makes 12',
  lines: [
    'For the dough:',
    '600 g plain flour',
    '300 ml milk',
    '30 g sugar',
    '2 eggs',
    '110 g butter',
    '7 g instant yeast',
    '8 g salt',
    'For the filling:',
    '110 g butter',
    '220 g brown sugar',
    '10 g cinnamon',
    'For the frosting:',
    '170 g cream cheese',
    '60 g butter',
    '100 g icing sugar',
  ],
  steps: [
    'Knead a dough of flour, milk, sugar, eggs, butter, yeast and salt and let it rise an hour.',
    'Stir the filling of butter, brown sugar and cinnamon. Roll the dough out, spread the filling over it and roll it up.',
    'Cut into 12 rolls, let them rise and bake 25 minutes at 175 °C.',
    'Beat the cream cheese with the butter and icing sugar and spread it over the rolls.',
  ],
  family: ['enriched-yeast-bread'],
};

const share = ({ plan }: Adaptation, food: RegExp): number => {
  const swap = plan.swaps.find(({ from }) => food.test(from?.food ?? ''));
  return (swap?.keptGrams ?? swap?.from?.grams ?? 1) / (swap?.from?.grams ?? 1);
};

describe('a sweet bake far above its budget', () => {
  it('gives up flour too where that saves an eighth of a piece', () => {
    const result = adapted(FROSTED, { budgetG: 15, way: 'lighter' });
    expect(result.plan.met).toBe(false);
    expect(share(result, /flour/)).toBeLessThan(0.85);
  });

  it('trades the jam between its layers, which holds no crumb', () => {
    const result = adapted(JAM_LAYERS, { budgetG: 12, way: 'lighter' });
    expect(share(result, /marmalade/)).toBeLessThan(0.1);
  });

  it('leaves a spoon of milk alone', () => {
    const result = adapted(JAM_LAYERS, { budgetG: 12, way: 'lighter' });
    expect(share(result, /milk/)).toBe(1);
  });

  it('sweetens a filling and a frosting a little less where nothing is to be bought', () => {
    const { plan } = adapted(FILLED_ROLLS, { budgetG: 61.5, way: 'within', pantry: [] });
    const less = plan.swaps.filter(
      ({ to, key }) => to.length === 0 && (key === '8' || key === '12'),
    );
    expect(less.length).toBe(2);
    for (const { from, keptGrams } of less) {
      const left = (keptGrams ?? 0) / (from?.grams ?? 1);
      expect(left).toBeGreaterThanOrEqual(0.64);
      expect(left).toBeLessThan(0.85);
    }
  });

  it('sweetens its fruit less, before it is all bought sweetener', () => {
    const { plan } = adapted(CRUMBLE, { budgetG: 15, way: 'lighter' });
    const own = plan.swaps.filter(({ from }) => from?.food === 'sugar');
    const left =
      (own[0]?.keptGrams ?? 110) + own.flatMap(({ to }) => to).reduce((g, t) => g + t.grams, 0);
    expect(left).toBeLessThan(0.8 * 110);
    expect(left).toBeGreaterThan(0.55 * 110);
  });
});
