/** A yeast dough in other languages: what is told of it stands in its order, and once. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

type Words = [language: string, lines: string[], steps: string[], rest: RegExp, flour: RegExp];

const BREADS: Words[] = [
  [
    'fr',
    ['500 g de farine de blé', '7 g de levure sèche', "300 ml d'eau"],
    [
      "Délayer la levure dans l'eau tiède. Ajouter la farine et pétrir 10 minutes. Laisser lever 1 heure jusqu'à ce que la pâte double de volume.",
      'Cuire au four à 200 °C pendant 30 minutes.',
    ],
    /laisser reposer 20-30 minutes/,
    /Ajouter la farine/,
  ],
  [
    'nl',
    ['500 g bloem', '7 g droge gist', '300 ml water'],
    [
      'Los de gist op in lauw water. Voeg de bloem toe en kneed 10 minuten. Laat 1 uur rijzen tot het deeg verdubbeld is.',
      'Bak 30 minuten in de oven op 200 °C.',
    ],
    /20-30 minuten rusten/,
    /Voeg de bloem/,
  ],
  [
    'pt',
    ['500 g de farinha de trigo', '7 g de fermento seco', '300 ml de água'],
    [
      'Dissolva o fermento na água morna. Junte a farinha e amasse durante 10 minutos. Deixe levedar 1 hora até dobrar de volume.',
      'Leve ao forno a 200 °C durante 30 minutos.',
    ],
    /repousar 20-30 minutos/,
    /Junte a farinha/,
  ],
  [
    'sv',
    ['500 g vetemjöl', '7 g torrjäst', '300 ml vatten'],
    [
      'Rör ut jästen i ljummet vatten. Tillsätt mjölet och knåda 10 minuter. Låt jäsa 1 timme till dubbel storlek.',
      'Grädda i ugnen på 200 °C i 30 minuter.',
    ],
    /vila i 20-30 minuter/,
    /Tillsätt mjölet/,
  ],
];

function told(language: string, lines: string[], steps: string[]): string[] {
  const recipe = { ...makeRecipe('Brioche', lines, steps), language };
  const read = understand(recipe);
  const change = {
    key: '0',
    kept: 250,
    to: [['low-carb-wheat-flour-blend', 250]] as [string, number][],
  };
  const plan = makePlan('enriched-yeast-bread', read, [change], { starchPct: 40 });
  const roles = { '0': ['structure' as const], '2': ['liquid' as const] };
  return rewriteRecipe(recipe, read, { ...plan, roles }, { foods, region: 'eu' }).steps.map(
    ({ after }) => after,
  );
}

describe.each(BREADS)('a dough in %s', (language, lines, steps, rest, flour) => {
  const text = told(language, lines, steps).join('\n');

  it('rests once its flour is in', () => {
    expect(text.search(rest)).toBeGreaterThan(text.search(flour));
  });

  it('has its yeast woken once, and says how far it rises once', () => {
    expect(text).not.toMatch(/43 °C/);
    expect(text).not.toMatch(/1,6/);
    expect(
      told(
        language,
        lines,
        steps.map((step) => step.replace(/ (?:jusqu'à|tot|até|till) [^.]*\.$/, '.')),
      ).join(' '),
    ).toMatch(/1,6/);
  });
});

it('an amended sentence begins with a capital', () => {
  const steps = [
    'Mehl, Hefe und Wasser mischen.',
    '10 Minuten zu einem glatten Teig kneten.',
    'Im Ofen bei 200 °C 30 Minuten backen.',
  ];
  const lines = ['500 g Weizenmehl', '7 g Trockenhefe', '300 ml Wasser'];
  expect(told('de', lines, steps).join('\n')).toMatch(/\nNur 3-6 Minuten/);
});

describe.each([
  [
    'sv',
    'vetemjöl',
    'Arbeta degen 10 minuter. Låt jäsa 45 minuter.',
    /bara 3-6 minuter/,
    /jäsa (?:45|5\d) minuter/,
  ],
  [
    'da',
    'hvedemel',
    'Ælt dejen i 10 minutter. Lad den hæve i 45 minutter.',
    /kun 3-6 minutter/,
    /hæve i (?:45|5\d) minutter/,
  ],
  [
    'nb',
    'hvetemel',
    'Elt deigen i 10 minutter. La den heve i 45 minutter.',
    /bare 3-6 minutter/,
    /heve i (?:45|5\d) minutter/,
  ],
  [
    'pt',
    'farinha de trigo',
    'Amasse durante 10 minutos. Deixe levedar 45 minutos.',
    /apenas 3-6 minutos/,
    /levedar (?:45|5\d) minutos/,
  ],
] as const)('kneading in %s', (language, flour, step, kneads, rises) => {
  const kneaded = (text: string): string =>
    told(language, [`500 g ${flour}`, '7 g yeast', '300 ml water'], [text]).join('\n');

  it('is shortened, and the rise in the same step is not', () => {
    expect(kneaded(step)).toMatch(kneads);
    expect(kneaded(step)).toMatch(rises);
    const [, rest = ''] = step.split('. ');
    expect(kneaded(`${step.split(' ')[0]} ${flour}. ${rest}`)).toMatch(rises);
  });
});

describe('a dough whose method names no line of flour', () => {
  it('is handled where both flours go in, behind the water', () => {
    const recipe = {
      ...makeRecipe(
        'Körnerbrötchen',
        [
          '350 g Weizenmehl (Type 550)',
          '150 g Dinkelmehl',
          '20 g frische Hefe',
          '320 ml Wasser',
          '10 g Salz',
        ],
        [
          'Die Hefe im Wasser auflösen und 10 Minuten gehen lassen.',
          'Beide Mehlsorten mit dem Salz mischen. Hefewasser zugeben und 8 Minuten kneten. Die Kerne unterkneten.',
          'Den Teig 1 Stunde gehen lassen, bis er sich verdoppelt hat.',
          'Auf der bemehlten Fläche 10 Brötchen formen und 20 Minuten bei 220 °C backen.',
        ],
      ),
      language: 'de',
    };
    const read = understand(recipe);
    const plan = makePlan(
      'lean-yeast-bread',
      read,
      [{ key: '0', kept: 150, to: [['low-carb-wheat-flour-blend', 200]] }],
      { starchPct: 40 },
    );
    const roles = {
      '0': ['structure' as const],
      '1': ['structure' as const],
      '3': ['liquid' as const],
    };
    const { steps } = rewriteRecipe(recipe, read, { ...plan, roles }, { foods, region: 'eu' });
    const [yeast = '', dough = '', rise = ''] = steps.map(({ after }) => after);
    expect(yeast).toBe(recipe.steps[0]?.text);
    expect(dough).toMatch(/Beide Mehlsorten.*Hefewasser zugeben.*20-30 Minuten ruhen/s);
    expect(rise).toMatch(/verdoppelt|zwei Drittel/);
  });
});

it('a dough in German rests once the water with the yeast is in', () => {
  const [, added = '', rested = ''] = told(
    'de',
    ['500 g Mehl', '20 g Hefe', '300 ml Wasser'],
    [
      'Hefe im Wasser auflösen. Mehl in eine Schüssel geben und mit Salz mischen.',
      'Hefewasser zugeben und alles 5 Minuten zu einem weichen Teig verkneten.',
      'Den Teig 1 Stunde gehen lassen.',
    ],
  );
  expect(added).toContain('Hefewasser zugeben');
  expect(added).not.toContain('Sobald der Teig');
  expect(rested).toMatch(/Sobald der Teig zusammenhält/);
});

it.each([
  'Add the flour and salt. Mix on low until combined, then knead for 8 minutes.',
  'Add the flour and salt and mix on low, then knead for 8 minutes.',
])('a dough rests between mixing and kneading: %s', (step) => {
  const text = told(
    'en',
    ['500 g flour', '7 g dry yeast', '300 ml water'],
    ['Stir the yeast into the water.', step, 'Let rise for 1 hour.'],
  ).join('\n');
  expect(text).toMatch(
    /[Mm]ix on low[^.]*\. When the dough comes together[^\n]*\. Knead for 3-6 minutes/,
  );
});

it('a dough in German rests once its milk is in, in one step with the dry mix', () => {
  const [step = ''] = told(
    'de',
    ['500 g Mehl', '20 g Hefe', '300 ml Milch'],
    [
      'Für den Teig Mehl, Hefe und Salz mischen. Milch und Butter zugeben und alles 5 Minuten zu einem glatten Teig kneten. 1 Stunde gehen lassen.',
    ],
  ).filter((one) => one.includes('zugeben'));
  expect(step.indexOf('Sobald der Teig')).toBeGreaterThan(step.indexOf('zugeben'));
});
