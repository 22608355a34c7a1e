/**
 * Time as the processor spent it on this process, so that other programs of a busy machine do not lengthen
 * it, and how it grows with what is worked on: a growth is no matter of the machine's speed.
 */

/** Processor time of some work, ms; collecting of garbage and compiling count as well. */
function processorMs(work: () => unknown): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

/** A clock that goes on only while this process works: ms since it was made. */
export function processorClock(): () => number {
  const start = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
}

/** Least processor time of some work, ms: looked at again only while it takes longer than it may. */
export function leastMs(work: () => unknown, most: number, looks = 4): number {
  let least = Number.POSITIVE_INFINITY;
  for (let look = 0; look < looks && least > most; look += 1)
    least = Math.min(least, processorMs(work));
  return least;
}

export interface Growing<Input> {
  /** Makes what is worked on, of this size, outside the clock; nothing that an earlier look has remembered. */
  made: (size: number, look: number) => Input;
  run: (input: Input) => unknown;
  /** The smallest size. */
  from: number;
  /** How often it is doubled, twice unless said. */
  doublings?: number;
}

/** Twice the size in at most this much more time; four times would be a square. */
export const MOST_GROWTH = 3;
/** Below this nothing can be told of growth: other threads of the process take as long. */
const TOO_SHORT_MS = 40;
/** Looks before a growth is believed: a collection of garbage in one of them is no growth. */
const LOOKS = 4;

/**
 * How many times longer twice the size takes: the least of some doublings, because a step (another way of
 * working from some size on) is no growth; 1 when even the largest is too quick to tell. Smaller sizes and
 * further looks, of which the least time counts, are taken only while the growth is too large.
 */
export function growthOf<Input>({ made, run, from, doublings = 2 }: Growing<Input>): number {
  const least = Array.from({ length: doublings + 1 }, () => Number.POSITIVE_INFINITY);
  let growth = Number.POSITIVE_INFINITY;
  for (let look = 0; look < LOOKS; look += 1) {
    // The longest first: patterns get quicker after some use.
    for (let at = doublings; at >= 0; at -= 1) {
      const input = made(2 ** at * from, look);
      least[at] = Math.min(
        least[at] ?? 0,
        processorMs(() => run(input)),
      );
      if ((least[doublings] ?? 0) < TOO_SHORT_MS) return 1;
      growth = Math.min(...least.slice(at + 1).map((time, n) => time / (least[at + n] ?? 0)));
      if (growth <= MOST_GROWTH) return growth;
    }
  }
  return growth;
}
