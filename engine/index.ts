/** The door: everything the extension and the command line may import. */

export {
  toCsv,
  toFiguresTable,
  toJsonLd,
  toMarkdown,
  toPublishing,
  toText,
} from './export/index.ts';
export { type FoodTable, foodTable } from './foods/index.ts';
export { foodFromLabel } from './foods/label/label.ts';
export { PackageLabel, Printed } from './foods/label/package-label.ts';
export { hasTag } from './foods/tags.ts';
export { lineOfKey, splitKey } from './ingredient-keys.ts';
export { indexFoods } from './match/index.ts';
export * from './model.ts';
export {
  BakeFacts,
  bakeSymptoms,
  type LearnedWater,
  Lesson,
  learnedWater,
  lessonsFrom,
  proposeAdjustments,
  type Taught,
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
export { scaledLines } from './rewrite/lines/scaled-lines.ts';
export { scaledSteps } from './rewrite/steps/scaled-steps.ts';
export { cautionText } from './tally/cautions/caution-words.ts';
export {
  compareStated,
  type StatedRow,
} from './tally/stated/compare-stated.ts';
export { goesPastWithIt, verdictWord } from './tally/verdict/verdict-word.ts';
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
