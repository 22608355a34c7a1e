/** Temperatures of sugar and fat: a syrup's is not told of sugar melted dry, and fat has one. */
import { describe, expect, it } from 'vitest';
import type { Family } from '../../../engine/model.ts';
import { isDryCaramel, withoutSyrupHeat } from '../../../engine/rewrite/cues/stove/dry-caramel.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type MethodWords, methodWords } from '../../../engine/rewrite/languages/method-words.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function told(family: Family, lines: string[], steps: string[], change: Change): string {
  const recipe = makeRecipe(family === 'custard' ? 'Caramel flan' : 'Supper', lines, steps);
  const read = understand(recipe);
  const plan = makePlan(family, read, [change]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('caramel', () => {
  const SUGAR: Change = { key: '0', kept: 40, to: [['allulose', 80]] };

  it('melted dry goes by its colour', () => {
    const text = told(
      'custard',
      ['150 g sugar', '4 eggs', '500 ml milk'],
      ['Melt the sugar in a pan until deep amber.', 'Beat eggs and milk, pour over and bake.'],
      SUGAR,
    );
    expect(text).toMatch(/Keep the heat low; take it off early\./);
    expect(text).not.toMatch(/112/);
  });

  it('boiled with water has its temperature', () => {
    expect(isDryCaramel('Boil the sugar with the water until amber and melted.')).toBe(false);
    expect(isDryCaramel('Melt the sugar until amber.')).toBe(true);
  });

  it.each(['de', 'fr', 'nl', 'es', 'it', 'pt', 'sv', 'da', 'nb'])(
    'loses its temperature whole: %s',
    (language) => {
      const { steps } = methodWords(language) as MethodWords;
      const text = withoutSyrupHeat(steps['allulose-syrup'] ?? '');
      expect(text).not.toMatch(/112|stop|aufhören|parar|fermarsi|s'arrêter|sluta/);
      expect(text).toMatch(/^\p{Lu}[^{}]*\.$/u);
    },
  );
});

it('fat has one temperature, the one for the new coating', () => {
  const text = told(
    'breaded-food',
    ['100 g breadcrumbs', '500 g cod', '1 l oil for frying'],
    [
      'Dip the cod in the breadcrumbs.',
      'Heat the oil to 360°F. Fry the cod until golden, 4 minutes.',
    ],
    { key: '0', kept: 0, to: [['almond-flour', 60]] },
  );
  expect(text).toMatch(/Heat the oil to 165-170 °C \(330-340 °F\)\./);
  expect(text).not.toMatch(/360|Keep the fat/);
});
