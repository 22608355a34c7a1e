/** A page's own figures beside ours: reading them, judging them, and the reason named for each pattern. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareStated, type Nutrients, type Recipe, type Tally } from '../../../engine/index.ts';
import { NUTRIENTS } from '../../../engine/model.ts';
import { tally } from '../../../engine/tally/index.ts';
import { nearnessOf } from '../../../engine/tally/stated/nearness.ts';
import {
  readFigure,
  readStated,
  servingGrams,
} from '../../../engine/tally/stated/stated-figures.ts';
import { makeFood, makeIngredient, makeTable, makeWeight } from '../fixtures.ts';

/** One serving of an invented dish: 4 x 8 P + 9 x 10 F + 4 x 60 C = 362 kcal. */
const OURS: Partial<Record<keyof Nutrients, number>> = {
  energyKcal: 362,
  fatG: 10,
  saturatedG: 4,
  carbohydrateG: 60,
  fiberG: 8,
  sugarsG: 12,
  polyolsG: 0,
  alluloseG: 0,
  netCarbsG: 52,
  proteinG: 8,
  sodiumMg: 400,
};

const column = (figures: typeof OURS, by: number): Nutrients =>
  Object.fromEntries(
    NUTRIENTS.map((nutrient) => {
      const best = figures[nutrient];
      return [
        nutrient,
        best === undefined ? null : { low: best * by, best: best * by, high: best * by },
      ];
    }),
  ) as Nutrients;

function ourTally(figures: typeof OURS = OURS, rest: Partial<Tally> = {}): Tally {
  const cooked = { low: 900, best: 1000, high: 1100 };
  return {
    rule: { region: 'us', polyols: 'half' },
    servings: 4,
    whole: column(figures, 4),
    perServing: column(figures, 1),
    per100gCooked: column(figures, 0.4),
    rawGrams: cooked,
    cookedGrams: cooked,
    cookedSource: 'test',
    contributions: [],
    uncounted: [],
    incomplete: {},
    notes: [],
    ...rest,
  };
}

type Page = Pick<Recipe, 'statedNutrition' | 'yield'>;

const page = (statedNutrition: Record<string, string> | null, servings = 4): Page => ({
  statedNutrition,
  yield: { text: null, servings: { low: servings, high: servings }, pieces: null },
});

const US_PAGE = {
  calories: '360 kcal',
  fatContent: '10 g',
  carbohydrateContent: '60 g',
  fiberContent: '8 g',
  proteinContent: '8 g',
  sodiumContent: '400 mg',
};

const codes = (stated: Record<string, string>, ours: Tally = ourTally()): string[] =>
  compareStated(page(stated), ours)?.notes.map(({ code }) => code) ?? [];

describe('reading printed figures', () => {
  it('reads numbers in the unit asked for', () => {
    expect(readFigure('120 kcal', 'kcal')).toBe(120);
    expect(readFigure('1,234 calories', 'kcal')).toBe(1234);
    expect(readFigure('1.234 kcal', 'kcal')).toBe(1234);
    expect(readFigure('502 kJ / 120 kcal', 'kcal')).toBe(120);
    // 4.184 kJ are 1 kcal.
    expect(readFigure('418.4 kJ', 'kcal')).toBeCloseTo(100, 6);
    expect(readFigure('12,5 g', 'g')).toBe(12.5);
    expect(readFigure('0.35g', 'mg')).toBeCloseTo(350, 9);
    expect(readFigure('350 milligrams', 'mg')).toBe(350);
    expect(readFigure('10-12 grams', 'g')).toBe(11);
    expect(readFigure('5% 15 g', 'g')).toBe(15);
    expect(readFigure('240', 'kcal')).toBe(240);
  });

  it('takes less-than figures at half their limit and traces as nothing', () => {
    expect(readFigure('<1 g', 'g')).toBe(0.5);
    expect(readFigure('less than 0.5 g', 'g')).toBe(0.25);
    expect(readFigure('trace', 'g')).toBe(0);
  });

  it('finds no number where there is none', () => {
    expect(readFigure('see label', 'g')).toBeNull();
    expect(readFigure('35%', 'g')).toBeNull();
    expect(readStated({ carbohydrateContent: 'n/a', calories: '' })).toEqual({});
    expect(servingGrams({ servingSize: '1 slice' })).toBeNull();
    expect(servingGrams({ servingSize: '1 slice (85 g)' })).toBe(85);
  });

  it('never throws and never gives a negative figure, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 80 }),
        fc.constantFrom('g', 'mg', 'kcal'),
        (text, unit) => {
          const value = readFigure(text, unit as 'g');
          expect(value === null || (Number.isFinite(value) && value >= 0)).toBe(true);
        },
      ),
    );
  });
});

