/** Servings of pages without a yield, by their method and their pieces of meat or fish. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, tallyRecipe } from '../../../engine/index.ts';
import { readText } from '../../../engine/read/index.ts';
import { platesOfMethod } from '../../../engine/tally/servings/plates-told.ts';

function servingsOf(lines: readonly string[], step: string): number {
  const text = ['Snorvel supper', '', 'Ingredients', ...lines.map((line) => `- ${line}`), ''];
  const found = readText([...text, 'Method', `1. ${step}`, '2. Eat it warm.'].join('\n'));
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  return tallyRecipe(found.recipes[0], DEFAULT_GOALS).servings;
}

const SIDES = ['400 g carrots', '300 g potatoes', '2 tbsp olive oil'];

describe('servings that the last step says it makes', () => {
  it.each([
    ['Chill before serving. Makes 6 servings.', 6],
    ['Serves about four people.', 4],
    ['This yields 8 generous portions.', 8],
    ['Ergibt etwa 4 Portionen.', 4],
    ['Strew with dill and serve hot. Serves 8.', 8],
    ['Feeds six people.', 6],
    ['Für 4 Personen.', 4],
    ['Heat the oven for 6 minutes. Serve with 4 lemons.', null],
    ['Makes 6 ounces of sauce.', null],
    ['Makes 30 servings.', null],
  ])('%s', (step, plates) => {
    expect(platesOfMethod([step])).toBe(plates);
  });
});

describe('plates that a method fills', () => {
  it.each([
    ['Divide the stew between 4 bowls.', 4],
    ['Ladle into six warm bowls and strew with herbs.', 6],
    ['Die Masse in 6 Portionen teilen und braten.', 6],
    ['Verdeel de saus over 4 borden.', 4],
    ['Repartir dans 4 assiettes creuses.', 4],
    ['Divide the dough in 3 and braid it.', null],
    ['Pour into a bowl and leave for 4 hours.', null],
    ['Serve in bowls after 10 minutes.', null],
    ['Put 2 bowls on the table.', null],
  ])('%s', (step, plates) => {
    expect(platesOfMethod([step])).toBe(plates);
  });

  it('are the servings, where they are plates that people eat of', () => {
    const lines = ['800 g chicken thigh meat', ...SIDES];
    expect(servingsOf(lines, 'Cook all of it and divide it between 5 plates.')).toBe(5);
    expect(
      servingsOf(['60 g rice', '100 ml milk'], 'Cook it and divide it between 5 plates.'),
    ).toBe(1);
  });
});

describe('pieces that everybody gets one of', () => {
  it.each([
    [['3 tuna steaks', ...SIDES], 3],
    [['4 salmon fillets', ...SIDES], 4],
    [['4 bone-in pork chops', ...SIDES], 4],
    [['4 pork sausages', '150 g dry lentils', ...SIDES], 4],
  ])('%j: %d', (lines, servings) => {
    expect(servingsOf(lines, 'Fry it all.')).toBe(servings);
  });

  it('are not the pieces of a large pot', () => {
    const lines = ['2 chicken breasts', '1.5 kg potatoes', '1 kg carrots', '1 kg tomatoes'];
    expect(servingsOf(lines, 'Stew it all.')).toBeGreaterThan(5);
  });
});
