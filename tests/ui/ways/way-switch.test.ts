import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/index.ts';
import { servingsToFit, wayDown } from '../../../extension/ui/ways/way-down.ts';
import { WaySwitch, wayMeaning } from '../../../extension/ui/ways/way-switch.tsx';
import { adaptedPage } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

describe('the switch of ways', () => {
  it('has the figure of each way beside its name', () => {
    const adaptation = adaptedPage('lemon-cake.html');
    expect(adaptation.ways.length).toBeGreaterThan(1);
    screen = drawn(h(WaySwitch, { adaptation, onGoals: () => {} }));
    const said = [...screen.root.querySelectorAll('button')].map(({ textContent }) => textContent);
    expect(said).toHaveLength(adaptation.ways.length);
    adaptation.ways.forEach(({ verdict }, at) => {
      const grams = Math.round((verdict.netCarbsG?.best ?? 0) * 10) / 10;
      expect(said[at]).toMatch(new RegExp(`^[A-Z][a-z]+ ${String(grams).replace('.', '\\.')} g$`));
    });
  });

  it('calls no way within that is not', () => {
    const adaptation = adaptedPage('lemon-cake.html', { budgetG: 5 });
    const names = adaptation.ways.map(({ plan }) => plan.way);
    const within = adaptation.ways.find(({ plan }) => plan.way === 'within');
    expect(within?.verdict.state).toBe('tooMuch');
    screen = drawn(h(WaySwitch, { adaptation, onGoals: () => {} }));
    const said = [...screen.root.querySelectorAll('button')].map(({ textContent }) => textContent);
    expect(said[names.indexOf('within')]).toMatch(/^Thorough \d/);
    expect(said.join(' ')).not.toContain('Within');
  });

  it('says what the chosen way means, and nothing where there is one only', () => {
    const adaptation = adaptedPage('lemon-cake.html');
    expect(wayMeaning({ ...adaptation, plan: { ...adaptation.plan, way: 'smaller' } })).toBe(
      'as it was, in smaller pieces',
    );
    expect(wayMeaning({ ...adaptation, ways: adaptation.ways.slice(0, 1) })).toBe('');
  });
});

describe('more servings, where they would bring it down', () => {
  const tooMuch = (best: number, budgetG: number): Adaptation => {
    const adaptation = adaptedPage('rice-pudding.html');
    const netCarbsG = { low: best, best, high: best };
    return {
      ...adaptation,
      ways: [],
      verdict: { state: 'tooMuch', netCarbsG, budgetG, missing: [] },
    };
  };

  it('are told with their number', () => {
    const adaptation = tooMuch(20, 15);
    const needed = Math.ceil((adaptation.after.servings * 20) / 15);
    expect(servingsToFit(adaptation)).toBe(needed);
    expect(wayDown(adaptation)).toBe(`As ${needed} servings it fits.`);
  });

  it('are not told of where nobody would cut it so small', () => {
    expect(wayDown(tooMuch(40, 2))).toBeUndefined();
  });

  it('are not told of while something is missing in the figure', () => {
    const { verdict, ...rest } = tooMuch(20, 15);
    if (verdict.state !== 'tooMuch') throw new Error('is too much');
    const line = { key: '0', text: 'jam', why: 'no amount', kind: null, netCarbsG: null };
    expect(wayDown({ ...rest, verdict: { ...verdict, missing: [line] } })).toBeUndefined();
  });
});
