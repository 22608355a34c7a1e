/** Amounts in methods of other languages: each belongs to one line, and says what is used of it now. */
import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { weighRecipe } from '../../../engine/walk.ts';
import { type Change, foods, makePlan, makeRecipe } from '../fixtures.ts';

function method(
  language: string,
  lines: string[],
  steps: string[],
  changes: readonly Change[],
): string[] {
  const recipe: Recipe = { ...makeRecipe('Essai', lines, steps), language };
  const read = weighRecipe(recipe);
  const plan = makePlan('cake', read, changes);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'eu' }).steps.flatMap(
    ({ before, after }) => (before === null ? [] : [after]),
  );
}

describe('an amount in a step', () => {
  it.each([
    ['fr', '240 grammes de beurre', 'Fondre 240 grammes de beurre.', 'beurre (maintenant 200 g).'],
    ['de', '240 g Butter', '240 Gramm Butter schmelzen.', 'Butter (jetzt 200 g) schmelzen.'],
    ['es', '240 g de mantequilla', 'Fundir 240 gramos de mantequilla.', '(ahora 200 g).'],
    ['it', '240 g di burro', 'Sciogliere 240 grammi di burro.', 'burro (ora 200 g).'],
    ['nl', '240 g boter', 'Smelt 240 gram boter.', 'boter (nu 200 g).'],
  ])('%s: is updated where the unit is written out', (language, line, step, end) => {
    const [after] = method(language, [line], [step], [{ key: '0', kept: 200, to: [] }]);
    expect(after).toContain(end);
  });

  it('takes its share of a line that is used in two places', () => {
    const after = method(
      'fr',
      ['90 grammes de sucre'],
      ['Fouetter 30 grammes de sucre.', 'Ajouter 60 grammes de sucre.'],
      [{ key: '0', kept: 0, to: [['allulose', 120]] }],
    );
    expect(after).toEqual([
      `Fouetter 30 grammes de sucre (maintenant 40 g d'allulose).`,
      `Ajouter 60 grammes de sucre (maintenant 80 g d'allulose).`,
    ]);
  });

  it('takes shares twice in one step', () => {
    const [after] = method(
      'fr',
      ['90 g de sucre'],
      ['Fouetter 30 g de sucre, puis ajouter 60 g de sucre.'],
      [{ key: '0', kept: 0, to: [['allulose', 120]] }],
    );
    expect(after).toBe(
      `Fouetter 30 g de sucre (maintenant 40 g d'allulose), puis ajouter 60 g de sucre (maintenant 80 g d'allulose).`,
    );
  });

  it('belongs to the line that states it, of two of one name', () => {
    const after = method(
      'fr',
      ['200 g de sucre', '2 cuillères à soupe de sucre'],
      ['Mélanger 200 g de sucre.', 'Saupoudrer de 2 cuillères à soupe de sucre.'],
      [{ key: '0', kept: 0, to: [['allulose', 260]] }],
    );
    expect(after).toEqual([
      `Mélanger 200 g de sucre (maintenant 260 g d'allulose).`,
      'Saupoudrer de 2 cuillères à soupe de sucre.',
    ]);
  });

  it('of another food before a name is none of the name', () => {
    const [after] = method(
      'fr',
      ['50 g de beurre', '200 g de sucre'],
      ['Mélanger 50 g de beurre et le sucre.'],
      [{ key: '1', kept: 0, to: [['allulose', 260]] }],
    );
    expect(after).toBe(`Mélanger 50 g de beurre et le sucre (maintenant 260 g d'allulose).`);
  });
});

