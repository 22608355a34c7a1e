/** Every food file, read once. Add a file here when you add one under `data/`. */
import { type Food, FoodFunction } from '../model.ts';
import flours from './data/flours.json' with { type: 'json' };
import functions from './data/function.json' with { type: 'json' };
import { FoodFile, foodFromRow } from './row.ts';

const FILES: readonly unknown[] = [flours];

const functionOf = (id: string): FoodFunction | null => {
  const row = (functions as Record<string, unknown>)[id];
  return row === undefined ? null : FoodFunction.parse(row);
};

export const BUILT_IN_FOODS: readonly Food[] = FILES.flatMap((file) => {
  const { group, foods } = FoodFile.parse(file);
  return foods.map((row) => foodFromRow(row, group, functionOf(row.id)));
});
