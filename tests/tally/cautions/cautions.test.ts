import { describe, expect, it } from 'vitest';
import type { Plan, Tally } from '../../../engine/model.ts';
import { allCautions, cautionsFor } from '../../../engine/tally/cautions/cautions.ts';
import { tally } from '../../../engine/tally/index.ts';
import { allergenChange } from '../../../engine/tally/verdict/allergen-change.ts';
import { makeFood, makeIngredient, makeTable, makeWeight } from '../fixtures.ts';

const flour = makeFood(
  'bread-flour',
  { carbohydrateG: 72.53, fiberG: 2.4, proteinG: 11.98 },
  { allergens: ['wheat', 'gluten'] },
);
const gluten = makeFood(
  'vital-wheat-gluten',
  { carbohydrateG: 13.79, fiberG: 0.6, proteinG: 75.16 },
  { allergens: ['wheat', 'gluten'] },
);
const almond = makeFood(
  'almond-flour',
  { carbohydrateG: 16.25, fiberG: 9.27, proteinG: 26.2 },
  { allergens: ['tree nuts'] },
);
const xylitol = makeFood('xylitol', { carbohydrateG: 100, fiberG: 0, polyolsG: { xylitol: 100 } });
const allulose = makeFood('allulose', { carbohydrateG: 100, fiberG: 0, alluloseG: 100 });
const psyllium = makeFood('psyllium-husk-powder', { carbohydrateG: 80, fiberG: 78 });
const noodles = makeFood('konjac-noodles', { carbohydrateG: 3, fiberG: 3 });
// SR 173468: 38,758 mg of sodium in 100 g.
const salt = makeFood('salt', { carbohydrateG: 0, fiberG: 0, sodiumMg: 38758 });
const egg = makeFood('egg', { carbohydrateG: 0.7, proteinG: 12.6 }, { allergens: ['egg'] });
const bun = makeFood('low-carb-bun', { carbohydrateG: 33, fiberG: 22 });
const foods = makeTable(
  egg,
  bun,
  flour,
  gluten,
  almond,
  xylitol,
  allulose,
  psyllium,
  noodles,
  salt,
);

const reckon = (rows: [string, number][]): Tally =>
  tally(
    rows.map(([id, grams], at) => makeIngredient(String(at), id, makeWeight(grams))),
    { foods, servings: 1, rule: { region: 'us', polyols: 'half' }, family: 'quick-bread' },
  );

/** A plan whose items are these foods, each brought by the plan unless the original had it. */
const planOf = (before: [string, number][], after: [string, number][]): Plan => ({
  way: 'within',
  servings: 1,
  shopping: [],
  stomach: { sweetenersG: 0, addedFibreG: 0 },
  family: { id: 'quick-bread', confidence: 1, why: 'test' },
  parts: [],
  roles: {},
  budgetG: 15,
  met: true,
  items: after.map(([foodId, grams], at) => ({
    key: before.some(([other]) => other === foodId) ? String(at) : `new.${foodId}`,
    foodId,
    foodName: foodId,
    grams,
    eaten: { low: 1, best: 1, high: 1 },
    role: 'other',
  })),
  swaps: before.map(([foodId, grams], at) => ({
    id: `swap-${at}`,
    key: String(at),
    from: { foodId, food: foodId, grams },
    keptGrams: 0,
    to: [],
    why: '',
    effect: '',
    considered: [],
    allergens: [],
    cautions: [],
    source: 'test',
  })),
  reserveWaterG: null,
  dough: null,
  closeness: 1,
  closenessParts: {},
  limits: [],
  promises: [],
  notReworked: null,
  notes: [],
});

const inputOf = (before: [string, number][], after: [string, number][]) => ({
  before: reckon(before),
  after: reckon(after),
  plan: planOf(before, after),
  foods,
});

const codes = (before: [string, number][], after: [string, number][]): string[] =>
  allCautions(inputOf(before, after)).map(({ code }) => code);

/** What sounds alike and is none of it. */
const NO_ALARM = [
  'Steak and kidney pie, baby carrots',
  'Saure Nieren, ein Tropfen Bittermandelaroma',
  'Rognons et jeunes carottes',
  'Zumo de naranja para beber',
  'Salade voor baby spinazie',
  "Une goutte d'extrait d'amande amère",
  'Salat til baby spinat',
  'Rins de porco à moda da casa',
];

