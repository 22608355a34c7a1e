import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, type Recipe } from '../../../engine/model.ts';
import { readText } from '../../../engine/read/index.ts';
import { tallyRecipe } from '../../../engine/walk.ts';

/** 1,000 g of flour and 500 g of sugar in ten servings: about 558 kcal, 126 g carbohydrate. */
function recipe(stated: Record<string, string> | null): Recipe {
  const text =
    'Plain dough\n\nServes 10\n\nIngredients\n- 1000 g all-purpose flour\n- 500 g sugar\n\nMethod\n1. Mix.';
  const found = readText(text);
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  return { ...found.recipes[0], statedNutrition: stated };
}

const ours = tallyRecipe(recipe(null), DEFAULT_GOALS).tally.perServing;

/** The page's figures as ours times a factor. */
const stated = (factor: number, carbs = factor): Record<string, string> => ({
  calories: `${(ours.energyKcal?.best ?? 0) * factor} kcal`,
  carbohydrateContent: `${(ours.carbohydrateG?.best ?? 0) * carbs} g`,
  proteinContent: `${(ours.proteinG?.best ?? 0) * factor} g`,
});

const asked = (figures: Record<string, string>, servings: number | null = null) =>
  tallyRecipe(recipe(figures), { ...DEFAULT_GOALS, servings }).questions;

describe("the page's own figures against ours", () => {
  it.each([0.62, 0.8, 1, 1.3, 1.6])('asks nothing at %s times ours', (factor) => {
    expect(asked(stated(factor))).toEqual([]);
  });

  it('asks for the servings where all figures are apart by one ratio', () => {
    expect(asked(stated(0.5))).toMatchObject([
      { code: 'PAGE_OTHER_SERVINGS', text: expect.stringContaining('fit 20 servings') },
    ]);
    expect(asked(stated(2.5))).toMatchObject([
      { code: 'PAGE_OTHER_SERVINGS', text: expect.stringContaining('fit 4 servings') },
    ]);
  });

  it('asks for the amounts where only energy is far apart, with the line that brings most', () => {
    expect(asked(stated(0.3, 0.9))).toMatchObject([{ code: 'PAGE_OTHER_FIGURES', key: '0' }]);
    expect(asked(stated(0.6, 1))).toEqual([]);
  });

  it('asks nothing where the page states the whole recipe, 100 g, or the user set the servings', () => {
    expect(asked(stated(10))).toEqual([]);
    expect(asked({ ...stated(0.5), servingSize: '100 g' })).toEqual([]);
    expect(asked(stated(0.5), 10)).toEqual([]);
  });

  const withLine = (line: string, figures: Record<string, string> | null): Recipe => {
    const plain = recipe(figures);
    return {
      ...plain,
      groups: [{ title: null, lines: ['1000 g all-purpose flour', '500 g sugar', line] }],
    };
  };
  const askedWith = (line: string, figures: Record<string, string>) =>
    tallyRecipe(withLine(line, figures), DEFAULT_GOALS);

  it('asks for a food of the method by its kind, without a quotation in a quotation', () => {
    const plain = recipe(stated(1.5));
    const steps = [{ section: null, text: 'Frost the cooled cake with vanilla buttercream.' }];
    const { questions } = tallyRecipe({ ...plain, steps }, DEFAULT_GOALS);
    expect(questions).toMatchObject([
      {
        text: expect.stringMatching(
          /, without “icing or frosting”\. Please choose a food for it\.$/,
        ),
      },
    ]);
  });

  it('asks for a line that is not counted where the page has 40 % more', () => {
    for (const line of ['tortilla wraps', '2 cups zzyzx']) {
      expect(askedWith(line, stated(1.5)).questions).toMatchObject([
        { code: 'PAGE_MISSES_LINE', key: '2', text: expect.stringContaining(line) },
      ]);
      expect(askedWith(line, stated(1.3)).questions).toEqual([]);
      expect(askedWith(line, stated(0.7)).questions).toEqual([]);
    }
    expect(askedWith('tortilla wraps', stated(1.5)).questions[0]?.text).toContain('How much of it');
    expect(askedWith('2 cups zzyzx', stated(1.5)).questions[0]?.text).toContain('choose a food');
    expect(askedWith('fresh parsley', stated(1.5)).questions).toEqual([]);
    expect(askedWith('tortilla wraps, optional', stated(1.5)).questions).toEqual([]);
  });

  it('takes the other of two amounts that differ where only that fits the page', () => {
    const line = '8 oz (1000 g) butter';
    const own = askedWith(line, {});
    const butter = (grams: number): Record<string, string> => {
      const kcal = ((ours.energyKcal?.best ?? 0) * 10 + grams * 7.17) / 10;
      return { calories: `${kcal} kcal`, fatContent: `${(grams * 0.81) / 10} g` };
    };
    const taken = own.ingredients[2]?.weight;
    expect(taken?.disagreement).not.toBeNull();
    const [chosen = 0, other = 0] = [taken?.disagreement?.stated, taken?.disagreement?.other];
    expect(askedWith(line, butter(chosen)).notes.map(({ code }) => code)).not.toContain(
      'OTHER_AMOUNT',
    );
    const second = askedWith(line, butter(other));
    expect(second.questions).toEqual([]);
    expect(second.notes.map(({ code }) => code)).toContain('OTHER_AMOUNT');
    expect(second.ingredients[2]?.weight?.grams.best).toBeCloseTo(other, -1);
  });
});
