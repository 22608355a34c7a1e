/** Kitchen timers as plain values: each knows when it ends, so a reload changes nothing. */
import type { StoveTimer } from '../../store/working/stove.ts';

/** More at once than a cook has pots for; the oldest that has rung makes room. Own choice. */
const MOST_TIMERS = 8;

/** The list with a new timer; null when no more can run. */
export function withTimer(
  timers: readonly StoveTimer[],
  timer: StoveTimer,
  now: number,
): StoveTimer[] | null {
  if (timers.length < MOST_TIMERS) return [...timers, timer];
  const rung = timers.findIndex(({ endsAt }) => endsAt <= now);
  return rung < 0 ? null : [...timers.filter((_, at) => at !== rung), timer];
}

export const withoutTimer = (timers: readonly StoveTimer[], id: string): StoveTimer[] =>
  timers.filter((one) => one.id !== id);

/** Whole seconds that are left; 0 when it rings. */
export const secondsLeft = ({ endsAt }: StoveTimer, now: number): number =>
  Math.max(0, Math.ceil((endsAt - now) / 1000));

const two = (value: number): string => String(value).padStart(2, '0');

/** '11:40', '1:05:00' */
export function clockText(seconds: number): string {
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor((seconds % 3600) / 60);
  return hours > 0
    ? `${hours}:${two(minutes)}:${two(seconds % 60)}`
    : `${minutes}:${two(seconds % 60)}`;
}

/** Timers that ended between two looks, the later one included. */
export const justEnded = (
  timers: readonly StoveTimer[],
  before: number,
  now: number,
): StoveTimer[] => timers.filter(({ endsAt }) => endsAt > before && endsAt <= now);
