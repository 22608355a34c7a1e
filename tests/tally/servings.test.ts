import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../engine/model.ts';
import { proposeServings } from '../../engine/tally/servings.ts';

const recipe = (title: string, stated: Recipe['yield']): Recipe => ({
  title,
  url: null,
  language: 'en',
  author: null,
  markup: 'json-ld',
  yield: stated,
  groups: [],
  steps: [],
  minutes: { prep: null, cook: null, total: null },
  image: null,
  statedNutrition: null,
  notes: [],
});

describe('servings', () => {
  it('takes the page at its word, and the middle of a range', () => {
    const four = recipe('Stew', { text: 'Serves 4', servings: { low: 4, high: 4 }, pieces: null });
    expect(proposeServings(four, 900, 'other')).toMatchObject({ servings: 4, stated: true });
    const range = recipe('Stew', {
      text: 'Serves 4-6',
      servings: { low: 4, high: 6 },
      pieces: null,
    });
    expect(proposeServings(range, 900, 'other').servings).toBe(5);
  });

  it('takes pieces, several small ones together', () => {
    const cookies = recipe('Cookies', {
      text: 'Makes 48 cookies',
      servings: null,
      pieces: { count: 48, noun: 'cookie' },
    });
    // 48 x 15 g baked, 30 g eaten at a time.
    expect(proposeServings(cookies, (48 * 15) / 0.89, 'cookie')).toMatchObject({
      servings: 24,
      stated: false,
    });
    const rolls = recipe('Rolls', {
      text: 'Makes 12 rolls',
      servings: null,
      pieces: { count: 12, noun: 'roll' },
    });
    expect(proposeServings(rolls, 900, 'enriched-yeast-bread').servings).toBe(12);
  });

  it('does not take one loaf for one serving', () => {
    const loaf = recipe('Loaf', {
      text: '1 loaf',
      servings: null,
      pieces: { count: 1, noun: 'loaf' },
    });
    const proposal = proposeServings(loaf, 912, 'lean-yeast-bread');
    expect(proposal).toMatchObject({ servings: 16, stated: false });
    expect(proposal.text).toContain('Estimated 16');
  });

  it('takes a small pizza for a serving', () => {
    const pizzas = recipe('Pizza', {
      text: 'Makes 4 pizzas',
      servings: null,
      pieces: { count: 4, noun: 'pizza' },
    });
    expect(proposeServings(pizzas, 860, 'flatbread').servings).toBe(4);
    expect(proposeServings(pizzas, 3000, 'flatbread').servings).toBe(19);
  });

  it('leaves the whole recipe as one when nothing is known', () => {
    const bare = recipe('Something', { text: null, servings: null, pieces: null });
    expect(proposeServings(bare, null, 'other')).toMatchObject({ servings: 1, stated: false });
  });
});
