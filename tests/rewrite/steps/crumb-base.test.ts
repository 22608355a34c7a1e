/** Bases of crushed biscuits when ground nuts stand in. */
import { describe, expect, it } from 'vitest';
import { adapted, type Pasted } from '../../plan/pasted.ts';

const set = (title: string, lines: string[], steps: string[]): Pasted => ({
  title,
  serves: 'Serves 12',
  lines,
  steps,
  family: ['custard'],
});

const CHILLED = set(
  'Raspberry cream slice',
  [
    '200 g graham crackers',
    '80 g butter, melted',
    '600 g cream cheese',
    '200 g powdered sugar',
    '300 ml heavy cream',
    '200 g raspberries',
  ],
  [
    'Grind the graham crackers into fine crumbs in a food processor.',
    'Combine the melted butter and the cracker crumbs and press the crumb mixture into a springform pan.',
    'Beat the cream cheese with the powdered sugar and fold in the whipped cream and the raspberries.',
    'Spoon the filling onto the graham cracker crust and chill overnight.',
  ],
);

const BAKED = set('Baked curd cake', CHILLED.lines, [
  'Crush the graham crackers and mix them with the melted butter. Press into a tin and bake 10 minutes in the oven at 180 °C.',
  'Beat the cream cheese with the powdered sugar, cream and raspberries, pour on and bake 50 minutes.',
]);

const method = (recipe: Pasted): string[] =>
  adapted(recipe, { budgetG: 12, way: 'within' }).steps.map(({ after }) => after);

describe('crumbs of ground nuts', () => {
  it('are toasted where nothing is baked, before any step takes them', () => {
    const steps = method(CHILLED);
    const made = steps.findIndex((step) => /^For the almond crumbs, toast .*dry pan/.test(step));
    const taken = steps.findIndex((step) =>
      /Combine the melted butter and the almond crumbs/.test(step),
    );
    expect(made).toBeGreaterThanOrEqual(0);
    expect(made).toBeLessThan(taken);
  });

  it('are not crushed again, and no step speaks of the biscuits', () => {
    const text = method(CHILLED).join('\n');
    expect(text).not.toMatch(/graham|cracker/i);
    expect(text).not.toMatch(/grind the almond/i);
    expect(text).toMatch(/onto the crust/);
  });

  it('have no brand', () => {
    const brand =
      'Depending on the type and brand of graham crackers you use, you may need less butter.';
    expect(method({ ...CHILLED, steps: CHILLED.steps.toSpliced(2, 0, brand) })).toContain(
      'You may need less butter.',
    );
  });

  it('are named where a bowl takes them, when the crushing is gone', () => {
    const steps = [
      'In the bowl of a food processor, pulse the graham crackers to a very fine crumb. Add to a medium bowl along with the melted butter and press into a pan.',
      ...CHILLED.steps.slice(2),
    ];
    const text = method({ ...CHILLED, steps }).join('\n');
    expect(text).not.toMatch(/pulse/);
    expect(text).toMatch(/Add the almond crumbs to a medium bowl along with the melted butter/);
  });

  it('are told with the grams of a sweetener that the filling has too', () => {
    const sugared = set(
      'Raspberry cream cheese bake',
      [
        '150 g graham crackers',
        '60 g butter, melted',
        '600 g cream cheese',
        '180 g sugar',
        '2 eggs',
      ],
      [
        'Crush the graham crackers and mix them with the melted butter. Press into a tin and bake 10 minutes in the oven at 180 °C.',
        'Beat the cream cheese with the sugar and eggs, pour on and bake 50 minutes.',
      ],
    );
    const { plan, steps } = adapted(sugared, { budgetG: 10, way: 'within' });
    const crumbs = plan.swaps.find(({ key }) => key === '0');
    const sweet = crumbs?.to.find(({ foodId }) =>
      plan.items.some((item) => item.foodId === foodId && item.key !== '0'),
    );
    expect(sweet).toBeDefined();
    expect(steps.map(({ after }) => after).join('\n')).toContain(
      `For the almond crumbs, mix almond flour and ${Math.round(sweet?.grams ?? 0)} g ${sweet?.food}`,
    );
  });

  it('need no pan where the base is baked', () => {
    const text = method(BAKED).join('\n');
    expect(text).toMatch(/For the almond crumbs, mix almond flour/);
    expect(text).not.toMatch(/dry pan/);
  });
});
