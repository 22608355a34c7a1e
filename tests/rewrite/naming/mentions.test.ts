/** Which line a word of the method means, by the kinds a method calls a food. */
import { expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { weighRecipe } from '../../../engine/walk.ts';
import { type Change, foods, makePlan, makeRecipe } from '../fixtures.ts';

function method(
  lines: string[],
  steps: string[],
  changes: readonly Change[],
  { language = 'en', parts = [] as string[][] } = {},
): string[] {
  const recipe = { ...makeRecipe('Test dish', lines, steps), language };
  const read = weighRecipe(recipe);
  const plan = makePlan('cake', read, changes);
  const family = plan.family.id;
  const inParts = { ...plan, parts: parts.map((keys) => ({ title: null, family, keys })) };
  return rewriteRecipe(recipe, read, inParts as typeof plan, {
    foods,
    region: 'us',
  }).steps.flatMap(({ before, after }) => (before === null ? [] : [after]));
}

const SUGAR_CHANGED: Change = { key: '0', kept: 80, to: [['allulose', 120]] };

it.each(['powdered sugar', 'icing sugar', 'confectioners’ sugar'])(
  '%s is the fine sugar of a line with another word for it, though only the other sugar changed',
  (word) => {
    const [cake, icing] = method(
      ['200 g sugar', '100 g flour', '120 g confectioners sugar', '200 g cream cheese'],
      ['Whisk the flour and sugar.', `Beat the cream cheese, then add the ${word}.`],
      [SUGAR_CHANGED],
    );
    expect(cake).toContain('allulose');
    expect(icing).toBe(`Beat the cream cheese, then add the ${word}.`);
  },
);

it('the other food of a line that names two is that line', () => {
  const [batter, fruit] = method(
    ['200 g cane sugar', '100 g flour', '45 g brown sugar or maple sugar', '400 g plums'],
    ['Mix the flour and cane sugar.', 'Toss the plums with the maple sugar.'],
    [SUGAR_CHANGED],
  );
  expect(batter).toContain('allulose');
  expect(fruit).toBe('Toss the plums with the maple sugar.');
});

it('a word is first the line of the part that is made, also an unchanged one', () => {
  const [, icing] = method(
    ['200 g sugar', '100 g flour', '120 g icing sugar', '200 g cream cheese'],
    ['Whisk the flour and sugar.', 'Beat the cream cheese with the sugar.'],
    [SUGAR_CHANGED],
    {
      parts: [
        ['0', '1'],
        ['2', '3'],
      ],
    },
  );
  expect(icing).toBe('Beat the cream cheese with the sugar.');
});

it.each([
  ['pt', '350 g arroz agulha', 'Adicione o arroz e mexa.', 'arroz (agora 80 g de arroz agulha e '],
  [
    'fr',
    '350 g de riz basmati',
    'Ajouter le riz et remuer.',
    'riz (maintenant 80 g de riz basmati et ',
  ],
  [
    'es',
    '350 g de arroz redondo',
    'Añadir el arroz y remover.',
    'arroz (ahora 80 g de arroz redondo y ',
  ],
])('%s: a stand-in goes in where a step names the rice for short', (language, line, step, put) => {
  const [after] = method(
    [line],
    [step],
    [{ key: '0', kept: 80, to: [['konjac-rice', 640, 'starch-bulk']] }],
    { language },
  );
  expect(after).toContain(`${put}640 g`);
});

it('a short word that two lines share names neither', () => {
  const [after] = method(
    ['150 g de sucre en poudre', '150 g de sucre glace'],
    ['Ajouter le sucre.'],
    [{ key: '0', kept: 0, to: [['allulose', 300]] }],
    { language: 'fr' },
  );
  expect(after).toBe('Ajouter le sucre.');
});

it('sugar of a later step is the line that no step has put in, where the first is in', () => {
  const [dough, filling, dissolved] = method(
    ['60 g sugar', '400 g flour', '200 g white sugar, divided', '100 g icing sugar'],
    [
      'Combine the sugar and flour.',
      'Roll the dough out and sprinkle half of the sugar over it.',
      'Wait until the sugar has dissolved.',
    ],
    [{ key: '2', kept: 40, to: [['allulose', 160]] }],
    { parts: [['0', '1'], ['2'], ['3']] },
  );
  expect(dough).toBe('Combine the sugar and flour.');
  expect(filling).toContain('80 g allulose');
  expect(dissolved).not.toContain('allulose');
});

it.each(['agave', 'maple'])('%s alone is its syrup', (word) => {
  const [blended] = method(
    [`80 g ${word} syrup`, '200 g strawberries'],
    [`Blend the strawberries with the ${word}.`],
    [{ key: '0', kept: 0, to: [['allulose', 60]] }],
  );
  expect(blended).toBe('Blend the strawberries with the allulose.');
});

it('French potatoes are called by all three words, apples by one', () => {
  const [peeled, cooked] = method(
    ['1 kg de pommes de terre à chair ferme', '300 ml de crème'],
    ['Éplucher les pommes de terre.', 'Ajouter les pommes de terre à la crème.'],
    [{ key: '0', kept: 0, to: [['cauliflower', 1000]] }],
    { language: 'fr' },
  );
  expect(peeled).toMatch(/les pommes de terre \(maintenant .*chou-fleur/);
  expect(cooked).toMatch(/les pommes de terre \(maintenant chou-fleur\) à la crème/);
});

it('slices of brioche are the bread of the method', () => {
  const [soaked] = method(
    ['8 slices brioche', '300 ml milk'],
    ['Soak 4 slices of bread in the milk.'],
    [{ key: '0', kept: 0, to: [['portobello-buns', 320]] }],
  );
  expect(soaked).toBe('Soak 4 slices of buns in the milk.');
});
