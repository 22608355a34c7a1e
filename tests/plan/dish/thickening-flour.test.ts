/** The flour of a sauce beside the flour of a dough, without headings. */
import { expect, it } from 'vitest';
import { adapted, type Pasted } from '../pasted.ts';

const LINES = [
  '60 g butter',
  '1 onion, chopped',
  '45 g all-purpose flour',
  '600 ml chicken stock',
  '500 g cooked turkey, diced',
  '150 g peas',
  '260 g all-purpose flour',
  '2 tsp baking powder',
  '1 tsp salt',
  '90 g cold butter, diced',
  '200 ml buttermilk',
];
const PIE: Pasted = {
  title: 'Turkey bake with buttermilk biscuits',
  serves: 'Serves 8',
  lines: LINES,
  steps: [
    'Melt the butter in a pot and soften the onion. Stir in the flour and cook for 2 minutes, then whisk in the chicken stock and simmer until thick. Add the turkey and peas and pour into a dish.',
    'Combine the flour, baking powder and salt. Rub in the diced butter and stir in the buttermilk to a soft dough.',
    'Drop 8 biscuits onto the filling and bake for 25 minutes in the oven at 200 °C.',
  ],
  family: ['biscuit'],
};

const result = adapted(PIE, { budgetG: 15 });
const sauce = result.lines.find(({ before }) => before?.startsWith('45 g'));

it('the flour that thickens the sauce stays as it is', () => {
  expect(sauce?.change).toBe('kept');
});

it('the flours of the dough are mixed where the dough is made, and not with the sauce’s', () => {
  const steps = result.steps.map(({ after }) => after);
  expect(steps[0]).toContain('Stir in the flour and cook');
  expect(steps[0]).not.toMatch(/almond|these are the flours/);
  expect(steps.join(' ')).toMatch(/almond/);
});

it('the flour of a sauce that is shaped to croquettes stays as it is', () => {
  const croquettes: Pasted = {
    title: 'Ham croquettes',
    serves: 'Serves 8',
    lines: [
      '100 g butter',
      '100 g all-purpose flour',
      '1 litre milk',
      '150 g ham, diced',
      '2 eggs',
      '150 g breadcrumbs',
    ],
    steps: [
      'Melt the butter, stir in the flour and whisk in the milk; simmer until thick. Add the ham and chill.',
      'Shape croquettes, dip in egg and breadcrumbs and deep-fry.',
    ],
    family: ['breaded-food'],
  };
  const { lines } = adapted(croquettes, { budgetG: 12 });
  expect(lines.find(({ before }) => before?.includes('flour'))?.change).toBe('kept');
  expect(lines.some(({ change }) => change !== 'kept')).toBe(true);
});
