import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS, readText } from '../../engine/index.ts';
import { alcoholRetained, minutesOnHeat } from '../../engine/tally/alcohol.ts';

describe('alcohol', () => {
  it('stays by the minutes on the heat', () => {
    // USDA Table of Nutrient Retention Factors, Release 6: simmered 15 min 40 %, 2 hours 10 %; baked 25 min 45 %.
    expect(alcoholRetained('other', 15)).toBe(0.4);
    expect(alcoholRetained('other', 120)).toBe(0.1);
    expect(alcoholRetained('cake', 40)).toBe(0.45);
    expect(alcoholRetained('other', null)).toBe(1);
  });

  it.each([
    ['Stir the wine with the fruit.', 'Chill for 2 hours and serve over ice.'],
    ['Wein und Früchte verrühren.', 'Zwei Stunden kühl stellen.'],
    ['Mezclar el vino con la fruta.', 'Dejar en la nevera 2 horas.'],
  ])('stays whole while a dish is only chilled: %s', (...steps) => {
    expect(minutesOnHeat(steps, 120)).toBeNull();
  });

  it.each([
    ['Simmer the wine for 20 minutes.', 'Chill before serving.'],
    ['Den Wein aufkochen.', 'Kalt stellen.'],
    ['Porter le vin à ébullition et laisser cuire.', 'Mettre au frigo.'],
    ['Braise the beef in the wine.'],
  ])(
    'cooks off by the stated time where anything heats it, or nothing chills it: %s',
    (...steps) => {
      expect(minutesOnHeat(steps, 120)).toBe(120);
    },
  );

  it('is in the energy of a punch that stands in the fridge', () => {
    const read = readText(`Orchard punch

8 servings
750 ml red wine
500 ml orange juice

1. Stir both in a jug.
2. Chill for 2 hours.
Cook time: 2 hours`);
    const recipe = read.ok ? read.recipes[0] : undefined;
    if (!recipe) throw new Error('no recipe');
    const cooked = { ...recipe, minutes: { ...recipe.minutes, cook: 120 } };
    const { before } = adaptRecipe(cooked, DEFAULT_GOALS);
    // Red table wine has 85 kcal in 100 g, orange juice 45 (USDA SR Legacy 14096, 09206): 750 g and 500 g in 8.
    expect(before.perServing.energyKcal?.best).toBeGreaterThan(90);
    expect(before.perServing.energyKcal?.best).toBeLessThan(125);
  });
});
