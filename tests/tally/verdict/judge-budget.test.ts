import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Adaptation, DEFAULT_GOALS, type Goals, Verdict } from '../../../engine/model.ts';
import { readText } from '../../../engine/read/index.ts';
import { showGrams } from '../../../engine/tally/displayed-figures.ts';
import { verdictFrom } from '../../../engine/tally/verdict/judge-budget.ts';
import { adaptRecipe } from '../../../engine/walk.ts';

const GAP = { key: '1', text: '2 slices x', why: 'no food', kind: 'bread', netCarbsG: null };

const FEW = { low: 2, best: 10, high: 20 };
const MANY = { low: 11, best: 60, high: 130 };

function adapted(lines: readonly string[], goals: Partial<Goals> = {}): Adaptation {
  const text = ['Green egg pan', '', 'Serves 2', '', 'Ingredients', ...lines.map((l) => `- ${l}`)];
  const found = readText([...text, '', 'Method', '1. Cook it all in a pan.'].join('\n'));
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  return adaptRecipe(found.recipes[0], { ...DEFAULT_GOALS, ...goals });
}

const PLAIN = ['4 eggs', '200 g spinach', '15 g butter'];

describe('servings that the page does not give', () => {
  const at = (yields: string): Adaptation => {
    const lines = ['200 g dry pasta', '300 g beef mince', '400 g canned tomatoes'];
    const text = ['Green pan', '', yields, '', 'Ingredients', ...lines.map((l) => `- ${l}`)];
    const found = readText([...text, '', 'Method', '1. Cook it all in a pan.'].join('\n'));
    if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
    return adaptRecipe(found.recipes[0], DEFAULT_GOALS);
  };

  it('are told beside the answer of every way', () => {
    const { ways } = at('Quick supper');
    for (const { verdict, plan } of ways) expect(verdict.assumedServings).toBe(plan.servings);
  });

  it('are not told where the page gives them', () => {
    expect(at('Serves 3').verdict.assumedServings).toBeUndefined();
    expect(at('Makes 6 buns').verdict.assumedServings).toBeUndefined();
  });
});

it('names first what may bring most', () => {
  const { verdict } = adapted([...PLAIN, 'salsa, to serve', 'pinto beans, to serve']);
  const missing = 'missing' in verdict ? verdict.missing : [];
  expect(missing.length).toBeGreaterThan(1);
  const most = missing.map(({ netCarbsG }) => netCarbsG?.high ?? 0);
  expect(most).toEqual([...most].sort((a, b) => b - a));
  expect(missing[0]?.text).toContain('beans');
});

const missingOf = ({ verdict }: Adaptation) => ('missing' in verdict ? verdict.missing : []);

