import { describe, expect, it } from 'vitest';
import { ingredientRows } from '../../../../extension/ui/recipe/lines/ingredient-rows.ts';
import { lineText } from '../../../../extension/ui/recipe/lines/line-text.ts';
import { adaptedPage } from '../../adapted.ts';

describe('a line in its parts', () => {
  it.each([
    ['175 g (1⅓ cups) bread flour', ['bread flour'], ['175 g', '1⅓ cups', '', 'bread flour', '']],
    ['1 large egg, beaten', ['egg'], ['1', '', 'large', 'egg', ', beaten']],
    ['8 g fine salt', ['salt'], ['8 g', '', 'fine', 'salt', '']],
    ['150 g carrots', ['carrot'], ['150 g', '', '', 'carrots', '']],
    ['salt to taste', ['salt'], ['', '', '', 'salt', ' to taste']],
    ['1½ cups warm water', ['water'], ['1½ cups', '', 'warm', 'water', '']],
    ['200 g Mehl (Type 550)', ['Mehl'], ['200 g', '', '', 'Mehl', ' (Type 550)']],
    ['30 g zibbelwort', [], ['30 g', '', '', 'zibbelwort', '']],
  ])('%s', (text, names, [amount, extra, kind, name, rest]) => {
    expect(lineText(text, names)).toEqual({ amount, extra, kind, name, rest });
  });
});

describe.each(['milk-rolls.html', 'lemon-cake.html', 'corn-chowder.html'])('rows of %s', (page) => {
  const adaptation = adaptedPage(page);
  const rows = ingredientRows(adaptation, ({ after }) => after);

  it('lose no word of a reworked line', () => {
    for (const { line, now } of rows) {
      if (!now) continue;
      const shown = [now.amount, now.extra, now.kind, now.name, now.rest].join(' ');
      for (const word of (line.after ?? '').match(/[\p{L}\p{N}½¼¾⅓⅔]+/gu) ?? [])
        expect(shown).toContain(word);
    }
  });

  it('strike out what was there, and nothing where nothing changed', () => {
    for (const { line, was } of rows)
      expect(was === null).toBe(line.change === 'kept' || line.before === null);
  });

  it('hang what came in from the line it stands in for', () => {
    for (const [at, row] of rows.entries())
      if (row.joined) expect(rows[at - 1]?.line.key.split('>')[0]).toBe(row.line.key.split('>')[0]);
  });
});
