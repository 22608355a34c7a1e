import { describe, expect, it } from 'vitest';
import type { RewrittenLine } from '../../../../engine/model.ts';
import { reasonOf } from '../../../../extension/ui/recipe/lines/row-reasons.ts';

const row = (key: string, why: string | null): RewrittenLine => ({
  key,
  before: null,
  after: 'x',
  change: 'replaced',
  group: null,
  why,
});

describe('reasons of the rows of one replaced line', () => {
  const tail = 'together the net carbs fall from 40.0 to 8.0 g a serving; no sugar stays.';
  const rows = [
    row('0', `Makes up 60 %; ${tail}`),
    row('0>erythritol', `Makes up 40 %; ${tail}`),
    row('0>gum', `Makes up 60 %; ${tail}`),
    row('1', `Makes up 60 %; ${tail}`),
    row('2', null),
  ];

  it('says on a later row only what is its own, and nothing when nothing is', () => {
    expect(rows.map((one) => reasonOf(one, rows))).toEqual([
      `Makes up 60 %; ${tail}`,
      'Makes up 40 %.',
      null,
      `Makes up 60 %; ${tail}`,
      null,
    ]);
  });
});
