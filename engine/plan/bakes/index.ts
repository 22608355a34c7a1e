/** Learning from bakes: what went wrong, why, and what to change. */
export type { BakeMeasures } from './bake-values.ts';
export { bakeSymptoms } from './failure-table.ts';
export { type LearnedWater, learnedWater } from './learned-water.ts';
export { type BakeContext, likelyCauses, proposeAdjustments } from './propose.ts';
