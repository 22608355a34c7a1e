import { describe, expect, it } from 'vitest';
import { foodTable, traceFigures } from '../../../../engine/index.ts';
import { nutrientRows } from '../../../../extension/ui/figures/format.ts';
import { partsOf } from '../../../../extension/ui/figures/sources/figure-sources.tsx';
import {
  gramsOnScale,
  gramsRange,
  matchReason,
  sourceText,
  weightReason,
} from '../../../../extension/ui/figures/sources/source-words.ts';
import { adaptedPage, adaptedText } from '../../adapted.ts';

describe('sources in words', () => {
  it.each([
    [{ kind: 'SR', id: '168896', note: null }, 'USDA SR Legacy 168896'],
    [{ kind: 'FF', id: '790146', note: null }, 'USDA Foundation Foods 790146'],
    [
      { kind: 'memory', id: null, note: 'typical label' },
      'typical label, from memory: less certain',
    ],
    [{ kind: 'practice', id: null, note: null }, 'common practice, no source'],
    [{ kind: 'user', id: null, note: 'package label' }, 'Your package, as you typed its label'],
  ] as const)('%j', (source, text) => expect(sourceText({ source })).toBe(text));

  it('are there for every food of the table', () => {
    for (const food of foodTable().foods) {
      expect(sourceText(food).length, food.id).toBeGreaterThan(10);
      expect(sourceText(food), food.id).not.toMatch(/null|undefined/);
    }
  });
});

describe('grams in words', () => {
  it('are shown as a scale shows them, and never as nothing', () => {
    expect([500, 9.96, 2.84, 0.1, 0.04, 0].map(gramsOnScale)).toEqual([
      '500',
      '10',
      '2.8',
      '0.1',
      '0.04',
      '0',
    ]);
    expect(gramsRange({ low: 220, best: 250, high: 274 })).toBe('250 g (220–274)');
    expect(gramsRange({ low: 250, best: 250, high: 250 })).toBe('250 g');
  });

  it('say what they rest on', () => {
    const cup = adaptedText('Cake\n\n2 cups flour\n3 eggs\n100 g butter\n\nServes 8');
    const [flour, eggs, butter] = cup.ingredients.map(({ weight }) => weight);
    if (!flour || !eggs || !butter) throw new Error('not weighed');
    expect(weightReason(flour)).toBe('from a measure; US cup of 125 g');
    expect(weightReason(eggs)).toMatch(/^from a count; /);
    expect(weightReason(butter)).toBe('the line gives a weight');
  });

  it('tell a choice of the user’s from a guess', () => {
    const match = { foodId: 'x', foodName: 'bread flour', others: [] };
    expect(matchReason({ ...match, confidence: 1, reason: 'chosen by you' })).toBe('chosen by you');
    expect(matchReason({ ...match, confidence: 0.72, reason: 'most words agree' })).toBe(
      'taken for bread flour, 72 % sure: most words agree',
    );
  });
});

describe('the parts of a figure', () => {
  const adaptation = adaptedPage('blueberry-muffins.html');
  const { after } = traceFigures(adaptation);
  const rows = nutrientRows({ energy: 'kcal', sodium: 'sodium' });

  it('hold every counted line once, largest first', () => {
    for (const row of rows) {
      const { lines, small, unknown } = partsOf(after, row);
      expect([...lines, ...small, ...unknown]).toHaveLength(after.length);
      const sizes = lines.map(({ perServing }) => perServing[row.nutrient]?.best ?? 0);
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    }
  });

  it('leave next to nothing out of those shown', () => {
    for (const row of rows) {
      const { lines } = partsOf(after, row);
      const total = adaptation.after.perServing[row.nutrient]?.best ?? 0;
      const shown = lines.reduce(
        (sum, line) => sum + (line.perServing[row.nutrient]?.best ?? 0),
        0,
      );
      // Each line left out brings under half of the last digit shown.
      const slack = (after.length * 0.5 * 10 ** -row.digits) / row.scale;
      expect(shown).toBeGreaterThanOrEqual(total - slack - 0.002 * after.length * total);
    }
  });

  it('keep a line without the figure apart from one that brings none', () => {
    const [row] = rows.filter(({ nutrient }) => nutrient === 'saturatedG');
    const [line] = after;
    if (!row || !line) throw new Error('nothing to test');
    const lacking = { ...line, perServing: { ...line.perServing, saturatedG: null } };
    const none = {
      ...line,
      perServing: { ...line.perServing, saturatedG: { low: 0, best: 0, high: 0 } },
    };
    expect(partsOf([lacking, none], row)).toMatchObject({
      lines: [],
      small: [none],
      unknown: [lacking],
    });
  });
});
