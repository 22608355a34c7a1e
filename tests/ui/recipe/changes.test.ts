import { describe, expect, it } from 'vitest';
import { changeWords } from '../../../extension/ui/recipe/change-list.tsx';
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
      const { amount, text } = changeWords(change);
      const first = change.keptG > 0 ? change.from : change.to[0];
      if (first) expect(`${amount} ${text}`).toContain(first.food);
      expect(text).not.toMatch(/undefined|NaN|\$\d/);
    }
  });
});
