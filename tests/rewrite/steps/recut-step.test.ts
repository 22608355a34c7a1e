import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS, readText } from '../../../engine/index.ts';
import type { MethodNote, RewrittenStep } from '../../../engine/model.ts';
import { withRecut } from '../../../engine/rewrite/steps/recut-step.ts';

const step = (after: string): RewrittenStep => ({
  section: null,
  before: after,
  after,
  change: 'kept',
  why: null,
});
const note = (at: number | null): MethodNote => ({
  key: '0',
  foodId: 'sugar',
  food: 'sugar',
  part: null,
  grams: 60,
  step: at,
  told: 'named',
  text: null,
});
const METHOD = { steps: [step('Mix.'), step('Bake.')], methodNotes: [note(1), note(null)] };

describe('more pieces than the page makes', () => {
  it('are told before all other steps, and notes keep to theirs', () => {
    const { steps, methodNotes } = withRecut(METHOD, { page: 12, now: 24 }, 'en');
    expect(steps.map(({ change }) => change)).toEqual(['inserted', 'kept', 'kept']);
    expect(steps[0]?.after).toContain('24, where the page makes 12');
    expect(methodNotes.map(({ step: at }) => at)).toEqual([2, null]);
  });

  it('are told in the method’s language', () => {
    expect(withRecut(METHOD, { page: 12, now: 24 }, 'de-AT').steps[0]?.after).toMatch(
      /^24 Stücke oder Portionen .* statt 12:/,
    );
  });

  it('are told in English, and marked so, where the language has no words', () => {
    expect(withRecut(METHOD, { page: 12, now: 24 }, 'cs').steps[0]?.lang).toBe('en');
    expect(withRecut(METHOD, { page: 12, now: 24 }, 'en').steps[0]?.lang).toBeUndefined();
  });

  it.each([
    ['the number stays', { page: 12, now: 12 }],
    ['fewer are made', { page: 12, now: 8 }],
  ])('change nothing where %s', (_, servings) => {
    expect(withRecut(METHOD, servings, null)).toBe(METHOD);
  });

  it('are no step of a page without a method', () => {
    const bare = { steps: [], methodNotes: [] };
    expect(withRecut(bare, { page: 12, now: 24 }, 'en')).toBe(bare);
  });

  it('stand in the smaller way of a real plan', () => {
    const read = readText(
      'Plain squares\n\nMakes 9 squares\n\nIngredients\n250 g sugar\n250 g plain flour\n200 g butter\n3 eggs\n1 tsp baking powder\n\nMethod\n1. Beat butter and sugar, add the eggs, then the flour and baking powder.\n2. Bake at 175 C for 30 minutes. Cut into 9 squares.',
    );
    const [recipe] = read.ok ? read.recipes : [];
    if (!recipe) throw new Error('not read');
    const { plan, steps, before } = adaptRecipe(recipe, { ...DEFAULT_GOALS, way: 'smaller' });
    expect(plan.servings).toBeGreaterThan(before.servings);
    expect(steps[0]?.after).toContain(`as ${plan.servings}, where the page makes 9`);
  });
});
