/** Learning from bakes: what went wrong, why, and what to change. */
export { BakeFacts } from './bake-facts.ts';
export { bakeSymptoms } from './failure-table.ts';
export { type LearnedWater, learnedWater } from './learned-water.ts';
export { Lesson, lessonsFrom } from './lessons.ts';
export { likelyCauses, proposeAdjustments } from './propose.ts';
export { changesOn, type Taught, taughtChanges, taughtShare } from './taught.ts';
