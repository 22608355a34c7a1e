import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function told(bake: string, language = 'en'): string {
  const heat = { en: 'Heat the oven to 350 F.', de: 'Den Backofen auf 180 °C vorheizen.' };
  const steps = [heat[language as 'en' | 'de'], `Mix sugar and flour. ${bake}`];
  const recipe = { ...makeRecipe('Cake', ['200 g sugar', '200 g flour'], steps), language };
  const read = understand(recipe);
  const plan = makePlan('cake', read, [
    { key: '0', kept: 0, to: [['allulose', 200, 'sweetness']] },
  ]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps[1]?.after ?? '';
}

describe('a bake in a cooler oven', () => {
  it.each([
    ['Bake for 25 to 30 minutes, until golden.', 'Bake for 28 to 35 minutes, until golden.'],
    ['Bake for between 30 and 40 minutes.', 'Bake for between 33 and 45 minutes.'],
    ['Bake for 55 to 65 minutes.', 'Bake for 60 to 75 minutes.'],
    [
      'Turn it into the tin, then bake for 65 – 75 minutes, or until set.',
      'Turn it into the tin, then bake for 70 – 85 minutes, or until set.',
    ],
    ['Bake 20 mins until set.', 'Bake 22-24 mins until set.'],
    ['Bake for 1 hour, until set.', 'Bake for 65-70 minutes, until set.'],
    [
      'Bake 45 to 50 minutes in a metal tin or 55 to 60 minutes in a glass dish.',
      'Bake 50 to 55 minutes in a metal tin or 60 to 70 minutes in a glass dish.',
    ],
    [
      'Bake for 11-12 minutes, then let cool for at least 5 minutes.',
      'Bake for 12-14 minutes. It is done when the centre reaches 96-99 °C (205-210 °F). Let cool for at least 5 minutes.',
    ],
  ])('has its whole time stated: %s', (page, now) => {
    const text = told(page);
    expect(text).toContain(now);
    expect(text).not.toMatch(/minutes longer/);
  });

  it('has it in other languages too', () => {
    const text = told('Im Ofen 40-45 Minuten backen, dann 10 Minuten abkühlen lassen.', 'de');
    expect(text).toMatch(/45-50 Minuten backen, dann 10 Minuten/);
    expect(text).not.toMatch(/Minuten länger/);
  });

  it('has it for a second bake of the same length', () => {
    expect(told('Bake for 20 minutes. Fill it and bake for 20 minutes more.')).toMatch(
      /Bake for 22-24 minutes\..* bake for 22-24 minutes more\./,
    );
  });

  it('keeps the sentence where a time in hours cannot be worked out', () => {
    expect(told('Bake for 1 1/2 hours.')).toMatch(/1 1\/2 hours\..* minutes longer\./);
  });
});
