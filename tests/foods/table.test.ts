/** Whole-table checks: identity, physical sense of the figures, sense of the household measures. */
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { type Food, Food as FoodSchema } from '../../engine/model.ts';
import { volumeMeasures } from '../../engine/weigh/measured/household-measures.ts';

const { foods, byId } = foodTable();

/** Ids of the foods for which `bad` says something, with what it says. */
const faults = (bad: (food: Food) => string | null): string[] =>
  foods.flatMap((food) => {
    const why = bad(food);
    return why === null ? [] : [`${food.id}: ${why}`];
  });

const sum = (values: readonly (number | null | undefined)[]): number =>
  values.reduce<number>((total, value) => total + (value ?? 0), 0);

const polyols = (food: Food): number => sum(Object.values(food.per100g.polyolsG ?? {}));

/**
 * Foods whose energy is right and yet outside the band: acids, bound carbohydrate and specific
 * factors the band knows nothing of.
 */
const ENERGY_EXEMPT = new Map([
  ['baking-powder', 'the carbonate and starch are counted as carbohydrate, not as energy'],
  ['baking-powder-phosphate', 'as baking powder'],
  ['cream-of-tartar', 'the acid is counted as carbohydrate by difference'],
  ['citric-acid', '3 kcal per g of organic acid, no carbohydrate'],
  ['ascorbic-acid', '3 kcal per g of organic acid, no carbohydrate'],
  ['cocoa-powder', 'specific factors 1.83, 8.37 and 1.33 kcal per g, USDA Handbook 74'],
  ['cacao-powder', 'as cocoa powder'],
  ['spirulina', 'vegetable factors 2.44, 8.37 and 3.57 kcal per g, USDA Handbook 74'],
  ['cocoa-powder-alkalised', 'as cocoa powder'],
  ['oat-bran', 'specific factors of USDA Handbook 74'],
  ['tagatose', '1.5 kcal per g'],
  ['baking-powder-low-sodium', 'as baking powder'],
  ['gelatin-dessert-mix-sugar-free', 'carbohydrate by difference holds its acids'],
  ['taco-seasoning', 'SR 172243 states more energy than its parts can give'],
  ['maltitol-syrup', 'hydrogenated starch hydrolysate has 3 kcal per g'],
]);

/** So light and loose that a cup weighs less than 0.05 g per ml. */
const FEATHERY = /nori|bonito-flakes|popcorn-popped/;

/** Vinegars: their acetic acid is in no column, 3 kcal per g. */
const VINEGAR = /vinegar/;

/** Foods whose mass is something the table has no column for. */
const MASS_EXEMPT = new Map([
  ['monk-fruit-extract', 'glycosides'],
  ['steviol-glycosides', 'glycosides'],
  ['saccharin', 'a salt that is not digested'],
  ['acesulfame-potassium', 'a salt that is not digested'],
  ['sucralose', 'chlorinated sugar that is not digested'],
  ['citric-acid', 'an organic acid'],
  ['ascorbic-acid', 'an organic acid'],
  ['cream-of-tartar', 'a mineral salt of an acid'],
  ['msg', 'an amino-acid salt'],
  ['calcium-chloride', 'a mineral'],
  ['potassium-salt', 'a mineral'],
  ['baking-powder', 'minerals'],
  ['baking-powder-low-sodium', 'minerals'],
  ['baking-powder-phosphate', 'minerals'],
  ['baking-soda', 'a mineral'],
  ['baking-ammonia', 'a mineral'],
  ['sodium-citrate', 'a mineral salt of an acid'],
  ['sodium-alginate', 'a mineral salt of a gum'],
  ['carrageenan', 'a mineral salt of a gum'],
  ['rennet', 'mostly minerals: ash 71 g in SR 168794'],
]);

