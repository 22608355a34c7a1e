import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../engine/model.ts';
import { measureRegion } from '../../engine/weigh/index.ts';

const recipe = (lines: string[], rest: Partial<Recipe> = {}): Recipe => ({
  title: 'Test bake',
  url: null,
  language: null,
  author: null,
  markup: 'pasted',
  yield: { text: null, servings: null, pieces: null },
  groups: [{ title: null, lines }],
  steps: [],
  minutes: { prep: null, cook: null, total: null },
  image: null,
  statedNutrition: null,
  notes: [],
  ...rest,
});

describe('whose cups', () => {
  test('cups, sticks and US words', () => {
    expect(measureRegion(recipe(['2 cups all-purpose flour', '1 stick butter']))).toBe('us');
  });

  test('grams with British words', () => {
    const lines = ['200 g plain flour', '100 g caster sugar', '1 tsp bicarbonate of soda'];
    expect(measureRegion(recipe(lines))).toBe('uk');
  });

  test('language and country label', () => {
    expect(measureRegion(recipe(['200 g Mehl'], { language: 'de' }))).toBe('eu');
    expect(measureRegion(recipe(['1 cup flour'], { language: 'en-AU' }))).toBe('au');
    expect(measureRegion(recipe(['1 cup flour'], { url: 'https://kitchen.example.au/loaf' }))).toBe(
      'au',
    );
    expect(measureRegion(recipe(['100 g flour'], { url: 'https://kitchen.example.uk/loaf' }))).toBe(
      'uk',
    );
  });

  test('no sign at all is US', () => {
    expect(measureRegion(recipe([]))).toBe('us');
    expect(measureRegion(recipe(['1 cup flour'], { url: 'not an address' }))).toBe('us');
  });
});