describe('the four answers', () => {
  it.each([
    ['fits', { low: 8, best: 10, high: 12 }, []],
    ['fits', { low: 8, best: 10, high: 15 }, []],
    ['probablyFits', { low: 8, best: 10, high: 15.1 }, []],
    ['probablyFits', { low: 8, best: 15, high: 16 }, []],
    ['fitsAsCounted', { low: 8, best: 10, high: 12 }, [GAP]],
    ['fitsAsCounted', { low: 8, best: 10, high: 40 }, [GAP]],
    ['probablyFits', { low: 8, best: 15.4, high: 16 }, []],
    ['tooMuch', { low: 8, best: 15.6, high: 16 }, []],
    ['fitsAsCounted', { low: 8, best: 10, high: 12 }, [{ ...GAP, netCarbsG: FEW }]],
    ['tooMuch', { low: 8, best: 10, high: 12 }, [{ ...GAP, netCarbsG: MANY }]],
    ['tooMuch', { low: 8, best: 10, high: 12 }, [GAP, { ...GAP, netCarbsG: MANY }]],
    [
      'fitsAsCounted',
      { low: 8, best: 14.5, high: 15 },
      [{ ...GAP, netCarbsG: { ...FEW, low: 1.5 } }],
    ],
    ['fitsAsCounted', { low: 8, best: 10, high: 12 }, [{ ...GAP, netCarbsG: MANY, beside: true }]],
    ['tooMuch', { low: 16, best: 17, high: 18 }, [GAP]],
  ] as const)('%s', (state, netCarbsG, missing) => {
    const verdict = verdictFrom(netCarbsG, 15, [...missing]);
    expect(verdict.state).toBe(state);
    expect(Verdict.parse(verdict)).toEqual(verdict);
  });

  it.each([
    ['fits', { low: 4, best: 5, high: 6 }],
    ['probablyFits', { low: 12, best: 13, high: 14 }],
    ['tooMuch', { low: 14, best: 16, high: 18 }],
  ] as const)('%s where the servings are a guess by weight', (state, netCarbsG) => {
    expect(verdictFrom(netCarbsG, 15, [], true).state).toBe(state);
  });

  it('never says that a recipe fits of which nothing is counted', () => {
    const verdict = verdictFrom(null, 15, []);
    expect(verdict).toMatchObject({ state: 'fitsAsCounted', netCarbsG: null });
    expect(Verdict.parse(verdict)).toEqual(verdict);
  });

  it('says fits only of a whole range within the budget', () => {
    const figure = fc.double({ min: 0, max: 200, noNaN: true });
    fc.assert(
      fc.property(figure, figure, figure, figure, (a, b, c, budgetG) => {
        const [low = 0, best = 0, high = 0] = [a, b, c].sort((x, y) => x - y);
        const { state } = verdictFrom({ low, best, high }, budgetG, []);
        expect(state === 'fits').toBe(high <= budgetG + 1e-6 && best <= budgetG + 1e-6);
        const isShownAbove = best > budgetG + 1e-6 && showGrams(best) !== showGrams(budgetG);
        expect(state === 'tooMuch').toBe(isShownAbove);
      }),
    );
  });
});

describe('what is eaten beside the dish', () => {
  it.each([
    'vanilla ice cream or whipped cream, for serving',
    'warm bread, to serve',
    'blueberries, to garnish',
  ])('%s never makes too much of what fits', (line) => {
    expect(adapted([...PLAIN, line], { budgetG: 4 }).before.uncounted).toHaveLength(1);
    expect(adapted([...PLAIN, line], { budgetG: 4 }).verdict.state).not.toBe('tooMuch');
  });

  it('what belongs in it does', () => {
    expect(adapted([...PLAIN, 'lasagne sheets'], { budgetG: 4 }).verdict.state).toBe('tooMuch');
  });

  it('a dish to bake in is no food', () => {
    expect(missingOf(adapted([...PLAIN, '7x5-inch baking dish'], { budgetG: 30 }))).toEqual([]);
  });
});

describe('what is missing', () => {
  it('is nothing in a dish that is counted whole', () => {
    const { verdict } = adapted(PLAIN, { budgetG: 30 });
    expect(verdict.state).toBe('fits');
  });

  it.each([
    '1 portion bread dough (see recipe)',
    '4 of the seeded rolls, to serve',
    'warm tortillas, to serve',
    '150 g snorvelstuff',
    '2 cups snorvelstuff',
    '1 batch tomato jam (recipe below)',
    'toasted bread, to serve',
    'hot cooked rice, to serve',
    'Toppings: shredded cheese, tortilla chips, pickled peppers, sliced olives',
  ])('names %s', (line) => {
    const found = adapted([...PLAIN, line], { budgetG: 200 });
    expect(found.verdict.state).toBe('fitsAsCounted');
    expect(missingOf(found).map(({ key }) => key)).toEqual(['3']);
  });

  it('gives a rough span where the kind of food is known', () => {
    const [roll] = missingOf(adapted([...PLAIN, 'crusty rolls, to serve'], { budgetG: 200 }));
    expect(roll?.netCarbsG?.low).toBeGreaterThan(5);
    expect(roll?.netCarbsG?.high).toBeLessThan(80);
    const [unknown] = missingOf(adapted([...PLAIN, '150 g snorvelstuff'], { budgetG: 200 }));
    expect(unknown).toMatchObject({ kind: null, netCarbsG: null });
  });

  it('sees the starch that a line says to serve it over', () => {
    const found = adapted([...PLAIN, '300 g stewing beef, served over rice'], { budgetG: 200 });
    expect(missingOf(found)).toMatchObject([{ key: '3', kind: 'rice or grain' }]);
    const counted = adapted(
      [...PLAIN, '200 g cooked white rice', '300 g stewing beef, served over rice'],
      { budgetG: 200 },
    );
    expect(missingOf(counted)).toEqual([]);
  });

  it.each([
    '50 g snorvelstuff (optional)',
    '1 pinch snorvelstuff',
    'fresh parsley, to garnish',
    '4 wooden skewers',
    'salt and pepper',
    'lemon wedges, to serve',
  ])('leaves out %s', (line) => {
    expect(missingOf(adapted([...PLAIN, line], { budgetG: 200 }))).toEqual([]);
  });

  it('comes on top of what is too much already', () => {
    const found = adapted(['500 g sugar', '150 g snorvelstuff'], { budgetG: 1, pinned: ['0'] });
    expect(found.verdict.state).toBe('tooMuch');
    expect(missingOf(found)).toHaveLength(1);
  });
});

