/** Dishes made of parts: each part has its own flour, water, fat, sweetness and limits, within one budget. */
import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS, readText } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { foods } from '../build.ts';
import { adapted, type Pasted, pastedNamed } from '../pasted.ts';
import rows from './titled.json' with { type: 'json' };

const titled = (title: string): Pasted => {
  const found = (rows.recipes as unknown as Pasted[]).find((recipe) => recipe.title === title);
  if (!found) throw new Error(title);
  return found;
};

const keysOf = ({ plan }: Adaptation, heading: RegExp): string[] =>
  plan.parts.find(({ title }) => title !== null && heading.test(title))?.keys ?? [];

const sweetnessOf = (result: Adaptation, keys: readonly string[]): number =>
  result.plan.items.reduce((sum, { key, foodId, grams, role }) => {
    const food = foods.byId(foodId);
    const sweet = food?.function?.sweetness ?? (food?.per100g.sugarsG ?? 0) / 100;
    return sum + (keys.includes(key) && role === 'sweetness' ? grams * sweet : 0);
  }, 0);

describe('dishes made of parts', () => {
  it('spends one budget on all parts', () => {
    for (const title of ['Lemon meringue tart', 'Chicken pot pie', 'Sausage gravy and biscuits']) {
      const result = adapted(titled(title), { budgetG: 15 });
      expect(result.plan.parts.length, title).toBeGreaterThan(1);
      const net = result.after.perServing.netCarbsG?.best ?? Number.NaN;
      if (result.plan.met) expect(net, title).toBeLessThanOrEqual(15);
      else expect(result.plan.limits.map(({ code }) => code)).toContain('BUDGET_NOT_MET');
    }
  });

  it('matches the sweetness of cake and frosting each for itself', () => {
    const recipe = titled('Carrot cake with cream cheese frosting');
    const before = adapted(recipe, { budgetG: 1000 });
    const after = adapted(recipe, { budgetG: 12 });
    const frosting = keysOf(after, /frosting/i);
    const cake = after.plan.parts[0]?.keys ?? [];
    for (const keys of [frosting, cake]) {
      expect(keys.length).toBeGreaterThan(1);
      const share = sweetnessOf(after, keys) / sweetnessOf(before, keys);
      expect(share).toBeGreaterThan(0.64);
      expect(share).toBeLessThan(1.15);
    }
  });

  it('does not count the filling as water of the crust', () => {
    // 250 g flour and 60 g water: 24 %, whatever stock and cream the filling has.
    const { plan } = adapted(titled('Chicken pot pie'), { budgetG: 20 });
    expect(plan.family.id).toBe('pie-crust');
    expect(plan.dough?.before.flourBaseG).toBeLessThan(260);
    expect(plan.dough?.before.hydrationPct).toBeLessThan(30);
  });

  it('tells crust and filling of a pie without headings apart', () => {
    const { plan } = adapted(pastedNamed('Deep apple pie'), { budgetG: 12 });
    expect(plan.parts.map(({ title }) => title)).toEqual(['Crust', 'Filling']);
    expect(plan.roles[plan.parts[1]?.keys[0] ?? '']).not.toEqual(['structure']);
  });

  it('thickens a sauce beside a dough with gum, not with flours', () => {
    const result = adapted(titled('Sausage gravy and biscuits'), { budgetG: 9 });
    const gravy = keysOf(result, /gravy/i);
    const flour = gravy.find((key) => result.plan.roles[key]?.[0] === 'thickener');
    expect(flour).toBeDefined();
    const standIns = result.plan.items.filter((i) => i.key === flour).map((i) => i.foodId);
    for (const id of standIns) expect(id).toMatch(/flour|xanthan|glucomannan|cream-cheese/);
    expect(standIns).not.toContain('resistant-wheat-starch');
  });

  it('coats with no gum', () => {
    for (const budgetG of [15, 8]) {
      const result = adapted(titled('Katsu with curry sauce'), { budgetG });
      const coat = keysOf(result, /chicken/i);
      const gums = result.plan.items.filter(
        (i) => coat.includes(i.key) && /gum|glucomannan/.test(i.foodId),
      );
      expect(gums).toEqual([]);
    }
  });

  it('names the part a limit belongs to', () => {
    const { plan } = adapted(pastedNamed('Vanilla layer cake'), { budgetG: 15, way: 'within' });
    const texts = plan.limits.map(({ text }) => text).join('\n');
    expect(texts).toMatch(/^Frosting: /m);
  });

  it('has one part, with every line, when the dish is one', () => {
    const { plan, ingredients } = adapted(pastedNamed('Overnight kitchen loaf'));
    expect(plan.parts).toHaveLength(1);
    expect(plan.parts[0]?.keys).toEqual(ingredients.map(({ key }) => key));
  });
});