describe('verdicts', () => {
  it('calls carbohydrate within 3 g or 15 % close, within 30 % somewhat off', () => {
    expect(nearnessOf('carbohydrateG', 8, 5)).toBe('close');
    expect(nearnessOf('carbohydrateG', 100, 85)).toBe('close');
    expect(nearnessOf('carbohydrateG', 100, 84)).toBe('somewhat');
    expect(nearnessOf('carbohydrateG', 100, 70)).toBe('somewhat');
    expect(nearnessOf('carbohydrateG', 100, 69)).toBe('differs');
  });
});

describe('the comparison', () => {
  it('keeps the words of the page and finds a like page close in every row', () => {
    const result = compareStated(page(US_PAGE), ourTally());
    expect(result?.rows.map(({ nutrient, verdict }) => [nutrient, verdict])).toEqual([
      ['energyKcal', 'close'],
      ['fatG', 'close'],
      ['carbohydrateG', 'close'],
      ['fiberG', 'close'],
      ['proteinG', 'close'],
      ['sodiumMg', 'close'],
    ]);
    expect(result?.rows[0]?.theirs).toEqual({ value: 360, text: '360 kcal' });
    expect(result?.notes).toEqual([]);
    expect(result?.addsUp).toBe(true);
  });

  it('is null without stated figures', () => {
    expect(compareStated(page(null), ourTally())).toBeNull();
    expect(compareStated(page({ servingSize: '1' }), ourTally())).toBeNull();
  });

  it("compares at the page's own servings, not at the ones the user chose", () => {
    const chosen = { ...ourTally(), servings: 8 };
    expect(compareStated(page(US_PAGE, 4), chosen)?.rows[2]?.ours).toBe(60);
  });

  it('compares 100 g with 100 g of the finished dish', () => {
    const result = compareStated(
      page({ servingSize: '100 g', carbohydrateContent: '24 g' }),
      ourTally(),
    );
    expect(result?.per).toBe('100 g');
    expect(result?.rows[0]).toMatchObject({ ours: 24, verdict: 'close' });
  });

  it('takes fibre only from a carbohydrate known to hold it', () => {
    expect(compareStated(page(US_PAGE), ourTally())?.theirNetCarbsG).toBe(52);
    const { sodiumContent: _, ...noSodium } = US_PAGE;
    expect(compareStated(page(noSodium), ourTally())?.theirNetCarbsG).toBeNull();
  });

  it("leaves a verdict open where we know no figure, and tells the page's own text", () => {
    const { sodiumMg: _, ...known } = OURS;
    const row = compareStated(page({ sodiumContent: '300 mg' }), ourTally(known))?.rows[0];
    expect(row).toMatchObject({ ours: null, verdict: null, likelyReason: null });
  });
});

