/** The number in the sentence that cuts or shapes, and the sizes that stand beside it. */
import { describe, expect, it } from 'vitest';
import type { Family, RewrittenStep } from '../../../engine/model.ts';
import { withRecut } from '../../../engine/rewrite/recut/recut-step.ts';
import type { Servings } from '../../../engine/rewrite/recut/recut-words.ts';

const step = (after: string): RewrittenStep => ({
  section: null,
  before: after,
  after,
  change: 'kept',
  why: null,
});

function recut(
  texts: string[],
  servings: Servings,
  { language = 'en', family = 'enriched-yeast-bread' as Family } = {},
): string {
  const method = { steps: texts.map(step), methodNotes: [] };
  const { steps } = withRecut(method, servings, language, family);
  return steps.map(({ after }) => after).join('\n');
}

describe('what stands beside the number of pieces', () => {
  it('is the weight of a smaller piece', () => {
    const made = recut(['Divide the dough into 12 balls, 60 g each.', 'Bake.'], {
      page: 12,
      now: 18,
    });
    expect(made).toContain('into 18 balls, 40 g each');
  });

  it('is the width of a thinner slice, not the length of the log', () => {
    const made = recut(
      ['Roll into a 16 inch log. Cut 12 rolls about 1 1/2 inches wide with a thread.', 'Bake.'],
      { page: 12, now: 24 },
    );
    expect(made).toContain('a 16 inch log. Cut 24 rolls about ¾ inches wide');
  });

  it('is the page’s width where the roll is made thinner', () => {
    const made = recut(
      ['Roll the dough up tightly. Cut 12 rolls about 1 1/2 inches wide.', 'Bake.'],
      { page: 12, now: 24 },
    );
    expect(made).toMatch(
      /up tightly\. Before you cut it, cut each roll of dough across in two.*Cut 24 rolls about 1½ inches wide/,
    );
  });

  it('is a smaller round, with as much less of its filling', () => {
    const made = recut(
      [
        'Divide the dough into 20 balls. Roll each ball into a 4-inch-wide circle. (Keep the others covered.) Place about 1 tablespoon of the cheese on each circle and fold it over.',
        'Bake 15 minutes.',
      ],
      { page: 20, now: 30 },
    );
    expect(made).toContain('into a 3¼-inch-wide circle.');
    expect(made).toContain('Place about 2 teaspoons of the cheese');
  });

  it('is less batter for each where it goes by the cup', () => {
    const made = recut(
      ['Scoop out 1/3 C of batter and pour into the waffle iron. Bake until golden.', 'Serve.'],
      { page: 9, now: 12 },
      { family: 'pancake' },
    );
    expect(made).toContain('Scoop out ¼ cup of batter');
  });

  it('says no longer what the page’s pieces are like', () => {
    const made = recut(
      ['Divide dough into 20 (2-ounce) balls (a little larger than a golf ball).', 'Bake.'],
      { page: 20, now: 32 },
    );
    expect(made).toContain('into 32 (1¼-ounce) balls.');
  });

  it('is a smaller cutter and a fuller tray', () => {
    const cut = recut(
      ['Cut out biscuits with a 2 1/2-inch round cutter.', 'Bake 12 minutes.'],
      {
        page: 8,
        now: 12,
      },
      { family: 'biscuit' },
    );
    expect(cut).toContain('with a 2-inch round cutter');
    const tray = recut(
      ['Scoop the dough. Place up to 4 large dough balls on each sheet.', 'Bake 12 minutes.'],
      { page: 12, now: 24 },
      { family: 'cookie' },
    );
    expect(tray).toContain('Place up to 8 dough balls on each sheet');
  });
});

describe('a whole that is cut', () => {
  it('is cut into slices where it is a loaf, into pieces where it is a cheesecake', () => {
    const loaf = recut(
      ['Scrape into a loaf pan and bake 50 minutes.', 'Cool, spoon the glaze over.'],
      {
        page: 12,
        now: 20,
      },
      { family: 'quick-bread' },
    );
    expect(loaf).toContain(
      'Cut it into 20 slices instead of 12, each about two thirds of the size.',
    );
    const cheese = recut(
      ['Pour into a springform pan and chill.', 'Serve cold.'],
      {
        page: 10,
        now: 14,
      },
      { family: 'custard' },
    );
    expect(cheese).toContain('Cut it into 14 pieces.');
  });

  it('has single flatbreads where the page gives several to a guest', () => {
    const made = recut(
      ['Separate the dough into golf ball sized chunks.', 'Cook in a hot skillet.', 'Serve warm.'],
      { page: 4, now: 12 },
      { family: 'tortilla' },
    );
    expect(made).toMatch(/chunks\. Make 12 in all; one is a serving\.\n/);
  });
});

