/** Whatever the lines say: a plain 'fits' has no gap, every figure is in order, nothing throws. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, Note, type Recipe, StillContains, Verdict } from '../../../engine/model.ts';
import { adaptRecipe } from '../../../engine/walk.ts';

const LINES = [
  '4 eggs',
  '200 g spinach',
  '100 g all-purpose flour',
  '800 potatoes',
  '14 cup sugar',
  '17.3 puff pastry',
  'salt to taste',
  'salt and pepper',
  '250 g snorvelstuff',
  'toasted bread, to serve',
  '1 batch quillberry dough (see recipe)',
  '1 tbsp oil (optional)',
  '1e9 kg sugar',
  '-3 cups rice',
  'constructor',
  '__proto__ 2 cups',
  '½ ½ ½',
  '',
  'x'.repeat(3000),
];

const recipes = fc.record({
  lines: fc.array(fc.oneof(fc.constantFrom(...LINES), fc.string({ maxLength: 60 })), {
    maxLength: 8,
  }),
  text: fc.option(fc.constantFrom('1 cup', '2 dozen', '0.75', '4 (14 rolls)', '1 quart'), {
    nil: null,
  }),
  servings: fc.option(fc.double({ min: 0.01, max: 2000, noNaN: true }), { nil: null }),
  calories: fc.option(fc.constantFrom('300 kcal', '0', 'none', '1e999 kcal', '-5'), { nil: null }),
});

const recipeOf = ({
  lines,
  text,
  servings,
  calories,
}: typeof recipes extends fc.Arbitrary<infer T> ? T : never): Recipe => ({
  title: 'Odd pot, for babies',
  url: null,
  language: 'en',
  author: null,
  markup: 'pasted',
  yield: {
    text,
    servings: servings === null ? null : { low: servings, high: servings * 2 },
    pieces: null,
  },
  groups: [{ title: null, lines }],
  steps: [{ section: null, text: 'Fry it and serve over rice.' }],
  minutes: { prep: null, cook: null, total: null },
  image: null,
  statedNutrition: calories === null ? null : { calories, servingSize: '1/2 cup' },
  notes: [],
});

describe('an honest verdict', () => {
  it('holds for any lines, yields and stated figures', () => {
    fc.assert(
      fc.property(recipes, (odd) => {
        const { before, verdict, questions, stillContains, cautions } = adaptRecipe(recipeOf(odd), {
          ...DEFAULT_GOALS,
          avoid: ['gluten', 'egg'],
        });
        expect(Verdict.parse(verdict)).toEqual(verdict);
        expect(questions.map((one) => Note.parse(one))).toEqual(questions);
        expect(stillContains.map((one) => StillContains.parse(one))).toEqual(stillContains);
        expect(cautions.length).toBeLessThanOrEqual(4);
        expect(Number.isInteger(before.servings)).toBe(true);
        const counted = verdict.netCarbsG;
        if (counted === null) return;
        expect(counted.low).toBeLessThanOrEqual(counted.best);
        expect(counted.best).toBeLessThanOrEqual(counted.high);
        if (verdict.state !== 'fits') return;
        expect(counted.high).toBeLessThanOrEqual(verdict.budgetG + 1e-6);
        expect(odd.lines.some((line) => /snorvel|bread|dough/.test(line))).toBe(false);
      }),
      { numRuns: 60 },
    );
  });
});
