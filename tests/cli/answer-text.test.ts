import { describe, expect, it } from 'vitest';
import { adaptText, changeText } from '../../engine/cli/answer-text.ts';
import { adaptRecord } from '../../engine/cli/answers.ts';
import { DEFAULT_GOALS, readText } from '../../engine/index.ts';

const salt = { food: 'salt', grams: 10 };
const blend = { food: 'flour blend', grams: 420 };
const base = { line: null, why: '' };

describe('a change in words', () => {
  it('tells less of a food from none of it, and shows what stays beside what comes', () => {
    expect(changeText({ ...base, from: salt, keptGrams: 9, to: [] })).toBe(
      'less: 10 g salt -> 9 g',
    );
    expect(changeText({ ...base, from: salt, keptGrams: 0, to: [] })).toBe('left out: 10 g salt');
    const flour = { food: 'bread flour', grams: 500 };
    expect(changeText({ ...base, from: flour, keptGrams: 80, to: [blend] })).toBe(
      '500 g bread flour -> 80 g bread flour + 420 g flour blend',
    );
    expect(changeText({ ...base, from: null, keptGrams: 0, to: [blend] })).toBe(
      'add 420 g flour blend',
    );
  });

  it('weighs as a kitchen scale shows', () => {
    const milk = { food: 'whole milk', grams: 30.4326 };
    expect(changeText({ ...base, from: milk, keptGrams: 15, to: [] })).toBe(
      'less: 30 g whole milk -> 15 g',
    );
  });
});

it('the lines of a reworked recipe stand under their headings', () => {
  const text = [
    'Biscuits',
    '',
    'Serves 4',
    '',
    'Ingredients',
    'For the dough:',
    '200 g flour',
    '100 g butter',
    'For the icing:',
    '100 g powdered sugar',
    '',
    'Method',
    'Rub the butter into the flour, roll out and bake.',
    'Ice with the powdered sugar.',
  ].join('\n');
  const read = readText(text);
  const [recipe] = read.ok ? read.recipes : [];
  if (recipe === undefined) throw new Error('not read');
  const told = adaptText(adaptRecord('x', recipe, DEFAULT_GOALS));
  const [list = ''] = told.split('\nMethod');
  expect(list).toMatch(/\n {2}For the dough:\n(?:.*flour\n)+/i);
  expect(list).toMatch(/butter\n {2}For the icing:\n/i);
});
