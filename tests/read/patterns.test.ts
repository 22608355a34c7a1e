import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Recipe } from '../../engine/model.ts';
import { readPage } from '../../engine/read/index.ts';
import { documentOf } from './page-file.ts';

/** What a pattern page must give; keys that are absent are not looked at. */
type Expected = {
  found?: false;
  /** Number of recipes. */
  count?: number;
  steps?: string[];
  sections?: (string | null)[];
  /** Codes that must be among the notes. */
  notes?: string[];
} & Record<string, unknown>;

const folder = new URL('../pages/patterns/', import.meta.url);
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.html'))
  .map((file) => file.replace('.html', ''));

describe('pattern pages', () => {
  it.each(names)('%s', (name) => {
    const expected = JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8')) as Expected;
    const result = readPage(documentOf(`patterns/${name}.html`));
    if (expected.found === false) {
      expect(result.ok).toBe(false);
      return;
    }
    if (!result.ok) throw new Error(result.why);
    const recipe = result.recipes[0] as Recipe;
    expect(Recipe.parse(recipe)).toEqual(recipe);
    const { count, steps, sections, notes, ...fields } = expected;
    expect(recipe).toMatchObject(fields);
    if (count !== undefined) expect(result.recipes).toHaveLength(count);
    if (steps) expect(recipe.steps.map((step) => step.text)).toEqual(steps);
    if (sections) expect(recipe.steps.map((step) => step.section)).toEqual(sections);
    const codes = recipe.notes.map((note) => note.code);
    for (const code of notes ?? []) expect(codes).toContain(code);
  });

  it('has one expectation a page, each saying something', () => {
    expect(names.length).toBeGreaterThan(30);
    for (const name of names) {
      const keys = Object.keys(JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8')));
      expect(keys.length, name).toBeGreaterThan(0);
    }
  });
});
