/** Every row of the planner's tables is well formed, and a wrong one is told in a sentence. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import classes from '../../../engine/plan/data/classes.json' with { type: 'json' };
import families from '../../../engine/plan/data/families.json' with { type: 'json' };
import keeps from '../../../engine/plan/data/keeps.json' with { type: 'json' };
import {
  FamilyFile,
  FoodClass,
  KeepRow,
  SodaAcid,
  SwapFile,
  SwapRow,
  WordLists,
} from '../../../engine/plan/data/schemas.ts';
import acids from '../../../engine/plan/data/soda-acids.json' with { type: 'json' };
import { SWAP_FILES } from '../../../engine/plan/data/swap-files.ts';
import lists from '../../../engine/plan/data/word-lists.json' with { type: 'json' };
import { foods } from '../build.ts';
import { rowFaults, unknownNames } from './row-faults.ts';

const FILES = Object.entries(SWAP_FILES).map(([name, file]) => ({ name, file }));
const CLASSES = new Set(classes.map((row) => row.class));
const LISTS: Readonly<Record<string, readonly string[]>> = lists;

/** Words are looked for in small letters without accents, spaces in place of all else. */
const isPlain = (word: string): boolean => /^@?[a-z0-9 -]+$/.test(word) && !/ {2}|\w-\w/.test(word);

describe('swap files', () => {
  it('are all read', () => {
    const folder = new URL('../../../engine/plan/data/swaps/', import.meta.url);
    expect(FILES.map(({ name }) => `${name}.json`).sort()).toEqual(readdirSync(folder).sort());
  });

  it.each(FILES)('$name holds well formed rows', ({ name, file }) => {
    const where = `swaps/${name}.json`;
    expect(rowFaults(where, file.swaps, SwapRow)).toEqual([]);
    expect(SwapFile.safeParse(file).success).toBe(true);
    const naming = (of: (row: SwapRow) => readonly string[]) =>
      (file.swaps as SwapRow[]).map((row) => ({ id: row.id, names: of(row) }));
    const isFood = (id: string): boolean => foods.byId(id) !== null;
    expect([
      ...unknownNames(
        where,
        naming((r) => r.replaces),
        (c) => CLASSES.has(c),
        'class',
      ),
      ...unknownNames(
        where,
        naming((r) => r.to.map(({ food }) => food)),
        isFood,
        'food',
      ),
      ...unknownNames(
        where,
        naming((r) => r.only ?? []),
        isFood,
        'food',
      ),
      ...unknownNames(
        where,
        naming((r) => [...(r.when ?? []), ...(r.unless ?? [])]),
        (word) => (word.startsWith('@') ? word.slice(1) in LISTS : isPlain(word)),
        'list, or plain word,',
      ),
    ]).toEqual([]);
  });
});

describe('the other tables', () => {
  it('hold well formed rows', () => {
    expect(rowFaults('classes.json', classes, FoodClass)).toEqual([]);
    expect(rowFaults('keeps.json', keeps, KeepRow)).toEqual([]);
    expect(rowFaults('soda-acids.json', acids, SodaAcid)).toEqual([]);
    expect(rowFaults('families.json', [families], FamilyFile)).toEqual([]);
    expect(rowFaults('word-lists.json', [lists], WordLists)).toEqual([]);
    expect(
      Object.values(LISTS)
        .flat()
        .filter((word) => !isPlain(word)),
    ).toEqual([]);
  });

  it('name foods that exist', () => {
    const named = [...classes, ...acids].flatMap((row) => row.foods);
    expect(named.filter((id) => foods.byId(id) === null)).toEqual([]);
  });
});

describe('a wrong row', () => {
  const row = { id: 'rice-to-x', replaces: ['rice-dry'], in: ['*'], cost: 0.3, effect: 'Softer.' };
  const to = [{ food: 'cauliflower', ratio: 2.6 }];

  it.each([
    [
      'a share above one',
      { ...row, to, cap: 1.5 },
      /^f\.json, row 1 \(rice-to-x\): its "cap" is wrong: .*<=1\.$/,
    ],
    ['a field that is not known', { ...row, to, cap: 1, prise: 2 }, /not known: prise\.$/],
    ['a family that does not exist', { ...row, to, cap: 1, in: ['soups'] }, /its "in\.0" is wrong/],
    ['a stand-in without grams', { ...row, to: [{ food: 'turnip' }], cap: 1 }, /"to\.0\.ratio"/],
  ])('with %s is told with file, row and field', (_, wrong, sentence) => {
    const faults = rowFaults('f.json', [wrong], SwapRow);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(sentence);
  });

  it('with a class that does not exist names it', () => {
    expect(unknownNames('f.json', [{ id: 'a', names: ['rices'] }], () => false, 'class')).toEqual([
      'f.json, row 1 (a): there is no class "rices".',
    ]);
  });
});
