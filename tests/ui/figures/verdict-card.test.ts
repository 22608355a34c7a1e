import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { apartWord } from '../../../extension/ui/figures/closeness-mark.tsx';
import { pointsToShow } from '../../../extension/ui/figures/nearer-further.tsx';
import { shownVerdict } from '../../../extension/ui/figures/verdict.ts';
import {
  oldSizeSentence,
  rangeSentence,
  VerdictCard,
} from '../../../extension/ui/figures/verdict-card.tsx';
import { adaptedPage } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

const verdict = (
  state: 'fits' | 'probablyFits' | 'tooMuch',
  low: number,
  best: number,
  high: number,
) => ({
  state,
  after: { low, best, high },
  before: null,
});

describe('what the range adds to the verdict', () => {
  it('is the upper end, never rounded down', () => {
    expect(rangeSentence(verdict('probablyFits', 13, 14.8, 16.2), 15)).toBe(
      'It may be up to 17 g.',
    );
    expect(rangeSentence(verdict('fits', 9, 9.7, 11.01), 15)).toBe('At most 12 g.');
  });

  it('is the lower end where only that would fit', () => {
    expect(rangeSentence(verdict('tooMuch', 14.2, 16.6, 19), 15)).toBe(
      'It may be as little as 14 g.',
    );
    expect(rangeSentence(verdict('tooMuch', 20, 22, 24), 15)).toBe('It may be up to 24 g.');
  });

  it('is nothing where there is no range', () => {
    expect(rangeSentence(verdict('fits', 10, 10, 10.02), 15)).toBe('');
  });
});

describe('the word of the verdict', () => {
  it.each<[number, string]>([
    [4, 'fitsAsCounted'],
    [60, 'cannotBeTold'],
  ])('is the one the exports say: %d g missing at most', (high, word) => {
    const adaptation = adaptedPage('milk-rolls.html', { way: 'within', budgetG: 60 });
    const { verdict } = adaptation;
    if (verdict.netCarbsG === null) throw new Error('nothing was counted');
    const missing = [
      {
        key: '0',
        text: 'jam',
        why: 'no amount',
        kind: 'jam',
        netCarbsG: { low: 0, best: 2, high },
      },
    ];
    const counted = { state: 'fitsAsCounted', netCarbsG: verdict.netCarbsG, budgetG: 60 } as const;
    expect(shownVerdict({ ...adaptation, verdict: { ...counted, missing } })?.state).toBe(word);
  });
});

describe('the sentence of the verdict', () => {
  let card: Drawn | null = null;
  afterEach(() => card?.clear());
  const sentence = (goals: Parameters<typeof adaptedPage>[1]) => {
    const adaptation = adaptedPage('milk-rolls.html', goals);
    card = drawn(h(VerdictCard, { adaptation }));
    for (const word of card.root.querySelectorAll('.hidden')) word.remove();
    return { adaptation, text: card.root.querySelector('.verdict-say')?.textContent };
  };

  it('compares portions of one size without naming it', () => {
    const { adaptation, text } = sentence({ way: 'within' });
    expect(adaptation.after.servings).toBe(adaptation.before.servings);
    expect(text).toMatch(/ has about [\d.]+ g, it was [\d.]+\.$/);
  });

  it('names both pieces where the dish is cut smaller', () => {
    const { adaptation, text } = sentence({ way: 'smaller' });
    expect(adaptation.after.servings).toBeGreaterThan(12);
    expect(text).toMatch(
      new RegExp(
        `^One of ${adaptation.after.servings}: about [\\d.]+ g, one of 12 had [\\d.]+\\.$`,
      ),
    );
  });
});

describe('pieces that were made smaller', () => {
  const servings = (before: number, after: number) => {
    const adaptation = adaptedPage('milk-rolls.html', { way: 'within' });
    return {
      before: { ...adaptation.before, servings: before },
      after: { ...adaptation.after, servings: after },
    };
  };

  it('are told beside one of the old size', () => {
    expect(oldSizeSentence(servings(12, 20), 14.9)).toBe('One as big as before: about 25 g.');
  });

  it('are not where a piece is as big as it was, or the page has one piece', () => {
    expect(oldSizeSentence(servings(12, 12), 14.9)).toBe('');
    expect(oldSizeSentence(servings(12, 8), 14.9)).toBe('');
    expect(oldSizeSentence(servings(1, 8), 14.9)).toBe('');
  });

  it('have the line in the card', () => {
    const adaptation = adaptedPage('milk-rolls.html', { way: 'smaller' });
    const card = drawn(h(VerdictCard, { adaptation }));
    const { before, after, verdict } = adaptation;
    const old = ((verdict.netCarbsG?.best ?? 0) * after.servings) / before.servings;
    expect(card.root.querySelector('.old-size')?.textContent).toBe(
      `One as big as before: about ${Math.round(old)} g.`,
    );
    card.clear();
  });
});

describe('a verdict that cannot be told', () => {
  it('has a look of its own and names no upper end', () => {
    const adaptation = adaptedPage('milk-rolls.html', { way: 'within', budgetG: 60 });
    const { netCarbsG } = adaptation.verdict;
    if (netCarbsG === null) throw new Error('nothing was counted');
    const missing = [
      {
        key: '0',
        text: 'jam',
        why: 'no amount',
        kind: 'jam',
        netCarbsG: { low: 0, best: 2, high: 60 },
      },
    ];
    const untold = { state: 'fitsAsCounted', netCarbsG, budgetG: 60, missing } as const;
    const card = drawn(h(VerdictCard, { adaptation: { ...adaptation, verdict: untold } }));
    expect(card.root.querySelector('.verdict-untold .state')?.className).toContain('is-untold');
    expect(card.root.querySelector('.verdict-state .soft')?.textContent).toBe(
      'Only what was counted.',
    );
    expect(card.root.querySelector('.state-body')).toBeNull();
    card.clear();
  });
});

describe('the way from the original', () => {
  it('has few points, both ends among them', () => {
    const points = Array.from({ length: 23 }, (_, at) => ({ netCarbsG: at, closeness: at / 22 }));
    const shown = pointsToShow(points);
    expect(shown.length).toBeLessThanOrEqual(6);
    expect(shown[0]?.netCarbsG).toBe(22);
    expect(shown.at(-1)?.netCarbsG).toBe(0);
  });

  it('is told in words that go one way', () => {
    const words = [1, 0.95, 0.8, 0.6, 0.2].map(apartWord);
    expect(new Set(words).size).toBe(5);
    expect(apartWord(1)).toBe('the same');
  });
});
