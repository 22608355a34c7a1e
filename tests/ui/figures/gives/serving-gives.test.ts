import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../../engine/index.ts';
import { DEFAULT_PREFERENCES } from '../../../../extension/store/prefs.ts';
import { ServingGives } from '../../../../extension/ui/figures/gives/serving-gives.tsx';
import { adaptedPage } from '../../adapted.ts';
import { type Drawn, drawn } from '../../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

interface Row {
  name: string;
  now: string;
  before: string;
  struck: boolean;
  bounds: number;
}

function rowsOf(adaptation: Adaptation): Row[] {
  screen = drawn(h(ServingGives, { adaptation, preferences: DEFAULT_PREFERENCES }));
  for (const word of screen.root.querySelectorAll('.hidden')) word.remove();
  const text = (row: Element, part: string) => row.querySelector(part)?.textContent?.trim() ?? '';
  return [...screen.root.querySelectorAll('.give')].map((row) => ({
    name: text(row, '.give-name'),
    now: text(row, '.after'),
    before: text(row, '.before'),
    struck: row.querySelector('s') !== null,
    bounds: row.querySelectorAll('.give-bound').length,
  }));
}

describe('what a serving gives', () => {
  it('strikes out a figure only where there is another one now', () => {
    const rows = rowsOf(adaptedPage('milk-rolls.html'));
    expect(rows.find(({ name }) => name === 'net carbs')?.struck).toBe(true);
    for (const { now, before, struck } of rows) {
      const same = now.replace(/ \D+$/, '') === before;
      expect(struck, `${now}, before ${before}`).toBe(!same);
    }
  });

  it('strikes out nothing where nothing changes', () => {
    const rows = rowsOf(adaptedPage('milk-rolls.html', { budgetG: 60 }));
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.filter(({ struck }) => struck)).toEqual([]);
    expect(screen?.root.textContent).not.toContain('Struck out');
  });

  it('says of a lower bound that it is one, apart from its number', () => {
    const adaptation = adaptedPage('milk-rolls.html');
    const { after } = adaptation;
    const rows = rowsOf({ ...adaptation, after: { ...after, incomplete: { sugarsG: ['0'] } } });
    const bounded = rows.filter(({ bounds }) => bounds > 0);
    expect(bounded.map(({ name }) => name)).toEqual(['sugars']);
    expect(bounded[0]?.now).toMatch(/^at least\s+[\d.]+ g$/);
  });

  it('has small heads over its columns', () => {
    rowsOf(adaptedPage('milk-rolls.html'));
    const heads = [...(screen?.root.querySelectorAll('.give-heads') ?? [])];
    expect(heads.map((head) => [...head.children].map((one) => one.textContent))).toEqual([
      ['now', 'before', 'likely'],
      ['now', 'before', 'likely'],
    ]);
  });
});
