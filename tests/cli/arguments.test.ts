/** Words of the command line become a job, or a message that says what is wrong with them. */
import { describe, expect, it } from 'vitest';
import { readArguments, UsageError } from '../../engine/cli/arguments.ts';

const PAGE = 'page.html';

describe('arguments', () => {
  it('become a job', () => {
    const job = readArguments([
      'adapt',
      PAGE,
      '--budget',
      '12',
      '--avoid',
      'nuts,milk',
      '--jobs',
      '3',
    ]);
    expect(job).toMatchObject({ verb: 'adapt', files: [PAGE], threads: 3, charset: null });
    expect(job.goals).toMatchObject({ budgetG: 12, avoid: ['tree nuts', 'milk'] });
  });

  it('have sensible defaults', () => {
    const job = readArguments(['read', PAGE]);
    expect(job.threads).toBeGreaterThanOrEqual(1);
    expect(job.limitSeconds).toBeGreaterThan(1);
    expect(job.goals.budgetG).toBe(15);
  });

  it.each([
    ['no verb', []],
    ['an unknown verb', ['bake', PAGE]],
    ['no page', ['read']],
    ['pages and a list', ['read', PAGE, '--files-from', '-']],
    ['lines with a page', ['lines', PAGE]],
    ['a word for a number', ['adapt', PAGE, '--budget', 'little']],
    ['no servings', ['adapt', PAGE, '--servings', '0']],
    ['an unknown region', ['adapt', PAGE, '--net-carbs', 'mars']],
    ['an unknown allergen', ['adapt', PAGE, '--avoid', 'gravel']],
    ['an unknown option', ['adapt', PAGE, '--colour', 'red']],
    ['an unknown encoding', ['read', PAGE, '--charset', 'baker-8']],
    ['no job at all', ['read', PAGE, '--jobs', '0']],
    ['no time at all', ['read', PAGE, '--limit', '0']],
    ['own foods for lines', ['lines', '--own-foods', 'x.json']],
    ['own foods for reading', ['read', PAGE, '--own-foods', 'x.json']],
  ])('are refused: %s', (_, words) => {
    expect(() => readArguments(words)).toThrow(UsageError);
  });
});
