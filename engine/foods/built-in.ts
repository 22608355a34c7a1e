/**
 * Every food file, read once. Add a file here when you add one under `data/`. The files are checked by
 * the tests and not again in the browser, so that the table stands at once.
 */
import type { Food, FoodFunction } from '../model.ts';
import baking from './data/baking.json' with { type: 'json' };
import chocolate from './data/chocolate.json' with { type: 'json' };
import dairy from './data/dairy.json' with { type: 'json' };
import drinks from './data/drinks.json' with { type: 'json' };
import eggs from './data/eggs.json' with { type: 'json' };
import fats from './data/fats.json' with { type: 'json' };
import fish from './data/fish.json' with { type: 'json' };
import flours from './data/flours.json' with { type: 'json' };
import fruit from './data/fruit.json' with { type: 'json' };
import functions from './data/function.json' with { type: 'json' };
import grains from './data/grains.json' with { type: 'json' };
import legumes from './data/legumes.json' with { type: 'json' };
import lowCarb from './data/low-carb.json' with { type: 'json' };
import meat from './data/meat.json' with { type: 'json' };
import nuts from './data/nuts.json' with { type: 'json' };
import prepared from './data/prepared.json' with { type: 'json' };
import sauces from './data/sauces.json' with { type: 'json' };
import spices from './data/spices.json' with { type: 'json' };
import standIns from './data/stand-ins.json' with { type: 'json' };
import starches from './data/starches.json' with { type: 'json' };
import stocks from './data/stocks.json' with { type: 'json' };
import sugars from './data/sugars.json' with { type: 'json' };
import vegetables from './data/vegetables.json' with { type: 'json' };
import { foodFromRow } from './food-of-row.ts';
import type { WrittenRow } from './food-row.ts';

interface WrittenFile {
  group: string;
  foods: readonly WrittenRow[];
}

/** In the order of the table, which settles ties between equally good names. */
export const FOOD_FILES = [
  flours,
  starches,
  lowCarb,
  sugars,
  dairy,
  eggs,
  fats,
  baking,
  chocolate,
  nuts,
  grains,
  drinks,
  fruit,
  legumes,
  prepared,
  sauces,
  spices,
  standIns,
  stocks,
  vegetables,
  fish,
  meat,
];

const FUNCTIONS: Readonly<Record<string, unknown>> = functions;

const functionOf = (id: string): FoodFunction | null =>
  Object.hasOwn(FUNCTIONS, id) ? (FUNCTIONS[id] as FoodFunction) : null;

export const BUILT_IN_FOODS: readonly Food[] = (FOOD_FILES as readonly WrittenFile[]).flatMap(
  ({ group, foods }) => foods.map((row) => foodFromRow(row, group, functionOf(row.id))),
);
