/** Kinds of bakes and sweets whose stand-ins are chosen by what the dish is. */
import { describe, expect, it } from 'vitest';
import { adapted, broughtBy, type Pasted, swapOf } from '../pasted.ts';

const made = (
  title: string,
  serves: string,
  lines: string[],
  steps: string[],
  family: Pasted['family'],
): Pasted => ({ title, serves, lines, steps, family });

describe('rice in milk', () => {
  const pudding = (title: string): Pasted =>
    made(
      title,
      'Serves 6',
      ['200 g short-grain rice', '1.5 litres whole milk', '140 g sugar', '1 cinnamon stick'],
      [
        'Bring the milk and cinnamon to a simmer.',
        'Add the rice and cook gently for 45 minutes.',
        'Stir in the sugar and cook for 5 minutes more.',
        'Chill and serve.',
      ],
      ['custard'],
    );

  it.each(['Rice pudding', 'Arroz con leche', 'Milchreis'])(
    '%s keeps half of its rice',
    (title) => {
      const result = adapted(pudding(title), { budgetG: 15 });
      expect(result.plan.family.id).toBe('custard');
      expect(broughtBy(result, /rice/)).not.toContain('cauliflower');
      expect(swapOf(result, /rice/)?.keptGrams ?? 200).toBeGreaterThanOrEqual(100);
      expect(broughtBy(result, /sugar/).length).toBeGreaterThan(0);
    },
  );
});

describe('thin pancakes', () => {
  it('take a quarter of almond flour at most', () => {
    const result = adapted(
      made(
        'Sweet crêpes',
        'Serves 5 (15 crêpes)',
        ['300 g plain flour', '3 eggs', '40 g sugar', '50 g butter', '600 ml milk'],
        ['Whisk flour, sugar, eggs, butter and milk.', 'Cook thin in a hot pan.'],
        ['pancake'],
      ),
      { budgetG: 13 },
    );
    const almond = result.plan.items.find(({ foodId }) => foodId === 'almond-flour');
    expect(almond?.grams ?? 0).toBeLessThanOrEqual(76);
  });
});

describe('cornbread', () => {
  it('keeps its dry body beside the same buttermilk', () => {
    const result = adapted(
      made(
        'Skillet cornbread',
        'Serves 9',
        [
          '230 g yellow cornmeal',
          '60 g plain flour',
          '1 tbsp baking powder',
          '360 ml buttermilk',
          '2 eggs',
          '80 g butter',
        ],
        [
          'Whisk cornmeal, flour and baking powder.',
          'Stir in buttermilk, eggs and butter.',
          'Bake in a hot skillet at 425 F for 20 minutes. Cut into wedges.',
        ],
        ['quick-bread'],
      ),
      { budgetG: 15 },
    );
    const dry = result.plan.items
      .filter(({ role }) => role === 'structure')
      .reduce((sum, { grams }) => sum + grams, 0);
    expect(dry).toBeGreaterThan(0.9 * 290);
  });
});

describe('chocolate melted into a brownie', () => {
  it('stays chocolate, whatever foam it is folded into', () => {
    const result = adapted(
      made(
        'Fudgy brownies',
        'Makes 16',
        [
          '185 g butter',
          '185 g dark chocolate (70% cocoa)',
          '85 g plain flour',
          '40 g cocoa powder',
          '3 eggs',
          '275 g caster sugar',
        ],
        [
          'Melt butter and chocolate.',
          'Whisk eggs and sugar to a thick egg mousse and fold in the chocolate.',
          'Fold in flour and cocoa and bake at 170 C for 25 minutes.',
        ],
        ['brownie'],
      ),
      { budgetG: 14 },
    );
    expect(broughtBy(result, /dark chocolate/)).not.toContain('cocoa-powder');
  });
});

describe('a lean loaf', () => {
  it('with gluten enough and most of its flour takes no gum', () => {
    const result = adapted(
      made(
        'Crusty pot loaf',
        '1 loaf (14 slices)',
        ['390 g plain flour', '1 1/2 tsp salt', '1/2 tsp instant yeast', '355 ml water'],
        [
          'Stir flour, salt, yeast and water to a sticky dough.',
          'Cover and leave for 12 hours.',
          'Fold into a ball, rest for 30 minutes, bake in a covered pot at 230 C for 30 minutes.',
          'Remove the lid and bake for 10 minutes more.',
        ],
        ['lean-yeast-bread'],
      ),
      { budgetG: 16 },
    );
    const blend = result.plan.items.find(({ foodId }) => foodId === 'low-carb-wheat-flour-blend');
    expect(blend?.grams ?? 0).toBeGreaterThan(100);
    expect(result.plan.items.map(({ foodId }) => foodId)).not.toContain('xanthan-gum');
  });

  it('is done at the end of all its baking', () => {
    const { steps } = adapted(
      made(
        'Crusty pot loaf',
        '1 loaf (14 slices)',
        ['390 g plain flour', '1 1/2 tsp salt', '1/2 tsp instant yeast', '355 ml water'],
        [
          'Stir flour, salt, yeast and water to a sticky dough. Cover and leave for 12 hours.',
          'Bake in a covered pot at 230 C for 30 minutes. Remove the lid and bake for 10 minutes more.',
        ],
        ['lean-yeast-bread'],
      ),
      { budgetG: 15 },
    );
    expect(steps.map(({ after }) => after).join(' ')).toMatch(/10 minutes more\. The loaf is done/);
  });
});

describe('a flatbread without yeast', () => {
  it('is a flatbread, with no coconut in it', () => {
    const flat = adapted(
      made(
        'Yogurt flatbreads',
        'Makes 6',
        ['300 g self-raising flour', '300 g yogurt', '1 tsp salt'],
        ['Mix to a dough, roll out 6 and cook in a hot pan for 2 minutes a side.'],
        ['flatbread'],
      ),
    );
    expect(flat.plan.family.id).toBe('flatbread');
    expect(flat.plan.items.map(({ foodId }) => foodId)).not.toContain('coconut-flour');
  });
});

describe('muffins', () => {
  it('are filled, not cut', () => {
    const { steps, plan } = adapted(
      made(
        'Berry muffins',
        'Makes 12 muffins',
        [
          '250 g plain flour',
          '2 tsp baking powder',
          '115 g butter',
          '200 g sugar',
          '2 eggs',
          '120 ml milk',
          '250 g blueberries',
        ],
        [
          'Heat the oven to 375 F and line a 12-cup muffin tin.',
          'Cream butter and sugar, beat in the eggs, fold in flour, baking powder, milk and blueberries.',
          'Divide the batter among the cups. Bake for 25 minutes.',
        ],
        ['quick-bread', 'cake'],
      ),
      { budgetG: 15 },
    );
    expect(plan.servings).toBeGreaterThan(12);
    expect(steps.map(({ after }) => after).join('\n')).toMatch(/Fill \d+ instead of 12/);
    expect(steps.map(({ after }) => after).join('\n')).not.toMatch(/\bcut it\b/i);
  });
});
