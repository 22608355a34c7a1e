/** Starch and sugar that stand in the method only. */
import { describe, expect, it } from 'vitest';
import { type Adaptation, DEFAULT_GOALS } from '../../../engine/model.ts';
import { readText } from '../../../engine/read/index.ts';
import { verdictText } from '../../../engine/tally/verdict/verdict-text.ts';
import { adaptRecipe } from '../../../engine/walk.ts';

function adapted(lines: readonly string[], step: string, budgetG = 30): Adaptation {
  const text = ['Snorvel bake', '', 'Serves 4', '', 'Ingredients', ...lines.map((l) => `- ${l}`)];
  const found = readText([...text, '', 'Method', `1. ${step}`, '2. Serve it warm.'].join('\n'));
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  return adaptRecipe(found.recipes[0], { ...DEFAULT_GOALS, budgetG });
}

const FILLING = ['500 g ground beef', '1 onion, chopped', '1 tsp salt', '2 eggs'];
const SPONGE = ['4 eggs', '200 g sugar', '200 g almond flour', '50 g chocolate'];
const CAKE = ['4 eggs', '200 g almond flour', '100 g erythritol', '50 g butter'];

const missingOf = ({ verdict }: Pick<Adaptation, 'verdict'>) =>
  'missing' in verdict ? verdict.missing : [];

describe('what only the method has', () => {
  it.each([
    ['flour for a dough', FILLING, 'Put the flour in a bowl, add water and knead a firm dough.'],
    ['syrup or honey', FILLING, 'Drizzle the loaf with maple syrup before it goes in.'],
    ['pasta or noodles', FILLING, 'Cook the pasta in salted water and fold it in.'],
    ['rice', FILLING, 'Boil the rice for 12 minutes and stir it in.'],
    ['sugar', FILLING, 'Whisk the eggs and the sugar until pale.'],
    ['sauce or dressing', FILLING, 'Stir in the sticky ginger sauce and brown it.'],
    ['icing or frosting', FILLING, 'Spread the icing over the cooled top.'],
    ['icing or frosting', SPONGE, 'Bake it, cool it and frost it with vanilla buttercream.'],
    [
      'icing or frosting',
      SPONGE,
      'Now make the icing. Blend the cashews with the syrups. Spread the icing over the sponge.',
    ],
  ])('%s is named, and nothing plainly fits', (kind, lines, step) => {
    const found = adapted(lines, step);
    expect(missingOf(found).map((one) => one.kind)).toEqual([kind]);
    expect(['fitsAsCounted', 'tooMuch']).toContain(found.verdict.state);
    expect(found.before.uncounted.map(({ text }) => text).join()).toContain(kind);
  });

  it.each([
    ['a line has it', [...FILLING, '300 g all-purpose flour'], 'Put the flour in a bowl, knead.'],
    ['it is made of what lines have', CAKE, 'Spread the icing over the cake.'],
    ['it is made of sugar', SPONGE, 'Beat butter and sugar to an icing. Spread the icing over it.'],
    ['it is made apart', SPONGE, 'For the frosting, cook the rest. Spread the frosting over it.'],
    ['a stand-in is called sugar', CAKE, 'Beat the eggs with the sugar.'],
    ['it is a choice', FILLING, 'Drizzle with maple syrup if you like.'],
    ['it dusts a board', FILLING, 'Flour the board and shape four loaves on it.'],
    ['noodles are of zucchini', [...FILLING, '2 zucchini'], 'Cook the noodles for a minute.'],
    ['a sauce is of what lines have', FILLING, 'Fry the onion. Pour the onion gravy over.'],
    ['a sauce was made before', FILLING, 'Blend it to a sauce. Stir in the sticky red sauce.'],
    ['a sauce has no name of its own', FILLING, 'Fry it all. Pour the hot reduced sauce over.'],
    ['it is another food', FILLING, 'Add the rice vinegar and the cornflour-free stock.'],
  ])('nothing where %s', (_, lines, step) => {
    expect(missingOf(adapted(lines, step, 200))).toEqual([]);
  });

  it.each([
    [
      'ice cream',
      CAKE,
      'Serve it warm with whipped cream or a scoop of vanilla ice cream.',
      10,
      24,
    ],
    ['sour cream or yogurt', FILLING, 'Top with sour cream, shredded cheese, etc.', 0.5, 3.6],
  ])('%s that it is served with is by choice', (kind, lines, step, low, high) => {
    const [one, ...others] = missingOf(adapted(lines, step));
    expect(others).toEqual([]);
    expect(one).toMatchObject({ kind, beside: true });
    expect(one?.netCarbsG?.low).toBeCloseTo(low, 0);
    expect(one?.netCarbsG?.high).toBeCloseTo(high, 0);
  });

  it.each(['Serve it without ice cream.', 'Churn it in an ice cream maker.'])(
    'nothing is served by %s',
    (step) => {
      expect(missingOf(adapted(CAKE, step))).toEqual([]);
    },
  );

  it('does not come and go with a rework', () => {
    const found = adapted(
      [...FILLING, '400 g all-purpose flour'],
      'Mix the flour in a bowl to a dough.',
      5,
    );
    expect(found.ways.flatMap(({ after }) => after.uncounted)).toEqual([]);
  });
});

describe('what the method serves it with', () => {
  it.each([
    ['rice or grain', 'Fry all of it for ten minutes, then serve over rice.'],
    [
      'bread or rolls',
      'Fry all of it for ten minutes. Spoon it into bowls and serve with crusty bread or alone.',
    ],
    ['rice or grain', 'Alles zehn Minuten braten und mit Reis servieren.'],
    ['bread or rolls', 'Cuire dix minutes et servir avec du pain grille.'],
  ])('%s is named as by choice, and nothing plainly fits', (kind, step) => {
    const { verdict } = adapted(FILLING, step);
    expect(verdict.state).toBe('fitsAsCounted');
    expect(verdictText(verdict)).toMatch(/^Fits, not all counted/);
    expect(missingOf({ verdict })).toMatchObject([{ kind, beside: true }]);
  });

  it.each([
    [
      'a line has it',
      [...FILLING, '300 g cooked rice'],
      'Fry all of it for ten minutes, then serve over the rice.',
    ],
    [
      'nothing starchy is served',
      FILLING,
      'Fry all of it for ten minutes, then serve with a green salad.',
    ],
    ['it is a dish to bake in', FILLING, 'Bake it for an hour and serve in the baking dish.'],
    ['pumpkin seeds are no plateful', FILLING, 'Bake it for an hour and serve with pumpkin seeds.'],
  ])('is nothing where %s', (_why, lines, step) => {
    expect(missingOf(adapted(lines, step))).toEqual([]);
  });
});

describe('what a line leaves to choice', () => {
  it.each([
    ['200 g chocolate chips (optional)', 'fitsAsCounted'],
    ['naan bread, for serving (optional)', 'fitsAsCounted'],
    ['2 tbsp chopped parsley (optional)', 'fits'],
  ])('%s: %s', (line, state) => {
    expect(adapted([...FILLING, line], 'Bake it for an hour.').verdict.state).toBe(state);
  });
});
