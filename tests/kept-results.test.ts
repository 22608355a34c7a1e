import { expect, it } from 'vitest';
import { keptResults } from '../engine/kept-results.ts';

it('asks once for each text and forgets all when it holds as many as it may', () => {
  const asked: string[] = [];
  const length = keptResults(2, (text) => {
    asked.push(text);
    return text.length;
  });
  expect([length('dough'), length('dough'), length('')]).toEqual([5, 5, 0]);
  expect(asked).toEqual(['dough', '']);
  expect([length('oven'), length('oven'), length('dough')]).toEqual([4, 4, 5]);
  expect(asked).toEqual(['dough', '', 'oven', 'dough']);
});