describe('what the result still contains', () => {
  it('names each line with an avoided allergen, of the original and of the additions', () => {
    const { stillContains, plan } = adapted(['200 g all-purpose flour', ...PLAIN], {
      avoid: ['egg', 'gluten', 'fish'],
      budgetG: 200,
    });
    expect(plan.swaps).toEqual([]);
    expect(stillContains).toEqual([
      { allergen: 'egg', keys: ['1'], likelyKeys: [] },
      { allergen: 'gluten', keys: ['0'], likelyKeys: [] },
    ]);
  });

  it('takes an unknown food by its own words as likely', () => {
    const { stillContains } = adapted([...PLAIN, '50 g snorvel walnut crumble'], {
      avoid: ['tree nuts'],
    });
    const likely = stillContains.flatMap(({ keys, likelyKeys }) => [...keys, ...likelyKeys]);
    expect(likely).toEqual(['3']);
  });

  it('says nothing of what is not avoided', () => {
    expect(adapted(PLAIN).stillContains).toEqual([]);
  });
});

describe('sugar strewn over, of which the line has more', () => {
  const DUSTED = [...PLAIN, '20 g caster sugar, plus extra for dusting'];

  it('is named where it may take a serving past the budget', () => {
    const { verdict } = adapted(DUSTED, { budgetG: 12.5 });
    expect(verdict.state).toBe('fitsAsCounted');
    expect(missingOf(adapted(DUSTED, { budgetG: 12.5 }))).toMatchObject([
      { text: 'caster sugar, plus extra for dusting', netCarbsG: { best: expect.closeTo(1.2, 1) } },
    ]);
  });

  it('is not where there is room for it, nor of what is no sugar', () => {
    expect(missingOf(adapted(DUSTED, { budgetG: 16 }))).toEqual([]);
    const floured = [...PLAIN, '30 g plain flour, plus extra for dusting'];
    expect(missingOf(adapted(floured, { budgetG: 12.5 }))).toEqual([]);
  });
});

describe('sweets that a line leaves open', () => {
  it('names sugar of which there may be more to taste where that may pass the budget', () => {
    const lines = ['24 g sugar, plus more to taste', '4 eggs', '200 g spinach'];
    expect(missingOf(adapted(lines)).map(({ kind }) => kind)).toEqual(['sugar or syrup']);
    const few = ['6 g sugar, plus more to taste', '4 eggs', '200 g spinach'];
    expect(missingOf(adapted(few))).toEqual([]);
  });

  it('names a syrup of the page that may be bought instead', () => {
    const text = [
      'Vanilla shake',
      'Serves 2',
      'Ingredients',
      '- 60 ml vanilla syrup (store-bought or recipe below)',
      '- 400 ml unsweetened almond milk',
      'For the vanilla syrup',
      '- 20 g allulose',
      '- 60 ml water',
      'Method',
      '1. Boil the allulose and water for the vanilla syrup. Stir it into the milk.',
    ].join('\n');
    const found = readText(text);
    if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
    const [bought] = missingOf(adaptRecipe(found.recipes[0], DEFAULT_GOALS));
    expect(bought).toMatchObject({ kind: 'sugar or syrup', beside: true });
  });
});