describe('what is not boiled now', () => {
  const noodles = (language: string, line: string, steps: string[]): string[] =>
    method(language, [line, '1 cebolla'], steps, [{ key: '0', kept: 0, to: [['zucchini', 900]] }]);

  it.each([
    [
      'es',
      '400 g de espaguetis',
      'Pon a hervir agua. Cuece los espaguetis según el paquete. Escurre y sirve con la salsa.',
      'Sirve con la salsa.',
    ],
    [
      'de',
      '400 g Spaghetti',
      'Die Spaghetti nach Packungsanweisung kochen, abgießen und mit der Soße servieren.',
      'Mit der Soße servieren.',
    ],
    ['nl', '400 g spaghetti', 'Kook de spaghetti 9 minuten.', 'Spaghetti: weglaten.'],
  ])('%s: loses its boiling', (language, line, step, rest) => {
    expect(noodles(language, line, [step])).toEqual([rest]);
  });

  it('keeps what else goes on while it boils', () => {
    const step = 'Mientras se cuecen los espaguetis, pica la cebolla.';
    expect(noodles('es', '400 g de espaguetis', [step])[0]).toMatch(/pica la cebolla/);
  });
});

it('the dish by its whole name keeps it', () => {
  const recipe: Recipe = {
    ...makeRecipe(
      'Tonno con cipolle e patate',
      ['600 g di patate'],
      ['Per il tonno con cipolle e patate scaldate il forno.', 'Tagliate le patate.'],
    ),
    language: 'it',
  };
  const read = weighRecipe(recipe);
  const plan = makePlan('other', read, [{ key: '0', kept: 0, to: [['cauliflower', 600]] }]);
  const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
  const texts = steps.map(({ after }) => after);
  expect(texts.join(' ')).toMatch(/e patate scaldate il forno\./);
  expect(texts.join(' ')).toContain('Tagliate le patate (ora 600 g di cavolfiore).');
});

describe('a name in another form', () => {
  it.each([
    [
      'nl',
      '600 g aardappelen',
      'Schil de aardappels en de raapjes.',
      'aardappels (nu 600 g bloemkool, niet schillen) en',
    ],
    [
      'nl',
      '600 g aardappelen',
      'Leg een laag aardappel in de schaal.',
      'aardappel (nu 600 g bloemkool) in',
    ],
    [
      'de',
      '600 g Kartoffeln',
      'Die Apfel- und Kartoffelstücke zugeben.',
      'Kartoffelstücke (jetzt 600 g Blumenkohl)',
    ],
    [
      'de',
      '600 g Kartoffeln',
      'Jede Kartoffel vierteln und salzen.',
      'Kartoffel (jetzt 600 g Blumenkohl)',
    ],
    [
      'nl',
      '600 g aardappelen',
      'Doe de aardappelblokjes in de pan.',
      'aardappelblokjes (nu 600 g bloemkool)',
    ],
  ])('%s: %s is found in "%s"', (language, line, step, end) => {
    const [after] = method(
      language,
      [line],
      [step],
      [{ key: '0', kept: 0, to: [['cauliflower', 600]] }],
    );
    expect(after).toContain(end);
  });

  it('is no other word that begins so', () => {
    const [after] = method(
      'de',
      ['600 g Kartoffeln'],
      ['Mit Kartoffelstärke binden.'],
      [{ key: '0', kept: 0, to: [['cauliflower', 600]] }],
    );
    expect(after).toBe('Mit Kartoffelstärke binden.');
  });
});

describe('a word for what stays out of the pot', () => {
  const rice = (language: string, line: string, step: string): string | undefined =>
    method(language, [line, '300 ml bouillon'], [step], [{ key: '0', kept: 0, to: [] }])[0];

  it.each([
    ['nl', '150 g rijst', 'Voeg de bouillon en ongekookte rijst toe.', 'Voeg de bouillon toe.'],
    [
      'nl',
      '150 g rijst',
      'De ui snijden en de rijst toevoegen.',
      'De ui snijden en de rijst (weglaten) toevoegen.',
    ],
    ['de', '150 g Reis', 'Den Reis und die Brühe zugeben.', 'Die Brühe zugeben.'],
    [
      'de',
      '150 g Reis',
      'Zwiebeln schneiden und den Reis zugeben.',
      'Zwiebeln schneiden und den Reis (weglassen) zugeben.',
    ],
    ['de', '150 g Reis', 'Brühe, Erbsen und Reis zugeben.', 'Brühe und Erbsen zugeben.'],
    [
      'fr',
      '150 g de riz',
      'Ajouter le bouillon, le riz et le sel.',
      'Ajouter le bouillon et le sel.',
    ],
    ['es', '150 g de arroz', 'Añade el arroz y el caldo.', 'Añade el caldo.'],
    [
      'pt',
      '150 g de arroz',
      'Adicione o arroz, pese a água.',
      'Adicione o arroz (não usar), pese a água.',
    ],
    ['sv', '150 g ris', 'Tillsätt buljong, salt och ris.', 'Tillsätt buljong och salt.'],
  ])('%s: %s leaves "%s"', (language, line, step, rest) => {
    expect(rice(language, line, step)).toBe(rest);
  });
});

