import { describe, expect, it } from 'vitest';
import { ingredientRows } from '../../../../extension/ui/recipe/lines/ingredient-rows.ts';
import { settableOn } from '../../../../extension/ui/recipe/lines/set-amount.tsx';
import { adaptedText } from '../../adapted.ts';

const LOAF = `Plain loaf

500 g bread flour
10 g salt
2 g dry yeast
370 g water

Mix the flour, salt, yeast and water, let it rise and bake at 240 °C for 45 minutes.

Makes 12 slices`;

const free = adaptedText(LOAF, { way: 'within' });
const rows = ingredientRows(free, ({ after }) => after);

describe('what can be set on a line', () => {
  it('is the flour that stays and what came in for it, not what is as the page has it', () => {
    const settable = rows.flatMap((row) => settableOn(row, free, [])?.item ?? []);
    expect(settable.length).toBeGreaterThan(1);
    const [added, lines] = [true, false].map((isNew) =>
      settable.filter(({ key }) => key.startsWith('new.') === isNew),
    );
    expect(new Set(lines?.map(({ key }) => key))).toEqual(new Set(['0']));
    expect(added?.map(({ key }) => key)).toEqual(
      free.plan.items.flatMap(({ key }) => (key.startsWith('new.') ? [key] : [])),
    );
    expect(settable.map(({ foodId }) => foodId)).toContain('bread-flour');
  });

  it('is taken, and can be taken back even when nothing else changes on the line', () => {
    const setAmounts = [{ key: '0', foodId: 'bread-flour', grams: 500 }];
    const kept = adaptedText(LOAF, { way: 'within', setAmounts });
    const flour = ingredientRows(kept, ({ after }) => after).find(({ line }) => line.key === '0');
    expect(flour?.now?.amount).toBe('500 g');
    const found = flour && settableOn(flour, kept, setAmounts);
    expect(found?.set?.grams).toBe(500);
    expect(found?.item.grams).toBe(500);
  });
});