describe('the number in other languages', () => {
  it.each([
    ['nl', 'Bakken en laten afkoelen. Snijd in 9-12 blokjes.', 'Snijd in 16 blokjes.'],
    ['de', 'Backen. Den Kuchen in 10 Stücke schneiden.', 'in 16 Stücke schneiden'],
    ['fr', 'Cuire, puis couper en 10 parts égales.', 'couper en 16 parts'],
    ['es', 'Hornear y cortar en 10 porciones.', 'cortar en 16 porciones'],
    ['it', 'Cuocere e tagliare in 10 fette.', 'tagliare in 16 fette'],
    ['pt', 'Assar e cortar em 10 fatias.', 'cortar em 16 fatias'],
    ['sv', 'Grädda och skär i 10 bitar.', 'skär i 16 bitar'],
    ['da', 'Bag og skær i 10 stykker.', 'skær i 16 stykker'],
    ['nb', 'Stek og skjær i 10 biter.', 'skjær i 16 biter'],
  ])('is put right in the step that has it (%s)', (language, text, put) => {
    const made = recut([text], { page: 10, now: 16 }, { language, family: 'cake' });
    expect(made).toContain(put);
    expect(made.match(/\b16\b/g)).toHaveLength(1);
  });

  it('of something else stays', () => {
    const made = recut(
      ['Bak 10 minuten in 10 cm water.', 'Serveer.'],
      { page: 10, now: 16 },
      { language: 'nl', family: 'cake' },
    );
    expect(made).toContain('Bak 10 minuten in 10 cm water.');
    expect(made).toContain('16 porties');
  });

  it('is less of a filling that is spooned into each', () => {
    const made = recut(
      [
        'Shape the dough into 24 balls.',
        'Bake for 10 minutes.',
        'Scoop the filling by rounded tablespoons into each.',
      ],
      { page: 24, now: 48 },
      { family: 'cookie' },
    );
    expect(made).toContain('Scoop the filling by 2 teaspoons into each.');
  });

  it('is a thinner log where slices of the same one would be flat', () => {
    const rolls = (now: number): string =>
      recut(
        ['Divide the dough in half. Roll each half up. Cut 12 slices from each half.', 'Bake.'],
        { page: 24, now },
      );
    expect(rolls(48)).toMatch(
      /Roll each half up\. Before you cut it, cut each roll of dough across in two.*flat\. Cut 24 slices/,
    );
    expect(rolls(36)).toMatch(/make each roll of dough longer and thinner/);
    expect(rolls(28)).not.toMatch(/Before you cut/);
  });

  it('counts boxes written with a cross', () => {
    const packed = recut(
      ['Simmer for 20 minutes.', 'Portion into 5x lunch boxes.'],
      { page: 5, now: 6 },
      { family: 'other' },
    );
    expect(packed).toMatch(/Portion into 6x lunch boxes\./);
    expect(packed).not.toMatch(/instead of 5/);
  });
});

describe('what goes into each piece', () => {
  it('is counted like the pieces', () => {
    const made = recut(
      [
        'Scoop 12 heaped teaspoons of cherry paste onto a tray and freeze them.',
        'Divide the dough into 12 equal portions.',
        'Wrap the dough around the paste and bake.',
      ],
      { page: 12, now: 20 },
      { family: 'cookie' },
    );
    expect(made).toContain('Scoop 20 small portions of cherry paste onto a tray');
    expect(made).toContain('into 20 equal portions');
  });

  it('stays where it counts something else', () => {
    const made = recut(
      ['Drop 6 tablespoons of butter into the pan.', 'Divide the dough into 12 balls.', 'Bake.'],
      { page: 12, now: 20 },
      { family: 'cookie' },
    );
    expect(made).toContain('Drop 6 tablespoons of butter');
  });
});

describe('pieces that bake cooler and are smaller', () => {
  it('have one time', () => {
    const made = recut(
      [
        'Divide the dough into 12 balls.',
        'Bake for 12 minutes. In the cooler oven it takes 1-2 minutes longer. Cool.',
      ],
      { page: 12, now: 14 },
      { family: 'cookie' },
    );
    expect(made).toMatch(
      /minutes\. In the cooler oven the smaller pieces take about as long as stated\. Cool/,
    );
    expect(made).not.toMatch(/sooner|longer/);
  });

  it('are looked at sooner where they are much smaller', () => {
    const made = recut(
      [
        'Divide the dough into 12 equal portions.',
        'Bake for 12 minutes. In the cooler oven it takes 1-2 minutes longer. Cool.',
      ],
      { page: 12, now: 20 },
      { family: 'cookie' },
    );
    expect(made).toMatch(/minutes\. Look at the smaller ones after about 9 minutes\. Cool/);
  });
});

it('cups of a tin are counted like pieces', () => {
  const made = recut(
    ['Divide the batter among the 12 cups and bake for 20 minutes.'],
    { page: 12, now: 18 },
    { family: 'quick-bread' },
  );
  expect(made).toContain('among the 18 cups');
  expect(made).not.toMatch(/Cut it/);
});
