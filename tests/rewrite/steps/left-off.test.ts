/** What is put on by choice and breaks the budget is marked where it is put on. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { MissingLine, RewrittenStep } from '../../../engine/model.ts';
import { mentionsOf } from '../../../engine/rewrite/naming/mentions.ts';
import { withLeftOff } from '../../../engine/rewrite/steps/left-off.ts';
import { makePlan, makeRecipe, understand } from '../fixtures.ts';

const missing = (key: string): MissingLine => ({
  key,
  text: '',
  why: 'optional, so not in the totals',
  kind: 'dried fruit',
  netCarbsG: { low: 5, best: 6, high: 7 },
});

/** `ours`: a sentence that was added to the first step; `above`: the serving is past the budget by itself. */
function marked(
  language: string,
  line: string,
  steps: string[],
  keys = ['1'],
  ours = '',
  above = false,
): string[] {
  const recipe = { ...makeRecipe('X', ['200 g spinach', line], steps), language };
  const read = understand(recipe);
  const plan = makePlan('other', read, []);
  const own = steps.map(
    (text, at): RewrittenStep => ({
      section: null,
      before: text,
      after: at === 0 && ours !== '' ? `${text} ${ours}` : text,
      change: 'kept',
      why: null,
    }),
  );
  return withLeftOff(own, keys.map(missing), mentionsOf(read, plan), language, above).map(
    ({ after }) => after,
  );
}

describe('a topping that takes a serving past the budget', () => {
  it('is marked in the step that strews it', () => {
    expect(
      marked('en', '40 g dried cranberries (optional)', [
        'Wash the spinach.',
        'Sprinkle with nuts and dried cranberries. Drizzle with oil.',
      ]),
    ).toEqual([
      'Wash the spinach.',
      'Sprinkle with nuts and dried cranberries. To keep to the budget, leave out the dried cranberries or take less. Drizzle with oil.',
    ]);
  });

  it('is not marked where only a sentence of ours has a word of its name', () => {
    const steps = ['Toss the spinach with lemon.', 'Serve with vanilla ice cream.'];
    const ours = 'Add a teaspoon of cream of tartar.';
    const [first, last] = marked('en', 'vanilla ice cream, for serving', steps, ['1'], ours);
    expect(first).toBe(`${steps[0]} ${ours}`);
    expect(last).toContain('leave out the vanilla ice cream');
  });

  it('is left out of a serving that is past the budget without it, by the first word of its name', () => {
    const line = '4 naan breads (optional)';
    const [told] = marked('en', line, ['Serve with spinach and warm naan.'], ['1'], '', true);
    expect(told).toMatch(/ Leave out the naan breads: a serving is past the budget without it\.$/);
    const [german] = marked(
      'de',
      '4 Brötchen (optional)',
      ['Mit Brötchen servieren.'],
      ['1'],
      '',
      true,
    );
    expect(german).toMatch(/Brötchen: weglassen, eine Portion liegt auch ohne/);
  });

  it('is not marked where it is counted', () => {
    expect(marked('en', '40 g dried cranberries', ['Strew the dried cranberries.'], [])).toEqual([
      'Strew the dried cranberries.',
    ]);
  });

  it.each([
    [
      'de',
      'Puderzucker',
      'Mit Puderzucker bestäuben.',
      'Puderzucker: weglassen oder weniger nehmen',
    ],
    ['fr', 'sucre glace', 'Saupoudrer de sucre glace.', 'Sucre glace : en mettre moins'],
    ['es', 'azúcar glas', 'Espolvorear con azúcar glas.', 'Azúcar glas: poner menos o nada'],
    [
      'it',
      'zucchero a velo',
      'Spolverizzare con zucchero a velo.',
      'Zucchero a velo: metterne meno',
    ],
    ['pt', 'açúcar em pó', 'Polvilhar com açúcar em pó.', 'Açúcar em pó: usar menos ou nada'],
    ['nl', 'poedersuiker', 'Bestrooi met poedersuiker.', 'Poedersuiker: laat weg of neem minder'],
    ['sv', 'florsocker', 'Pudra med florsocker.', 'Florsocker: uteslut eller ta mindre'],
    ['da', 'flormelis', 'Drys med flormelis.', 'Flormelis: udelad eller tag mindre'],
    ['nb', 'melis', 'Dryss med melis.', 'Melis: utelat eller ta mindre'],
  ])('%s: in the recipe’s language', (language, line, step, told) => {
    expect(marked(language, line, [step])[0]).toContain(`${step} ${told}`);
  });
});