describe('lines that are not counted', () => {
  it('are not changed: optional ones and what is served beside', () => {
    const recipe: Pasted = {
      title: 'Pancakes with syrup',
      serves: 'Serves 4',
      lines: [
        '200 g plain flour',
        '2 eggs',
        '300 ml milk',
        '2 tsp baking powder',
        '100 g sugar (optional)',
        '200 ml maple syrup, to serve',
      ],
      steps: ['Mix and cook in a frying pan.'],
      family: ['pancake'],
    };
    const result = adapted(recipe, { budgetG: 12 });
    const beside = result.lines.filter(({ before }) => /optional|to serve/.test(before ?? ''));
    expect(beside.map(({ change }) => change)).toEqual(['kept', 'kept']);
    const net = result.after.perServing.netCarbsG?.best ?? Number.NaN;
    expect(result.plan.met).toBe(net <= 12);
  });
});

describe('chemistry', () => {
  const grams = (result: Adaptation, id: RegExp): number =>
    result.plan.items.reduce((sum, i) => sum + (id.test(i.foodId) ? i.grams : 0), 0);

  it('gives powder for soda whose acid went with the brown sugar or honey', () => {
    const recipe: Pasted = {
      title: 'Molasses snack cake',
      serves: 'Serves 9',
      lines: [
        '250 g all-purpose flour',
        '150 g molasses',
        '100 g brown sugar',
        '100 g butter',
        '2 eggs',
        '4 g baking soda',
        '180 ml milk',
      ],
      steps: ['Mix and bake at 175 C for 40 minutes.'],
      family: ['cake', 'quick-bread'],
    };
    const result = adapted(recipe, { budgetG: 8, way: 'within' });
    const molasses = 150 - grams(result, /^molasses$/);
    expect(molasses).toBeGreaterThan(60);
    // 75 g of molasses meets 1 g of soda; loose soda may be 0.2 % of the flour: 0.5 g.
    const acid = grams(result, /^molasses$/) / 75 + grams(result, /^brown-sugar$/) / 250;
    const before = 150 / 75 + 100 / 250;
    const loose = grams(result, /^baking-soda$/) - acid;
    expect(loose).toBeLessThanOrEqual(Math.max(0.5, 4 - before) + 0.5);
    // A gram of soda lifts like 3.5-4 g of powder (52 % gas against 12-13 %).
    const gone = 4 - grams(result, /^baking-soda$/);
    if (gone > 0) expect(grams(result, /^baking-powder$/)).toBeGreaterThanOrEqual(3 * gone - 0.5);
  });

  it('leaves soda alone while its acid stays', () => {
    const { plan, ingredients } = adapted(pastedNamed('Brown soda bread'), { budgetG: 12 });
    const soda = ingredients.find(({ match }) => match?.foodId === 'baking-soda');
    const now = plan.items.find(({ foodId }) => foodId === 'baking-soda')?.grams;
    expect(now).toBeCloseTo(soda?.weight?.grams.best ?? 0, 6);
  });

  it('asks for more yeast in a quick dough that loses starch, and then not for more time', () => {
    const result = adapted(pastedNamed('Crusty water rolls'), { budgetG: 10, way: 'within' });
    const before = result.ingredients.find(({ match }) => /yeast/.test(match?.foodId ?? ''));
    const was = before?.weight?.grams.best ?? 0;
    const starch = result.plan.dough?.after.digestibleStarchPct ?? 99;
    const times = starch < 25 ? 1.5 : starch < 40 ? 1.25 : 1;
    expect(times).toBeGreaterThan(1);
    expect(Math.abs(grams(result, /yeast$/) - times * was)).toBeLessThanOrEqual(0.5);
    expect(result.notes.map(({ code }) => code)).toContain('YEAST_RAISED');
    const method = result.steps.map(({ after }) => after).join('\n');
    expect(method).not.toMatch(/1¼ times|1½ times/);
  });

  it('gives a slow dough time rather than yeast', () => {
    const result = adapted(pastedNamed('Overnight kitchen loaf'));
    expect(result.notes.map(({ code }) => code)).not.toContain('YEAST_RAISED');
  });

  it('asks for no sweetener that a fine scale cannot weigh', () => {
    for (const title of ['Fruit scones', 'Burger buns', 'Blueberry muffins', 'Soft sandwich bread'])
      for (const budgetG of [15, 10])
        for (const { foodId, grams: g } of adapted(pastedNamed(title), { budgetG }).plan.items)
          if ((foods.byId(foodId)?.function?.sweetness ?? 0) > 10)
            expect(g, title).toBeGreaterThanOrEqual(0.1);
  });

  it('keeps all sugar alcohols of a serving within what most adults bear', () => {
    for (const title of [
      'Vanilla layer cake',
      'Chocolate chip cookies',
      'Fudgy brownies',
      'Vanilla ice cream',
    ])
      for (const budgetG of [10, 5]) {
        const result = adapted(pastedNamed(title), { budgetG });
        const polyols = result.plan.items.reduce((sum, i) => {
          const of = foods.byId(i.foodId)?.per100g.polyolsG ?? {};
          return sum + (Object.values(of).reduce((a, b) => a + b, 0) * i.grams) / 100;
        }, 0);
        expect(polyols / result.before.servings, title).toBeLessThanOrEqual(15.5);
      }
  });

  it('feeds yeast a spoonful or nothing', () => {
    for (const title of ['Overnight kitchen loaf', 'Light rye boule', 'Rosemary focaccia'])
      for (const budgetG of [15, 10, 8]) {
        const { plan } = adapted(pastedNamed(title), { budgetG });
        const fed = plan.items.find(({ role }) => role === 'yeast-food')?.grams ?? 0;
        if (fed > 0)
          expect(fed / (plan.dough?.after.flourBaseG ?? 1), title).toBeGreaterThan(0.009);
      }
  });
});

