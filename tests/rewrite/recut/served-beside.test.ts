/** A dish that fits by itself says what to serve it with, where the page's own rice would take it too far. */
import { describe, expect, it } from 'vitest';
import type { MissingLine, RewrittenStep } from '../../../engine/model.ts';
import { isServedBeside, withServedBeside } from '../../../engine/rewrite/recut/served-beside.ts';

const stepsOf = (...texts: string[]): RewrittenStep[] =>
  texts.map((text) => ({
    section: null,
    before: text,
    after: text,
    change: 'kept',
    why: null,
  })) as RewrittenStep[];

const served = (kind: string, text: string): MissingLine => ({
  key: 'method.9',
  text,
  why: '',
  kind,
  netCarbsG: { low: 7, best: 26, high: 45 },
  beside: true,
});

const rice = served('rice or grain', 'rice or grain: “spoon it over rice.”');

const texts = (steps: RewrittenStep[]): string[] => steps.map(({ after }) => after);

describe('what a dish is served with', () => {
  it('is told in the step that serves it', () => {
    const steps = stepsOf('Fry the pork.', 'Spoon it over rice.', 'Leftovers keep for 3 days.');
    const [first, second, third] = withServedBeside(steps, [rice], 'en');
    expect(first).toEqual(steps[0]);
    expect(second?.after).toMatch(
      /^Spoon it over rice\. To keep to the budget, .*cauliflower rice/,
    );
    expect(second).toMatchObject({ change: 'changed' });
    expect(third).toEqual(steps[2]);
  });

  it('promises nothing where the serving has no room for cauliflower', () => {
    const steps = stepsOf('Fry the pork.', 'Spoon it over rice.');
    const [, full] = withServedBeside(steps, [rice], 'en', { counted: 14.2, budget: 15 });
    expect(full?.after).toMatch(/Leave out the rice or grain: with it/);
    expect(full?.after).not.toMatch(/To keep to the budget/);
    const [, room] = withServedBeside(steps, [rice], 'en', { counted: 9, budget: 15 });
    expect(room?.after).toMatch(/cauliflower rice/);
  });

  it('is told where the dish is served when a line names it', () => {
    const bread = served('bread or rolls', 'crusty bread, to serve');
    const steps = stepsOf('Simmer the soup.', 'Serve hot.');
    expect(texts(withServedBeside(steps, [bread], 'en'))[1]).toMatch(
      /^Serve hot\. .*leave out the bread/,
    );
  });

  it('leaves no step that puts in what is left out', () => {
    const side = served('potatoes or starchy vegetable', 'potatoes: “if using potatoes, lay them”');
    const steps = stepsOf(
      'If using potatoes, lay them in the pot. Add the chicken.',
      'Add the apples (and potatoes if using).',
      'Serve.',
    );
    const put = texts(withServedBeside(steps, [side], 'en', { counted: 14, budget: 15 }));
    expect(put[0]).toMatch(/^Add the chicken\. Leave out the potatoes/);
    expect(put[1]).toBe('Add the apples.');
  });

  it('is told in the language of the page, or not at all', () => {
    const steps = stepsOf('Das Fleisch anbraten.', 'Mit Reis servieren.');
    expect(texts(withServedBeside(steps, [rice], 'de'))[1]).toMatch(/Blumenkohlreis/);
    expect(withServedBeside(steps, [rice], 'fi')).toEqual(steps);
    expect(withServedBeside(steps, [served('chips or fries', 'Chips')], 'de')).toEqual(steps);
  });

  it('is crisp where the page has chips of a flatbread, and nothing for a list of toppings', () => {
    const steps = stepsOf('Blend the dip.', 'Serve with pita chips.');
    const chips = served('tortillas or wraps', 'tortillas or wraps: “serve with pita chips.”');
    expect(texts(withServedBeside(steps, [chips], 'en'))[1]).toMatch(/celery sticks/);
    const list = served('tortillas or wraps', 'Toppings: cheese, tortilla strips, olives');
    expect(withServedBeside(steps, [list], 'en')).toEqual(steps);
  });

  it('is no longer told to be served with, where that can be left away', () => {
    const plate = (serve: string): string =>
      texts(withServedBeside(stepsOf('Fry the pork.', serve), [rice], 'en'))[1] ?? '';
    expect(plate('Serve at once with steamed rice and enjoy!')).toMatch(
      /^Serve at once and enjoy! To/,
    );
    expect(plate('Stir well. Serve over rice.')).toMatch(/^Stir well\. To keep/);
    expect(plate('Serve with rice and beans.')).toMatch(/^Serve with rice and beans\./);
  });

  it('is named in its place where the sentence goes on', () => {
    const plate = (serve: string, counted: number): string =>
      texts(
        withServedBeside(stepsOf('Fry the pork.', serve), [rice], 'en', { counted, budget: 15 }),
      )[1] ?? '';
    const served = plate('Serve over basmati rice with warm naan.', 9);
    expect(served).toMatch(/^Serve over cauliflower rice \(100 g [^)]*\) with warm naan\.$/);
    expect(plate('Serve over basmati rice with warm naan.', 14)).toMatch(/Leave out the rice/);
    expect(plate('Serve with rice and beans.', 9)).toMatch(/^Serve with rice and beans\./);
  });

  it('keeps to no budget where the dish is past it by itself', () => {
    const steps = stepsOf('Fry the pork.', 'Spoon it over rice.');
    const [, told] = withServedBeside(steps, [rice], 'en', { counted: 24, budget: 15 });
    expect(told?.after).toMatch(/\. Leave out the rice or grain and serve it over cauliflower/);
    const mit = stepsOf('Das Fleisch anbraten.', 'Mit Reis servieren.');
    const [, german] = withServedBeside(mit, [rice], 'de', { counted: 24, budget: 15 });
    expect(german?.after).toMatch(/\. Statt Reis oder Getreide Blumenkohlreis/);
  });

  it('may lead a list of what is strewn on top', () => {
    const steps = stepsOf('Fry the pork.', 'Toss and serve over rice with sesame seeds.');
    const list = served('rice or grain', 'Steamed rice, scallions and sesame seeds, for serving');
    expect(texts(withServedBeside(steps, [list], 'en'))[1]).toMatch(/over cauliflower rice/);
  });

  it('is no matter of chocolate chips', () => {
    const steps = stepsOf('Bake.', 'Serve.');
    const chips = served('semisweet chocolate', '½ cup chocolate chips (optional)');
    expect(withServedBeside(steps, [chips], 'en')).toEqual(steps);
  });

  it('stands in place of other words on how to fill the plate', () => {
    expect(isServedBeside([rice], 'en')).toBe(true);
    expect(isServedBeside([rice], 'fi')).toBe(false);
    expect(isServedBeside([], 'en')).toBe(false);
  });

  it('is nothing without a method', () => {
    expect(withServedBeside([], [rice], 'en')).toEqual([]);
  });
});
