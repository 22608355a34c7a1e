/** A language without words here: what is added is English, says so, and stands beside the page's own sentences. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

type Family = Parameters<typeof makePlan>[0];

function polish(family: Family, lines: string[], steps: string[], changes: Change[]) {
  const recipe = { ...makeRecipe('Danie', lines, steps), language: 'pl' };
  const read = understand(recipe);
  const plan = makePlan(family, read, changes);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' });
}

const STEPS = ['Zagotuj wodę.', 'Dodaj rice i mieszaj.', 'Podawaj gorące.'];

describe('a food that a step of such a page names', () => {
  it('is said beside the step to be another one now, and the step keeps its words', () => {
    const { steps } = polish('rice-dish', ['300 g rice', '100 g onion'], STEPS, [
      { key: '0', kept: 0, to: [['cauliflower', 400]] },
    ]);
    const at = steps.findIndex(({ before }) => before === STEPS[1]);
    expect(steps[at]?.after).toBe(STEPS[1]);
    expect(steps[at - 1]).toMatchObject({
      after: 'In English: “rice” in the next step is 400 g cauliflower now.',
      change: 'inserted',
      lang: 'en',
    });
  });

  it('is said to be less, with what goes in beside it', () => {
    const told = polish('rice-dish', ['300 g rice'], STEPS, [
      { key: '0', kept: 100, to: [['cauliflower', 200]] },
    ]).steps.map(({ after }) => after);
    expect(told.join('\n')).toMatch(
      /Of “rice” in the next step take 100 g, and 200 g cauliflower with it\./,
    );
  });

  it('is known by its stem, and each line of one name in turn', () => {
    const told = polish(
      'cake',
      ['150 g sugar', '40 g sugar', '200 g flour'],
      ['Wymieszaj sugars i mąkę.', 'Ubij serek i sugar.', 'Piecz.'],
      [
        { key: '0', kept: 50, to: [['allulose', 100]] },
        { key: '1', kept: 10, to: [['allulose', 30]] },
      ],
    ).steps.map(({ after }) => after);
    const text = told.join('\n');
    expect(text).toMatch(/“sugars” in the next step take 50 g[^\n]*\nWymieszaj/);
    expect(text).toMatch(/“sugar” in the next step take 10 g[^\n]*\nUbij/);
  });

  it('is known by a word of its root', () => {
    const told = polish(
      'cake',
      ['200 g chocolate chips', '200 g flour'],
      ['Dodaj chocolatową masę.', 'Piecz.'],
      [{ key: '0', kept: 0, to: [['chocolate-sugar-free', 200]] }],
    ).steps.map(({ after }) => after);
    expect(told.join('\n')).toMatch(/“chocolatową” in the next step is 200 g/);
  });

  it('is not spoken of where nothing changed', () => {
    const { steps } = polish('rice-dish', ['300 g rice', '100 g onion'], STEPS, [
      { key: '1', kept: 50, to: [] },
    ]);
    expect(steps.map(({ after }) => after).join(' ')).not.toMatch(/rice” in the next/);
  });
});

it('lines and steps of our own say that they are English', () => {
  const { lines, steps } = polish('rice-dish', ['300 g rice'], STEPS, [
    { key: '0', kept: 0, to: [['cauliflower', 400]] },
  ]);
  expect(lines.map(({ after }) => after)).toEqual([
    '400 g cauliflower, trimmed weight (English name)',
  ]);
  const own = steps.filter(({ change }) => change === 'inserted');
  expect(own.length).toBeGreaterThan(0);
  expect(own.every(({ after, lang }) => after.startsWith('In English: ') && lang === 'en')).toBe(
    true,
  );
});
