import { describe, expect, it } from 'vitest';
import type { MissingLine, Verdict } from '../../../engine/model.ts';
import { stillContainsText, verdictText } from '../../../engine/tally/verdict/verdict-text.ts';
import screen from '../../../extension/public/_locales/en/messages.json' with { type: 'json' };

const netCarbsG = { low: 10, best: 12.4, high: 14 };
const bread: MissingLine = {
  key: '3',
  text: 'crusty bread, to serve',
  why: 'no amount given',
  kind: 'bread or rolls',
  netCarbsG: { low: 12.6, best: 33.8, high: 55 },
};
const unknown: MissingLine = { ...bread, text: 'snorvel', kind: null, netCarbsG: null };

it('tells one figure where both bounds round to it', () => {
  const garnish = { ...bread, text: 'chives', netCarbsG: { low: 0.6, best: 1, high: 1.4 } };
  expect(verdictText({ state: 'tooMuch', netCarbsG, budgetG: 8, missing: [garnish] })).toContain(
    'chives (about 1 g a serving)',
  );
});

describe('a long line in the verdict', () => {
  const told = (text: string): string =>
    verdictText({ state: 'tooMuch', netCarbsG, budgetG: 8, missing: [{ ...unknown, text }] });

  it('is cut between words', () => {
    expect(told('a handful of snorvel from the hill behind the mill, well rinsed')).toContain(
      'a handful of snorvel from the hill behind the mill, well... (unknown)',
    );
  });

  it('closes what it quotes', () => {
    expect(told('icing: “spread the snorvel icing over the top of the cooled cake.”')).toContain(
      'icing: “spread the snorvel icing over the top of the...” (unknown)',
    );
  });
});

describe('the verdict in words', () => {
  it.each<[Verdict, string]>([
    [
      { state: 'fits', netCarbsG, budgetG: 15 },
      'Fits: one serving has 12 g (10-14) net carbs, within the budget of 15 g.',
    ],
    [
      { state: 'fits', netCarbsG, budgetG: 15, assumedServings: 5 },
      'Fits: one serving has 12 g (10-14) net carbs, within the budget of 15 g. We assume 5 servings: the page does not say.',
    ],
    [
      { state: 'probablyFits', netCarbsG: { ...netCarbsG, high: 17 }, budgetG: 15 },
      'Probably fits: one serving has 12 g (10-17) net carbs, likely within the budget of 15 g, but it may be more.',
    ],
    [
      { state: 'probablyFits', netCarbsG: { low: 14, best: 15.4, high: 18 }, budgetG: 15 },
      'Probably fits: one serving has 15 g (14-18) net carbs, about the budget of 15 g, but it may be more.',
    ],
    [
      { state: 'fitsAsCounted', netCarbsG, budgetG: 15, missing: [bread, unknown] },
      'Cannot be told: what was counted has 12 g (10-14) net carbs a serving, within the budget of 15 g, but not all was counted. Not counted: crusty bread, to serve (about 13-55 g a serving); snorvel (unknown).',
    ],
    [
      { state: 'fitsAsCounted', netCarbsG, budgetG: 80, missing: [bread] },
      'Fits, not all counted: one serving has 12 g (10-14) net carbs, within the budget of 80 g. Not counted: crusty bread, to serve (about 13-55 g a serving).',
    ],
    [
      { state: 'fitsAsCounted', netCarbsG, budgetG: 15, missing: [{ ...bread, beside: true }] },
      'Fits by itself: one serving has 12 g (10-14) net carbs, within the budget of 15 g. Not counted: crusty bread, to serve (about 13-55 g a serving). Eaten with it, a serving is above the budget.',
    ],
    [
      {
        state: 'fitsAsCounted',
        netCarbsG,
        budgetG: 13,
        missing: [{ ...unknown, text: 'onion', netCarbsG: { low: 0.3, best: 0.9, high: 1.5 } }],
      },
      'Fits, not all counted: one serving has 12 g (10-14) net carbs, within the budget of 13 g. Not counted: onion (about 0-2 g a serving).',
    ],
    [
      { state: 'tooMuch', netCarbsG, budgetG: 20, missing: [bread] },
      'Too much: with what is not counted, one serving has more than the budget of 20 g; 12 g (10-14) net carbs were counted. Not counted: crusty bread, to serve (about 13-55 g a serving).',
    ],
    [
      { state: 'fitsAsCounted', netCarbsG: null, budgetG: 15, missing: [unknown] },
      'Not known: nothing could be counted against the budget of 15 g. Not counted: snorvel (unknown).',
    ],
    [
      { state: 'tooMuch', netCarbsG, budgetG: 8, missing: [] },
      'Too much: one serving has 12 g (10-14) net carbs, above the budget of 8 g.',
    ],
  ])('%#', (verdict, text) => {
    expect(verdictText(verdict)).toBe(text);
  });

  it.each<[Verdict, string]>([
    [{ state: 'fits', netCarbsG, budgetG: 15 }, screen.stateFits.message],
    [{ state: 'probablyFits', netCarbsG, budgetG: 15 }, screen.stateProbably.message],
    [
      { state: 'fitsAsCounted', netCarbsG, budgetG: 80, missing: [bread] },
      screen.stateCounted.message,
    ],
    [
      { state: 'fitsAsCounted', netCarbsG, budgetG: 15, missing: [{ ...bread, beside: true }] },
      screen.stateAlone.message,
    ],
    [
      { state: 'fitsAsCounted', netCarbsG, budgetG: 15, missing: [bread, unknown] },
      screen.stateUntold.message,
    ],
    [{ state: 'tooMuch', netCarbsG, budgetG: 8, missing: [] }, screen.stateTooMuch.message],
  ])('begins as the screen does, %#', (verdict, word) => {
    expect(verdictText(verdict).startsWith(`${word}: `)).toBe(true);
  });

  it('names three missing lines at most, long ones cut, and counts the rest', () => {
    const long = { ...unknown, text: 'x'.repeat(90) };
    const text = verdictText({
      state: 'tooMuch',
      netCarbsG,
      budgetG: 8,
      missing: [long, bread, bread, bread, bread],
    });
    expect(text).toContain(`${'x'.repeat(57)}... (unknown)`);
    expect(text).toMatch(/; and 2 more\.$/);
  });
});

describe('what is still in it, in words', () => {
  it('says likely where only words tell', () => {
    expect(stillContainsText([])).toBe('');
    expect(
      stillContainsText([
        { allergen: 'egg', keys: ['1'], likelyKeys: [] },
        { allergen: 'tree nuts', keys: [], likelyKeys: ['4'] },
      ]),
    ).toBe('Still contains what you avoid: egg, likely tree nuts.');
  });
});
