/** Interval arithmetic, under the name the tally's files know it by. */
export { add, clampAtZero, exact, interval, scale, subtract } from '../interval.ts';
