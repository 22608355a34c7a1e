/** Doughs that are fried, poured or woken by the recipe itself get no handling of a kneaded loaf. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

/** The method of a sweet yeast dough whose flour gives way to gluten and resistant starch. */
function told(steps: string[], language = 'en', title = 'Sweet yeast dough'): string {
  const lines = ['500 g all-purpose flour', '300 ml milk', '7 g dry yeast', '50 g sugar'];
  const recipe = { ...makeRecipe(title, lines, steps), language };
  const read = understand(recipe);
  const plan = makePlan('enriched-yeast-bread', read, [
    {
      key: '0',
      kept: 200,
      to: [
        ['vital-wheat-gluten', 100],
        ['resistant-wheat-starch', 200],
      ],
    },
  ]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('cooling and the heat of the centre', () => {
  const LOAF = /before cutting|centre reaches/;

  it('are told of a loaf', () => {
    const text = told(['Knead all to a dough and let it rise.', 'Bake for 35 minutes.']);
    expect(text).toMatch(/before cutting/);
    expect(text).toMatch(/centre reaches/);
  });

  it('are told of a loaf whose onions are fried first', () => {
    const text = told(['Fry the onions.', 'Knead all to a dough.', 'Bake for 35 minutes.']);
    expect(text).toMatch(LOAF);
  });

  it.each([
    ['fried', 'Fry spoonfuls in hot oil for 5 minutes and drain.'],
    ['boiled', 'Boil the balls in salted water for 12 minutes.'],
    ['steamed', 'Steam the buns for 15 minutes.'],
  ])('are not told of pieces that are %s', (_, step) => {
    expect(told(['Knead all to a dough and let it rise.', step])).not.toMatch(LOAF);
  });

  it('tell a Dutch pan of oil from an oven, though both are called baking', () => {
    const first = 'Kneed alles tot een deeg en laat het rijzen.';
    expect(told([first, 'Bak het brood 35 minuten in de oven.'], 'nl')).toMatch(/kerntemperatuur/);
    const balls = told([first, 'Schep bolletjes in de hete olie en bak ze bruin.'], 'nl');
    expect(balls).not.toMatch(/kerntemperatuur|aansnijden/);
  });
});

describe('a rest before kneading on', () => {
  it('is told of a dough', () => {
    expect(told(['Mix all and knead for 8 minutes.', 'Bake.'])).toMatch(
      /rest for 20-30 minutes before you go on/,
    );
    expect(told(['Mischen und verkneten.', 'Im Ofen backen.'], 'de')).toMatch(/20-30 Minuten/);
  });

  it('is not told of a batter', () => {
    expect(told(['Stir all to a batter and pour it into the tin.', 'Bake.'])).not.toMatch(
      /rest for 20-30 minutes/,
    );
    const spanish = ['Mezclar todo y verter la masa en el molde.', 'Hornear en el horno.'];
    expect(told(spanish, 'es')).not.toMatch(/amasando/);
  });
});

describe('dry yeast', () => {
  it('is woken where the recipe does not', () => {
    expect(told(['Knead all to a dough.', 'Bake.'])).toMatch(/until it foams/);
    expect(told(['Alles mit der Hefe verkneten.', 'Backen.'], 'de')).toMatch(/bis sie schäumt/);
  });

  it('is not woken twice', () => {
    const own = 'Stir the yeast into the warm milk. Add the butter. Leave until foamy.';
    expect(told([own, 'Knead in the flour.', 'Bake.'])).not.toMatch(/until it foams/);
    const dutch = 'Roer de gist door de melk. Doe de boter erbij. Laat staan tot het schuimt.';
    expect(told([dutch, 'Kneed de bloem erdoor.', 'Bak in de oven.'], 'nl')).not.toMatch(/35-38/);
  });
});
