/** Parts of a page that make what another part takes. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, type Recipe, tallyRecipe } from '../../engine/index.ts';
import type { RecipeTally } from '../../engine/walk.ts';

type Group = Recipe['groups'][number];

const counted = (groups: Group[]): RecipeTally =>
  tallyRecipe(
    {
      title: 'Dish of two parts',
      url: null,
      language: 'en',
      author: null,
      markup: 'pasted',
      yield: { text: 'Serves 4', servings: { low: 4, high: 4 }, pieces: null },
      groups,
      steps: [],
      minutes: { prep: null, cook: null, total: null },
      image: null,
      statedNutrition: null,
      notes: [],
    },
    DEFAULT_GOALS,
  );

const HERB_BUTTER = ['200 g unsalted butter, soft', '3 cloves garlic', '10 g parsley, chopped'];

const eatenOf = (tally: RecipeTally, text: string): number | undefined =>
  tally.ingredients.find(({ line }) => line.text === text)?.weight?.eaten.best;

const net = ({ tally }: RecipeTally): number => tally.whole.netCarbsG?.best ?? Number.NaN;

describe('a food that another part of the page makes', () => {
  const taken = counted([
    { title: 'Herb Butter', lines: HERB_BUTTER },
    { title: 'Noodles', lines: ['300 g dry spaghetti', '4 tbsp herb butter (from above)'] },
  ]);

  it('is counted once, with its reason', () => {
    expect(taken.tally.uncounted).toEqual([
      {
        key: '4',
        text: '4 tbsp herb butter (from above)',
        why: 'made on this page: in the totals through the lines that make it',
      },
    ]);
  });

  it('is counted by what is taken of it', () => {
    const share = eatenOf(taken, HERB_BUTTER[0] ?? '');
    expect(share).toBeGreaterThan(0.2);
    expect(share).toBeLessThan(0.35);
    expect(eatenOf(taken, '300 g dry spaghetti')).toBe(1);
  });

  it('is eaten whole where all of it is taken, or nobody says how much', () => {
    for (const line of [
      '225 g herb butter (see above)',
      'herb butter (see above)',
      '4 herb butters (see above)',
    ]) {
      const whole = counted([
        { title: 'For the herb butter', lines: HERB_BUTTER },
        { title: null, lines: ['300 g dry spaghetti', line] },
      ]);
      expect(eatenOf(whole, HERB_BUTTER[0] ?? '')).toBe(1);
      expect(whole.tally.uncounted.map(({ text }) => text)).toEqual([line]);
    }
  });

  it('needs no hint where two words and more are the same', () => {
    const dough = counted([
      { title: 'Pizza dough', lines: ['500 g bread flour', '300 ml water', '1 tsp salt'] },
      { title: 'Topping', lines: ['400 g pizza dough', '200 g mozzarella'] },
    ]);
    expect(net(dough)).toBeGreaterThan(340 * 0.4);
    expect(net(dough)).toBeLessThan(360 * 0.6);
  });

  it('makes no line uncertain: the verdict does not miss it', () => {
    expect(taken.tally.uncounted).toHaveLength(1);
    expect(taken.questions).toEqual([]);
  });
});

describe('a thing to cook with', () => {
  it('is listed as none of the food and not missed', () => {
    const tools = counted([{ title: null, lines: ['200 g white rice', '1 flour sifter'] }]);
    expect(tools.tally.uncounted).toMatchObject([
      { text: '1 flour sifter', why: 'to cook with, not to eat: not in the totals' },
    ]);
  });
});

describe('a food of its own', () => {
  it('stands in its own part, or has another noun than the title', () => {
    const own = counted([
      { title: 'Chicken', lines: ['600 g chicken breast', '1 tbsp olive oil (see below)'] },
      { title: 'Olive oil dressing', lines: ['3 tbsp olive oil', '1 tbsp vinegar'] },
      { title: 'Rice', lines: ['200 g white rice'] },
      { title: 'To serve', lines: ['1 lemon', 'rice crackers'] },
    ]);
    expect(own.ingredients.every(({ line }) => line.kind === 'ingredient')).toBe(true);
  });

  it('is no share of a part that makes two things, or is strained', () => {
    for (const title of ['Hen & hen stock', 'Hen stock']) {
      const soup = counted([
        { title, lines: ['1 kg chicken thighs', '2 carrots'] },
        { title: 'Soup', lines: ['500 ml hen stock (see above)', '100 g vermicelli'] },
      ]);
      expect(soup.ingredients.map(({ weight }) => weight?.eaten.best)).toEqual([1, 1, 1, 1]);
    }
  });

  it('is the plain one, where the made one is a choice and stands on no part of the page', () => {
    const plain = counted([
      {
        title: null,
        lines: ['400 g salmon', '2 tablespoons butter (or herb butter - see recipe below)'],
      },
    ]);
    expect(plain.tally.uncounted).toEqual([]);
  });
});