describe('likely reasons', () => {
  it('another serving: all figures times one number', () => {
    const double = {
      ...US_PAGE,
      calories: '724 kcal',
      fatContent: '20 g',
      carbohydrateContent: '120 g',
      proteinContent: '16 g',
    };
    const [note] = compareStated(page(double), ourTally())?.notes ?? [];
    expect(note?.code).toBe('STATED_OTHER_SERVING');
    expect(note?.text).toContain('2 times ours');
    expect(note?.text).toContain('as if the recipe made 2 instead of 4');
  });

  it('another weight of the serving', () => {
    const small = { servingSize: '1 bowl (120 g)', carbohydrateContent: '29 g' };
    expect(codes(small)).toContain('STATED_SERVING_WEIGHT');
  });

  it('net or European carbohydrate: their carbohydrate is our net', () => {
    const net = { ...US_PAGE, carbohydrateContent: '52 g' };
    expect(codes(net)).toContain('STATED_IS_NET');
    expect(compareStated(page(net), ourTally())?.theirNetCarbsG).toBeNull();
    // Close by the rule of 15 %, so nothing is wrong with the row itself.
    const far = { ...OURS, fiberG: 30, netCarbsG: 30 };
    const result = compareStated(page({ ...US_PAGE, carbohydrateContent: '30 g' }), ourTally(far));
    const row = result?.rows.find(({ nutrient }) => nutrient === 'carbohydrateG');
    expect(row?.verdict).toBe('differs');
    expect(row?.likelyReason).toContain('without fibre');
  });

  it('all the frying oil: only energy and fat higher', () => {
    const oily = { ...US_PAGE, calories: '710 kcal', fatContent: '49 g' };
    expect(codes(oily)).toEqual(['STATED_ALL_FAT']);
  });

  it('only sodium: cooking water, salt left out, or salt instead of sodium', () => {
    expect(codes({ ...US_PAGE, sodiumContent: '1900 mg' })).toEqual(['STATED_ALL_SALT']);
    expect(codes({ ...US_PAGE, sodiumContent: '120 mg' })).toEqual(['STATED_NO_SALT']);
    expect(codes({ ...US_PAGE, sodiumContent: '1 g' })).toEqual(['STATED_IS_SALT']);
  });

  it('kilojoules printed as calories; and the figures then do not add up', () => {
    expect(codes({ ...US_PAGE, calories: '1515' })).toEqual([
      'STATED_DOES_NOT_ADD_UP',
      'STATED_IN_KJ',
    ]);
  });

  it('a line left out: what is missing is what one line brings', () => {
    const brings = (key: string, best: number) => ({
      key,
      netCarbsG: { low: best, best, high: best },
      share: best / 52,
    });
    const ours = ourTally(OURS, { contributions: [brings('0', 31), brings('4', 21)] });
    const result = compareStated(
      page({ ...US_PAGE, carbohydrateContent: '39 g', calories: '280', fiberContent: '7 g' }),
      ours,
    );
    const note = result?.notes.find(({ code }) => code === 'STATED_LINE_LEFT_OUT');
    expect(note?.key).toBe('4');
    expect(note?.text).toContain('21 g');
  });

  it('all polyols taken away', () => {
    const sweet = { ...OURS, polyolsG: 20, netCarbsG: 42 };
    const net = { ...US_PAGE, carbohydrateContent: '32 g', calories: '300 kcal' };
    expect(codes(net, ourTally(sweet))).toContain('STATED_ALL_POLYOLS');
  });

  it('lines of ours that are in no total, when theirs is higher', () => {
    const ours = ourTally(OURS, { uncounted: [{ key: '7', text: 'rice, to serve', why: 'x' }] });
    const more = { ...US_PAGE, calories: '530 kcal', carbohydrateContent: '100 g' };
    const notes = compareStated(page(more), ours)?.notes ?? [];
    expect(notes.map(({ code }) => code)).toEqual(['STATED_UNCOUNTED', 'STATED_CARBS_HIGHER']);
    expect(notes[0]?.key).toBe('7');
  });
});

describe("the page's own sum", () => {
  it('tells energy that cannot come from protein, fat and carbohydrate', () => {
    expect(codes({ ...US_PAGE, calories: '150 kcal' })[0]).toBe('STATED_DOES_NOT_ADD_UP');
    expect(compareStated(page({ calories: '150 kcal' }), ourTally())?.addsUp).toBeNull();
  });

  it('allows for alcohol and for sweeteners without energy', () => {
    // A glass with 14 g of alcohol (98 kcal at 7 kcal/g) and 4 g of carbohydrate.
    const drink = { energyKcal: 114, proteinG: 0, fatG: 0, carbohydrateG: 4, fiberG: 0 };
    const printed = {
      calories: '115',
      proteinContent: '0 g',
      fatContent: '0 g',
      carbohydrateContent: '4 g',
    };
    expect(compareStated(page(printed), ourTally(drink))?.addsUp).toBe(true);
    expect(compareStated(page(printed), ourTally())?.addsUp).toBe(false);
    const sweet = { energyKcal: 40, proteinG: 0, fatG: 0, carbohydrateG: 60, polyolsG: 50 };
    const candy = { ...printed, calories: '40', carbohydrateContent: '60 g' };
    expect(compareStated(page(candy), ourTally(sweet))?.addsUp).toBe(true);
  });

  it('does not call carbohydrate higher when the page does not add up', () => {
    const wrong = { ...US_PAGE, carbohydrateContent: '400 g' };
    expect(codes(wrong)).toContain('STATED_DOES_NOT_ADD_UP');
    expect(codes(wrong)).not.toContain('STATED_CARBS_HIGHER');
  });
});

describe('with a real tally', () => {
  it('counts a shared loaf the way the page does', () => {
    // 500 g of flour with 72.53 g carbohydrate, 2.4 g fibre and 361 kcal a 100 g (USDA SR 168896), in 10.
    const flour = makeFood('flour', {
      energyKcal: 361,
      proteinG: 11.98,
      fatG: 1.66,
      carbohydrateG: 72.53,
      fiberG: 2.4,
      sodiumMg: 2,
    });
    const ours = tally([makeIngredient('0', 'flour', makeWeight(500))], {
      foods: makeTable(flour),
      servings: 5,
      rule: { region: 'us', polyols: 'half' },
      family: 'lean-yeast-bread',
    });
    const printed = { calories: '180 kcal', carbohydrateContent: '36 g', proteinContent: '6 g' };
    const result = compareStated(page(printed, 10), ours);
    expect(result?.rows.map(({ verdict }) => verdict)).toEqual(['close', 'close', 'close']);
    expect(result?.rows[1]?.ours).toBeCloseTo(36.265, 6);
  });
});
