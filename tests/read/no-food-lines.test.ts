/** Lines in a list of ingredients that say where the list is, or what is not in a box, are no food. */
import { describe, expect, it } from 'vitest';
import { withoutNoFood } from '../../engine/read/strays.ts';

const kept = (lines: string[]): string[] =>
  withoutNoFood([{ title: null, lines }]).flatMap((group) => group.lines);

describe('a line that points elsewhere', () => {
  it.each([
    'Not included',
    '*Not included:',
    'For the full ingredient list see below',
    'See all ingredients above',
  ])('is dropped: %s', (line) => {
    expect(kept(['200 g lentils', line])).toEqual(['200 g lentils']);
  });

  it.each([
    '1 onion (not included in the box)',
    'For the sauce ingredients: 200 g tomatoes',
    'Salt',
  ])('stays where it is food: %s', (line) => {
    expect(kept(['200 g lentils', line])).toContain(line);
  });
});
