/** The reworked recipe, read as if it were a new one, is the plan again. */
import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import {
  type Adaptation,
  DEFAULT_GOALS,
  type Goals,
  type Nutrient,
  type Recipe,
} from '../../../engine/model.ts';
import { readPage, readText } from '../../../engine/read/index.ts';
import { lineRows } from '../../../engine/rewrite/lines/ingredient-lines.ts';
import { adaptRecipe, tallyRecipe, weighRecipe } from '../../../engine/walk.ts';
import { PASTED, textOf } from '../../plan/pasted.ts';
import { foods } from '../fixtures.ts';

const PAGES = new URL('../../pages/demo/', import.meta.url);

const demo: Recipe[] = readdirSync(PAGES).flatMap((file) => {
  const page = readFileSync(new URL(file, PAGES), 'utf8');
  const result = readPage(new JSDOM(page).window.document);
  return result.ok ? result.recipes : [];
});
const pasted: Recipe[] = PASTED.flatMap((one) => {
  const read = readText(textOf(one));
  return read.ok ? read.recipes : [];
});

const GOALS: readonly Partial<Goals>[] = [
  { budgetG: 5 },
  { budgetG: 10 },
  { budgetG: 15 },
  { budgetG: 25 },
  { budgetG: 10, avoid: ['gluten'] },
  { budgetG: 8, sweetness: 0.7 },
  { budgetG: 12, flourKept: 0.4 },
  { budgetG: 10, avoid: ['milk', 'tree nuts'] },
];

/** Lines of the reworked recipe in their groups. */
function groupsOf({ lines }: Adaptation): Recipe['groups'] {
  const groups: Recipe['groups'] = [];
  for (const { after, group } of lines) {
    if (after === null) continue;
    const last = groups.at(-1);
    if (last !== undefined && last.title === group) last.lines.push(after);
    else groups.push({ title: group, lines: [after] });
  }
  return groups;
}

/** The plan rounds as a kitchen does; a line may round once more by this, g (half of a hundredth). */
const PRINTED = 0.0051;

/** Every line that the plan changed is read as the plan's food and grams; the count of such lines. */
function checkLines(adaptation: Adaptation): number {
  const { recipe, ingredients, plan } = adaptation;
  const rows = lineRows(recipe, ingredients, { plan, foods, region: 'us' }).filter(
    ({ line }) => line.after !== null,
  );
  const again = weighRecipe({ ...recipe, groups: groupsOf(adaptation) });
  let checked = 0;
  rows.forEach(({ item, line }, at) => {
    if (item === null) return;
    checked += 1;
    const read = again.filter(({ key }) => key.split('.')[0] === String(at));
    const text = adaptation.lines.filter(({ after }) => after !== null)[at]?.after ?? '';
    expect(read.length, `${recipe.title}: ${text}`).toBe(1);
    expect(read[0]?.match?.foodId, `${recipe.title}: ${text}`).toBe(item.foodId);
    const off = Math.abs((read[0]?.weight?.grams.best ?? 0) - item.grams);
    expect(off, `${recipe.title}: ${text} for ${item.grams} g, ${line.key}`).toBeLessThan(PRINTED);
    expect(read[0]?.weight?.eaten.best, `${recipe.title}: ${text}`).toBeCloseTo(item.eaten.best, 6);
  });
  return checked;
}

const FIGURES: readonly Nutrient[] = ['netCarbsG', 'fiberG', 'proteinG', 'fatG', 'energyKcal'];

/**
 * What a bath of oil leaves on the food is judged by the mass of the rest, so it moves with the lines, g a serving: a
 * coat that is 70 g thinner over 4 servings takes up to 1.2 g less oil each.
 */
const BATH_FAT = 1.5;

const isDeepFried = ({ ingredients }: Adaptation): boolean =>
  ingredients.some(({ weight }) => weight?.assumptions.some((text) => /^deep-frying/.test(text)));

/** The totals of a serving, tallied afresh from the lines, are those shown. */
function checkTotals(adaptation: Adaptation): void {
  const { recipe, goals, plan, after } = adaptation;
  const fresh = tallyRecipe(
    { ...recipe, groups: groupsOf(adaptation) },
    { servings: after.servings, rule: goals.rule, family: plan.family.id },
  ).tally;
  for (const nutrient of FIGURES) {
    const [read, shown] = [fresh.perServing[nutrient], after.perServing[nutrient]];
    const said = `${recipe.title}: ${nutrient}`;
    expect(read === null, said).toBe(shown === null);
    if (!read || !shown) continue;
    // A hundredth of a gram of food, and what it brings, in every line.
    const exact = nutrient === 'energyKcal' ? 0.2 : 0.02;
    const bath = nutrient === 'energyKcal' ? 9 * BATH_FAT : BATH_FAT;
    const oily = isDeepFried(adaptation) && (nutrient === 'energyKcal' || nutrient === 'fatG');
    const slack = oily ? bath : exact;
    expect(Math.abs(read.best - shown.best), said).toBeLessThanOrEqual(slack);
  }
}

describe('read back', () => {
  const cases = [
    ...demo.flatMap((recipe) => GOALS.map((goals) => [recipe.title, goals, recipe] as const)),
    ...pasted.flatMap((recipe, at) =>
      // Two of the goals each, so that all are met across the recipes.
      [at, at + 3].map((n) => [recipe.title, GOALS[n % GOALS.length] ?? {}, recipe] as const),
    ),
  ];

  it.each(cases)('%s, %j', (_, goals, recipe) => {
    const adaptation = adaptRecipe(recipe, { ...DEFAULT_GOALS, ...goals });
    checkLines(adaptation);
    checkTotals(adaptation);
  });

  it('has lines to check', () => {
    const checked = demo.flatMap((recipe) =>
      [5, 15].map((budgetG) =>
        checkLines(adaptRecipe(recipe, { ...DEFAULT_GOALS, budgetG, way: 'within' })),
      ),
    );
    expect(demo.length).toBeGreaterThanOrEqual(8);
    expect(checked.reduce((sum, count) => sum + count, 0)).toBeGreaterThan(100);
  });
});
