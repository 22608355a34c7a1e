/** What a packaged flour or sweetener does in a dough: as the built-in food, moved by its label. */
import type { Composition, Food, FoodFunction } from '../../model.ts';
import type { PackageLabel } from './package-label.ts';

/** Gluten-forming share of the protein: with gluten alone, and with soy, pea, faba or lupin beside it. Common practice, no source. */
const GLUTEN_SHARE = { alone: 0.9, mixed: 0.7 };
/** Water held by a wheat blend, g/g: 0.58 + 0.010 per percent of protein, at most 1.05. Common practice, no source. */
const ABSORPTION = { base: 0.58, perProtein: 0.01, most: 1.05 };

const tidy = (value: number): number => Math.round(value * 1000) / 1000;

function glutenProtein(label: PackageLabel, protein: number, like: Food, fn: FoodFunction): number {
  if (label.glutenAmongFirst)
    return protein * (label.otherProteins ? GLUTEN_SHARE.mixed : GLUTEN_SHARE.alone);
  const usual = like.per100g.proteinG ?? 0;
  // A plain flour's protein is its grain's, so it forms gluten as the built-in flour's does.
  return like.group === 'flours' && usual > 0 ? protein * Math.min(1, fn.glutenProtein / usual) : 0;
}

function absorption(
  label: PackageLabel,
  protein: number,
  like: Food,
  fn: FoodFunction,
): FoodFunction['absorption'] {
  const wheatBlend = like.group !== 'flours' && (label.glutenAmongFirst || fn.glutenProtein > 0);
  if (!wheatBlend || fn.absorption === null) return fn.absorption;
  const best = tidy(Math.min(ABSORPTION.most, ABSORPTION.base + ABSORPTION.perProtein * protein));
  const { low, high } = fn.absorption;
  return { low: Math.min(low, best), best, high: Math.max(high, best) };
}

/** Function of the packaged food that stands in for `like`; null when that has none. */
export function labelFunction(
  label: PackageLabel,
  per100g: Composition,
  like: Food,
): FoodFunction | null {
  const fn = like.function;
  if (fn === null) return null;
  const protein = per100g.proteinG ?? 0;
  const polyols = Object.values(per100g.polyolsG ?? {}).reduce((sum, one) => sum + one, 0);
  const fiber = label.form === 'us' ? (per100g.fiberG ?? 0) : 0;
  const notStarch = fiber + polyols + (per100g.alluloseG ?? 0) + (per100g.sugarsG ?? 0);
  const starch = Math.max(0, (per100g.carbohydrateG ?? 0) - notStarch);
  return {
    ...fn,
    absorption: absorption(label, protein, like, fn),
    glutenProtein: tidy(glutenProtein(label, protein, like, fn)),
    digestibleStarch: fn.digestibleStarch === null ? null : tidy(starch),
    source: `gluten, absorption and starch from a package label: common practice, no source; rest as ${like.name}: ${fn.source}`,
  };
}
