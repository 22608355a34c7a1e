import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, type Recipe } from '../../../engine/model.ts';
import { readText } from '../../../engine/read/index.ts';
import { adaptRecipe, tallyRecipe, type WalkOptions } from '../../../engine/walk.ts';

function recipe(lines: readonly string[], serves = 'Serves 4', title = 'Winter pot'): Recipe {
  const text = [title, '', serves, '', 'Ingredients', ...lines.map((line) => `- ${line}`)];
  const found = readText([...text, '', 'Method', '1. Simmer for an hour.'].join('\n'));
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  return found.recipes[0];
}

const asked = (lines: readonly string[], serves?: string, options: WalkOptions = {}) =>
  tallyRecipe(recipe(lines, serves), DEFAULT_GOALS, options).questions;

describe('what is asked before figures are believed', () => {
  it('is nothing of an ordinary dish', () => {
    expect(asked(['600 g beef chuck', '300 g carrots', '500 ml water', '1 tsp salt'])).toEqual([]);
  });

  it.each([
    ['salt', ['900 g chicken breast', '200 g salt'], '1'],
    ['energy of one line', ['2 kg butter', '200 g carrots'], '0'],
    ['net carbs', ['2 kg sugar', '2 kg flour', '100 g butter'], '0'],
  ])('names the line behind too much: %s', (_, lines, key) => {
    const questions = asked(lines);
    expect(questions.map((question) => question.key)).toContain(key);
    expect(questions[0]?.text).toMatch(/^Is “.*” really about [\d.]+ k?g\?/);
  });

  it('asks for the servings where no one line is the cause', () => {
    const meats = ['2 kg beef chuck', '2 kg pork shoulder', '2 kg lamb shoulder'];
    expect(asked(meats, 'Serves 4')).toMatchObject([
      { code: 'SERVING_IMPLAUSIBLE', key: null, text: expect.stringContaining('make 4 servings?') },
    ]);
    expect(asked(meats, 'Serves 30')).toEqual([]);
  });

  it('asks of more than 5 kg of one food even for many', () => {
    expect(asked(['6 kg peeled carrots', '1 kg onions'], 'Serves 60')).toMatchObject([
      { code: 'LINE_IMPLAUSIBLE', key: '0', text: expect.stringContaining('6.0 kg') },
    ]);
  });

  it('takes the word of a user who set the line or the servings', () => {
    const salty = ['900 g chicken breast', '200 g salt'];
    expect(asked(salty, 'Serves 4', { corrections: { '1': { grams: 200 } } })).toEqual([]);
    const meats = recipe(['2 kg beef chuck', '2 kg pork shoulder', '2 kg lamb shoulder']);
    expect(tallyRecipe(meats, { ...DEFAULT_GOALS, servings: 4 }).questions).toEqual([]);
  });

  it('asks for the servings first where a usual amount is the most of it', () => {
    expect(asked(['1 cup sugar', '400 g condensed milk', '100 g milk'], 'Serves 1')).toMatchObject([
      {
        code: 'SERVING_IMPLAUSIBLE',
        text: expect.stringContaining('Does the recipe make 1 serving?'),
      },
    ]);
  });

  it('goes into the adaptation', () => {
    const { questions } = adaptRecipe(
      recipe(['900 g chicken breast', '200 g salt']),
      DEFAULT_GOALS,
    );
    expect(questions.map(({ key }) => key)).toEqual(['1']);
  });
});

describe('numbers without a unit', () => {
  const bare = ['800 potatoes (peeled)', '240 carrots', '80 leek', '20 butter', '1 onion'];

  it('are grams where so many pieces cannot be meant', () => {
    const { ingredients, questions, notes } = tallyRecipe(recipe(bare), DEFAULT_GOALS);
    expect(questions).toEqual([]);
    const grams = ingredients.map(({ weight }) => weight?.grams.best ?? 0);
    expect(grams[0]).toBeLessThanOrEqual(800);
    expect(grams[1]).toBeLessThanOrEqual(240);
    expect(grams[4]).toBeGreaterThan(50);
    expect(notes.map(({ code }) => code)).toContain('COUNTS_AS_GRAMS');
  });

  it('stay counts where the dish is believable as it is', () => {
    const { ingredients, notes } = tallyRecipe(
      recipe(['60 eggs', '2 kg flour', '1 kg sugar'], 'Serves 60'),
      DEFAULT_GOALS,
    );
    expect(ingredients[0]?.weight?.grams.best).toBeCloseTo(3000, 0);
    expect(notes.map(({ code }) => code)).not.toContain('COUNTS_AS_GRAMS');
  });
});

describe('other readings', () => {
  it('takes an odd number of pastry as ounces', () => {
    const { ingredients, questions, notes } = tallyRecipe(
      recipe(['17.3 puff pastry', '200 g apple'], 'Serves 8'),
      DEFAULT_GOALS,
    );
    expect(questions).toEqual([]);
    expect(ingredients[0]?.weight?.grams.best).toBeCloseTo(490, -1);
    expect(notes.map(({ code }) => code)).toContain('COUNTS_AS_OUNCES');
  });

  it("reads '14 cup' as a quarter only where nobody could eat 14 cups", () => {
    const some = ['14 cup sugar', '34 cup butter', '100 g flour'];
    const { ingredients, notes } = tallyRecipe(recipe(some), DEFAULT_GOALS);
    expect(ingredients[0]?.weight?.grams.best).toBeCloseTo(50, 0);
    expect(notes.map(({ code }) => code)).toContain('LOST_STROKE');
    const greens = tallyRecipe(recipe(['12 cups spinach', '100 g butter']), DEFAULT_GOALS);
    expect(greens.ingredients[0]?.weight?.grams.best).toBeGreaterThan(300);
  });
});