describe('the food table', () => {
  it('reads every row into a food of the model', () => {
    expect(foods.length).toBeGreaterThan(450);
    for (const food of foods) expect(FoodSchema.safeParse(food).success, food.id).toBe(true);
  });

  it('has no id twice and no name or alias twice', () => {
    const owners = new Map<string, string>();
    const clashes: string[] = [];
    const claim = (word: string, food: Food) => {
      const key = word.trim().toLowerCase();
      const owner = owners.get(key);
      if (owner !== undefined) clashes.push(`${key}: ${owner}, ${food.id}`);
      owners.set(key, food.id);
    };
    for (const food of foods) for (const word of [food.name, ...food.aliases]) claim(word, food);
    expect(clashes).toEqual([]);
    expect(new Set(foods.map(({ id }) => id)).size).toBe(foods.length);
  });

  it('names foods in generic lower-case words', () => {
    // Abbreviations used in recipes, and adjectives that English capitalises.
    const allowed = /\b(BBQ|AP|RS2|RS4|FOS|IMO|HPMC|MCT|MSG|EVOO|TVP)\b/g;
    expect(
      foods
        .flatMap(({ name, aliases }) => [name, ...aliases])
        .filter((word) => /[A-Z]/.test(word.replace(allowed, ''))),
    ).toEqual([]);
  });

  it('keeps fibre, sugars, polyols and allulose within carbohydrate, saturates within fat', () => {
    expect(
      faults((food) => {
        const { carbohydrateG, fiberG, sugarsG, starchG, fatG, saturatedG, alluloseG } =
          food.per100g;
        const carbohydrate = carbohydrateG ?? Number.POSITIVE_INFINITY;
        if ((fiberG ?? 0) > carbohydrate + 0.05) return `fibre ${fiberG} over ${carbohydrateG}`;
        if ((sugarsG ?? 0) > carbohydrate + 0.05) return `sugars ${sugarsG} over ${carbohydrateG}`;
        if ((starchG ?? 0) > carbohydrate + 1.5) return `starch ${starchG} over ${carbohydrateG}`;
        if (sum([fiberG, alluloseG]) + polyols(food) > carbohydrate + 0.5)
          return 'parts over carbohydrate';
        if ((saturatedG ?? 0) > (fatG ?? 0) + 0.05) return `saturates ${saturatedG} over ${fatG}`;
        return null;
      }),
    ).toEqual([]);
  });

  it('keeps water, protein, fat, carbohydrate and alcohol to the whole mass', () => {
    expect(
      faults((food) => {
        const { waterG, proteinG, fatG, carbohydrateG, alcoholG, sodiumMg } = food.per100g;
        const parts = [waterG, proteinG, fatG, carbohydrateG];
        const mass = sum([...parts, alcoholG]);
        if (mass > 103) return `parts weigh ${mass}`;
        const known = !parts.includes(null) && !MASS_EXEMPT.has(food.id);
        // The rest is ash: reckon the salt (sodium x 2.54) and leave room for other minerals,
        // and for more where label figures are typical ones and rounded.
        const withSalt = mass + ((sodiumMg ?? 0) * 2.54) / 1000;
        const measured = food.source.kind === 'SR' || food.source.kind === 'FF';
        if (known && withSalt < (measured ? 83 : 74)) return `parts weigh only ${withSalt}`;
        return null;
      }),
    ).toEqual([]);
  });

  it('has energy that its protein, fat, carbohydrate and alcohol can account for', () => {
    const band = (food: Food): string | null => {
      const { energyKcal, proteinG, fatG, carbohydrateG, fiberG, alcoholG, alluloseG } =
        food.per100g;
      if (energyKcal === null || proteinG === null || fatG === null || carbohydrateG === null)
        return null;
      const digestible = Math.max(carbohydrateG - sum([fiberG, alluloseG]) - polyols(food), 0);
      const base = 4 * proteinG + 9 * fatG + 7 * (alcoholG ?? 0);
      const low = 0.85 * (base + 4 * digestible) - 10;
      const high = 1.1 * (base + 4 * carbohydrateG) + 10;
      return energyKcal < low || energyKcal > high
        ? `${energyKcal} kcal outside ${low.toFixed(0)}-${high.toFixed(0)}`
        : null;
    };
    expect(
      faults((food) => (ENERGY_EXEMPT.has(food.id) || VINEGAR.test(food.id) ? null : band(food))),
    ).toEqual([]);
  });

  it('has spreads that run upwards and hold the figure they are about', () => {
    expect(
      faults((food) => {
        const { carbohydrateG, fiberG, proteinG, energyKcal, alluloseG } = food.per100g;
        const net =
          carbohydrateG === null ? null : carbohydrateG - sum([fiberG, alluloseG]) - polyols(food);
        const figures = { carbohydrateG, fiberG, proteinG, energyKcal, netCarbsG: net };
        for (const [key, bounds] of Object.entries(food.spread)) {
          const value = figures[key as keyof typeof figures];
          if (bounds[0] > bounds[1]) return `${key} runs down`;
          if (value !== null && (value < bounds[0] - 0.6 || value > bounds[1] + 0.6)) {
            return `${key} ${value} outside ${bounds.join('-')}`;
          }
        }
        return null;
      }),
    ).toEqual([]);
  });

  it('has cups of a density between loose flakes and syrup, and spoons in step with them', () => {
    const cup = 236.6;
    const grams = (food: Food, unit: string) => food.measures.find((m) => m.unit === unit)?.grams;
    expect(
      faults((food) => {
        for (const measure of food.measures) {
          const density = measure.grams / cup;
          const least = FEATHERY.test(food.id) ? 0.03 : 0.05;
          if (/^cup/.test(measure.unit) && (density < least || density > 1.5)) {
            return `${measure.unit} of ${measure.grams} g`;
          }
        }
        const [c, spoon, tea] = [grams(food, 'cup'), grams(food, 'tbsp'), grams(food, 'tsp')];
        if (c && spoon && (spoon * 16 < 0.4 * c || spoon * 16 > 2.1 * c))
          return `${spoon} g tbsp, ${c} g cup`;
        if (spoon && tea && (tea * 3 < 0.6 * spoon || tea * 3 > 1.7 * spoon))
          return `${tea} g tsp, ${spoon} g tbsp`;
        return null;
      }),
    ).toEqual([]);
  });

  it('has no spoon, cup or pint that is lighter than flakes or heavier than syrup', () => {
    expect(
      faults((food) => {
        const least = FEATHERY.test(food.id) ? 0.03 : 0.05;
        const odd = volumeMeasures(food).find(({ density }) => density < least || density > 1.5);
        return odd ? `${odd.measure.unit} of ${odd.measure.grams} g` : null;
      }),
    ).toEqual([]);
  });

  it('lists each household measure of a food once', () => {
    expect(
      faults(({ measures }) =>
        new Set(measures.map(({ unit }) => unit)).size === measures.length ? null : 'measure twice',
      ),
    ).toEqual([]);
  });

  it('gives every figure a source that can be named', () => {
    expect(
      faults(({ source, measures }) => {
        const sources = [source, ...measures.map((measure) => measure.source)];
        const bare = sources.some(({ kind, id, note }) => {
          if (kind === 'SR' || kind === 'FF') return id === null;
          return (kind === 'published' || kind === 'calculated') && note === null;
        });
        return bare ? 'source without id or words' : null;
      }),
    ).toEqual([]);
  });

  it('takes newer-survey records only with energy, protein, fat, carbohydrate and fibre', () => {
    expect(
      faults(({ source, per100g }) => {
        const { energyKcal, proteinG, fatG, carbohydrateG, fiberG } = per100g;
        const lacks = [energyKcal, proteinG, fatG, carbohydrateG, fiberG].includes(null);
        return source.kind === 'FF' && lacks ? 'incomplete record' : null;
      }),
    ).toEqual([]);
  });

  it('never credits raw potato with the fibre of its raw starch', () => {
    expect(
      faults(({ id, state, per100g: { carbohydrateG, fiberG } }) =>
        /potato|cassava|yam|plantain|taro/.test(id) &&
        !/fibre|leaves/.test(id) &&
        state === 'raw' &&
        (fiberG ?? 0) > 0.35 * (carbohydrateG ?? 0)
          ? 'fibre over 35 % of carbohydrate'
          : null,
      ),
    ).toEqual([]);
  });

  it('finds foods by id and answers null for an unknown one', () => {
    expect(byId('bread-flour')?.name).toBe('bread flour');
    expect(byId('no-such-food')).toBeNull();
    const own = { ...(byId('bread-flour') as Food), name: 'my flour' };
    expect(foodTable([own]).byId('bread-flour')?.name).toBe('my flour');
  });
});
