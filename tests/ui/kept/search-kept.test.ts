import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ShelfRow } from '../../../extension/store/kept/shelf-row.ts';
import { EVERYTHING, findKept, ORDERS, tagsOf } from '../../../extension/ui/kept/search-kept.ts';
import { tagsFrom } from '../../../extension/ui/kept/tag-editor.tsx';

const row = (id: string, changes: Partial<ShelfRow> = {}): ShelfRow => ({
  id,
  title: id,
  language: 'en',
  words: id.toLowerCase(),
  tags: [],
  name: '',
  worked: false,
  family: 'cake',
  state: 'fits',
  figures: { beforeG: 30, afterG: 10, highG: 12, budgetG: 15 },
  uncounted: 0,
  updatedAt: 0,
  deletedAt: null,
  ...changes,
});
const figures = (afterG: number) => ({ beforeG: 30, afterG, highG: afterG, budgetG: 15 });

const ROWS = [
  row('Milk rolls', {
    words: 'milk rolls\n450 g bread flour\nvital wheat gluten',
    tags: ['bread', 'for guests'],
    worked: true,
    family: 'enriched-yeast-bread',
    figures: figures(14.8),
    updatedAt: 3,
  }),
  row('Lemon cake', {
    words: 'lemon cake\nground almonds',
    tags: ['for guests'],
    figures: figures(9.7),
    updatedAt: 5,
  }),
  row('Old tart', { words: 'old tart', family: 'pie-crust', figures: null, updatedAt: 4 }),
];
const ids = (wanted: Partial<typeof EVERYTHING>) =>
  findKept(ROWS, { ...EVERYTHING, ...wanted }).map(({ id }) => id);

describe('finding kept dishes', () => {
  it('by a word of title, ingredient or what came in', () => {
    expect(ids({ text: 'ALMOND' })).toEqual(['Lemon cake']);
    expect(ids({ text: 'gluten flour' })).toEqual(['Milk rolls']);
    expect(ids({ text: 'gluten lemon' })).toEqual([]);
  });

  it('by tag and by what worked', () => {
    expect(ids({ tag: 'for guests' })).toEqual(['Lemon cake', 'Milk rolls']);
    expect(ids({ worked: true })).toEqual(['Milk rolls']);
    expect(tagsOf(ROWS)).toEqual(['for guests', 'bread']);
  });

  it('in the order asked for, dishes without a figure last by net carbs', () => {
    expect(ids({ order: 'changed' })).toEqual(['Lemon cake', 'Old tart', 'Milk rolls']);
    expect(ids({ order: 'netCarbs' })).toEqual(['Lemon cake', 'Milk rolls', 'Old tart']);
    expect(ids({ order: 'title' })).toEqual(['Lemon cake', 'Milk rolls', 'Old tart']);
    expect(ids({ order: 'family' })[0]).toBe('Lemon cake');
  });

  it('loses none in any order', () => {
    const any = fc.array(
      fc
        .record({ id: fc.string(), updatedAt: fc.nat(), afterG: fc.nat() })
        .map((one) => row(one.id, { updatedAt: one.updatedAt, figures: figures(one.afterG) })),
    );
    fc.assert(
      fc.property(any, fc.constantFrom(...ORDERS), (rows, order) => {
        expect(findKept(rows, { ...EVERYTHING, order })).toHaveLength(rows.length);
      }),
    );
  });
});

describe('tags from typed text', () => {
  it('are trimmed, each once', () => {
    expect(tagsFrom(' bread, for   guests ,bread,, ')).toEqual(['bread', 'for guests']);
  });

  it('stay within what the store takes', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 2000 }), (typed) => {
        const tags = tagsFrom(typed);
        expect(tags.length).toBeLessThanOrEqual(30);
        for (const tag of tags) expect(tag.length).toBeLessThanOrEqual(40);
      }),
    );
  });
});
