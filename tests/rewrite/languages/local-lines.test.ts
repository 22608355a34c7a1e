/** Lines and hints in other languages: 'of' before what is weighed, spoons as one and many, small bakes. */
import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../engine/model.ts';
import { fill } from '../../../engine/rewrite/cues/cue-text.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { localUnits, methodWords, withOf } from '../../../engine/rewrite/languages/method-words.ts';
import { weighRecipe } from '../../../engine/walk.ts';
import { foods, makePlan, makeRecipe } from '../fixtures.ts';

const foreign = (language: string, title: string, lines: string[], steps: string[]): Recipe => ({
  ...makeRecipe(title, lines, steps),
  language,
});

/** Lines after some of the first, all but `kept` g, has made way for `food`. */
function linesOf(recipe: Recipe, food: string, kept = 100): string[] {
  const read = weighRecipe(recipe);
  const plan = makePlan('cake', read, [{ key: '0', kept, to: [[food, 100]] }]);
  const { lines } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
  return lines.flatMap(({ after, change }) => (after === null || change === 'kept' ? [] : [after]));
}

describe('lines have what their language puts between an amount and a food', () => {
  it.each([
    ['fr', '200 g de farine de blé', / de farine/, 'inulin', /g (?:\(.*\) )?d'inuline/],
    ['es', '200 g de azúcar', / de azúcar/, 'allulose', / de alulosa/],
    ['it', '200 g di zucchero', / di zucchero/, 'allulose', / di allulosio/],
    ['pt', '200 g de açúcar', / de açúcar/, 'allulose', / de alulose/],
    ['de', '200 g Zucker', /\) Zucker|g Zucker/, 'allulose', /\) Allulose|g Allulose/],
  ] as const)('%s', (language, line, own, food, standIn) => {
    const [first = '', second = ''] = linesOf(foreign(language, 'x', [line], []), food);
    expect(first).toMatch(own);
    expect(second).toMatch(standIn);
    const read = weighRecipe(foreign(language, 'x', [second], []));
    expect(read[0]?.match?.foodId).toBe(food);
  });

  it.each([
    ['2 pots de sucre', 'allulose', /de sucre$/],
    ['3 pots de farine', 'almond-flour', /de farine$/],
  ])('French, of what a pot measures: %s', (line, food, own) => {
    const [first = ''] = linesOf(foreign('fr', 'Gâteau', [line], []), food);
    expect(first).toMatch(own);
  });

  it('French, of a name that began its line with a capital', () => {
    const words = methodWords('fr');
    if (words === null) throw new Error('no words');
    expect(withOf('Riz spécial risotto', words)).toBe('de riz spécial risotto');
    expect(withOf('Huile', words)).toBe("d'huile");
    expect(withOf('BIO Farine T55', words)).toBe('de BIO Farine T55');
  });
});

it.each([
  ['it', '1 tbsp', '1 cucchiaio'],
  ['it', '½ tsp', '½ cucchiaino'],
  ['it', '12 g (about 1½ tbsp)', '12 g (circa 1½ cucchiai)'],
  ['it', '2 tsp', '2 cucchiaini'],
  ['it', '14,4 g (1 tbsp)', '14,4 g (1 cucchiaio)'],
  ['es', '2½ tbsp', '2½ cdas.'],
  ['es', '¾ tsp', '¾ cdta.'],
  ['de', '2 tbsp', '2 EL'],
])('%s: %s is %s', (language, english, local) => {
  const words = methodWords(language);
  expect(words && localUnits(english, words)).toBe(local);
});

