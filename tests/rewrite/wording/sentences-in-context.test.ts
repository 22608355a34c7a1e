import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { withSentence } from '../../../engine/rewrite/wording/sentences.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

const written = (
  lines: string[],
  steps: string[],
  to: [string, number][],
  { kept = 0, family = 'other' as const, method = '' } = {},
): string[] => {
  const recipe = makeRecipe('Dish', lines, steps);
  const read = understand(recipe);
  const plan = makePlan(family, read, [{ key: '0', kept, to }]);
  const swaps = plan.swaps.map((swap) => (method === '' ? swap : { ...swap, method }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' }).steps.map(
    ({ after }) => after,
  );
};

describe('what is put into the page’s words', () => {
  it('stands behind the words that head a step', () => {
    expect(withSentence('For the glaze: Stir all.', -1, 'Sift it.')).toBe(
      'For the glaze: Sift it. Stir all.',
    );
  });

  it('ends a sentence that ends in a bracket', () => {
    expect(withSentence('Bake (until firm)', 0, 'Cool.')).toBe('Bake (until firm). Cool.');
  });

  it('reads a mixed number with a hyphen as one', () => {
    const [said] = written(
      ['3 cups milk', '1 tsp salt'],
      ['Heat 1-1/2 cups milk with the salt.'],
      [['almond-milk-unsweetened', 720]],
    );
    expect(said).not.toMatch(/1-\d/);
    expect(said).toMatch(/^Heat 36\d g/);
  });

  it('leaves a range of amounts as the page has it', () => {
    const [said] = written(
      ['120 ml heavy cream', '400 g sugar'],
      ['Beat the sugar with 1-2 tablespoons heavy cream.'],
      [['heavy-cream', 60]],
      { kept: 60 },
    );
    expect(said).toBe('Beat the sugar with 1-2 tablespoons heavy cream.');
  });

  it('keeps the simmering of the meat where only the rice needs none', () => {
    const [, simmer] = written(
      ['200 g white rice', '500 g chicken breast'],
      ['Add the rice and chicken.', 'Cover and simmer for 20 minutes or until rice is tender.'],
      [['cauliflower-rice', 400]],
    );
    expect(simmer).toMatch(/simmer/);
  });

  it('capitalises at the start of a sentence only', () => {
    const [said] = written(
      ['1 Baguette'],
      ['Slice the Baguette. Baguette in hand, fill it.'],
      [['low-carb-bun', 100]],
    );
    expect(said).toMatch(/^Slice the high-fibre bun/);
  });

  it('leaves a way of the page’s that is not taken', () => {
    const text = 'If you want to use potatoes from the day before, skip this.';
    expect(written(['500 g potatoes'], ['Boil the potatoes.', text], [['turnip', 500]])[1]).toBe(
      text,
    );
  });
});

describe('what stays generic', () => {
  it('lists what else there is behind the pieces of a fruit', () => {
    const [said] = written(
      ['200 g pineapple', '100 g yogurt'],
      ['Thread the pineapple chunks on skewers.'],
      [['strawberries', 120]],
      { kept: 80 },
    );
    expect(said).toBe('Thread the pineapple chunks and strawberries on skewers.');
  });

  it('dusts with what is at hand', () => {
    const [dust, beat] = written(
      ['100 g powdered sugar', '250 g mascarpone'],
      ['Roll it in a towel dusted with powdered sugar.', 'Beat the mascarpone and powdered sugar.'],
      [['allulose-powdered', 50]],
      { kept: 50 },
    );
    expect(dust).toBe('Roll it in a towel dusted with powdered sugar.');
    expect(beat).toBe('Beat the mascarpone, powdered sugar and powdered allulose.');
  });

  it('cooks no vegetable by a packet', () => {
    const [said] = written(
      ['250 g microwave rice', '200 g peas'],
      ['Heat your rice as per the pack instructions with the peas.'],
      [['cauliflower', 300]],
    );
    expect(said).not.toMatch(/pack/);
  });
});

describe('pieces and dishes', () => {
  it('keeps the cubes of bread cubes', () => {
    const [said] = written(
      ['300 g bread cubes', '2 tbsp oil'],
      ['Spread the bread cubes on a tray.'],
      [['low-carb-bun', 200]],
    );
    expect(said).toBe('Spread the high-fibre bun cubes on a tray.');
  });

  it('calls the dish by its name still', () => {
    const said = written(
      ['250 g lasagna', '500 g tomato sauce'],
      ['Spread the sauce over the lasagna.', 'Assemble the lasagna and bake it.'],
      [['zucchini', 400]],
    );
    expect(said.at(-1)).toMatch(/Assemble the lasagna and bake/);
  });
});
