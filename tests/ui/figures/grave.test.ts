import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/index.ts';
import { GraveLine, graveMark, graveText } from '../../../extension/ui/figures/grave.tsx';
import { adaptedPage } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

const withCaution = (code: string): Pick<Adaptation, 'cautions'> => ({
  cautions: [{ code, text: code, key: null, figures: { fall: '34', salt: '0.1' } }],
});

describe('what is grave of the cautions', () => {
  it('is one plain line with the fall where that is large', () => {
    expect(graveText(withCaution('MUCH_FEWER_CARBS_HYPO'))).toBe(
      '34 g less can mean low blood sugar on insulin or tablets.',
    );
  });

  it('is no line of its own where the fall is smaller', () => {
    expect(graveText(withCaution('FEWER_CARBS_HYPO'))).toBeNull();
    expect(graveText(withCaution('ALLULOSE'))).toBeNull();
  });

  it.each<[string, string]>([
    ['MUCH_FEWER_CARBS_HYPO', 'low blood sugar'],
    ['FEWER_CARBS_HYPO', 'low blood sugar'],
    ['KIDNEYS', 'please read'],
    ['NOT_WITHOUT_CARE_TEAM', 'please read'],
    ['ALLULOSE', ''],
  ])('is marked where it lies folded: %s', (code, mark) => {
    expect(graveMark(withCaution(code))).toBe(mark);
  });
});

describe('the line under the verdict', () => {
  let screen: Drawn | null = null;
  afterEach(() => screen?.clear());
  const lineOf = (adaptation: Adaptation) => {
    screen = drawn(h(GraveLine, { adaptation }));
    return screen.root.textContent;
  };

  it('stands there for a roll of a third of its carbs, and says by how much', () => {
    const adaptation = adaptedPage('milk-rolls.html');
    const [before, after] = [adaptation.before, adaptation.after].map(
      ({ perServing }) => perServing.netCarbsG?.best ?? 0,
    );
    const fall = (before ?? 0) - (after ?? 0);
    expect(fall).toBeGreaterThan(30);
    expect(lineOf(adaptation)).toContain(`${Math.round(fall)} g less`);
  });

  it('is left out where hardly anything changes', () => {
    expect(lineOf(adaptedPage('milk-rolls.html', { budgetG: 60 }))).toBe('');
  });
});
