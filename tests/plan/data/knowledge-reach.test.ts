/** Every swap is of use: a dish takes it when a cook has its foods at home, and not those of its rivals. */
import { describe, expect, it } from 'vitest';
import type { Family } from '../../../engine/model.ts';
import { limitsOf } from '../../../engine/plan/dish/family/family-limits.ts';
import { SWAP_RULES, type SwapRule } from '../../../engine/plan/dish/swap-rules.ts';
import { foods, plan, type Sample, tallyOf } from '../build.ts';
import { samplesFor, titlesFor } from './knowledge-samples.ts';

/** What a baker has for a dough, and a cook for sweet things, besides a swap's own foods. */
const FOR_DOUGHS = ['xanthan-gum', 'psyllium-husk-whole', 'egg'];
const FOR_STRONG_DOUGHS = [...FOR_DOUGHS, 'vital-wheat-gluten'];
const FOR_SWEET = ['monk-fruit-extract'];

/** Budgets tried, g a serving: the least that can be reached, and looser ones, where a closer swap wins. */
const BUDGETS = [0, 1, 2, 4, 8, 16, 24, 40, 80];

/** And shares of what a serving has: what saves little alone is proposed where little is to be saved. */
const SHARES_OF_START = [0.95, 0.9, 0.8];

/** Shares of the sample's servings tried: a swap is proposed only where it saves enough in one. */
const SERVED = [1, 1 / 4, 1 / 10];

/** Dishes tried for one swap before it counts as useless. */
const TRIES = 6;

/**
 * Swaps that no dish takes by itself, as they save little, sweeten too little alone, or take too much of
 * what the dish is: to be mended or taken out. The list may only shrink.
 */
const NEVER_TAKEN = [
  'sugar-to-inulin',
  'sugar-to-isomalt',
  'sugar-to-xylitol',
  'rock-candy-to-isomalt',
  'carrot-to-bell-pepper',
  'carrot-cake-half-zucchini',
  'lentils-to-chopped-mushroom-and-walnut',
  'apple-to-zucchini',
  'banana-to-zucchini-and-extract',
  'banana-part-pumpkin-in-bread',
  'applesauce-to-yogurt',
  'applesauce-to-zucchini',
  'orange-juice-to-zest-and-lemon',
  'bread-beer-to-water-and-yogurt',
  // A tenth of a flour at most, for a food to be bought: gluten or fibre does more for the same dough.
  'flour-to-soy-protein',
];

/** Rows that need no food, so that no list of what is at home keeps them from being taken. */
const LESS = SWAP_RULES.filter(({ to }) => to.length === 0).map(({ id }) => id);

function staples(family: Family): readonly string[] {
  const limits = limitsOf(family);
  if (limits.kind !== 'dough') return FOR_SWEET;
  return (limits.gluten?.hard ?? 0) > 0 ? FOR_STRONG_DOUGHS : FOR_DOUGHS;
}

function uses(rule: SwapRule, sample: Sample, budgetG: number): boolean {
  const pantry = [...staples(sample.family), ...rule.to.map(({ food }) => food)];
  const excludedSwaps = LESS.filter((id) => id !== rule.id);
  const result = plan(sample, { pantry, excludedSwaps, family: sample.family, budgetG });
  return result.swaps.some(({ id }) => id === rule.id);
}

function budgetsOf(sample: Sample): number[] {
  const start = tallyOf(sample).perServing.netCarbsG?.best ?? 0;
  return [...BUDGETS, ...SHARES_OF_START.map((share) => share * start)];
}

const used = (rule: SwapRule): boolean =>
  samplesFor(rule)
    .slice(0, TRIES)
    .some((sample) =>
      SERVED.some((share) => {
        const served = { ...sample, servings: Math.max(1, Math.ceil(sample.servings * share)) };
        return budgetsOf(served).some((budgetG) => uses(rule, served, budgetG));
      }),
    );

describe('swaps in made-up dishes', () => {
  it('have words that some title can meet', () => {
    const never = SWAP_RULES.filter((rule) => titlesFor(rule).length === 0);
    expect(never.map(({ id, when }) => `${id}: ${when}`)).toEqual([]);
  });

  it('bring foods with known net carbs', () => {
    const missing = SWAP_RULES.flatMap(({ to }) => to.map(({ food }) => food)).filter(
      (id) => foods.byId(id)?.per100g.carbohydrateG == null,
    );
    expect([...new Set(missing)]).toEqual([]);
  });

  it('are each chosen for one of them', () => {
    const never = SWAP_RULES.filter((rule) => !used(rule)).map(({ id }) => id);
    expect(never.filter((id) => !NEVER_TAKEN.includes(id))).toEqual([]);
  }, 400_000);

  it.each(['us', 'eu'] as const)('sweeten by what the region allows: %s', (region) => {
    const biscuits: Sample = {
      title: 'Brown sugar biscuits',
      family: 'cookie',
      servings: 24,
      parts: [
        ['all-purpose-flour', 250],
        ['butter', 150],
        ['brown-sugar', 150],
        ['egg', 50],
      ],
    };
    const rule = { region, polyols: 'half' } as const;
    const { items } = plan(biscuits, { rule, family: 'cookie', budgetG: 9 });
    const allulose = items.some(({ foodId }) => (foods.byId(foodId)?.per100g.alluloseG ?? 0) > 0);
    expect(allulose).toBe(region === 'us');
  });
});
