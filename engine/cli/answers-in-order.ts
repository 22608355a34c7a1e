/** Runs work on many things at once and hands out what comes of it in the order of the things. */

/** Answers kept while an earlier one is still awaited: enough for the rest to go on, few enough to hold. */
const MOST_KEPT = 1000;

/**
 * Answers of `work` for each thing, in order; at most `atOnce` run at a time. `work` must not reject.
 * What has been handed out is not kept.
 */
export async function* answersInOrder<Thing, Answer>(
  things: readonly Thing[],
  work: (thing: Thing) => Promise<Answer>,
  atOnce: number,
  mostKept = MOST_KEPT,
): AsyncGenerator<Answer> {
  const ready = new Map<number, Answer>();
  const running = new Set<Promise<void>>();
  let next = 0;
  const start = (at: number, thing: Thing): void => {
    const done = work(thing).then((answer) => {
      ready.set(at, answer);
      running.delete(done);
    });
    running.add(done);
  };
  for (let shown = 0; shown < things.length; shown += 1) {
    for (;;) {
      while (next < things.length && running.size < atOnce && next - shown < mostKept) {
        start(next, things[next] as Thing);
        next += 1;
      }
      if (ready.has(shown)) break;
      await Promise.race(running);
    }
    yield ready.get(shown) as Answer;
    ready.delete(shown);
  }
}
