import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { toJsonLd, toMarkdown, toPublishing, toText } from '../../engine/export/index.ts';
import { readPage } from '../../engine/read/index.ts';
import { adapted, PASTED } from '../plan/pasted.ts';
import { adaptedPage } from '../ui/adapted.ts';

const flat = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]+/g, ' ');

/** Runs of words of a text, as many as make a wording and not a fact. */
function runs(text: string, length: number): string[] {
  const words = flat(text).split(' ').filter(Boolean);
  return words
    .slice(0, Math.max(0, words.length - length + 1))
    .map((_, at) => words.slice(at, at + length).join(' '));
}

describe('a recipe for publishing', () => {
  const SAMPLES = PASTED.filter((_, at) => at % 9 === 0);

  it.each(SAMPLES.map((sample) => [sample.title, sample] as const))(
    'repeats no step of the source: %s',
    (_, sample) => {
      const adaptation = adapted(sample);
      const published = flat(toPublishing(adaptation, { note: '' }));
      const wordings = sample.steps.flatMap((step) => runs(step, 5));
      expect(wordings.length).toBeGreaterThan(0);
      expect(wordings.filter((run) => published.includes(run))).toEqual([]);
      // The whole text has them: the check above can fail.
      const whole = flat(toText(adaptation));
      expect(wordings.some((run) => whole.includes(run))).toBe(true);
    },
  );

  const cake = adaptedPage('lemon-cake.html');
  const text = toPublishing(cake, { note: 'Better on the second day.\n# not a heading' });

  it('has the own list, figures, own notes, credit, link and the reason', () => {
    for (const { grams, foodName } of cake.plan.items)
      if (grams >= 10) expect(text).toContain(`${Math.round(grams)} g ${foodName}`);
    expect(text).toContain('Better on the second day.');
    expect(text).toContain('\\# not a heading');
    expect(text).toContain(cake.recipe.author ?? 'nobody');
    expect(text).toContain(`<${cake.recipe.url}>`);
    expect(text).toContain('left out on purpose');
    expect(text).toContain(`Here, 1 of ${cake.after.servings}`);
    expect(text).toContain('Not for working out insulin doses');
  });

  it('makes no link of what is no web address', () => {
    const odd = { ...cake, recipe: { ...cake.recipe, url: 'javascript:alert(1)' } };
    expect(toPublishing(odd, { note: '' })).not.toContain('<javascript');
    const pasted = { ...cake, recipe: { ...cake.recipe, url: null } };
    expect(toPublishing(pasted, { note: '' })).not.toContain('Read it there');
  });

  it('is as much as is made', () => {
    const twice = toPublishing(cake, { note: '', factor: 2 });
    const butter = cake.plan.items.find(({ foodId }) => /butter/.test(foodId));
    expect(twice).toContain(
      `${Math.round(2 * (butter?.grams ?? Number.NaN))} g ${butter?.foodName}`,
    );
  });
});

describe('figures of pieces of another size', () => {
  const cake = adaptedPage('lemon-cake.html');

  it('name both pieces', () => {
    expect(cake.before.servings).not.toBe(cake.after.servings);
    const both = [`before (1 of ${cake.before.servings})`, `after (1 of ${cake.after.servings})`];
    for (const write of [toText, toMarkdown, toJsonLd])
      for (const head of both) expect(write(cake).toLowerCase()).toContain(head);
  });
});

describe('a web recipe', () => {
  it.each(['lemon-cake.html', 'milk-rolls.html', 'hearth-loaf.html'])(
    'is read back with the figures it was written with: %s',
    (page) => {
      const adaptation = adaptedPage(page);
      const html = `<!doctype html><html lang="en"><head><script type="application/ld+json">${toJsonLd(adaptation)}</script></head><body></body></html>`;
      const read = readPage(new JSDOM(html).window.document);
      const stated = read.ok ? read.recipes[0]?.statedNutrition : null;
      const { perServing } = adaptation.after;
      const said = (value: { best: number } | null, unit: string) =>
        value && `${Math.round(value.best * 10) / 10} ${unit}`;
      expect(stated).toMatchObject({
        calories: said(perServing.energyKcal, 'kcal'),
        carbohydrateContent: said(perServing.carbohydrateG, 'g'),
        fiberContent: said(perServing.fiberG, 'g'),
        sugarContent: said(perServing.sugarsG, 'g'),
        proteinContent: said(perServing.proteinG, 'g'),
        fatContent: said(perServing.fatG, 'g'),
        saturatedFatContent: said(perServing.saturatedG, 'g'),
        sodiumContent: said(perServing.sodiumMg, 'mg'),
      });
    },
  );
});
