/** What is said of a budget that a dish cannot meet: nothing that a cook would laugh at. */
import { describe, expect, it } from 'vitest';
import { adapted, type Pasted } from './pasted.ts';

const dish = (title: string, lines: string[], steps: string[]): Pasted => ({
  title,
  serves: 'Serves 4',
  lines,
  steps,
  family: ['other'],
});

const PAN_FRUIT = dish(
  'Pears from the pan',
  ['1600 g pears', '100 g sesame seeds', '60 g butter', '40 g balsamic vinegar'],
  ['Fry the pears in the butter, strew with sesame and sprinkle with vinegar.'],
);

const said = (recipe: Pasted) =>
  adapted(recipe, { way: 'within' }).plan.limits.map(({ code, text }) => `${code} ${text}`);

describe('a budget out of reach', () => {
  it('asks for less of what is sweet or starchy, not of seeds and seasoning', () => {
    const stuck = said(PAN_FRUIT).filter((text) => text.startsWith('NO_SWAP'));
    expect(stuck.join()).toMatch(/pear/);
    expect(stuck.join()).not.toMatch(/vinegar|sesame/);
  });

  it('promises no third of a plate', () => {
    expect(said(PAN_FRUIT).join()).not.toMatch(/MORE_SERVINGS/);
  });

  it('names half a plate', () => {
    const less = { ...PAN_FRUIT, lines: ['700 g pears', '60 g butter'] };
    expect(said(less).join()).toMatch(/MORE_SERVINGS Cut into [5-8] servings/);
  });
});
