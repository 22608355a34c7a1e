import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS, readText } from '../../../engine/index.ts';
import type { Family, MethodNote, RewrittenStep } from '../../../engine/model.ts';
import { withRecut } from '../../../engine/rewrite/recut/recut-step.ts';
import type { Servings } from '../../../engine/rewrite/recut/recut-words.ts';

const step = (after: string): RewrittenStep => ({
  section: null,
  before: after,
  after,
  change: 'kept',
  why: null,
});
const note = (at: number | null): MethodNote => ({
  key: '0',
  foodId: 'sugar',
  food: 'sugar',
  part: null,
  grams: 60,
  step: at,
  told: 'named',
  text: null,
});
const METHOD = { steps: [step('Mix.'), step('Bake.')], methodNotes: [note(1), note(null)] };
const method = (...texts: string[]) => ({ steps: texts.map(step), methodNotes: [] });
const afterOf = (
  texts: string[],
  servings: Servings = { page: 4, now: 6 },
  language = 'en',
  family: Family = 'other',
): string[] =>
  withRecut(method(...texts), servings, language, family).steps.map(({ after }) => after);

describe('a whole that is cut into more pieces', () => {
  const cake = (...texts: string[]): string[] =>
    afterOf(['Bake at 350 °F for 30 minutes.', ...texts], { page: 8, now: 12 }, 'en', 'cake').slice(
      1,
    );

  it('is cut before it is served', () => {
    expect(cake('Leave to cool. Serve warm with cream.')).toEqual([
      'Leave to cool. Cut it into 12 pieces. Serve warm with cream.',
    ]);
    expect(cake('Cool on a rack. Enjoy!')).toEqual([
      'Cool on a rack. Cut it into 12 pieces. Enjoy!',
    ]);
    expect(cake('Dust with cocoa and serve.')).toEqual([
      'Dust with cocoa, cut it into 12 pieces and serve.',
    ]);
  });

  it('is called by its name, and no number of the page is told where it has none', () => {
    const told = (servings: Partial<Servings>): string[] =>
      afterOf(
        ['Bake at 350 °F for 30 minutes.', 'Spread the icing on top.'],
        { page: 8, now: 12, ...servings },
        'en',
        'cake',
      ).slice(1);
    expect(told({ whole: 'cheesecake' })).toEqual([
      'Spread the icing on top. Cut the cheesecake into 12 pieces.',
    ]);
    const bread = (unstated: boolean, language = 'en'): string =>
      afterOf(['Brew it.', 'Serve.'], { page: 4, now: 6, unstated }, language).join(' ');
    expect(bread(false)).toMatch(/6 portions instead of 4\./);
    expect(bread(true)).toMatch(/This makes 6 portions\./);
    expect(bread(true, 'de')).toMatch(/Das ergibt 6 Portionen\./);
  });

  it('is cut in the sentence or step that cuts', () => {
    expect(cake('Cool, then cut into squares.', 'Serve with tea.')).toEqual([
      'Cool, then cut into 12 squares.',
      'Serve with tea.',
    ]);
    expect(cake('Slice and enjoy!')).toEqual(['Slice into 12 pieces and enjoy!']);
    expect(cake('If it is too soft to slice and serve, chill it.')[0]).toMatch(
      /too soft to slice and serve, chill it\. Cut it into 12/,
    );
  });

  it('is cut at the end where it is put on a serving plate', () => {
    expect(cake('Move to a serving plate. Spread the icing over it.')).toEqual([
      'Move to a serving plate. Spread the icing over it. Cut it into 12 pieces.',
    ]);
  });
});

