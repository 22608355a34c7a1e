/** Methods in other languages: places, names and texts of what is put in. */
import { describe, expect, it } from 'vitest';
import { type Adaptation, DEFAULT_GOALS, type Recipe } from '../../../engine/model.ts';
import { SWAP_RULES } from '../../../engine/plan/dish/swap-rules.ts';
import cues from '../../../engine/rewrite/data/cues.json' with { type: 'json' };
import warnings from '../../../engine/rewrite/data/warnings.json' with { type: 'json' };
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import foodNames from '../../../engine/rewrite/languages/data/food-names.json' with {
  type: 'json',
};
import {
  isForeign,
  localFoodName,
  localHandling,
  localReason,
  methodWords,
} from '../../../engine/rewrite/languages/method-words.ts';
import { adaptRecipe, weighRecipe } from '../../../engine/walk.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

const TAGS = ['da', 'de', 'es', 'fr', 'it', 'nb', 'nl', 'pt', 'sv'] as const;

/** Foods whose name in some language is that of a food all but the same: lean and fat mince, two lettuces. */
const NEAR: ReadonlySet<string> = new Set([
  // 'Mûres' is also ripe, and behind 'alho' a slip of the pen is seen.
  'blackberries',
  'garlic',
  'almonds-blanched',
  'beef-bouillon-powder',
  'beer-light',
  'chili-powder',
  'chocolate-dark-85',
  'coconut-cream',
  'cream-heavy',
  'ground-beef-85',
  'lettuce-butter',
  'lettuce-wraps',
  'mozzarella-low-moisture',
  'pectin-pure',
  'sausage-pork',
  'sour-cream',
  'soy-protein-isolate',
  'tamari',
  'tomato-puree',
  'turkey-deli',
]);

const foreign = (language: string, title: string, lines: string[], steps: string[]): Recipe => ({
  ...makeRecipe(title, lines, steps),
  language,
});

const BREAD = foreign(
  'de-DE',
  'Bauernbrot',
  ['500 g Weizenmehl', '350 ml Wasser', '10 g Salz', '1 TL Trockenhefe'],
  [
    'Mehl, Wasser, Salz und Hefe zu einem Teig verkneten.',
    'Zugedeckt 2 Stunden gehen lassen.',
    'Das Brot bei 230 °C 40 Minuten backen.',
    'Auf einem Gitter abkühlen lassen.',
  ],
);
const CAKE = foreign(
  'fr',
  'Gâteau au yaourt',
  ['200 g de sucre', '200 g de farine', '2 œufs', '100 g de beurre'],
  [
    'Fouetter le beurre avec le sucre.',
    'Ajouter 100 g de farine et les œufs, puis le reste.',
    'Cuire au four à 180 °C pendant 30 minutes.',
  ],
);
const PASTA = foreign(
  'nl',
  'Spaghetti',
  ['400 g spaghetti', '400 g tomatenblokjes uit blik', '2 el olijfolie'],
  ['Kook de spaghetti beetgaar.', 'Meng de spaghetti met de saus.'],
);

const work = (recipe: Recipe): Adaptation =>
  adaptRecipe(recipe, { ...DEFAULT_GOALS, servings: 8, budgetG: 6 });
const insertedBy = ({ steps }: Adaptation): string[] =>
  steps.filter(({ change }) => change === 'inserted').map(({ after }) => after);

