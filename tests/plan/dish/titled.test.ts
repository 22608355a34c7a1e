/** Families and parts of recipes whose titles mislead or say little. */
import { describe, expect, it } from 'vitest';
import type { Family } from '../../../engine/model.ts';
import { limitsOf } from '../../../engine/plan/dish/family/family-limits.ts';
import { adapted, type Pasted } from '../pasted.ts';
import rows from './titled.json' with { type: 'json' };

type Titled = Pasted & { parts?: Record<string, Family[]> };
const RECIPES = rows.recipes as unknown as Titled[];

const flat = (heading: string): string => heading.replace(/:$/, '').toLowerCase();

describe.each(RECIPES.map((recipe) => [recipe.title, recipe] as const))('%s', (_, recipe) => {
  const { plan } = adapted(recipe, { budgetG: 10 });

  it('is the dish it is', () => {
    expect(recipe.family, plan.family.why).toContain(plan.family.id);
    expect(plan.family.why).not.toBe('');
    // A sure word needs more than a title.
    if (plan.family.confidence > 0.9) expect(plan.family.why).toMatch(/and|with|is the main/);
  });

  it('has the parts its headings name, each line in one', () => {
    const keys = plan.parts.flatMap((part) => part.keys);
    expect(new Set(keys).size).toBe(keys.length);
    expect(plan.parts[0]?.family).toBe(plan.family.id);
    for (const [heading, families] of Object.entries(recipe.parts ?? {})) {
      const part = plan.parts.find(({ title }) => title !== null && flat(title) === flat(heading));
      expect(part, heading).toBeDefined();
      if (part) expect(families, heading).toContain(part.family);
    }
  });

  it('holds each part to its own limits', () => {
    for (const part of plan.parts) {
      const limits = limitsOf(part.family);
      const items = plan.items.filter(({ key }) => part.keys.includes(key));
      const flours = items.filter(({ role }) => role === 'structure');
      if (limits.kind === 'dish') expect(flours, part.title ?? '').toEqual([]);
    }
  });
});

it('tells forty recipes and more', () => {
  expect(RECIPES.length).toBeGreaterThanOrEqual(40);
});
