/** Meat whose fat is fried out and poured away. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, type Recipe, tallyRecipe } from '../../../engine/index.ts';

const recipe = (lines: string[], steps: string[]): Recipe => ({
  title: 'Pan of beans',
  url: null,
  language: 'en',
  author: null,
  markup: 'pasted',
  yield: { text: 'Serves 4', servings: { low: 4, high: 4 }, pieces: null },
  groups: [{ title: null, lines: [...lines, '400 g green beans'] }],
  steps: steps.map((text) => ({ section: null, text })),
  minutes: { prep: null, cook: null, total: null },
  image: null,
  statedNutrition: null,
  notes: [],
});

const foodOf = (line: string, step: string): string | undefined =>
  tallyRecipe(recipe([line], [step]), DEFAULT_GOALS).ingredients[0]?.match?.foodId;

const fatOf = (line: string, step: string): number =>
  tallyRecipe(recipe([line], [step]), DEFAULT_GOALS).tally.whole.fatG?.best ?? Number.NaN;

const BACON = '6 slices bacon, chopped';
const BEEF = '500 g ground beef';

describe('fat that the method pours away', () => {
  it.each([
    [BACON, 'Fry the bacon until crisp and drain it on paper towels. Boil the beans.'],
    [BACON, 'Fry the bacon, then pour off all the grease. Add the beans.'],
    [BEEF, 'Brown the beef for ten minutes and drain off the fat. Add the beans.'],
    [BEEF, 'Brown the ground beef, drain, and add the beans.'],
  ])('%s: %s', (line, step) => {
    expect(foodOf(line, step)).toMatch(/-cooked$/);
    expect(fatOf(line, step)).toBeLessThan(fatOf(line, 'Fry everything together.') * 0.6);
  });

  it.each([
    [BACON, 'Fry the bacon, drain it on paper towels and cook the beans in the bacon fat.'],
    [BACON, 'Fry the bacon and drain it on paper towels. Fry the beans in the same pan.'],
    [BACON, 'Drain all but 2 tablespoons of the grease. Add the beans.'],
    [BACON, 'Lay the bacon on top and bake.'],
    [BEEF, 'Brown the beef, drain the beans and stir them in.'],
    [BEEF, 'Brown the beef. Do not drain the fat.'],
  ])('stays where it is kept or nothing is said, %s: %s', (line, step) => {
    expect(foodOf(line, step)).not.toMatch(/-cooked$/);
  });
});