describe('more pieces than the page makes', () => {
  it('are told where the dish is served, not before the first step', () => {
    expect(afterOf(['Brown the mince and simmer for an hour.', 'Serve with rice.'])).toEqual([
      'Brown the mince and simmer for an hour.',
      'Serve with rice. This makes 6 portions instead of 4.',
    ]);
  });

  it('come with what fills a plate that is smaller by a fifth or more', () => {
    const plates = (page: number, now: number, language = 'en'): string =>
      afterOf(['Simmer for an hour.', 'Serve hot.'], { page, now, plates: true }, language)[1] ??
      '';
    expect(plates(4, 6)).toMatch(/6 portions instead of 4\. Serve green leaves with it/);
    expect(plates(4, 5)).toMatch(/Serve green leaves with it/);
    expect(plates(8, 9)).toMatch(/9 portions instead of 8\.$/);
    expect(plates(4, 6, 'de')).toMatch(/Das ergibt 6 Portionen statt 4\. Den Teller/);
    expect(afterOf(['Stir.', 'Serve hot.'])[1]).not.toMatch(/Serve green leaves/);
  });

  it('are as many, and come with what fills a plate that holds a fifth less', () => {
    const plates = (left: number): string =>
      afterOf(['Simmer for an hour.', 'Serve hot.'], { page: 4, now: 4, plates: true, left })[1] ??
      '';
    expect(plates(0.75)).toMatch(/^Serve hot\. Serve green leaves with it/);
    expect(plates(0.9)).toBe('Serve hot.');
    expect(afterOf(['Serve hot.'], { page: 4, now: 4, left: 0.5 })).toEqual(['Serve hot.']);
  });

  it('come with what fills the plate where the step has its own number as well', () => {
    const [, serve] = afterOf(['Simmer.', 'Divide among 4 bowls and serve.'], {
      page: 4,
      now: 6,
      plates: true,
    });
    expect(serve).toMatch(/among 6 bowls and serve\. Serve green leaves with it/);
  });

  it('are told before remarks on keeping', () => {
    expect(
      afterOf([
        'Simmer the stew for an hour.',
        'Leftovers keep for 3 days in the refrigerator.',
      ])[0],
    ).toMatch(/6 portions instead of 4\.$/);
  });

  it('stand in place of the number that the step has', () => {
    expect(
      afterOf(['Divide the dough into 12 balls.', 'Bake for 12 minutes.'], { page: 12, now: 16 }),
    ).toEqual(['Divide the dough into 16 balls.', 'Bake for 12 minutes.']);
  });

  it('stand in place of a range, and of every such number of the step', () => {
    const [divide] = afterOf(
      ['Cut the sausage into 20 to 22 pieces. Divide the dough into 20 to 22 balls.', 'Bake.'],
      { page: 21, now: 30 },
    );
    expect(divide).toBe('Cut the sausage into 30 pieces. Divide the dough into 30 balls.');
  });

  it('are told where pieces are shaped, with what it means for the time', () => {
    const [mix, scoop] = afterOf(
      ['Mix the batter.', 'Spoon the batter into the muffin cups.', 'Bake for 20 minutes.'],
      { page: 10, now: 15 },
      'en',
      'cake',
    );
    expect(mix).toBe('Mix the batter.');
    expect(scoop).toMatch(
      /Fill 15 instead of 10, in two lots or with a second tin, with less in each; smaller ones are done sooner\.$/,
    );
  });

  it('take no second tin where one holds them all', () => {
    const fill = (tin: string, now: number): string =>
      afterOf(
        [`${tin} Spoon the batter into the muffin cups.`, 'Bake.'],
        { page: 10, now },
        'en',
        'cake',
      )[0] ?? '';
    expect(fill('Butter a tin.', 12)).toMatch(/Fill 12 instead of 10, with less in each/);
    expect(fill('Butter a 24-cup muffin tin.', 20)).toMatch(/Fill 20 instead of 10, with less/);
    expect(fill('Butter a 12-cup muffin tin.', 20)).toMatch(/two lots or with a second tin/);
  });

  it('are called as the page calls them', () => {
    const [roll] = afterOf(
      ['Roll the dough into balls.', 'Bake for 8 minutes.'],
      { page: 4, now: 6 },
      'en',
      'cookie',
    );
    expect(roll).toMatch(/Make 6 balls instead of 4/);
    const [mince, fry] = afterOf(['Roll the mince into small meatballs.', 'Fry for 8 minutes.']);
    expect(mince).toBe('Roll the mince into small meatballs.');
    expect(fry).toMatch(/6 portions instead of 4/);
  });

  it('are told before they are baked, with the size they come to', () => {
    const [scoop] = afterOf(
      ['Scoop the dough by 2 tablespoons, and bake for 9 minutes. Leave to cool.'],
      { page: 20, now: 40 },
      'en',
      'cookie',
    );
    expect(scoop).toMatch(
      /^Make 40 pieces instead of 20, each about half the size; smaller ones are done sooner\. Scoop/,
    );
  });

  it('are counted anew where the page counts them by the log and by the sheet', () => {
    expect(
      afterOf(
        [
          'Roll each half up and cut it into 16 even slices per log.',
          'Lay them out, 16 per sheet, and let them rise.',
          'Bake for 16 minutes.',
        ],
        { page: 32, now: 72 },
        'en',
        'enriched-yeast-bread',
      ),
    ).toEqual([
      'Roll each half up. Before you cut it, cut each roll of dough across in two and roll each half as long as it was, so that its slices do not get flat. Cut it into 36 even slices per log. Each is about half the size; smaller ones are done sooner.',
      'Lay them out, 36 per sheet, and let them rise.',
      'Bake for 16 minutes.',
    ]);
  });

  it('have a scoop of their size, and are looked at sooner in place of a longer bake', () => {
    const [scoop, drop, bake] = afterOf(
      [
        'Using a large cookie scoop (about 1/4 cup), scoop the dough onto a sheet.',
        'Drop 1 tbsp of the plain dough, then 1 tbsp of dark dough, 2-3 tablespoons apart, and 1 tbsp of sugar.',
        'Bake for 9-10 minutes. In the cooler oven it takes 1-2 minutes longer. Cool for 5 minutes.',
      ],
      { page: 12, now: 24 },
      'en',
      'cookie',
    );
    expect(scoop).toMatch(/^Using a smaller cookie scoop \(about 2 tablespoons\)/);
    expect(scoop).toMatch(/Make 24 pieces instead of 12/);
    expect(drop).toBe(
      'Drop 1½ teaspoons of the plain dough, then 1½ teaspoons of dark dough, 2-3 tablespoons apart, and 1 tbsp of sugar.',
    );
    expect(bake).toBe(
      'Bake for 9-10 minutes. Look at the smaller ones after about 6 minutes. Cool for 5 minutes.',
    );
  });

  it('are portions where the method makes another number of pieces than the page serves', () => {
    const [prepare, scoop] = afterOf(
      [
        'Pour the filling into a dish and prepare the biscuits.',
        'Scoop biscuits onto the filling, making approximately 12 biscuits, and bake. Serve.',
      ],
      { page: 9, now: 13 },
      'en',
      'biscuit',
    );
    expect(prepare).toBe('Pour the filling into a dish and prepare the biscuits.');
    expect(scoop).toMatch(/13 portions instead of 9\.$/);
  });

  it('leave less in each cup than the page fills it with', () => {
    const [divide, bake] = afterOf(
      ['Divide the batter among the 12 cupcake liners. They will be 2/3 of the way full.', 'Bake.'],
      { page: 12, now: 24 },
      'en',
      'cake',
    );
    expect(divide).toBe(
      'Divide the batter among the 24 cupcake liners. They take two lots or a second tin. Each is about half the size; smaller ones are done sooner. They will be less than 2/3 of the way full.',
    );
    expect(bake).toBe('Bake.');
  });

  it('are told where the batter goes into the liners, not where the tin gets them', () => {
    const [line, fill] = afterOf(
      ['Fill a cupcake tin with liners.', 'Pour the batter into the cupcake liners and bake.'],
      { page: 12, now: 16 },
      'en',
      'cake',
    );
    expect(line).toBe('Fill a cupcake tin with liners.');
    expect(fill).toMatch(/Fill 16 instead of 12/);
  });

  it('are cut from a cake, and spooned from a pudding', () => {
    const cut = (last: string): string | undefined =>
      afterOf(['Bake for 30 minutes.', last], { page: 8, now: 12 }, 'en', 'cake')[1];
    expect(cut('Cool it and serve.')).toBe('Cool it, cut it into 12 pieces and serve.');
    expect(cut('Serve warm, spooning it into bowls.')).toMatch(/12 portions instead of 8\.$/);
  });

  it('are no pieces where a spoon is measured or a side is cut', () => {
    const [pour, roast, serve] = afterOf([
      'Pour 1 tablespoon of oil into the pan.',
      'Roast the squash, cut side up.',
      'Spread it on a platter and fry the nuts.',
    ]);
    expect([pour, roast]).toEqual([
      'Pour 1 tablespoon of oil into the pan.',
      'Roast the squash, cut side up.',
    ]);
    expect(serve).toMatch(/6 portions instead of 4\.$/);
  });

  it('never touch a size, a time or a weight of the same figure', () => {
    expect(
      afterOf(['Cut into 8 cm squares.', 'Cool for 8 minutes and serve.'], { page: 8, now: 12 }),
    ).toEqual(['Cut into 8 cm squares.', expect.stringMatching(/12 portions instead of 8\.$/)]);
  });

  it('are told in the method’s language', () => {
    expect(afterOf(['Alles mischen.', 'Heiß servieren.'], { page: 12, now: 24 }, 'de-AT')[1]).toBe(
      'Heiß servieren. Das ergibt 24 Portionen statt 12.',
    );
  });

  it('are a step of their own in English, marked so, where the language has no words', () => {
    const { steps, methodNotes } = withRecut(METHOD, { page: 12, now: 24 }, 'cs');
    expect(steps.at(-1)?.lang).toBe('en');
    expect(methodNotes.map(({ step: at }) => at)).toEqual([1, null]);
    expect(withRecut(METHOD, { page: 12, now: 24 }, 'en').steps[1]?.lang).toBeUndefined();
  });

  it.each([
    ['the number stays', { page: 12, now: 12 }],
    ['fewer are made', { page: 12, now: 8 }],
  ])('change nothing where %s', (_, servings) => {
    expect(withRecut(METHOD, servings, null)).toBe(METHOD);
  });

  it('are no step of a page without a method', () => {
    const bare = { steps: [], methodNotes: [] };
    expect(withRecut(bare, { page: 12, now: 24 }, 'en')).toBe(bare);
  });

  it('stand in the smaller way of a real plan', () => {
    const read = readText(
      'Plain squares\n\nMakes 9 squares\n\nIngredients\n250 g sugar\n250 g plain flour\n200 g butter\n3 eggs\n1 tsp baking powder\n\nMethod\n1. Beat butter and sugar, add the eggs, then the flour and baking powder.\n2. Bake at 175 C for 30 minutes. Cut into 9 squares.',
    );
    const [recipe] = read.ok ? read.recipes : [];
    if (!recipe) throw new Error('not read');
    const { plan, steps, before } = adaptRecipe(recipe, { ...DEFAULT_GOALS, way: 'smaller' });
    expect(plan.servings).toBeGreaterThan(before.servings);
    expect(steps.some(({ after }) => after.includes(`Cut into ${plan.servings} squares.`))).toBe(
      true,
    );
  });
});

describe('a serving that is a part of a piece', () => {
  const pizza = (balls: string): string[] =>
    afterOf(
      [`Divide the dough into ${balls} balls and roll out each.`, 'Bake for 10 minutes. Serve.'],
      { page: 4, now: 8 },
      'en',
      'flatbread',
    );

  it('leaves the two pizzas for four as they are', () => {
    expect(pizza('two')).toEqual([
      'Divide the dough into two balls and roll out each.',
      'Bake for 10 minutes. Serve. This makes 8 portions instead of 4.',
    ]);
  });

  it('makes more of pieces that are as many as the servings', () => {
    expect(pizza('four').join(' ')).toMatch(/Make 8 balls instead of 4/);
  });
});
