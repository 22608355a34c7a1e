import { readdirSync, readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { CSV_COLUMNS, toCsv, toJsonLd, toMarkdown, toText } from '../../engine/export/index.ts';
import {
  type Adaptation,
  type Adjustment,
  DEFAULT_GOALS,
  type Recipe,
} from '../../engine/model.ts';
import { readPage } from '../../engine/read/index.ts';
import { rewriteRecipe } from '../../engine/rewrite/index.ts';
import { tally } from '../../engine/tally/index.ts';
import { verdictFrom } from '../../engine/tally/verdict/judge-budget.ts';
import { adaptRecipe, tallyRecipe } from '../../engine/walk.ts';
import { foods, makePlan, makeRecipe, understand } from '../rewrite/fixtures.ts';

const LINES = [
  '500 g bread flour, sifted',
  '350 g water',
  '10 g fine salt',
  '1 tsp dry yeast',
  'a spoonful of =SUM(A1) "moon dust", rare',
];

/** An invented loaf, planned by hand, through tally and rewriter. */
function makeAdaptation(): Adaptation {
  const recipe = makeRecipe('Loaf, "plain" & simple', LINES, [
    'Mix flour, water, salt and yeast.',
    'Bake at 230 C for 40 minutes.',
  ]);
  recipe.groups[0] = { title: 'Dough', lines: LINES };
  const ingredients = understand(recipe);
  const plan = makePlan(
    'lean-yeast-bread',
    ingredients,
    [{ key: '0', kept: 150, to: [['low-carb-wheat-flour-blend', 350]] }],
    { added: [['xanthan-gum', 2.8, 'binder']], starchPct: 30 },
  );
  const options = {
    foods,
    servings: 12,
    rule: DEFAULT_GOALS.rule,
    family: 'lean-yeast-bread',
  } as const;
  const before = tally(ingredients, options);
  const after = tally(
    plan.items
      .flatMap((item) => {
        const original = ingredients.find(({ key }) => key === item.key) ?? ingredients[0];
        if (original === undefined) return [];
        return [
          {
            ...original,
            key: item.key,
            match: {
              foodId: item.foodId,
              foodName: item.foodName,
              confidence: 1,
              reason: '',
              others: [],
            },
            weight: {
              grams: { low: item.grams, best: item.grams, high: item.grams },
              eaten: item.eaten,
              basis: 'mass' as const,
              assumptions: [],
              disagreement: null,
            },
          },
        ];
      })
      .concat(
        ingredients.filter(({ match, weight }) => match === null || weight === null) as never[],
      ),
    options,
  );
  const rewritten = rewriteRecipe(recipe, ingredients, plan, { foods, region: 'us' });
  const { lines, steps, methodNotes } = rewritten;
  return {
    recipe,
    goals: DEFAULT_GOALS,
    corrections: {},
    taught: [],
    ingredients,
    before,
    plan,
    after,
    verdict: verdictFrom(after.perServing.netCarbsG, DEFAULT_GOALS.budgetG, []),
    questions: [],
    recommended: 'within',
    ways: [],
    lines,
    steps,
    methodNotes,
    allergensAdded: ['soy'],
    allergensRemoved: [],
    stillContains: [],
    cautions: [
      { code: 'ESTIMATES', text: 'Estimates. Not for working out insulin doses.', key: null },
      { code: 'GLUTEN', text: 'Contains wheat gluten.', key: null },
    ],
    notes: [],
  };
}

const adaptation = makeAdaptation();
const linesAfter = adaptation.lines.flatMap(({ after }) => (after === null ? [] : [after]));

/** Records of a CSV text after RFC 4180, written apart from the exporter. */
function parseCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const mark = text[at];
    if (quoted) {
      if (mark !== '"') cell += mark;
      else if (text[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (mark === '"') quoted = true;
    else if (mark === ',' || mark === '\r') {
      rows.at(-1)?.push(cell);
      cell = '';
    } else if (mark === '\n') rows.push([]);
    else cell += mark;
  }
  return rows.slice(0, -1);
}

describe('JSON-LD', () => {
  const text = toJsonLd(adaptation);

  it('is read back as the same recipe', () => {
    const page = `<!doctype html><html lang="en"><head><script type="application/ld+json">${text}</script></head><body></body></html>`;
    const result = readPage(new JSDOM(page).window.document);
    if (!result.ok) throw new Error(result.why);
    const [recipe] = result.recipes;
    expect(recipe?.title).toBe(adaptation.recipe.title);
    expect(recipe?.groups.flatMap(({ lines }) => lines)).toEqual(linesAfter);
    expect(recipe?.steps.map(({ text: step }) => step)).toEqual(
      adaptation.steps.map(({ after }) => after),
    );
    expect(recipe?.yield.servings).toEqual({ low: 12, high: 12 });
  });

  it('holds the nutrition of a serving, the source and the estimate line', () => {
    const node = JSON.parse(text) as Record<string, unknown>;
    expect(node['@type']).toBe('Recipe');
    expect(node.isBasedOn).toBe('https://kitchen.example/recipe');
    const nutrition = node.nutrition as Record<string, string>;
    const carbohydrate = adaptation.after.perServing.carbohydrateG?.best ?? 0;
    expect(nutrition.carbohydrateContent).toBe(`${Math.round(carbohydrate * 10) / 10} g`);
    expect(nutrition.calories).toMatch(/^\d+(\.\d)? kcal$/);
    expect(node.description).toContain('Estimates. Not for working out insulin doses.');
    expect(node.description).toContain('Not counted: ');
  });

  it('cannot close a script element', () => {
    const hostile = structuredClone(adaptation);
    hostile.recipe.title = '</script><b>x</b>';
    expect(toJsonLd(hostile)).not.toContain('<');
    expect(JSON.parse(toJsonLd(hostile)).name).toBe('</script><b>x</b>');
  });
});

describe('CSV', () => {
  const rows = parseCsv(toCsv(adaptation));

  it('has the same columns in every row and ends rows in CRLF', () => {
    expect(rows[0]).toEqual([...CSV_COLUMNS]);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([CSV_COLUMNS.length]));
    expect(toCsv(adaptation).endsWith('\r\n')).toBe(true);
  });

  it('gives figures with their bounds', () => {
    const net = rows.find(([kind, name]) => kind === 'nutrient' && name === 'Net carbs');
    const { before, after } = adaptation;
    expect(Number(net?.[2])).toBeCloseTo(before.perServing.netCarbsG?.best ?? -1, 2);
    expect(Number(net?.[6])).toBeCloseTo(after.perServing.netCarbsG?.low ?? -1, 2);
    expect(Number(net?.[7])).toBeCloseTo(after.perServing.netCarbsG?.high ?? -1, 2);
  });

  it('keeps quotes and commas, and disarms formulas', () => {
    const ingredient = rows.filter(([kind]) => kind === 'ingredient');
    expect(ingredient.map((row) => row[5]).filter((cell) => cell !== '')).toEqual(linesAfter);
    const formula = structuredClone(adaptation);
    formula.recipe.title = '=1+1';
    expect(parseCsv(toCsv(formula))[1]?.[1]).toBe("'=1+1");
  });
});

describe.each([
  ['Markdown', toMarkdown],
  ['text', toText],
])('%s', (_, write) => {
  const text = write(adaptation);

  it('shows figures with ranges, uncounted lines, the source and the estimate line', () => {
    const net = adaptation.after.perServing.netCarbsG;
    expect(text).toMatch(/Net carbs.*29 g \(27-31\).*15 g \([\d.]+-[\d.]+\)/);
    expect(net?.best).toBeCloseTo(15, 0);
    expect(text).toMatch(/moon dust.*no food in the table matches|moon dust.*no amount/);
    expect(text).toContain('https://kitchen.example/recipe');
    expect(text).toContain('by Invented Cook');
    expect(text).toContain('Estimates. Not for working out insulin doses.');
    expect(text.match(/Not for working out insulin doses/g)).toHaveLength(1);
  });

  it('has every line and step', () => {
    const bare = text.replaceAll('\\', '');
    for (const line of linesAfter) expect(bare).toContain(line);
    for (const { after } of adaptation.steps) expect(bare).toContain(after);
  });

  it('gives the same text each time', () => {
    expect(write(makeAdaptation())).toBe(text);
  });
});

it('Markdown carries no markup of the page', () => {
  const hostile = structuredClone(adaptation);
  hostile.recipe.title = '<img src=x> [a](b) *c*';
  expect(toMarkdown(hostile)).toContain(String.raw`# \<img src=x\> \[a\](b) \*c\*`);
});

const PAGES = new URL('../pages/demo/', import.meta.url);
const demo: Recipe[] = readdirSync(PAGES).flatMap((file) => {
  const page = readFileSync(new URL(file, PAGES), 'utf8');
  const result = readPage(new JSDOM(page).window.document);
  return result.ok ? result.recipes : [];
});

/** The recipe that a page holds whose only content is the exported JSON-LD. */
function readAgain(json: string): Recipe {
  const page = `<!doctype html><html><head><script type="application/ld+json">${json}</script></head><body></body></html>`;
  const result = readPage(new JSDOM(page).window.document);
  const [recipe] = result.ok ? result.recipes : [];
  if (recipe === undefined) throw new Error('the export holds no recipe');
  return recipe;
}

describe('JSON-LD of the demo pages, read back', () => {
  it.each(demo.map((recipe) => [recipe.title, recipe] as const))('%s', (_, recipe) => {
    const reworked = adaptRecipe(recipe, { ...DEFAULT_GOALS, budgetG: 10 });
    const again = readAgain(toJsonLd(reworked));
    const after = reworked.lines.filter((line) => line.after !== null);
    expect(again.title).toBe(recipe.title);
    expect(again.author).toBe(recipe.author);
    expect(again.groups.flatMap(({ lines }) => lines)).toEqual(after.map((line) => line.after));
    const titles = [...new Set(after.map(({ group }) => group))].filter((title) => title !== null);
    expect(again.groups.map(({ title }) => title).filter((title) => title !== null)).toEqual(
      titles.map((title) => title.replace(/:$/, '')),
    );
    expect(again.steps.map(({ text, section }) => [text, section])).toEqual(
      reworked.steps.map((step) => [step.after, step.section]),
    );
    const { servings } = reworked.after;
    expect(again.yield.servings).toEqual({ low: servings, high: servings });
    const fresh = tallyRecipe(
      { ...again, language: recipe.language },
      { servings, rule: reworked.goals.rule, family: reworked.plan.family.id },
    ).tally;
    const shown = reworked.after.perServing.netCarbsG?.best ?? -1;
    expect(Math.abs((fresh.perServing.netCarbsG?.best ?? -9) - shown)).toBeLessThanOrEqual(0.02);
  });
});

const CHANGE: Adjustment = {
  id: 'gummy.1',
  symptom: 'gummy',
  lever: 'binder',
  factor: 0.6,
  shiftPct: null,
  text: '40 % less binder.',
  why: 'Gummy crumb. Likely here: binder is 3 % of the flour.',
  source: 'test',
};

describe.each([
  ['JSON-LD', toJsonLd],
  ['CSV', toCsv],
  ['Markdown', toMarkdown],
  ['text', toText],
])('%s', (_, write) => {
  const changed = { ...adaptation, goals: { ...adaptation.goals, adjustments: [CHANGE] } };

  it('carries accepted changes, allergens, cautions and what is not counted', () => {
    const text = write(changed).replaceAll('\\', '');
    expect(text).toContain('40 % less binder.');
    expect(write(adaptation)).not.toContain('less binder');
    if (write !== toCsv) expect(text).toContain('New allergens: soy.');
    expect(text).toContain('Contains wheat gluten.');
    expect(text).toMatch(/moon dust/);
    expect(text).toContain('Estimates. Not for working out insulin doses.');
  });
});

describe('a recipe for twice as many', () => {
  const options = { factor: 2 };
  const grams = (text: string): number[] =>
    [...text.matchAll(/(?<![\d.])(\d+(?:\.\d+)?) g\b/g)].map((found) => Number(found[1]));

  it.each([
    ['text', toText],
    ['Markdown', toMarkdown],
    ['JSON-LD', toJsonLd],
    ['CSV', toCsv],
  ])('%s has twice the amounts in the list', (_, write) => {
    const line = linesAfter.find((text) => /^\d+ g /.test(text)) ?? '';
    const [once = Number.NaN] = grams(line);
    expect(once).toBeGreaterThan(20);
    const name = line.split(' ').at(-1) ?? '';
    const rows = write(adaptation, options).split('\n');
    expect(
      rows.some((row) => row.includes(name) && grams(row).includes(2 * once)),
      name,
    ).toBe(true);
  });

  it('feeds twice as many, and a serving stays what it was', () => {
    expect(toText(adaptation, options)).toContain(`${adaptation.after.servings * 2} servings`);
    const figures = (text: string): string => text.split('A SERVING')[1]?.split('\n\n')[0] ?? '';
    expect(figures(toText(adaptation, options))).toBe(figures(toText(adaptation)));
  });

  it('is the same text at a factor of one', () => {
    expect(toMarkdown(adaptation, { factor: 1 })).toBe(toMarkdown(adaptation));
  });
});

describe('hostile page text', () => {
  const words = fc
    .array(
      fc.constantFrom(
        '=cmd|x',
        '+1',
        '-2',
        '@SUM',
        '＝1',
        '\t=1',
        '<script>',
        '</script>',
        '<!--',
        '[a](javascript:x)',
        '![i](x)',
        '`x`',
        '**b**',
        '|',
        '# h',
        '1. x',
        '- y',
        '"',
        ',',
        ';=1',
        '\n=1',
        '\u202eabc',
        'salt',
        '\\',
      ),
      { minLength: 1, maxLength: 5 },
    )
    .map((list) => list.join(' '));

  const hostile = (text: string): Adaptation => {
    const copy = structuredClone(adaptation);
    copy.recipe.title = text;
    copy.recipe.author = text;
    copy.lines = copy.lines.map((line) => ({ ...line, after: line.after === null ? null : text }));
    copy.steps = copy.steps.map((step) => ({ ...step, after: text }));
    return copy;
  };

  it('makes no formula in a spreadsheet', () => {
    fc.assert(
      fc.property(words, (text) => {
        const cells = parseCsv(toCsv(hostile(text))).flat();
        const formulas = cells.filter(
          (cell) => /^\s*[=+\-@＝＋－＠]/.test(cell) && !/^-?\d+(\.\d+)?$/.test(cell),
        );
        expect(formulas).toEqual([]);
      }),
    );
  });

  it('makes no formula where lines of plain text are put into a sheet', () => {
    fc.assert(
      fc.property(words, (text) => {
        const lines = toText(hostile(text)).split('\n');
        expect(lines.filter((line) => /^\s*[=+\-@＝＋－＠]/.test(line))).toEqual([]);
      }),
    );
    expect(toText(hostile('=1+1'))).toContain("'=1+1");
  });

  it('makes no markup in Markdown and no tag in JSON-LD', () => {
    fc.assert(
      fc.property(words, (text) => {
        const written = toMarkdown(hostile(text));
        // Taking out what is escaped leaves none of the page's marks.
        const bare = written.replace(/\\[\\`*_[\]<>|#~&]/g, '');
        expect(bare).not.toMatch(/[<>`]|\]\(|!\[/);
        expect(written).not.toMatch(/\u202e/);
        expect(toJsonLd(hostile(text))).not.toContain('<');
        expect(JSON.parse(toJsonLd(hostile(text))).name).toBe(text);
      }),
    );
  });

  it('starts no list and no number in a Markdown list', () => {
    const text = toMarkdown(hostile('- a'));
    expect(text).toContain('- \\- a');
    expect(toMarkdown(hostile('1. a'))).toContain('- 1\\. a');
  });
});
