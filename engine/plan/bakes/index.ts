/** Learning from bakes: what went wrong, why, and what to change. */
export { bakeSymptoms } from './failure-table.ts';
export { type LearnedWater, learnedWater } from './learned-water.ts';
export { likelyCauses, proposeAdjustments } from './propose.ts';
