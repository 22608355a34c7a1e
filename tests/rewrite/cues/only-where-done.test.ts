/** Handling is told only where the method does what it is about. */
import { describe, expect, it } from 'vitest';
import type { Family, Recipe } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

/** The whole method after one change of the first line. */
function told(recipe: Recipe, family: Family, to: Change['to'], method?: string): string {
  const read = understand(recipe);
  const plan = makePlan(family, read, [{ key: '0', kept: 0, to }]);
  const swaps = plan.swaps.map((swap) => (method === undefined ? swap : { ...swap, method }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('a page without a method', () => {
  it('gets no loose steps', () => {
    const pie = (steps: string[]): Recipe =>
      makeRecipe('Squash tart', ['200 g flour', '120 g butter', '3 eggs'], steps);
    const almonds: Change['to'] = [['almond-flour', 180]];
    expect(told(pie(['Mix the flour and butter and bake.']), 'pie-crust', almonds)).toMatch(
      /almond flour/,
    );
    expect(told(pie([]), 'pie-crust', almonds)).toBe('');
  });
});

describe('a longer bake', () => {
  const METHOD =
    'Add a teaspoon of lemon or cream of tartar for each 500 g; bake 10 minutes longer.';
  const chayote: Change['to'] = [['chayote', 300]];
  const pears = (step: string, language = 'en'): Recipe => ({
    ...makeRecipe('Pears', ['300 g pears'], [step]),
    language,
  });

  it('is told for what is baked', () => {
    expect(told(pears('Bake the pears for 20 minutes.'), 'other', chayote, METHOD)).toMatch(
      /each 500 g; bake 10 minutes longer\./,
    );
  });

  it('is not told for what is eaten raw, in any language', () => {
    const raw = told(pears('Toss the pears with the leaves.'), 'other', chayote, METHOD);
    expect(raw).toMatch(/cream of tartar for each 500 g\./);
    expect(raw).not.toMatch(/longer/);
    const german = told(pears('Die Birnen unterheben.', 'de'), 'other', chayote, METHOD);
    expect(german).toMatch(/Weinstein zugeben\./);
    expect(german).not.toMatch(/länger/);
  });
});

describe('the warning of meringue', () => {
  const sweet: Change['to'] = [['powdered-erythritol', 100, 'sweetness']];
  const cream = (first: string): Recipe => ({
    ...makeRecipe('Creme', ['100 g sugar', first], ['Alles mit dem Zucker steif schlagen.']),
    language: 'de',
  });

  it('stands where egg white is whipped and not where only cream is', () => {
    expect(told(cream('3 egg whites'), 'other', sweet)).toMatch(/Baiser/);
    expect(told(cream('400 ml heavy cream'), 'other', sweet)).not.toMatch(/Baiser/);
  });
});

describe('the heat for a coating that browns fast', () => {
  const coated = (step: string): string =>
    told(makeRecipe('Slices', ['100 g breadcrumbs', '4 pork cutlets'], [step]), 'breaded-food', [
      ['almond-flour', 100],
    ]);

  it('is that of the fat where something is fried in it', () => {
    expect(coated('Coat with the breadcrumbs and fry in hot oil.')).toMatch(/Keep the fat at/);
  });

  it('is that of the oven where it is hot and nothing is fried', () => {
    const hot = coated('Coat with the breadcrumbs and bake at 220 °C for 20 minutes.');
    expect(hot).toMatch(/In the oven 200 °C \(390 °F\) at most/);
    expect(hot).not.toMatch(/fat at/);
  });

  it('is none of crumbs within a mass', () => {
    const balls = 'Mix the breadcrumbs with the pork into meatballs and fry them in hot oil.';
    expect(coated(balls)).not.toMatch(/fat at/);
    expect(coated(`${balls} Coat them in the rest.`)).toMatch(/fat at/);
  });

  it('is none of fat in an air fryer', () => {
    expect(coated('Coat with the breadcrumbs and air fry for 12 minutes.')).not.toMatch(/fat at/);
    expect(coated('Coat with the breadcrumbs. Use an air-fryer for 12 minutes.')).not.toMatch(
      /fat at/,
    );
  });
});

describe('pasta that another pasta stands in for', () => {
  const pot = (step: string, to: Change['to'], language = 'en'): string =>
    told(
      { ...makeRecipe('One pot', ['300 g pasta', '800 ml stock'], [step]), language },
      'pasta-dish',
      to,
    );
  const soy: Change['to'] = [['soybean-pasta-dry', 280]];

  it('cooks by its own time where the recipe gives minutes', () => {
    const text = pot('Add the pasta and stock and simmer for 16 minutes.', soy);
    expect(text).toMatch(/by the time on its own packet/);
    expect(pot('Die Pasta in der Brühe 16 Minuten kochen.', soy, 'de')).toMatch(
      /auf ihrer Packung/,
    );
  });

  it('is told nothing where the recipe says so, or where no pasta stands in', () => {
    expect(pot('Cook the pasta by the packet for about 10 minutes.', soy)).not.toMatch(/new pasta/);
    expect(pot('Simmer the pasta for 16 minutes.', [['zucchini', 600]])).not.toMatch(/new pasta/);
  });
});

it('mixes the flours before dry ingredients that no step names', () => {
  const recipe = makeRecipe(
    'Cut-out cookies',
    ['250 g flour', '100 g butter', '100 g sugar'],
    ['Sift together the dry ingredients.', 'Cream butter and sugar, then add the dry ingredients.'],
  );
  const read = understand(recipe);
  const plan = makePlan('cookie', read, [{ key: '0', kept: 150, to: [['almond-flour', 100]] }]);
  const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'us' });
  const [dry] = steps.filter(({ before }) => before?.startsWith('Sift') === true);
  expect(dry?.after).toMatch(/^Mix 150 g .* and 100 g .* Sift together the dry ingredients\./);
});

describe('handling that does not fit the page', () => {
  const rolls = (steps: string[]): string =>
    told(
      makeRecipe('Citrus rolls', ['500 g bread flour', '7 g dry yeast', '300 ml water'], steps),
      'enriched-yeast-bread',
      [['low-carb-wheat-flour-blend', 250]],
    );

  it('a longer rise is told beside the rise, not beside a rest of ten minutes', () => {
    const text = rolls([
      'Mix the bread flour, yeast and water and knead. Let it rise 10 minutes.',
      'Shape 12 rolls and let rise 10-30 minutes.',
      'Bake for 15 minutes.',
    ]);
    expect(text).toMatch(/rise 10 minutes\.\n/);
    expect(text).toMatch(/rise 15-(?:40|45) minutes\. Go by the dough/);
  });

  it('nothing cools before it is cut where a glaze goes on it hot', () => {
    const bake = [
      'Mix the bread flour, yeast and water, knead, rise for 1 hour.',
      'Bake 15 minutes.',
    ];
    expect(rolls(bake)).toMatch(/cool for half an hour/);
    expect(
      rolls([...bake, 'When the rolls come out of the oven, spread the glaze over them.']),
    ).not.toMatch(/cool for half an hour/);
  });

  it('a filling that is chilled for hours is not used at once', () => {
    const cream = (then: string): string =>
      told(
        makeRecipe(
          'Berry cream',
          ['120 g sugar', '400 ml heavy cream'],
          ['Whip the cream with the sugar until stiff peaks form.', then],
        ),
        'custard',
        [['allulose', 120]],
      );
    expect(cream('Serve with berries.')).toMatch(/use it at once/);
    expect(cream('Spread it in the tin and chill for 6 hours.')).not.toMatch(/use it at once/);
    expect(cream('Refrigerate until ready to use.')).not.toMatch(/use it at once/);
  });

  it('powder is sifted before the pan bubbles', () => {
    const recipe = makeRecipe(
      'Pan icing',
      ['200 g powdered sugar', '60 g butter', '40 ml milk'],
      ['Stir the butter and milk in a pan. Once bubbling, stir in the powdered sugar as an icing.'],
    );
    const text = told(recipe, 'cake', [['powdered-allulose', 200]], 'Sift it.');
    expect(text).toMatch(/^Sift the .*\. Stir the butter/);
  });
});
