import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS, type Goals, readPage } from '../../engine/index.ts';

const PAGE = new URL('../pages/demo/hearth-loaf.html', import.meta.url);
const read = readPage(new JSDOM(readFileSync(PAGE, 'utf8')).window.document);

function limitsOf(changes: Partial<Goals>) {
  if (!read.ok || !read.recipes[0]) throw new Error('the hearth loaf page cannot be read');
  return adaptRecipe(read.recipes[0], { ...DEFAULT_GOALS, way: 'within', ...changes }).plan.limits;
}

describe('what would bring a budget nearer', () => {
  it('does not offer less sweetness for a loaf without sugar', () => {
    const codes = limitsOf({ servings: 1 }).map(({ code }) => code);
    expect(codes).toContain('BUDGET_NOT_MET');
    expect(codes).not.toContain('LESS_SWEET');
  });

  it('names the avoided allergen that stands in the way', () => {
    const codes = limitsOf({ avoid: ['gluten'] }).map(({ code }) => code);
    expect(codes).toContain('AVOIDED');
  });
});