it.each([
  ['de', 'Schnelle Quarkbrötchen', /1 Stunde|eine Stunde/],
  ['de', 'Bauernbrot', /3 Stunden/],
  ['nl', 'Zachte melkbroodjes', /een uur/],
  ['nl', 'Boerenbrood', /3 uur/],
  ['fr', 'Petits pains au lait', /une heure/],
  ['fr', 'Pain de campagne', /3 heures/],
  ['es', 'Panecillos de leche', /una hora/],
  ['es', 'Pan de pueblo', /3 horas/],
  ['it', 'Panini al latte', /un'ora/],
  ['it', 'Pane casereccio', /3 ore/],
  ['pt', 'Pãezinhos de leite', /uma hora/],
  ['pt', 'Pão caseiro', /3 horas/],
  ['sv', 'Mjuka frallor', /en timme/],
  ['sv', 'Lantbröd', /3 timmar/],
  ['da', 'Bløde boller', /en time/],
  ['da', 'Landbrød', /3 timer/],
  ['nb', 'Grove rundstykker', /en time/],
  ['nb', 'Landbrød', /3 timer/],
])('%s: %s cool as long as small or large bakes do', (language, title, time) => {
  const words = methodWords(language);
  const text = words?.steps['cool-lean'] ?? '';
  const context = { title, method: '', words } as unknown as Parameters<typeof fill>[1];
  const plan = { items: [], notes: [], dough: null, reserveWaterG: null };
  const whole = { ...context, plan, mentions: [], ingredients: [] } as unknown as typeof context;
  expect(fill(text, whole)).toMatch(time);
});

it.each([
  ['de', '60 g Rosinen (optional)', /^\S+ g .*Rosinen \(nach Belieben\)$/],
  ['fr', '60 g de raisins secs (facultatif)', /de raisins secs \(facultatif\)$/],
  ['nl', '60 g rozijnen (optioneel)', /rozijnen \(naar keuze\)$/],
  ['es', '60 g de pasas (opcional)', /de pasas \(opcional\)$/],
  ['it', '60 g di uvetta (facoltativo)', /di uvetta \(facoltativo\)$/],
  ['sv', '60 g russin (valfritt)', /russin \(valfritt\)$/],
] as const)('%s: an optional line stays one in its language', (language, line, said) => {
  const [first] = linesOf(foreign(language, 'x', [line], []), 'allulose', 30);
  expect(first).toMatch(said);
});

it.each([
  ['de', '2 EL Zucker und 1 EL Butter', 'g (1 EL) Butter'],
  ['fr', '2 c. à soupe de sucre et 1 c. à soupe de beurre', 'g (1 c. à soupe) de beurre'],
  ['it', '2 cucchiai di zucchero e 1 cucchiaio di burro', 'g (1 cucchiaio) di burro'],
] as const)('%s: what stays of a split line has its own spoons', (language, line, said) => {
  const recipe = foreign(language, 'x', [line], []);
  const read = weighRecipe(recipe);
  const plan = makePlan('cake', read, [{ key: '0', kept: 10, to: [['allulose', 20]] }]);
  const { lines } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
  expect(lines.at(-1)?.after).toContain(said);
});

it.each([
  [
    'fr',
    'Pain de campagne',
    'Cuire au four à 230 °C pendant 40 minutes. Refroidir sur une grille.',
  ],
  ['nb', 'Landbrød', 'Stek brødet på 230 °C i 40 minutter.'],
  ['sv', 'Lantbröd', 'Grädda i ugn på 230 °C i 40 minuter.'],
] as const)(
  '%s: a loaf in the oven is neither grilled nor fried, and begins covered',
  (language, title, bake) => {
    const flour = { fr: 'de farine de blé', nb: 'hvetemel', sv: 'vetemjöl' }[language];
    const water = { fr: "d'eau", nb: 'vann', sv: 'vatten' }[language];
    const recipe = foreign(language, title, [`500 g ${flour}`, `350 ml ${water}`], [bake]);
    const read = weighRecipe(recipe);
    const plan = makePlan('lean-yeast-bread', read, [
      { key: '0', kept: 160, to: [['low-carb-wheat-flour-blend', 340]] },
    ]);
    const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
    expect(steps.map(({ after }) => after).join(' ')).toMatch(/couvercle|lokk|lock/);
  },
);

it('Swedish: sugar in the method is the plain one, icing sugar keeps its name', () => {
  const recipe = foreign(
    'sv',
    'Citronkaka',
    ['200 g strösocker', '150 g florsocker'],
    ['Vispa smör och socker.', 'Blanda florsocker och citronsaft.'],
  );
  const read = weighRecipe(recipe);
  const plan = makePlan('cake', read, [{ key: '0', kept: 0, to: [['allulose', 200]] }]);
  const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
  expect(steps.map(({ after }) => after).join(' ')).toMatch(
    /^Vispa smör och socker \(nu 200 g allulos\).*Blanda florsocker och citronsaft/,
  );
});

it('French: a reason has the word that goes before a vowel', () => {
  const recipe = foreign('fr', 'x', ["200 g d'huile"], ["Ajouter l'huile."]);
  const read = weighRecipe(recipe);
  const plan = makePlan('cake', read, [{ key: '0', kept: 0, to: [['ricotta', 200]] }]);
  const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
  expect(steps.map(({ why }) => why ?? '').join(' ')).toMatch(/Ricotta au lieu d'huile/);
});
