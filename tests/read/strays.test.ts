import { describe, expect, it } from 'vitest';
import type { Step } from '../../engine/model.ts';
import { withoutStrays } from '../../engine/read/strays.ts';

const texts = (...steps: string[]): string[] =>
  withoutStrays(
    steps.map((text): Step => ({ text, section: null })),
    [],
  ).map(({ text }) => text);

describe('the steps of a method', () => {
  it('are no buttons, nor what the page files the recipe under', () => {
    expect(
      texts('Simmer the lentils.', 'Recipe Type: Soups Ingredients: Lentil, Leek', 'Pin It'),
    ).toEqual(['Simmer the lentils.']);
  });

  it('may begin with such a word', () => {
    expect(texts('Pin it together with a toothpick.', 'Share it out.')).toHaveLength(2);
  });
});
