import { describe, expect, it } from 'vitest';
import type { Ingredient } from '../../engine/model.ts';
import { readText } from '../../engine/read/index.ts';
import { weighRecipe } from '../../engine/walk.ts';

function weighed(lines: readonly string[]): Ingredient[] {
  const text = ['Stew', '', 'Serves 4', '', 'Ingredients', ...lines.map((line) => `- ${line}`)];
  const found = readText([...text, '', 'Method', '1. Cook it all.'].join('\n'));
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  return weighRecipe(found.recipes[0]);
}

const saltOf = (lines: readonly string[]): number =>
  weighed(lines)
    .filter(({ match, weight }) => match?.foodId === 'salt' && weight?.basis === 'assumed')
    .reduce((sum, { weight }) => sum + (weight?.grams.best ?? 0), 0);

const BLAND = ['1 kg beef chuck', '1 kg water'];

describe('salt without an amount', () => {
  it('is one allowance however many lines name it', () => {
    const once = saltOf([...BLAND, 'salt to taste']);
    const thrice = saltOf([...BLAND, 'salt to taste', 'salt', 'salt and pepper']);
    expect(once).toBeGreaterThan(3);
    expect(once).toBeLessThan(9);
    expect(thrice).toBeCloseTo(once, 1);
  });

  it('is less where salt is stated or salty food brings it, and never less than a pinch', () => {
    const bland = saltOf([...BLAND, 'salt to taste']);
    expect(saltOf([...BLAND, '3 g salt', 'salt to taste'])).toBeCloseTo(bland - 3, 0);
    expect(saltOf([...BLAND, '30 g soy sauce', 'salt to taste'])).toBeLessThan(bland - 2);
    expect(saltOf([...BLAND, '40 g salt', 'salt to taste'])).toBeCloseTo(0.3, 5);
  });

  it('says its range and what it rests on, and keeps low, best, high in order', () => {
    const salt = weighed([...BLAND, 'salt to taste']).find(({ match }) => match?.foodId === 'salt');
    const { low = 0, best = 0, high = 0 } = salt?.weight?.grams ?? {};
    expect(low).toBeLessThanOrEqual(best);
    expect(best).toBeLessThan(high);
    expect(salt?.weight?.assumptions.join()).toContain('what the dish lacks');
  });

  it('leaves stated salt and the salt of cooking water alone', () => {
    const [stated] = weighed(['10 g salt', ...BLAND]);
    expect(stated?.weight).toMatchObject({ basis: 'mass', grams: { best: 10 } });
    const water = weighed(['500 g spaghetti', 'salt, for the pasta water']).find(
      ({ match }) => match?.foodId === 'salt',
    );
    expect(water?.weight?.eaten.best).toBeLessThan(0.5);
  });
});
