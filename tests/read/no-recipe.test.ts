import { describe, expect, it } from 'vitest';
import { readPage } from '../../engine/read/index.ts';
import { NO_RECIPE } from './no-recipe-pages.ts';
import { documentFrom } from './page-file.ts';

describe('kinds of pages without a recipe', () => {
  it('are at least thirty', () => {
    expect(Object.keys(NO_RECIPE).length).toBeGreaterThanOrEqual(30);
  });

  it.each(Object.entries(NO_RECIPE))('%s', (_, html) => {
    const result = readPage(documentFrom(html));
    expect(result.ok ? result.recipes.map(({ groups }) => groups) : 'none').toBe('none');
  });
});