describe.each(TAGS)('words for %s', (tag) => {
  const words = methodWords(tag);

  it('has every text that English has, with the same figures and blanks', () => {
    const texts = [...cues.filter(({ text }) => text !== ''), ...warnings];
    const blanks = (text: string): string[] =>
      (text.match(/\{(?:[Cd]:[\d-]+|[a-z]\w*)\}/g) ?? [])
        // A language may need no word for the flour mix, and names what stands in or not.
        .filter((blank) => !/\{(flourWord|stand)\}/.test(blank))
        .sort();
    for (const { id, text } of texts) {
      const said = words?.steps[id];
      expect(said, id).toBeTruthy();
      expect(blanks(said ?? ''), id).toEqual(blanks(text));
    }
    expect(Object.keys(words?.steps ?? {}).length).toBe(texts.length);
  });

  it('has the reason of every cue and warning', () => {
    for (const { id } of [...cues, ...warnings])
      expect(words && localReason(id, words), id).toBeTruthy();
  });

  it('names foods so that their lines read back as the same food and grams', () => {
    expect(words).not.toBeNull();
    if (words === null) return;
    const ids = Object.keys(foodNames).filter((id) => !NEAR.has(id));
    const lines = ids.map((id) => {
      const food = foods.byId(id);
      const raw = food?.state === 'raw' && (food.refuseShare ?? 0) > 0;
      const tail = !raw ? '' : food.group === 'eggs' ? '' : `, ${words.lines.trimmed}`;
      return `100 g ${localFoodName(id, words)}${tail}`;
    });
    const read = weighRecipe(foreign(tag, 'x', lines, []));
    ids.forEach((id, at) => {
      const one = read.find(({ key }) => key === String(at));
      expect(one?.match?.foodId, lines[at]).toBe(id);
      if (!id.startsWith('egg')) expect(one?.weight?.grams.best, lines[at]).toBeCloseTo(100, 6);
    });
  });
});

describe('the handling of stand-ins', () => {
  const sentences = [...new Set(SWAP_RULES.flatMap(({ method }) => (method ? [method] : [])))];
  const figures = (text: string): string[] =>
    (text.replaceAll(',', '.').match(/\d+(?:\.\d+)?/g) ?? []).sort();
  const clauses = (text: string): number => text.split(/;\s*/).length;

  it('is as many sentences as the tables hold', () => {
    expect(sentences.length).toBeGreaterThan(300);
  });

  it.each(TAGS)('is told in %s with the same figures, blanks and clauses', (tag) => {
    const words = methodWords(tag);
    expect(words).not.toBeNull();
    if (words === null) return;
    const untold = sentences.filter((sentence) => localHandling(sentence, words) === null);
    expect(untold).toEqual([]);
    for (const sentence of sentences) {
      const told = localHandling(sentence, words) ?? '';
      expect(figures(told), told).toEqual(figures(sentence));
      expect(clauses(told), told).toBe(clauses(sentence));
      expect(told, sentence).toMatch(/[^ ]\.$/);
      expect(told, sentence).not.toMatch(/\b(?:the|with|minutes at|until|and|then)\b/);
    }
  });
});

it('names every food that a swap may bring, in every language', () => {
  const brought = new Set(SWAP_RULES.flatMap(({ to }) => to.map(({ food }) => food)));
  expect(brought.size).toBeGreaterThan(200);
  const unnamed = [...brought].filter((id) => !Object.hasOwn(foodNames, id));
  expect(unnamed).toEqual([]);
});

it.each([
  [null, false],
  ['en', false],
  ['EN-gb', false],
  ['und', false],
  ['', false],
  ['x-default', false],
  ['sv', true],
  ['de_AT', true],
])('takes %s as another language: %s', (tag, foreignTag) => {
  expect(isForeign(tag)).toBe(foreignTag);
});

describe('a loaf in German', () => {
  const loaf = work(BREAD);
  const texts = loaf.steps.map(({ after }) => after);
  const at = (pattern: RegExp): number => texts.findIndex((text) => pattern.test(text));

  it('puts German steps at their places', () => {
    expect(texts[at(/verkneten/)]).toMatch(
      /^1 TL \(2,8 g\) Xanthan trocken .* Mehl \(jetzt 1[56]0 g .* und 3[45]0 g .*\), Wasser/,
    );
    expect(texts[at(/40 Minuten backen/)]).toMatch(
      /Fertig bei einer Kerntemperatur von 98-99 °C\./,
    );
    expect(texts[at(/Gitter abkühlen/)]).toMatch(/3 Stunden auskühlen/);
  });

  it('says nothing in English and no Fahrenheit', () => {
    const inserted = insertedBy(loaf).join(' ');
    expect(inserted).not.toMatch(/\b(the|and|with|dough|flour|minutes)\b|°F|[{}]/);
  });

  it('keeps the recipe’s own steps but for what changed', () => {
    expect(texts[at(/verkneten/)]).toMatch(/, Salz und Hefe zu einem Teig verkneten\./);
  });
});

