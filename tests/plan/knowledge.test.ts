import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../engine/model.ts';
import classes from '../../engine/plan/data/classes.json' with { type: 'json' };
import { FAMILY_LIMITS, SWAP_RULES, suits } from '../../engine/plan/knowledge.ts';
import { foods } from './build.ts';

describe('swap table', () => {
  it('has at least 60 swaps with ids of their own, over foods that exist', () => {
    expect(SWAP_RULES.length).toBeGreaterThanOrEqual(60);
    expect(new Set(SWAP_RULES.map((r) => r.id)).size).toBe(SWAP_RULES.length);
    const missing = SWAP_RULES.flatMap((r) => r.to.map((t) => t.food)).filter(
      (id) => foods.byId(id) === null,
    );
    expect([...new Set(missing)]).toEqual([]);
  });

  it('names classes, families and sources', () => {
    const known = new Set(classes.map((c) => c.class));
    const words = new Set<string>([...FAMILIES, 'dough', 'dish', '*']);
    for (const rule of SWAP_RULES) {
      for (const cls of rule.replaces) expect(known, rule.id).toContain(cls);
      for (const word of rule.in) expect(words, rule.id).toContain(word);
      expect(rule.source.length, rule.id).toBeGreaterThan(3);
      expect(rule.effect.length, rule.id).toBeGreaterThan(5);
    }
  });

  it('replaces something in every class of the table by a food that exists', () => {
    for (const cls of new Set(SWAP_RULES.flatMap((r) => r.replaces))) {
      const row = classes.find((c) => c.class === cls);
      expect(
        row?.foods.some((id) => foods.byId(id) !== null),
        cls,
      ).toBe(true);
    }
  });

  it('puts each food into one class', () => {
    const ids = classes.flatMap((c) => c.foods);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it('gives every dough family several ways to replace flour, choux none', () => {
    for (const family of FAMILIES) {
      const limits = FAMILY_LIMITS.get(family);
      if (limits?.kind !== 'dough') continue;
      const ways = SWAP_RULES.filter(
        (r) => r.replaces.includes('wheat-flours') && suits(r, family),
      ).length;
      if (family === 'choux') expect(ways).toBe(0);
      else expect(ways, family).toBeGreaterThanOrEqual(4);
    }
  });

  it('keeps family limits in order', () => {
    for (const [family, limits] of FAMILY_LIMITS) {
      expect(limits.source, family).not.toBe('');
      if (!limits.gluten) continue;
      expect(limits.gluten.hard, family).toBeLessThanOrEqual(limits.gluten.min);
      expect(limits.gluten.min, family).toBeLessThan(limits.gluten.max);
      for (const [low, high, cap] of Object.values(limits.binder)) {
        expect(low).toBeLessThanOrEqual(high);
        expect(high).toBeLessThanOrEqual(cap);
      }
    }
  });
});
