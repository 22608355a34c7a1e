/** How a row of `data/*.json` becomes a {@link Food}. */
import type { Food, FoodFunction, Measure, Source } from '../model.ts';
import type { WrittenRow } from './food-row.ts';

const PRACTICE: Source = { kind: 'practice', id: null, note: 'common practice, no source' };

/** @throws {Error} when `src` is of no known form. */
export function readSource(src: string): Source {
  const usda = /^(SR|FF) (\d+)(?: (.+))?$/.exec(src);
  if (usda) return { kind: usda[1] as 'SR' | 'FF', id: usda[2] ?? null, note: usda[3] ?? null };
  const other = /^(published|calculated|label|memory|practice|user)(?: (.+))?$/.exec(src);
  if (other) return { kind: other[1] as Source['kind'], id: null, note: other[2] ?? null };
  throw new Error(`unknown source form: ${src}`);
}

function addMeasures(
  measures: Measure[],
  units: Readonly<Record<string, number>>,
  source: Source,
): void {
  for (const unit in units) measures.push({ unit, grams: units[unit] ?? 0, source });
}

function measuresOf(row: WrittenRow, source: Source): Measure[] {
  const measures: Measure[] = [];
  if (row.measures) addMeasures(measures, row.measures, source);
  for (const from in row.measuresFrom) {
    addMeasures(measures, row.measuresFrom[from] ?? {}, readSource(from));
  }
  if (row.practice) addMeasures(measures, row.practice, PRACTICE);
  return measures;
}

/**
 * A row and, where it has one, its function, as a food. Trusts the row: the project's own files are
 * checked by the tests, anything else goes through `FoodRow` first.
 */
export function foodFromRow(row: WrittenRow, group: string, fn: FoodFunction | null): Food {
  const source = readSource(row.src);
  return {
    id: row.id,
    name: row.name,
    aliases: row.aliases ?? [],
    group,
    state: row.state ?? 'as-is',
    source,
    per100g: {
      waterG: row.water ?? null,
      energyKcal: row.kcal ?? null,
      proteinG: row.protein ?? null,
      fatG: row.fat ?? null,
      saturatedG: row.sat ?? null,
      carbohydrateG: row.carb ?? null,
      fiberG: row.fiber ?? null,
      sugarsG: row.sugars ?? null,
      starchG: row.starch ?? null,
      polyolsG: row.polyols ?? {},
      alluloseG: row.allulose ?? 0,
      alcoholG: row.alcohol ?? 0,
      sodiumMg: row.sodium ?? null,
      potassiumMg: row.potassium ?? null,
    },
    spread: row.spread ?? {},
    carbohydrateBasis: row.basis ?? 'total',
    polyolsInCarbohydrate: !row.polyolsOutside,
    fiberMethod: row.method ?? null,
    refuseShare: row.refuse ?? null,
    measures: measuresOf(row, source),
    allergens: row.allergens ?? [],
    function: fn,
  };
}
