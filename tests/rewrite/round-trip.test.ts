/** The reworked recipe, read as if it were a new one, is the plan again. */
import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { type Adaptation, DEFAULT_GOALS, type Recipe } from '../../engine/model.ts';
import { readPage } from '../../engine/read/index.ts';
import { adaptRecipe, tallyRecipe, weighRecipe } from '../../engine/walk.ts';

const PAGES = new URL('../pages/demo/', import.meta.url);

const recipes: [string, Recipe][] = readdirSync(PAGES).flatMap((file) => {
  const page = readFileSync(new URL(file, PAGES), 'utf8');
  const result = readPage(new JSDOM(page).window.document);
  if (!result.ok) return [];
  return result.recipes.map((recipe): [string, Recipe] => [`${file}: ${recipe.title}`, recipe]);
});

/** The reworked recipe as a recipe of its own. */
function asRecipe({ recipe, lines }: Adaptation): Recipe {
  const texts = lines.flatMap(({ after }) => (after === null ? [] : [after]));
  return { ...recipe, groups: [{ title: null, lines: texts }] };
}

describe.each(recipes)('%s', (_, recipe) => {
  it.each([5, 15])('reads back at a budget of %d g', (budgetG) => {
    const adaptation = adaptRecipe(recipe, { ...DEFAULT_GOALS, budgetG });
    const changed = adaptation.lines.flatMap((line) =>
      line.change === 'kept' || line.after === null ? [] : [{ ...line, after: line.after }],
    );
    const groups = [{ title: null, lines: changed.map(({ after }) => after) }];
    const again = weighRecipe({ ...recipe, groups });
    changed.forEach(({ key, after }, at) => {
      const [lineKey, foodId] = key.split('>');
      const read = again.find((ingredient) => ingredient.key === String(at));
      const planned = adaptation.plan.items.filter(
        (item) => item.key === lineKey && (foodId === undefined || item.foodId === foodId),
      );
      const item = planned.find((one) => one.foodId === read?.match?.foodId);
      expect(item, after).toBeDefined();
      const off = Math.abs((read?.weight?.grams.best ?? 0) - (item?.grams ?? 0));
      expect(off, after).toBeLessThanOrEqual(Math.max(0.1, 0.02 * (item?.grams ?? 0)));
    });
  });

  it('has the net carbs of the plan when it is tallied afresh', () => {
    const adaptation = adaptRecipe(recipe, DEFAULT_GOALS);
    const { servings } = adaptation.after;
    const goals = { ...DEFAULT_GOALS, servings, family: adaptation.plan.family.id };
    const fresh = tallyRecipe(asRecipe(adaptation), goals).tally.perServing.netCarbsG?.best ?? 0;
    const planned = adaptation.after.perServing.netCarbsG?.best ?? 0;
    expect(Math.abs(fresh - planned)).toBeLessThanOrEqual(Math.max(0.15, 0.02 * planned));
  });
});

it('has demo recipes to work on', () => {
  expect(recipes.length).toBeGreaterThanOrEqual(8);
});
