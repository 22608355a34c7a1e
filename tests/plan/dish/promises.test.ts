/** What a page promises is kept in its rework, and some pages are not reworked at all. */
import { describe, expect, it } from 'vitest';
import { PromiseName } from '../../../engine/model.ts';
import leftAlone from '../../../engine/plan/data/left-alone.json' with { type: 'json' };
import promises from '../../../engine/plan/data/promises.json' with { type: 'json' };
import { whyLeftAlone } from '../../../engine/plan/dish/left-alone.ts';
import { foods } from '../build.ts';
import { adapted, type Pasted } from '../pasted.ts';

const cake = (title: string, lines: string[] = []): Pasted => ({
  title,
  serves: 'Serves 8',
  lines: [
    '250 g plain flour',
    '200 g sugar',
    '120 ml sunflower oil',
    '2 tsp baking powder',
    '250 ml water',
    ...lines,
  ],
  steps: [
    'Mix the flour, sugar and baking powder.',
    'Stir in the oil and water.',
    'Bake at 180 C for 40 minutes.',
  ],
  family: ['cake'],
});

const added = ({ plan }: ReturnType<typeof adapted>): string[] =>
  plan.items
    .filter(
      ({ key, foodId }) =>
        plan.swaps.some((s) => s.to.some((t) => t.foodId === foodId)) || key.startsWith('new.'),
    )
    .map(({ foodId }) => foodId);

const allergensOf = (ids: readonly string[]): string[] =>
  ids.flatMap((id) => foods.byId(id)?.allergens ?? []);

describe('promises of the page', () => {
  it('are all known, each once', () => {
    expect(promises.map(({ promise }) => promise)).toEqual([...PromiseName.options]);
  });

  it('of a vegan title keep egg and milk out', () => {
    const result = adapted(cake('Vegan vanilla cake'), { budgetG: 8 });
    expect(result.plan.promises).toEqual([
      { promise: 'vegan', said: 'Vegan vanilla cake', lifted: false },
    ]);
    expect(result.plan.swaps.length).toBeGreaterThan(0);
    const brought = allergensOf(added(result));
    expect(brought).not.toContain('egg');
    expect(brought).not.toContain('milk');
  });

  it('of a gluten-free line keep wheat out', () => {
    const page = cake('Vanilla cake', []);
    const lines = ['250 g gluten-free flour blend', ...page.lines.slice(1)];
    const result = adapted({ ...page, lines }, { budgetG: 8 });
    expect(result.plan.promises.map(({ promise }) => promise)).toEqual(['gluten-free']);
    expect(allergensOf(added(result))).not.toContain('wheat');
  });

  it.each(['Low FODMAP bacon pasta', 'Soy-free bacon pasta'])(
    'of %s keep soybean pasta out',
    (title) => {
      const page = {
        ...cake(title),
        family: ['pasta-dish' as const],
        lines: ['360 g spaghetti', '200 g bacon', '4 eggs', '80 g parmesan'],
        steps: ['Boil the spaghetti.', 'Fry the bacon.', 'Toss all with the eggs and the cheese.'],
      };
      const result = adapted(page, { budgetG: 15 });
      expect(result.plan.promises).toHaveLength(1);
      expect(added(result)).not.toContain('soybean-pasta-dry');
      expect(added(adapted({ ...page, title: 'Bacon pasta' }, { budgetG: 15 }))).toContain(
        'soybean-pasta-dry',
      );
    },
  );

  it.each([
    ['Paleo fish tacos', 'paleo', ['milk', 'soy', 'peanut', 'wheat']],
    ['Whole30 fish tacos', 'paleo', ['milk', 'soy', 'peanut', 'wheat']],
    ['Fish tacos (AIP)', 'AIP', ['milk', 'egg', 'tree nuts', 'soy', 'sesame']],
    ['Grain-free fish tacos', 'grain-free', ['gluten', 'wheat']],
  ] as const)('of %s keep out what it rules out', (title, promise, ruledOut) => {
    const page: Pasted = {
      title,
      serves: 'Serves 4',
      lines: [
        '700 g cod fillet',
        '140 g cassava flour, for dredging',
        '300 g mango',
        '300 g cabbage',
      ],
      steps: [
        'Dredge the fish in the flour and fry it in oil.',
        'Serve with cabbage and a salsa of the mango.',
      ],
      family: ['breaded-food'],
    };
    const result = adapted(page, { budgetG: 10, way: 'within' });
    expect(result.plan.promises.map((one) => one.promise)).toEqual([promise]);
    const brought = allergensOf(added(result));
    expect(brought.filter((one) => (ruledOut as readonly string[]).includes(one))).toEqual([]);
  });

  it('are not made by a line that another line breaks, nor by a choice', () => {
    const names = (lines: string[]): string[] =>
      adapted(cake('Vanilla cake', lines)).plan.promises.map(({ promise }) => promise);
    expect(names(['50 g vegan butter'])).toEqual(['vegan']);
    expect(names(['50 g vegan butter', '2 eggs'])).toEqual([]);
    expect(names(['50 g butter or vegan butter'])).toEqual([]);
  });

  it('are shown but not kept when the user lifts them', () => {
    const { plan } = adapted(cake('Vegan vanilla cake'), { liftedPromises: ['vegan'] });
    expect(plan.promises.map(({ lifted }) => lifted)).toEqual([true]);
  });
});