describe('a bracket', () => {
  it.each([
    ['nb', '1 l melk', 'Pisk inn halvparten av melken.', 'halvparten av melken (nå kokosmelk).'],
    [
      'de',
      '1 l Milch',
      'Die Hälfte der Milch erwärmen.',
      'Hälfte der Milch (jetzt Kokosmilch) erwärmen',
    ],
    [
      'fr',
      '1 l de lait',
      'Verser la moitié du lait.',
      'la moitié du lait (maintenant lait de coco).',
    ],
  ])('%s: weighs no part of %s', (language, line, step, end) => {
    const [after] = method(
      language,
      [line],
      [step],
      [{ key: '0', kept: 0, to: [['coconut-milk-canned', 900]] }],
    );
    expect(after).toContain(end);
  });

  it.each([
    [
      'de',
      '600 g Kartoffeln',
      'Die Kartoffeln schälen und würfeln.',
      '(jetzt 600 g Blumenkohl, nicht schälen) schälen',
    ],
    [
      'it',
      '600 g di patate',
      'Pelate le patate.',
      'patate (ora 600 g di cavolfiore, senza pelare).',
    ],
    ['sv', '600 g potatis', 'Skala potatisen.', '(nu 600 g blomkål, skala inte).'],
  ])('%s: says of %s that the stand-in is not peeled', (language, line, step, end) => {
    const change: Change = { key: '0', kept: 0, to: [['cauliflower', 600]] };
    expect(method(language, [line], [step], [change])[0]).toContain(end);
    const root: Change = { key: '0', kept: 0, to: [['turnip', 600]] };
    expect(method(language, [line], [step], [root])[0]).not.toMatch(
      /nicht schälen|senza|skala inte/,
    );
  });

  it('keeps what is not boiled out of the pot of the rest', () => {
    const [after] = method(
      'de',
      ['200 g Nudeln'],
      ['Die Nudeln in Salzwasser kochen.'],
      [{ key: '0', kept: 70, to: [['cauliflower-rice', 310]] }],
    );
    expect(after).toBe(
      'Die Nudeln (jetzt 70 g Nudeln; 310 g Blumenkohlreis erst nach dem Kochen dazu) in Salzwasser kochen.',
    );
  });

  it('keeps leaves out of the pot of stuffed pasta', () => {
    const [after] = method(
      'nl',
      ['400 g ravioli'],
      ['Kook de ravioli in water met zout.'],
      [{ key: '0', kept: 200, to: [['spinach', 270]] }],
    );
    expect(after).toContain('ravioli (nu 200 g ravioli; 270 g spinazie pas na het koken erbij) in');
  });

  it('writes the own name small where the method does', () => {
    const [after] = method(
      'fr',
      ['Sucre en poudre - 80 grammes'],
      ['Ajouter 80 grammes de sucre en poudre.'],
      [{ key: '0', kept: 30, to: [['allulose', 50]] }],
    );
    expect(after).toContain("(maintenant 30 g de sucre en poudre et 50 g d'allulose)");
  });
});

