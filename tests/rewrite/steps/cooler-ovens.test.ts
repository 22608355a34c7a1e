import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { bakeMinutes, longerBy, withLowerOven } from '../../../engine/rewrite/oven/oven-heat.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

const cake = (steps: string[], language = 'en'): string[] => {
  const recipe = { ...makeRecipe('Cake', ['200 g sugar', '200 g flour'], steps), language };
  const read = understand(recipe);
  const plan = makePlan('cake', read, [
    { key: '0', kept: 0, to: [['allulose', 200, 'sweetness']] },
  ]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps.map(({ after }) => after);
};

describe('a cooler oven', () => {
  it('says the longer time in place of the page’s', () => {
    const [, bake] = cake([
      'Heat the oven to 350 F. Mix sugar and flour.',
      'Bake for 40 minutes. Serve.',
    ]);
    expect(bake).toMatch(/^Bake for 45-50 minutes\. (?!.*longer).*Serve/);
  });

  it('tells it of the oven, not of a pan in which something is cooked', () => {
    const [pan, , bake] = cake(
      [
        'Cuire 8 min à 90 °C dans la casserole.',
        'Préchauffer le four à 180 °C.',
        'Mettre le sucre et la farine dans le four pendant 35 min à 180 °C.',
      ],
      'fr',
    );
    expect(pan).not.toMatch(/four moins chaud/);
    expect(bake).toMatch(/40-45 min à 170 °C\./);
  });

  it('leaves the heat of what is roasted beside it', () => {
    const [roast] = cake([
      'Roast the pears at 425 F for 20 minutes.',
      'Mix sugar and flour and bake at 350 F for 40 minutes.',
    ]);
    expect(roast).toMatch(/^Roast the pears at 425 F \(/);
  });

  it('reads the minutes behind a shortened word', () => {
    expect(bakeMinutes('Im oven ca. 60 minutes bake.')).toBe(60);
    expect(bakeMinutes('Bake approx. 45 minutes.')).toBe(45);
  });

  it('reads a bare degree as Celsius where the language knows no other', () => {
    expect(withLowerOven('forno già caldo a 190° per 15 minuti', true)).toMatch(/180°/);
    expect(withLowerOven('oven op 175 graden', true)).toMatch(/165 graden/);
    expect(withLowerOven('oven at 190°')).toBe('oven at 190°');
    // Degree signs that look alike.
    expect(withLowerOven('Bake at 375˚ for 40 minutes')).toBe('Bake at 350˚ for 40 minutes');
    expect(withLowerOven('Bake at 375º for 40 minutes')).toBe('Bake at 350º for 40 minutes');
  });

  it.each([
    ['Heat the oven to 375℉.', 'Heat the oven to 350℉.'],
    ['Heat the oven to 350°F (177°C).', 'Heat the oven to 325°F (163°C).'],
    ['Heat the oven to 375°F/190°C.', 'Heat the oven to 350°F/175°C.'],
    ['Heat the oven to 400℉ (200℃).', 'Heat the oven to 375℉ (190℃).'],
    ['Oven at 180°C (160°C fan).', 'Oven at 170°C (150°C fan).'],
    ['Bake at 325 or 350°F.', 'Bake at 300 or 325°F.'],
  ])('sets %s lower, in each scale it is given in', (text, lower) => {
    expect(withLowerOven(text)).toBe(lower);
  });

  it('goes by the bake before any roast', () => {
    expect(bakeMinutes('Cook for 30 minutes. Bake for 80 minutes.')).toBe(80);
    expect(bakeMinutes('Bake for one hour, or until it springs back.')).toBe(60);
    expect(bakeMinutes('Bake at 325°F for 1 hour and 10 minutes.')).toBe(70);
    expect(bakeMinutes('Bake 1 1/2 to 2 hours.')).toBe(90);
    expect(bakeMinutes('Bake for 25 minutes, then cool for 1 hour.')).toBe(25);
    expect(bakeMinutes('Bake until golden, then cool for 1 hour.')).toBeNull();
    expect([longerBy(9), longerBy(40), longerBy(75)]).toEqual(['1-2', '4-8', '8-15']);
  });
});