describe('pages that are not reworked', () => {
  it.each([
    ['Pumpkin puree for babies', []],
    ['Strawberry jam', ['Boil until set and fill the jars.']],
    ['Tomato sauce', ['Process in a boiling water bath for 35 minutes.']],
    ['Peanut dog treats', []],
    ['Renal diet bread', []],
    ['Salt dough ornaments', []],
    ['番茄炒蛋', ['鸡蛋打散，番茄切块。', '炒熟即可。']],
    ['カレー', ['玉ねぎを切って炒めます。']],
    ['Babybrei mit Möhre und Kartoffel', []],
    ['Riz au lait pour bébé', []],
    ['Babyhapje met peer', []],
    ['Puré de calabaza para bebés', []],
    ['Crema di zucca per lo svezzamento', []],
    ['Papinha de abóbora', []],
    ['Barnmat med morot', []],
    ['Babygrød af boghvede', []],
    ['Babymat med søtpotet', []],
    ['Nierendiät: Gemüsepfanne', []],
    ['Pain pour insuffisants rénaux', []],
    ['Broodje voor een nierdieet', []],
    ['Arroz para enfermos renales', []],
    ['Pane aproteico alle erbe', []],
    ['Bolo para doentes renais', []],
    ['Bröd vid njursvikt', []],
    ['Brød ved nyresygdom', []],
    ['Brød ved nyresvikt', []],
    ['Hundekuchen mit Möhre', []],
    ['Galletas para perros', []],
  ])('%s', (title, steps) => {
    expect(whyLeftAlone(title, steps)).toMatch(/^[A-Z].*\.$/);
  });

  it.each([
    ['Baby potatoes with dill', ['Serve with a jar of pickles.']],
    ['Peanut butter and jam bars', ['Spread the jam over the base.']],
    ['Chicken with tomato jam', ['Open the jar and stir.'].slice(1)],
    ['Hot dogs', []],
    ['Mapo tofu (麻婆豆腐)', ['Fry the tofu in the sauce.']],
    ['Baby spinach salad', []],
    ['Saure Nieren mit Kartoffelpüree', []],
    ['Brot für hundert Gäste', []],
    ['Rognons de veau à la moutarde', []],
    ['Salade voor baby spinazie', []],
    ['Limonada para beber', []],
    ['Pan para perros calientes', []],
    ['Pão para cachorro-quente', []],
    ['Stek med njursås', []],
    ['Salat til baby spinat', []],
  ])('but %s may be', (title, steps) => expect(whyLeftAlone(title, steps)).toBeNull());

  it('keep every line, and say why', () => {
    const page = cake('Apple cake for babies');
    const { plan, lines } = adapted(page, { budgetG: 5 });
    expect(plan.swaps).toEqual([]);
    expect(lines.every(({ change }) => change === 'kept')).toBe(true);
    expect(plan.notReworked).toMatch(/babies/);
    expect(plan.limits.map(({ code }) => code)).toEqual(['NOT_REWORKED']);
  });

  it('have words for each kind', () => {
    for (const row of leftAlone) expect('title' in row || 'method' in row, row.kind).toBe(true);
  });
});
