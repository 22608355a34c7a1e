import { expect, it } from 'vitest';
import { keptFor, keptResults } from '../engine/kept-results.ts';

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

it('keeps a result as long as the object it is of, also one that is nothing', () => {
  const asked: object[] = [];
  const first = keptFor((of: { list: number[] }) => {
    asked.push(of);
    return of.list[0];
  });
  const [one, none] = [{ list: [3] }, { list: [] }];
  expect([first(one), first(none), first(one), first(none)]).toEqual([3, undefined, 3, undefined]);
  expect(asked).toEqual([one, none]);
});
