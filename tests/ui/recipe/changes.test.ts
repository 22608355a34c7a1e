import { describe, expect, it } from 'vitest';
import { changeWords, nothingChanged, roomFor } from '../../../extension/ui/recipe/change-list.tsx';
import { changesOf, partedChanges } from '../../../extension/ui/recipe/changes.ts';
import { adaptedPage } from '../adapted.ts';

const PAGES = ['milk-rolls.html', 'lemon-cake.html', 'weeknight-pasta.html', 'rice-pudding.html'];

describe.each(PAGES)('what to do with %s', (page) => {
  const adaptation = adaptedPage(page);
  const changes = changesOf(adaptation);

  it('accounts for every gram of the plan that is not as it was', () => {
    const named = changes.flatMap(({ keptG, to }) => [keptG, ...to.map(({ grams }) => grams)]);
    const same = adaptation.ingredients.filter(({ key }) =>
      changes.every((one) => one.key !== key),
    );
    const untouched = adaptation.plan.items.filter(({ key }) =>
      same.some((one) => one.key === key),
    );
    const all = adaptation.plan.items.reduce((sum, { grams }) => sum + grams, 0);
    const told = [...named, ...untouched.map(({ grams }) => grams)].reduce((sum, g) => sum + g, 0);
    expect(told).toBeCloseTo(all, 6);
  });

  it('shows at most four at once and folds the rest', () => {
    const { main, small } = partedChanges(changes);
    expect(main.length).toBeLessThanOrEqual(4);
    expect([...main, ...small].map(({ key }) => key).sort()).toEqual(
      changes.map(({ key }) => key).sort(),
    );
    expect(small.length).not.toBe(main.length < 4 ? 1 : -1);
  });

  it('names what comes in with its grams', () => {
    for (const change of changes) {
      const lines = changeWords(change);
      const first = change.keptG > 0 ? change.from : change.to[0];
      if (first) expect(`${lines[0]?.amount} ${lines[0]?.text}`).toContain(first.food);
      for (const { amount, text } of lines) {
        expect(text).not.toMatch(/undefined|NaN|\$\d/);
        expect(`${amount} ${text}`).toMatch(/\d g/);
      }
    }
  });

  it('has at most four amounts in sight where the first change leaves room, and loses no change', () => {
    const { main, small } = partedChanges(changes);
    const { shown, folded } = roomFor(main, small, 4);
    expect(shown[0]).toBe(main[0]);
    if (shown.length > 1) expect(shown.flatMap(changeWords).length).toBeLessThanOrEqual(4);
    expect([...shown, ...folded].length).toBe(changes.length);
  });
});

describe('where no food changes', () => {
  it('says so of a dish that fits as it is', () => {
    const fits = adaptedPage('rice-pudding.html', { budgetG: 60 });
    expect(changesOf(fits)).toEqual([]);
    expect(nothingChanged(fits)).toBe('Nothing has to change.');
  });

  it('never says that nothing has to change of a dish that is too much', () => {
    const tight = adaptedPage('rice-pudding.html', { budgetG: 2 });
    expect(tight.verdict.state).toBe('tooMuch');
    expect(nothingChanged(tight)).toBe('No change worth making brings it within the budget.');
  });
});
