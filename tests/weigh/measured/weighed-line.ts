/** A line read, matched and weighed the whole way, as a European kitchen measures. */
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import { parseLine } from '../../../engine/parse/index.ts';
import { weighItem } from '../../../engine/weigh/index.ts';

const foods = foodTable();

/** Food and grams of the first item of a line; undefined where there is none. */
export function weighed(
  text: string,
  language: string,
): [foodId: string | undefined, grams: number | undefined] {
  const line = parseLine(text, { language });
  const [item] = line.items;
  if (!item) return [undefined, undefined];
  const match = matchItem(item, line, { foods, language });
  const food = match && foods.byId(match.foodId);
  const recipe = { title: '', steps: [], lines: [line] };
  return [match?.foodId, weighItem(item, line, food, { region: 'eu', recipe })?.grams.best];
}
