/** The tags of foods: every row is well formed and every food in it exists. */
import { describe, expect, it } from 'vitest';
import rows from '../../engine/foods/data/tags.json' with { type: 'json' };
import { foodTable } from '../../engine/foods/index.ts';
import { TagRow } from '../../engine/foods/tag-row.ts';
import { foodsTagged, hasTag, type Tag } from '../../engine/foods/tags.ts';

const tags = Object.keys(rows) as Tag[];
const table = foodTable();

describe('tags of foods', () => {
  it.each(tags)('%s has known foods, each once, and known tags', (tag) => {
    const row = TagRow.parse(rows[tag]);
    expect(row.foods.filter((id) => table.byId(id) === null)).toEqual([]);
    expect(new Set(row.foods).size).toBe(row.foods.length);
    expect(row.includes.filter((other) => !tags.includes(other as Tag))).toEqual([]);
    expect(foodsTagged(tag).length).toBeGreaterThan(0);
  });

  it('takes in the foods of the tags it includes', () => {
    expect(hasTag('sugar', 'sweetener')).toBe(true);
    expect(hasTag('oat-fibre', 'flour-like')).toBe(true);
  });

  it('answers for a food as for its id, and no for a food of the user', () => {
    expect(hasTag({ id: 'xanthan-gum' }, 'binder')).toBe(true);
    expect(hasTag({ id: 'own-xanthan-gum' }, 'binder')).toBe(false);
    expect(hasTag('all-purpose-flour', 'binder')).toBe(false);
  });
});
