import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { JSDOM, VirtualConsole } from 'jsdom';
import { describe, expect, it } from 'vitest';
import {
  Adaptation,
  adaptRecipe,
  DEFAULT_GOALS,
  type Goals,
  parseLines,
  type Recipe,
  readPage,
  tallyRecipe,
} from '../engine/index.ts';

const PAGES = join(import.meta.dirname, 'pages/demo');

function recipesOf(file: string): Recipe[] {
  const html = readFileSync(join(PAGES, file), 'utf8');
  const result = readPage(
    new JSDOM(html, { virtualConsole: new VirtualConsole() }).window.document,
  );
  return result.ok ? result.recipes : [];
}

const demo = readdirSync(PAGES)
  .filter((file) => file.endsWith('.html'))
  .sort()
  .flatMap((file) => recipesOf(file).map((recipe) => ({ title: recipe.title, recipe })));

const goals = (changes: Partial<Goals> = {}): Goals => ({ ...DEFAULT_GOALS, ...changes });

const net = (tally: Adaptation['after']): number => tally.perServing.netCarbsG?.best ?? Number.NaN;

describe('demo pages', () => {
  it('are all read', () => {
    expect(demo.length).toBeGreaterThanOrEqual(readdirSync(PAGES).length);
  });

  describe.each(demo)('$title', ({ recipe }) => {
    const adaptation = adaptRecipe(recipe, goals());

    it('fits its own schema and survives JSON', () => {
      expect(Adaptation.parse(JSON.parse(JSON.stringify(adaptation)))).toEqual(adaptation);
    });

    it('meets the budget or names what holds it', () => {
      if (adaptation.plan.met) expect(net(adaptation.after)).toBeLessThanOrEqual(15 + 1e-6);
      else expect(adaptation.plan.limits.length).toBeGreaterThan(0);
    });

    it('loses no line: each is counted or listed as uncounted', () => {
      const { before, ingredients } = adaptation;
      const listed = new Set(before.uncounted.map((line) => line.key));
      const counted = new Set(before.contributions.map((line) => line.key));
      for (const { key } of ingredients)
        expect(listed.has(key) || counted.has(key), key).toBe(true);
      const lines = parseLines(recipe).filter((line) => line.kind !== 'heading');
      expect(new Set(ingredients.map(({ key }) => key.split('.')[0])).size).toBe(lines.length);
    });

    it('carries every uncounted line over to the totals after', () => {
      const after = new Set(adaptation.after.uncounted.map((line) => line.key));
      for (const { key } of adaptation.before.uncounted) expect(after.has(key), key).toBe(true);
    });

    it('keeps every total between its bounds', () => {
      for (const tally of [adaptation.before, adaptation.after]) {
        for (const value of Object.values(tally.perServing)) {
          if (value === null) continue;
          expect(value.low).toBeLessThanOrEqual(value.best + 1e-9);
          expect(value.best).toBeLessThanOrEqual(value.high + 1e-9);
        }
      }
    });

    it('gives the same answer twice', () => {
      expect(adaptRecipe(recipe, goals())).toEqual(adaptation);
    });
  });
});

describe('corrections', () => {
  const loaf = recipesOf('hearth-loaf.html')[0];
  if (!loaf) throw new Error('the hearth loaf page cannot be read');

  it('put the grams of a line right', () => {
    const before = tallyRecipe(loaf, goals());
    const halved = tallyRecipe(loaf, goals(), { corrections: { '0': { grams: 250 } } });
    expect(net(halved.tally)).toBeLessThan(net(before.tally) * 0.55);
    expect(halved.ingredients[0]?.weight?.basis).toBe('corrected');
  });

  it('put the food of a line right', () => {
    const { ingredients } = tallyRecipe(loaf, goals(), {
      corrections: { '0': { foodId: 'whole-wheat-flour' } },
    });
    expect(ingredients[0]?.match).toMatchObject({ foodId: 'whole-wheat-flour', confidence: 1 });
  });

  it('leave a line alone when the food is unknown', () => {
    const { ingredients } = tallyRecipe(loaf, goals(), {
      corrections: { '0': { foodId: 'no-such-food' } },
    });
    expect(ingredients[0]?.match?.foodId).toBe('bread-flour');
  });
});

describe('a recipe with nothing to count', () => {
  const empty: Recipe = {
    title: 'Nothing yet',
    url: null,
    language: null,
    author: null,
    markup: 'pasted',
    yield: { text: null, servings: null, pieces: null },
    groups: [],
    steps: [],
    minutes: { prep: null, cook: null, total: null },
    image: null,
    statedNutrition: null,
    notes: [],
  };

  it('is answered without an error', () => {
    const adaptation = adaptRecipe(empty, goals());
    expect(adaptation.ingredients).toEqual([]);
    expect(adaptation.plan.swaps).toEqual([]);
  });
});

describe('a weighed dish', () => {
  const [loaf] = recipesOf('hearth-loaf.html');

  it('replaces the estimate of the version that was baked, and of that one only', () => {
    if (!loaf) throw new Error('the demo loaf is missing');
    const guessed = adaptRecipe(loaf, goals());
    const baked = adaptRecipe(loaf, goals(), { reworkedGrams: 900 });
    expect(baked.after.cookedGrams).toEqual({ low: 900, best: 900, high: 900 });
    expect(baked.before).toEqual(guessed.before);
    const whole = baked.after.whole.netCarbsG?.best ?? Number.NaN;
    expect(baked.after.per100gCooked?.netCarbsG?.best).toBeCloseTo(whole / 9, 9);
  });
});
