import { describe, expect, it } from 'vitest';
import { FIGURES_COLUMNS, toFiguresTable } from '../../engine/export/index.ts';
import { adaptedPage } from '../ui/adapted.ts';

const dishes = ['lemon-cake.html', 'milk-rolls.html'].map((page) => adaptedPage(page));
const rows = toFiguresTable(dishes)
  .trimEnd()
  .split('\r\n')
  .map((row) => row.split(','));

describe('a table of several recipes', () => {
  it('has a row each, with the figures of a serving before and after', () => {
    expect(rows).toHaveLength(3);
    const head = toFiguresTable([]).trimEnd();
    expect(head.replaceAll('"', '')).toBe(FIGURES_COLUMNS.join(','));
    for (const [at, { recipe, before, after, goals }] of dishes.entries()) {
      const text = toFiguresTable(dishes).split('\r\n')[at + 1] ?? '';
      expect(text.startsWith(recipe.title)).toBe(true);
      const cells = text.split(',');
      expect(cells.slice(1, 4).map(Number)).toEqual([
        before.servings,
        after.servings,
        goals.budgetG,
      ]);
      const net = (value: { best: number } | null) => Math.round((value?.best ?? -1) * 1000) / 1000;
      expect(Number(cells[5])).toBe(net(before.perServing.netCarbsG));
      expect(Number(cells[6])).toBe(net(after.perServing.netCarbsG));
    }
  });

  it('leaves an unknown figure empty and disarms a title that looks like a formula', () => {
    const [cake] = dishes;
    if (!cake) throw new Error('no cake');
    const unknown = { ...cake.after.perServing, netCarbsG: null };
    const odd = {
      ...cake,
      recipe: { ...cake.recipe, title: '=1+1' },
      after: { ...cake.after, perServing: unknown },
    };
    const cells = toFiguresTable([odd]).split('\r\n')[1]?.split(',') ?? [];
    expect(cells[0]).toBe("'=1+1");
    expect(cells[6]).toBe('');
  });
});
