/** The door: everything the extension and the command line may import. */

export { toCsv, toJsonLd, toMarkdown, toText } from './export/index.ts';
export { type FoodTable, foodTable } from './foods/index.ts';
export { foodFromLabel, type LabelResult } from './foods/label/label.ts';
export { PackageLabel, Printed } from './foods/label/package-label.ts';
export { hasTag } from './foods/tags.ts';
export { lineOfKey, splitKey } from './ingredient-keys.ts';
export { foodNameIn } from './match/languages/display-names.ts';
export * from './model.ts';
export {
  type BakeContext,
  bakeSymptoms,
  type LearnedWater,
  learnedWater,
  likelyCauses,
  proposeAdjustments,
} from './plan/bakes/index.ts';
export {
  finishReading,
  type Gathered,
  type NothingFound,
  readPage,
  readText,
} from './read/index.ts';
export { Pan, panFactor } from './rewrite/lines/pans.ts';
export type { System } from './rewrite/lines/scaled-amounts.ts';
export { type ScaledLine, type ScaleOptions, scaledLines } from './rewrite/lines/scaled-lines.ts';
export { type ScaledStep, scaledSteps } from './rewrite/steps/scaled-steps.ts';
export { plannedKey } from './tally/planned-ingredients.ts';
export {
  compareStated,
  type StatedComparison,
  type StatedRow,
} from './tally/stated/compare-stated.ts';
export { type Trace, type TracedLine, traceFigures } from './trace.ts';
export {
  adaptRecipe,
  frontierOf,
  parseLines,
  type RecipeTally,
  tallyRecipe,
  type WalkOptions,
  weighRecipe,
} from './walk.ts';
