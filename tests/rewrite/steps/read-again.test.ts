/** More of what a cook stumbles over, read from the first step to the last. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

type Family = Parameters<typeof makePlan>[0];

function told(
  lines: string[],
  steps: string[],
  changes: Change[],
  family: Family = 'cake',
): string[] {
  const recipe = makeRecipe('Supper', lines, steps);
  const read = understand(recipe);
  const plan = makePlan(family, read, changes);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps.map(({ after }) => after);
}

describe('flours shared out over the steps', () => {
  it('add up to the line, of which the page takes all cups of its range', () => {
    const text = told(
      ['5-6 cups bread flour, divided', '2 tsp dry yeast', '2 cups milk'],
      [
        'Gradually add 4 1/2 cups of the bread flour to the milk and yeast.',
        'Knead for 10 minutes, adding up to 3/4 cup flour in very small amounts.',
      ],
      [{ key: '0', kept: 400, to: [['low-carb-wheat-flour-blend', 320]] }],
      'enriched-yeast-bread',
    ).join('\n');
    expect(text).toMatch(/Gradually add 540 g flours/);
    expect(text).toMatch(/adding up to 90 g flours/);
  });

  it('are mixed where they are first named, though a remark is glued into that sentence', () => {
    const steps = told(
      ['120 g cake flour', '130 g all-purpose flour', '1 tbsp baking powder', '200 g butter'],
      [
        'SiftYou can use any sieve for this. the flours together with the baking powder and set aside.',
        'Beat the butter and slowly add half the flour.',
        'Add the remaining flour.',
      ],
      [
        { key: '0', kept: 80, to: [['almond-flour', 40]] },
        { key: '1', kept: 70, to: [['almond-flour', 60]] },
      ],
    );
    expect(steps.findIndex((text) => /from here on/.test(text))).toBe(0);
  });
});

describe('the milk of a mash that holds water of its own', () => {
  it('goes in by half, in the very sentence that adds it', () => {
    const text = told(
      ['1 kg potatoes', '1/2 cup hot milk', '60 g butter'],
      [
        'Cover the potatoes with water and simmer until tender.',
        'Drain the potatoes, add in the butter, hot milk and salt.',
        'Mash the potatoes until smooth, adding a little extra milk if needed.',
      ],
      [{ key: '0', kept: 400, to: [['cauliflower', 600]] }],
      'potato-dish',
    ).join('\n');
    expect(text).toMatch(
      /the butter, half of the hot milk \(the rest only as the mash needs it\) and salt/,
    );
    expect(text).not.toMatch(/Hold back/);
  });
});

describe('a sweetener of a base and of its filling', () => {
  it('is told by its grams where the base is made first', () => {
    const recipe = {
      ...makeRecipe('Cheesecake', [], []),
      groups: [
        { title: 'Base', lines: ['220 g graham cracker crumbs', '80 g butter, melted'] },
        { title: 'Filling', lines: ['450 g cream cheese', '150 g sugar'] },
      ],
      steps: [
        {
          section: null,
          text: 'Combine the graham cracker crumbs and melted butter and press into a pan.',
        },
        {
          section: null,
          text: 'Beat the cream cheese with the sugar and pour over the base. Chill.',
        },
      ],
    };
    const read = understand(recipe);
    const plan = makePlan('custard', read, [
      {
        key: '0',
        kept: 0,
        to: [
          ['almond-flour', 180],
          ['allulose', 26],
        ],
      },
      { key: '3', kept: 0, to: [['allulose', 170]] },
    ]);
    const toasted = plan.swaps.map((swap, at) =>
      at === 0
        ? { ...swap, id: 'biscuit-base-to-almond', method: 'Toast the almond flour in a dry pan.' }
        : swap,
    );
    const parts = [
      { title: 'Base', family: 'custard' as const, why: '', keys: ['0', '1'] },
      { title: 'Filling', family: 'custard' as const, why: '', keys: ['2', '3'] },
    ];
    const text = rewriteRecipe(
      recipe,
      read,
      { ...plan, swaps: toasted, parts },
      { foods, region: 'us' },
    )
      .steps.map(({ after }) => after)
      .join('\n');
    expect(text).toMatch(/26 g allulose/);
  });
});

describe('a step emptied of its boiling', () => {
  it('tells the cooking of what stands in', () => {
    const recipe = {
      ...makeRecipe(
        'Gratin de pâtes',
        ['350 g de coquillettes', '500 ml de lait', '120 g de gruyère râpé'],
        [
          "Faire cuire les coquillettes 8 minutes dans l'eau bouillante salée, puis les égoutter.",
          'Mélanger les pâtes et le lait, parsemer de gruyère et enfourner.',
        ],
      ),
      language: 'fr',
    };
    const read = understand(recipe);
    const plan = makePlan('pasta-dish', read, [{ key: '0', kept: 0, to: [['cauliflower', 900]] }]);
    const swaps = plan.swaps.map((swap) => ({
      ...swap,
      method: 'Steam until just tender, drain and dry well before the sauce.',
    }));
    const [first] = rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'eu' }).steps;
    expect(first?.after).toMatch(/^Chou-fleur\s?: cuire à la vapeur/);
  });
});