it('a Portuguese loaf is covered by its time in the oven, not by that of its kneading', () => {
  const loaf = work(
    foreign(
      'pt',
      'Pão da aldeia',
      ['500 g de farinha de trigo', '330 ml de água', '10 g de sal', '7 g de fermento seco'],
      ['Misture tudo.', 'Amasse por 10 minutos.', 'Asse a 220 °C por 40 minutos.'],
    ),
  );
  const baked = loaf.steps.find(({ after }) => after.startsWith('Asse'))?.after ?? '';
  // Three fifths of 40 minutes under a lid, as in every other language.
  expect(baked).toMatch(/os primeiros 24 minutos/);
});

it('French: the word stays, with what stands for it in brackets; the oven is lowered', () => {
  const texts = work(CAKE).steps.map(({ after }) => after);
  expect(texts.find((text) => text.startsWith('Fouetter'))).toMatch(
    /^Fouetter le beurre avec le sucre \(maintenant \d+([.,]\d+)? g /,
  );
  expect(texts.find((text) => text.startsWith('Cuire'))).toMatch(
    /^Cuire au four à 170 °C pendant 33-36 minutes\. /,
  );
});

it.each([
  [
    'it',
    '100 g di zucchero',
    '3 uova',
    '100 g di burro',
    'Montate le uova fino a renderle spumose.',
    'Montare il burro con lo zucchero.',
    /2-3 minuti più/,
  ],
  [
    'de',
    '100 g Zucker',
    '3 Eier',
    '100 g Butter',
    'Die Eier schaumig schlagen.',
    'Butter und Zucker schaumig schlagen.',
    /2-3 Minuten länger/,
  ],
])(
  '%s: only butter and sugar are beaten for longer',
  (language, sugar, eggs, butter, first, second, longer) => {
    const recipe = foreign(language, 'x', [sugar, eggs, butter], [first, second]);
    const read = understand(recipe);
    const plan = makePlan('cake', read, [{ key: '0', kept: 0, to: [['allulose', 100]] }]);
    const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
    const texts = steps.map(({ after }) => after);
    expect(texts.find((text) => text.startsWith(first))).not.toMatch(longer);
    expect(texts.find((text) => text.includes(second.slice(0, 12)))).toMatch(longer);
  },
);

it('German: gnocchi made of ricotta are still gnocchi, and still simmered', () => {
  const recipe = foreign(
    'de',
    'Gnocchi',
    ['800 g Gnocchi', '100 g Spinat'],
    ['Die Gnocchi in Salzwasser kochen.', 'Die Gnocchi mit dem Spinat mischen.'],
  );
  const read = understand(recipe);
  const plan = makePlan('pasta-dish', read, [
    {
      key: '0',
      kept: 0,
      to: [
        ['ricotta', 480],
        ['almond-flour', 160],
      ],
    },
  ]);
  const swaps = plan.swaps.map((swap) => ({ ...swap, id: 'gnocchi-to-ricotta-almond' }));
  const { steps } = rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'eu' });
  const texts = steps.map(({ after }) => after);
  expect(texts).toContain(
    'Die Gnocchi (jetzt: 480 g Ricotta und 160 g gemahlene Mandeln) in Salzwasser kochen.',
  );
  expect(texts).toContain('Die Gnocchi mit dem Spinat mischen.');
});

