/** What a page keeps back of its own foods is counted where it is made, once. Invented recipe. */
import { describe, expect, it } from 'vitest';
import { adapted } from '../plan/pasted.ts';

const PASTA_WITH_CRUMBS = {
  title: 'Pasta with pepper sauce and crumbs',
  serves: 'Serves 8',
  lines: [
    '400 g fusilli',
    '120 g sourdough bread',
    '300 g roasted peppers, drained',
    '4 tbsp olive oil',
    'Reserved crumbs from the sauce',
  ],
  steps: [
    'Toast the bread, blend it to crumbs and reserve half of them.',
    'Blend the peppers with the other half and the oil.',
    'Boil the fusilli, drain, toss with the sauce and strew with the reserved crumbs.',
  ],
  family: ['pasta-dish' as const],
};

describe('a line that keeps back what another line is', () => {
  it('is listed with its reason, not counted twice, and does not make the verdict unsure', () => {
    const { before, verdict } = adapted(PASTA_WITH_CRUMBS, { budgetG: 15 });
    expect(before.uncounted.filter(({ text }) => /Reserved/.test(text))).toMatchObject([
      { why: 'kept back of what other lines hold' },
    ]);
    expect(verdict.state).not.toBe('fitsAsCounted');
  });

  it('is missing where it says not whence and no line counts it', () => {
    const lines = [...PASTA_WITH_CRUMBS.lines.slice(0, 4), 'Reserved cooked rice'];
    const { verdict } = adapted({ ...PASTA_WITH_CRUMBS, lines }, { budgetG: 15 });
    expect('missing' in verdict && verdict.missing.map(({ text }) => text)).toContain(
      'Reserved cooked rice',
    );
  });
});