describe('a short step without a full stop', () => {
  it.each([
    [
      'it',
      '100 g di zucchero',
      'Poi aggiungete lo zucchero',
      'Poi aggiungete lo zucchero (ora 40 g di zucchero e 60 g di ',
    ],
    [
      'fr',
      '100 g de sucre',
      'Ajouter le sucre',
      'Ajouter le sucre (maintenant 40 g de sucre et 60 g ',
    ],
    ['es', '100 g de azúcar', 'Añadir el azúcar', 'Añadir el azúcar (ahora 40 g de azúcar y 60 g '],
    [
      'pt',
      '100 g de açúcar',
      'Adicione o açúcar',
      'Adicione o açúcar (agora 40 g de açúcar e 60 g ',
    ],
    [
      'de',
      '100 g Zucker',
      'Dann den Zucker zugeben',
      'Dann den Zucker (jetzt 40 g Zucker und 60 g ',
    ],
    ['nl', '100 g suiker', 'Voeg de suiker toe', 'Voeg de suiker (nu 40 g suiker en 60 g '],
    ['sv', '100 g socker', 'Tillsätt sockret och socker', '(nu 40 g socker och 60 g '],
    ['da', '100 g sukker', 'Tilsæt sukker', 'Tilsæt sukker (nu 40 g sukker og 60 g '],
    ['nb', '100 g sukker', 'Tilsett sukker', 'Tilsett sukker (nå 40 g sukker og 60 g '],
  ])('%s: names both sugars', (language, line, step, told) => {
    const [after] = method(
      language,
      [line],
      [step],
      [{ key: '0', kept: 40, to: [['allulose', 60]] }],
    );
    expect(after).toContain(told);
  });

  it.each([
    ['fr', '100 g de sucre', 'Cuisson du sucre'],
    ['de', '100 g Zucker', 'Für den Zucker'],
    ['it', '100 g di zucchero', 'Per lo zucchero:'],
  ])('%s: is a heading where it puts nothing in', (language, line, step) => {
    const [after] = method(
      language,
      [line],
      [step],
      [{ key: '0', kept: 40, to: [['allulose', 60]] }],
    );
    expect(after?.startsWith(step)).toBe(true);
    expect(after).not.toContain('(');
  });
});

it('a method whose steps end in no full stops has no headings', () => {
  const [, beaten] = method(
    'it',
    ['100 g di zucchero', '3 uova', '3 mele'],
    ['Sbucciate le mele', 'Montate le uova con lo zucchero', 'Versate in uno stampo'],
    [{ key: '0', kept: 0, to: [['allulose', 120]] }],
  );
  expect(beaten).toMatch(/lo zucchero \(ora 120 g/);
});

it('the end of a compound behind an adjective is its name too', () => {
  const [after] = method(
    'nl',
    ['80 g bruine basterdsuiker', '100 g boter'],
    ['Kneed de rest van de suiker met de boter.'],
    [{ key: '0', kept: 0, to: [['allulose', 60]] }],
  );
  expect(after).toMatch(/suiker \(nu allulose/);
});

describe('two lines of one name', () => {
  const lines = [
    '200 g Mehl',
    '80 g Zucker',
    '500 g Quark',
    '3 Eier',
    '200 g Zucker',
    '200 ml Sahne',
  ];
  const changes = [
    { key: '1', kept: 0, to: [['allulose', 80]] },
    { key: '4', kept: 30, to: [['allulose', 170]] },
  ] satisfies Change[];

  it('are taken in turn, each by the step that takes the next', () => {
    const [dough, filling] = method(
      'de',
      lines,
      [
        'Mehl mit Zucker verkneten.',
        'Quark, Zucker und Eier verrühren, bis der Zucker gelöst ist.',
      ],
      changes,
    );
    expect(dough).toContain('Zucker (jetzt 80 g Allulose)');
    expect(filling).toContain('Zucker (jetzt 30 g Zucker und 170 g Allulose)');
  });

  it('stay with the first where only what is left of it is meant', () => {
    const [, rest] = method(
      'de',
      lines,
      ['Mehl mit der Hälfte vom Zucker verkneten.', 'Den restlichen Zucker darüberstreuen.'],
      changes,
    );
    expect(rest).not.toContain('170 g');
  });
});