it('Dutch: what is not boiled is left out of the pot', () => {
  const read = understand(PASTA);
  const plan = makePlan('pasta-dish', read, [{ key: '0', kept: 0, to: [['zucchini', 1100]] }]);
  const { steps } = rewriteRecipe(PASTA, read, plan, { foods, region: 'eu' });
  const texts = steps.map(({ after }) => after);
  expect(texts).toHaveLength(2);
  expect(texts[0]).toMatch(/courgette/);
  expect(texts[0]).not.toMatch(/weglaten|[Kk]ook de spaghetti/);
  expect(texts.at(-1)).toMatch(/^Meng de spaghetti \(nu \d+([.,]\d+)? g courgette\) met de saus/);
});

it('an accepted change in a German method says that it is English', () => {
  const text = 'Let it cool for 3 hours before cutting.';
  const adjustment = {
    id: 'gummy.3',
    symptom: 'gummy',
    lever: 'method',
    factor: null,
    shiftPct: null,
    text,
    why: 'Gummy crumb.',
    source: 'test',
  } as const;
  const goals = { ...DEFAULT_GOALS, servings: 8, budgetG: 6, adjustments: [adjustment] };
  const step = adaptRecipe(BREAD, goals).steps.find(({ after }) => after === text);
  expect(step).toMatchObject({ change: 'inserted', lang: 'en' });
});

it('English steps in a language without words say that they are English', () => {
  const finnish = foreign(
    'fi',
    'Bröd',
    ['500 g vetemjöl', '350 ml vatten', '10 g salt', '7 g torrjäst'],
    ['Blanda allt.', 'Grädda 40 minuter.'],
  );
  const inserted = work(finnish).steps.filter(({ change }) => change === 'inserted');
  expect(inserted.length).toBeGreaterThan(0);
  expect(inserted.every(({ lang }) => lang === 'en')).toBe(true);
  expect(work(BREAD).steps.every(({ lang }) => lang === undefined)).toBe(true);
});

it('a language without words keeps its steps whole, but for the oven, and its lines in grams', () => {
  const finnish = foreign(
    'fi',
    'Kakku',
    ['200 g sugar', '180 g flour', '100 g butter', '2 eggs'],
    ['Vatkaa sugar ja butter, lisää flour.', 'Paista 180 °C 35 min. Kirjasta Sugar of the Year.'],
  );
  const { steps, lines } = work(finnish);
  const own = steps.filter(({ before }) => before !== null).map(({ after }) => after);
  expect(own).toEqual([
    'Vatkaa sugar ja butter, lisää flour.',
    'Paista 170 °C 35 min. Kirjasta Sugar of the Year.',
  ]);
  expect(steps.some(({ after }) => /rack|foil|longer/.test(after))).toBe(false);
  const changed = lines.flatMap(({ after, change }) => (change === 'kept' ? [] : [after ?? '']));
  expect(changed.length).toBeGreaterThan(0);
  expect(changed.join(' ')).not.toMatch(/tbsp|cup|tsp/);
});

it.each([BREAD, CAKE, PASTA].map((recipe) => [recipe.title, recipe] as const))(
  '%s: reworked lines read back',
  (_, recipe) => {
    const adaptation = work(recipe);
    const lines = adaptation.lines.filter(
      ({ after, change }) => after !== null && change !== 'kept',
    );
    const read = weighRecipe({
      ...recipe,
      groups: [{ title: null, lines: lines.map(({ after }) => after ?? '') }],
    });
    expect(lines.length).toBeGreaterThan(0);
    lines.forEach(({ key, after }, at) => {
      const [line, food] = key.split('>');
      const item = adaptation.plan.items.find(
        (one) => one.key === line && (food === undefined || one.foodId === food) && one.grams > 0,
      );
      const one = read.find((ingredient) => ingredient.key === String(at));
      expect(one?.match?.foodId, after ?? '').toBe(item?.foodId);
      expect(
        Math.abs((one?.weight?.grams.best ?? 0) - (item?.grams ?? 0)),
        after ?? '',
      ).toBeLessThan(0.01);
    });
  },
);
