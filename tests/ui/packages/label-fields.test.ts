import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodFromLabel } from '../../../engine/index.ts';
import { SWAP_RULES } from '../../../engine/plan/dish/swap-rules.ts';
import {
  type Draft,
  draftFrom,
  EMPTY_DRAFT,
  FIELDS,
  labelFrom,
  OWN,
  standIns,
  typedFigure,
} from '../../../extension/ui/packages/label-fields.ts';
import { blendEu, blendUs } from '../../foods/label/labels.ts';

const typedUs: Draft = {
  ...EMPTY_DRAFT,
  name: 'Soft Mill bread blend',
  form: 'us',
  typed: {
    servingG: '30',
    energyKcal: '80',
    fatG: '0.5',
    saturatedG: '0',
    sodiumMg: '10',
    carbohydrateG: '14',
    fiberG: ' 8 ',
    sugarsG: '0',
    proteinG: '11',
  },
  allergens: ['wheat', 'gluten', 'soy'],
  standsInFor: 'low-carb-wheat-flour-blend',
  glutenAmongFirst: true,
  otherProteins: true,
};

describe('typed figures', () => {
  it.each([
    ['12', 12],
    ['1,5', 1.5],
    ['<1', '<1'],
    ['', null],
    ['  ', null],
    ['12 g', undefined],
    ['-3', undefined],
    ['1e3', undefined],
    ['1.2.3', undefined],
  ])('%j is %j', (text, value) => expect(typedFigure(text)).toBe(value));

  it('are never a number that was not typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), (text) => {
        const value = typedFigure(text);
        if (typeof value === 'number') expect(text.trim()).toMatch(/^\d+([.,]\d+)?$/);
      }),
    );
  });
});

describe('a draft', () => {
  it('of each form becomes the label that was typed', () => {
    expect(labelFrom(typedUs)).toEqual(blendUs());
    const eu = {
      energyKcal: '299',
      fatG: '1,2',
      saturatedG: '0.3',
      carbohydrateG: '21',
      fiberG: '26',
      sugarsG: '1',
      proteinG: '38',
      saltG: '0.1',
    };
    expect(labelFrom({ ...typedUs, form: 'eu', typed: eu })).toEqual(blendEu());
  });

  it('ignores what was typed into the other form', () => {
    const both = { ...typedUs, typed: { ...typedUs.typed, saltG: '3' } };
    expect(labelFrom(both)).toMatchObject({ saltG: null });
  });

  it('names every field that is missing or cannot be read', () => {
    const errors = labelFrom({ ...EMPTY_DRAFT, typed: { fatG: 'much', fiberG: '1g' } });
    expect('length' in errors && errors.map(({ field }) => field)).toEqual([
      'name',
      'standsInFor',
      'servingG',
      'energyKcal',
      'fatG',
      'carbohydrateG',
      'fiberG',
      'proteinG',
    ]);
  });

  it('takes 0 as a figure', () => {
    const zeros = Object.fromEntries(FIELDS.eu.map(({ name }) => [name, '0']));
    const draft = { ...typedUs, form: 'eu' as const, typed: zeros, standsInFor: OWN };
    expect(labelFrom(draft)).toMatchObject({ carbohydrateG: 0, saltG: 0, standsInFor: null });
  });
});

describe('a kept label', () => {
  it.each([
    ['US', blendUs()],
    ['EU', blendEu()],
    ['with less than 1 g', blendUs({ fiberG: '<1', sugarsG: null })],
    ['of a food of its own', blendEu({ standsInFor: null, allergens: [] })],
  ])('%s fills the form so that the same label comes out again', (_, label) => {
    expect(labelFrom(draftFrom(label))).toEqual(label);
  });
});

describe('what a package may stand in for', () => {
  const ids = standIns().flatMap(([, foods]) => foods.map((food) => food.id));

  it('begins with the wheat flour blend and holds no food twice', () => {
    expect(ids[0]).toBe('low-carb-wheat-flour-blend');
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(expect.arrayContaining(['erythritol', 'coconut-flour', 'bread-flour']));
  });

  it('holds a food for every swap that says to enter a label', () => {
    const asking = SWAP_RULES.filter((swap) => swap.cautions.join().includes("package's label"));
    expect(asking.length).toBeGreaterThan(5);
    // A swap may bring plain foods beside the bought one: butter, eggs, cocoa.
    const without = asking.filter(({ to }) => !to.some(({ food }) => ids.includes(food)));
    expect(without.map(({ id }) => id)).toEqual([]);
  });

  it('is taken by the engine, each of them', () => {
    for (const standsInFor of ids)
      expect(foodFromLabel(blendEu({ standsInFor })), standsInFor).toMatchObject({
        ok: true,
        food: { id: standsInFor, name: 'Soft Mill bread blend' },
      });
  });
});
