/** A range of pieces in a recipe whose servings are known. */
import { expect, test } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { weighItem } from '../../engine/weigh/index.ts';

const foods = foodTable();

function bestOf(text: string, servings: number | null): number | undefined {
  const line = parseLine(text);
  const [item] = line.items;
  if (!item) return undefined;
  const food = foods.byId(matchItem(item, line, { foods })?.foodId ?? '');
  const recipe = { title: '', steps: [], lines: [line], servings };
  return weighItem(item, line, food, { region: 'us', recipe })?.grams.best;
}

test.each([
  ['4-6 boneless pork chops', 6, 840],
  ['4-6 boneless pork chops', 4, 560],
  ['4-6 boneless pork chops', null, 700],
  ['4-6 boneless pork chops', 8, 700],
  ['3-4 burrito-sized flour tortillas', 3, 216],
  ['2-3 eggs', 3, 125],
  ['4-6 chicken thighs, skin-on', 4, 725],
  ['3 to 4 (1 pound) boneless chicken breasts', 4, 454],
  ['1-2 pounds ground beef', 2, 680],
])('%s for %s', (text, servings, grams) => {
  expect(bestOf(text, servings)).toBeCloseTo(grams, 0);
});
