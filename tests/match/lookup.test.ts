/** Names under their keys: as they were taken apart, as a build holds them, with the user's own foods before them. */
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { lookupOf } from '../../engine/match/lookup.ts';
import { bareTokens, keyOf, keysOf, namesOf, orderlessKey } from '../../engine/match/name-keys.ts';
import { tokensOf } from '../../engine/match/normalise.ts';
import { type Phrase, phrasesOf } from '../../engine/match/phrases.ts';
import { READY_KEYS } from '../../engine/match/ready-keys.ts';
import type { Food } from '../../engine/model.ts';

const { foods } = foodTable();
const named = (id: string): Food => foods.find((food) => food.id === id) as Food;

const OWN: readonly Food[] = [
  { ...named('bread-flour'), id: 'own-1', name: 'Mill loaf flour', aliases: ['corn starch'] },
  { ...named('sugar'), id: 'own-2', name: 'sugar', aliases: [] },
];

const said = (phrases: readonly Phrase[]): string[] =>
  phrases.map(
    ({ food, order, isName, tokens }) => `${order} ${food.id} ${isName} ${tokens.join(' ')}`,
  );

describe('keys of names', () => {
  it('are none in the sources, so that nothing can be out of date', () => {
    expect(READY_KEYS).toBeNull();
  });

  it('are the same once written and read again, as a build does', () => {
    const keys = keysOf(foods);
    const read = JSON.parse(JSON.stringify(keys));
    expect(read).toEqual(keys);
    expect(Object.keys(read.byWord)).toEqual(Object.keys(keys.byWord));
  });

  it('lead to every name of every food, in any order of its words and without its weak ones', () => {
    const lookup = lookupOf(foodTable());
    const lost = foods.flatMap((food) =>
      namesOf(food).filter((name) => {
        const tokens = tokensOf(name);
        if (tokens.length === 0) return false;
        const ways = [
          lookup.exact(keyOf(tokens)),
          lookup.anyOrder(orderlessKey(tokens)),
          lookup.bare(keyOf(bareTokens(tokens))),
        ];
        return ways.some((found) => !found.some((phrase) => phrase.food === food));
      }),
    );
    expect(lost).toEqual([]);
  });

  it('know nothing of words that every object has', () => {
    const lookup = lookupOf(foodTable());
    for (const word of ['constructor', 'toString', '__proto__', 'hasOwnProperty']) {
      expect(lookup.exact(word)).toEqual([]);
      expect(lookup.isName(word)).toBe(false);
      expect(lookup.isWord(word)).toBe(false);
    }
  });
});

describe("the user's own foods", () => {
  it('stand before the built-in ones, under the same keys as if all had been taken apart together', () => {
    const table = foodTable(OWN);
    const layered = lookupOf(table);
    const keys = keysOf(table.foods);
    const together = phrasesOf(table.foods, 0, keys);
    for (const kind of ['exact', 'bare', 'anyOrder', 'byWord'] as const) {
      const differing = Object.keys(keys[kind]).filter(
        (key) => said(layered[kind](key)).join() !== said(together[kind](key)).join(),
      );
      expect(differing, kind).toEqual([]);
    }
    expect([...layered.heads].sort()).toEqual([...keys.heads].sort());
    expect(said(layered.exact('cornstarch'))[0]).toBe('0 own-1 false corn starch');
    expect(said(layered.exact('sugar'))[0]).toBe('1 own-2 true sugar');
  });

  it('shadow a built-in food of their id, of which no name is left', () => {
    const changed = { ...named('bread-flour'), name: 'quern flour', aliases: [] };
    const lookup = lookupOf(foodTable([changed]));
    expect(said(lookup.exact('quernflour'))).toEqual(['0 bread-flour true quern flour']);
    expect(lookup.exact('breadflour').filter(({ food }) => food.id === 'bread-flour')).toEqual([]);
  });
});
