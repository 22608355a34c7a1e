import { expect, it } from 'vitest';
import { compareStates } from '../../../extension/ui/kept/compare-versions.ts';
import { adaptedPage } from '../adapted.ts';

const tight = adaptedPage('hearth-loaf.html', { budgetG: 12 });
const loose = adaptedPage('hearth-loaf.html', { budgetG: 20 });

it('two versions are told apart by figures and by the lines that differ', () => {
  const rows = compareStates(tight, loose);
  expect(rows.find(({ label }) => label === 'budget')).toMatchObject({
    here: '12 g',
    there: '20 g',
  });
  const lines = rows.filter(({ label }) => label === 'Ingredient');
  expect(lines.length).toBeGreaterThan(0);
  for (const { here, there } of lines) expect(here).not.toBe(there);
});

it('the same version differs in no line', () => {
  const rows = compareStates(tight, tight);
  expect(rows.filter(({ label }) => label === 'Ingredient')).toEqual([]);
  for (const { here, there } of rows) expect(here).toBe(there);
});