describe('headings of other languages', () => {
  it.each([
    ['Käsekuchen', 'Für den Mürbeteig:', 'Für die Füllung:'],
    ['Tarte', 'Pour la pâte brisée :', 'Pour la garniture :'],
    ['Crostata', 'Per la frolla:', 'Per il ripieno:'],
  ])('part %s', (title, crust, filling) => {
    const text = [
      title,
      '',
      'Serves 12',
      '',
      'Ingredients',
      crust,
      '- 200 g flour',
      '- 75 g sugar',
      '- 80 g butter',
      '- 1 egg',
      filling,
      '- 800 g quark',
      '- 150 g sugar',
      '- 4 eggs',
      '- 200 ml cream',
      '',
      'Method',
      '1. Make a dough of flour, sugar, butter and egg.',
      '2. Mix quark, sugar, eggs and cream and bake for 60 minutes.',
    ].join('\n');
    const read = readText(text);
    const [recipe] = read.ok ? read.recipes : [];
    if (recipe === undefined) throw new Error(title);
    const { plan } = adaptRecipe(recipe, { ...DEFAULT_GOALS, budgetG: 15 });
    expect(plan.parts.length).toBe(2);
    expect(plan.parts.map((part) => part.title)).toEqual(
      [crust, filling].map((one) => one.replace(/ ?:$/, '')),
    );
  });
});
