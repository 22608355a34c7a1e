/** New foods are told how they are handled, cut and when they go in. */
import { describe, expect, it } from 'vitest';
import type { Family } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

interface Dish {
  lines: string[];
  steps: string[];
  changes: Change[];
  family?: Family;
  method?: string;
  language?: string;
}

function reworked({ lines, steps, changes, family = 'other', method, language = 'en' }: Dish) {
  const recipe = { ...makeRecipe('A dish', lines, steps), language };
  const read = understand(recipe);
  const plan = makePlan(family, read, changes);
  const swaps = plan.swaps.map((swap) => (method === undefined ? swap : { ...swap, method }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' });
}

const stepsOf = (dish: Dish): string[] => reworked(dish).steps.map(({ after }) => after);
const notesOf = (dish: Dish): string[] =>
  reworked(dish).methodNotes.flatMap(({ text }) => text ?? []);

const CURRY = ['300 g basmati rice', '400 g cod'];
const RICED: Change[] = [{ key: '0', kept: 0, to: [['cauliflower', 700]] }];

describe('a page without a method', () => {
  it('has a note on each new food', () => {
    const dish: Dish = { lines: CURRY, steps: [], changes: RICED, family: 'rice-dish' };
    expect(notesOf(dish)).toEqual([expect.stringMatching(/^Chop the cauliflower to grains/)]);
    expect(notesOf({ ...dish, language: 'de' })).toEqual([
      expect.stringMatching(/Blumenkohl.*(?:Körner|zerkleinern|hacken)/),
    ]);
    expect(notesOf({ ...dish, language: 'fi' })).toEqual([]);
    expect(reworked(dish).steps).toEqual([]);
  });

  it('names the food that a handling only speaks of', () => {
    const changes: Change[] = [{ key: '0', kept: 0, to: [['konjac-rice', 700]] }];
    const dish: Dish = { lines: CURRY, steps: [], changes, method: 'Stir in at the end.' };
    expect(notesOf(dish)[0]).toMatch(/konjac/i);
  });
});

describe('a note on what no step names', () => {
  const chocolate: Change[] = [{ key: '1', kept: 0, to: [['sugar-free-chocolate-chips', 100]] }];
  const lines = ['200 g flour', '100 g dark chocolate'];

  it('says that the page never puts it in', () => {
    const dish: Dish = { lines, steps: ['Mix the flour with water.', 'Bake.'], changes: chocolate };
    expect(notesOf(dish)).toEqual([
      expect.stringMatching(/^The page's own steps never say when the .*chocolate.* in\.$/),
    ]);
  });

  it('is none where a step names it by one of its words, or as all ingredients of a part', () => {
    const oats: Change[] = [{ key: '0', kept: 40, to: [] }];
    const porridge = ['80 g old-fashioned rolled oats', '300 ml milk'];
    expect(notesOf({ lines: porridge, steps: ['Simmer oats and milk.'], changes: oats })).toEqual(
      [],
    );
    const together = ['Put the ingredients for the sponge in a bowl and whisk.', 'Bake.'];
    expect(notesOf({ lines, steps: together, changes: chocolate })).toEqual([]);
    const flour: Change[] = [{ key: '0', kept: 0, to: [['almond-flour', 60]] }];
    const coat = ['60 g one of these: plain flour or quinoa flour', '400 g chicken'];
    const dredge = ['Dredge the chicken in the flour mixture.'];
    expect(notesOf({ lines: coat, steps: dredge, changes: flour })).toEqual([]);
  });
});

describe('what stands for several pieces', () => {
  it('is spoken of as several', () => {
    const changes: Change[] = [{ key: '0', kept: 0, to: [['tortilla-low-carb', 240]] }];
    const dish: Dish = {
      lines: ['6 flour tortillas', '300 g ground beef'],
      steps: ['Fry the ground beef.', 'Fill the tortillas with it.'],
      changes,
      method: 'Warm it so that it does not crack.',
    };
    expect(stepsOf(dish).join(' ')).toMatch(
      /Warm the [a-z-]+ tortillas so that they do not crack\./,
    );
    expect(stepsOf({ ...dish, lines: ['1 flour tortilla', '300 g beef'] }).join(' ')).not.toMatch(
      /they do not crack/,
    );
  });
});

describe('a pot of water', () => {
  const lines = ['300 g manicotti', '500 g ground beef', '400 g tomato sauce'];
  const changes: Change[] = [{ key: '0', kept: 0, to: [['egg', 300]] }];
  const steps = [
    'Heat the oven. Meanwhile, bring a large pot of heavily salted water to a boil. Grease a dish.',
    'Boil the manicotti until al dente.',
    'Fill the manicotti with the ground beef and bake for 30 minutes.',
  ];

  it('is not heated where nothing is boiled', () => {
    expect(stepsOf({ lines, steps, changes, family: 'pasta-dish' })[0]).toBe(
      'Heat the oven. Grease a dish.',
    );
  });

  it('stays where something else goes into it', () => {
    const greens = [...steps.slice(0, 2), 'Blanch the spinach in it.', ...steps.slice(2)];
    expect(stepsOf({ lines, steps: greens, changes, family: 'pasta-dish' })[0]).toMatch(/pot of/);
  });
});

describe('what goes on meanwhile', () => {
  it('still does with another food', () => {
    const steps = [
      'Fry the cod in a pan.',
      'Meanwhile, cook the rice according to the packet.',
      'Serve the cod with the rice.',
    ];
    const changes: Change[] = [{ key: '0', kept: 0, to: [['konjac-rice', 700]] }];
    const told = stepsOf({ lines: CURRY, steps, changes, family: 'rice-dish' });
    expect(told[1]).toMatch(/^Meanwhile, rinse the konjac rice/);
  });
});

describe('a vegetable in place of potatoes', () => {
  const lineOf = (line: string, id: string): string | null =>
    reworked({
      lines: [line],
      steps: ['Cook the potatoes.'],
      changes: [{ key: '0', kept: 0, to: [[id, 500]] }],
      family: 'potato-dish',
    }).lines[0]?.after ?? null;

  it('is cut where the page cuts nothing that is as large', () => {
    expect(lineOf('600 g potatoes, peeled and diced', 'cauliflower')).toMatch(/, in florets/);
    expect(lineOf('600 g potatoes, grated', 'cauliflower')).not.toMatch(/florets/);
    expect(lineOf('600 g baby potatoes', 'turnip')).toMatch(/peeled, in pieces as large as/);
    expect(lineOf('600 g potatoes, scrubbed and cut into 8 wedges', 'turnip')).toMatch(
      /peeled and cut like the potato/,
    );
    expect(lineOf('600 g potatoes', 'turnip')).not.toMatch(/peeled/);
  });
});

describe('a handling with its place', () => {
  const soup = ['500 g potatoes', '1 l stock', '100 g leek'];
  const changes: Change[] = [{ key: '0', kept: 200, to: [['chayote', 300]] }];

  it('simmers where the page simmers', () => {
    const steps = [
      'Fry the leek. Add the potatoes and cook for 2 minutes.',
      'Add the stock and boil for 12 minutes until the potatoes are tender.',
    ];
    const method = 'Simmer as long as the potato; it thickens nothing.';
    const told = stepsOf({ lines: soup, steps, changes, method, family: 'potato-dish' });
    expect(told[0]).not.toMatch(/thickens nothing/);
    expect(told[1]).toMatch(/tender\. Simmer the chayote as long as the potato/);
  });

  it('has a pan of its own before the pan that is full', () => {
    const steps = [
      'Fry the cod.',
      'Combine everything: Return the cod to the pan with the cold rice.',
    ];
    const method = 'Rinse, press dry and fry hot.';
    const changes: Change[] = [{ key: '0', kept: 0, to: [['hearts-of-palm-rice', 400]] }];
    const lines = ['500 g cold cooked rice', '400 g cod'];
    const told = stepsOf({ lines, steps, changes, method, family: 'rice-dish' });
    expect(told[1]).toMatch(/^Rinse the hearts of palm rice, press dry and fry hot\.$/);
    expect(told[2]).toMatch(/^Combine everything: Return/);
  });
});