describe('cautions', () => {
  it('always shows the estimate line first and at most three more', () => {
    const shown = cautionsFor(inputOf([['bread-flour', 50]], [['xylitol', 30]]));
    expect(shown[0]?.text).toBe('Estimates. Not for working out insulin doses.');
    expect(shown.length).toBeLessThanOrEqual(4);
    // A fall of 20 g of net carbs in the user's blood goes before the dog's.
    expect(shown.slice(1, 3).map(({ code }) => code)).toEqual(['FEWER_CARBS_HYPO', 'XYLITOL_DOGS']);
    const same: [string, number][] = [['almond-flour', 10]];
    const nothing = cautionsFor(inputOf(same, same));
    expect(nothing.map(({ code }) => code)).toEqual(['ESTIMATES', 'RAW_DOUGH']);
  });

  it('speaks of low blood sugar when carbs fall by 30 % or 15 g', () => {
    expect(codes([['bread-flour', 40]], [['almond-flour', 40]])).toContain('FEWER_CARBS_HYPO');
    expect(codes([['bread-flour', 10]], [['bread-flour', 6]])).toContain('FEWER_CARBS_HYPO');
    expect(codes([['bread-flour', 50]], [['bread-flour', 45]])).not.toContain('FEWER_CARBS_HYPO');
  });

  it('speaks of gluten only when a substitute brings it', () => {
    expect(codes([['almond-flour', 50]], [['vital-wheat-gluten', 20]])).toContain('GLUTEN');
    expect(codes([['bread-flour', 50]], [['bread-flour', 20]])).not.toContain('GLUTEN');
  });

  it('sends to the label of a ready bread that a substitute is', () => {
    expect(codes([['bread-flour', 50]], [['low-carb-bun', 60]])).toContain('READY_BREAD');
    expect(codes([['low-carb-bun', 60]], [['low-carb-bun', 60]])).not.toContain('READY_BREAD');
  });

  it('lets graver cautions go before gluten that was there already', () => {
    const new1 = codes([['almond-flour', 50]], [['vital-wheat-gluten', 20]]);
    expect(new1.indexOf('GLUTEN')).toBeLessThan(new1.indexOf('RAW_DOUGH'));
    const old = codes(
      [['bread-flour', 100]],
      [
        ['vital-wheat-gluten', 20],
        ['xylitol', 30],
      ],
    );
    expect(old.indexOf('POLYOLS')).toBeLessThan(old.indexOf('GLUTEN'));
    expect(old.indexOf('POLYOLS')).toBeGreaterThan(-1);
  });

  it('states the fall, and says it more strongly from 30 g on', () => {
    const textOf = (after: number): string[] =>
      allCautions(inputOf([['bread-flour', 100]], [['bread-flour', after]]))
        .filter(({ code }) => code.endsWith('FEWER_CARBS_HYPO'))
        .map(({ code, text }) => `${code}: ${text.split('.')[0]}`);
    // 70.13 g of net carbs in 100 g of the flour.
    expect(textOf(60)).toEqual([
      'FEWER_CARBS_HYPO: A serving has 28 g less net carbs than the original',
    ]);
    expect(textOf(57)).toEqual([
      'MUCH_FEWER_CARBS_HYPO: A serving has 30 g less net carbs than the original, which is a large fall',
    ]);
    expect(textOf(95)).toEqual([]);
  });

  it('speaks of ketoacidosis only to those who say it concerns them, of servings with hardly any carbs', () => {
    const of = (grams: number, sglt2?: boolean): string[] => {
      const input = inputOf([['bread-flour', 50]], [['almond-flour', grams]]);
      return allCautions(sglt2 === undefined ? input : { ...input, person: { sglt2 } }).map(
        ({ code }) => code,
      );
    };
    expect(of(50, true)).toContain('SGLT2_KETOACIDOSIS');
    expect(of(50)).not.toContain('SGLT2_KETOACIDOSIS');
    expect(of(50, false)).not.toContain('SGLT2_KETOACIDOSIS');
    expect(of(150, true)).not.toContain('SGLT2_KETOACIDOSIS');
  });

  it('warns of swelling powders, not of konjac noodles', () => {
    expect(codes([['bread-flour', 50]], [['psyllium-husk-powder', 5]])).toContain('SWELLING_FIBRE');
    expect(codes([['bread-flour', 50]], [['konjac-noodles', 100]])).not.toContain('SWELLING_FIBRE');
  });

  it('calls a serving salty from 1.5 g of sodium, with its salt', () => {
    const salty = (grams: number) =>
      allCautions(inputOf([['salt', grams]], [['salt', grams]])).filter(
        ({ code }) => code === 'SALTY',
      );
    expect(salty(3.8)).toEqual([]);
    expect(salty(4)[0]?.text).toContain('about 3.9 g of salt');
  });

  it.each([
    ['A puree for babies of six months', 'NOT_WITHOUT_CARE_TEAM'],
    ['Good while pregnant', 'NOT_WITHOUT_CARE_TEAM'],
    ['A renal diet stew', 'KIDNEYS'],
    ['Kidney-friendly soup', 'KIDNEYS'],
    ['Marzipan from bitter almonds', 'BITTER_KERNELS'],
    ['Milchbrötchen für Schwangere', 'NOT_WITHOUT_CARE_TEAM'],
    ['Babybrei mit Reis', 'NOT_WITHOUT_CARE_TEAM'],
    ['Riz pour bébé', 'NOT_WITHOUT_CARE_TEAM'],
    ['Soupe pour femmes enceintes', 'NOT_WITHOUT_CARE_TEAM'],
    ['Ontbijt als je zwanger bent', 'NOT_WITHOUT_CARE_TEAM'],
    ['Risotto en el embarazo', 'NOT_WITHOUT_CARE_TEAM'],
    ['Pasta in gravidanza', 'NOT_WITHOUT_CARE_TEAM'],
    ['Lanche para a gravidez', 'NOT_WITHOUT_CARE_TEAM'],
    ['Frukost för gravida', 'NOT_WITHOUT_CARE_TEAM'],
    ['Morgenmad til gravide', 'NOT_WITHOUT_CARE_TEAM'],
    ['Frokost når du er gravid', 'NOT_WITHOUT_CARE_TEAM'],
    ['Nierendiät: Gemüsepfanne', 'KIDNEYS'],
    ["Pain en cas d'insuffisance rénale", 'KIDNEYS'],
    ['Broodje voor een nierdieet', 'KIDNEYS'],
    ['Arroz para la dieta renal', 'KIDNEYS'],
    ['Pane per pazienti in dialisi', 'KIDNEYS'],
    ['Bolo para a doença renal', 'KIDNEYS'],
    ['Bröd vid njursvikt', 'KIDNEYS'],
    ['Brød ved nyresygdom', 'KIDNEYS'],
    ['Brød ved nyresvikt', 'KIDNEYS'],
    ['Pâte aux amandes amères', 'BITTER_KERNELS'],
    ['Zwei Bittermandeln reiben', 'BITTER_KERNELS'],
  ])("hears the page's words: %s", (words, code) => {
    const same: [string, number][] = [['almond-flour', 10]];
    const said = (text: string) =>
      allCautions({ ...inputOf(same, same), words: text }).map((one) => one.code);
    expect(said(words)).toContain(code);
    for (const other of NO_ALARM) expect(said(other), other).not.toContain(code);
  });

  it('speaks of polyols above 10 g a serving', () => {
    expect(
      codes(
        [['bread-flour', 50]],
        [
          ['xylitol', 12],
          ['bread-flour', 200],
        ],
      ),
    ).toContain('POLYOLS');
    expect(
      codes(
        [['bread-flour', 50]],
        [
          ['xylitol', 4],
          ['bread-flour', 200],
        ],
      ),
    ).not.toContain('POLYOLS');
  });

  it('speaks of any allulose that was brought, as it is no food everywhere', () => {
    const rows = (grams: number): [string, number][] => [
      ['allulose', grams],
      ['bread-flour', 200],
    ];
    expect(codes([['bread-flour', 250]], rows(3))).toContain('ALLULOSE');
    expect(codes(rows(3), rows(3))).not.toContain('ALLULOSE');
    expect(codes(rows(12), rows(12))).toContain('ALLULOSE');
  });

  it('tells allergens that came and went', () => {
    expect(allergenChange([flour], [almond])).toEqual({
      added: ['tree nuts'],
      removed: ['gluten', 'wheat'],
    });
    expect(allergenChange([flour], [flour, gluten])).toEqual({ added: [], removed: [] });
  });

  it('says what only a seasoning may have had before', () => {
    const stock = makeFood('cube', {}, { allergens: ['wheat'], group: 'stocks and broths' });
    expect(allergenChange([stock], [stock])).toEqual({ added: [], removed: [] });
    expect(allergenChange([stock], [stock, flour])).toEqual({
      added: ['gluten', 'wheat'],
      removed: [],
    });
  });

  it.each([
    [
      'en',
      'Cold coffee layers. Beat the yolks with the sugar, fold in the cream and the stiff whites, dip the fingers in strong coffee, layer and chill for six hours.',
      true,
    ],
    [
      'en',
      'Tiramisu. Brew and cook the syrup. Beat the yolks with the sugar, fold in the cream and the stiff whites, layer with the fingers and chill.',
      true,
    ],
    [
      'en',
      'Tiramisu. Whisk the yolks and sugar over simmering water until thick and warm, fold in the cream, layer with the fingers and chill overnight.',
      false,
    ],
    [
      'en',
      'Butter cake. Beat the butter with the sugar and the eggs, stir in the flour and bake it in a tin for forty minutes.',
      false,
    ],
    [
      'de',
      'Schichtcreme. Eigelb mit Zucker schaumig schlagen, Mascarpone und den steifen Schnee unterheben, mit Kaffee und Keksen schichten und sechs Stunden kalt stellen.',
      true,
    ],
    [
      'de',
      'Rührkuchen. Butter mit Zucker und Eiern schaumig schlagen, Mehl unterheben, in eine Form füllen und vierzig Minuten bei mittlerer Hitze backen.',
      false,
    ],
    [
      'el',
      'Κέικ. Χτυπάμε το βούτυρο με τη ζάχαρη και τα αυγά, προσθέτουμε το αλεύρι και το γάλα, ρίχνουμε το μείγμα στη φόρμα και ψήνουμε για σαράντα λεπτά περίπου.',
      false,
    ],
  ])('%s: eggs that stay raw are told of: %s', (language, words, told) => {
    const same: [string, number][] = [['egg', 60]];
    const found = allCautions({ ...inputOf(same, same), words, language });
    expect(found.some(({ code }) => code === 'RAW_EGGS')).toBe(told);
  });
});
