/** Learning from bakes: what went wrong, why, and what to change. */
export type { BakeMeasures } from './figures.ts';
export { type LearnedWater, learnedWater } from './learned-water.ts';
export { type BakeContext, likelyCauses, proposeAdjustments } from './propose.ts';
export { bakeSymptoms } from './rows.ts';
