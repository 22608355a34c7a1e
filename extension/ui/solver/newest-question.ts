/** One question at a time: while one is worked out only the newest of the others waits. */

interface Hearer<A, E> {
  onAnswer: (answer: A) => void;
  /** What is known before the answer. */
  onEarly?: (early: E) => void;
}

/** Asks and gets an answer later; calling the returned function makes it and what comes before it go nowhere. */
export type Ask<Q, A, E> = (question: Q, hearer: Hearer<A, E>) => () => void;

interface Asked<Q, A, E> extends Hearer<A, E> {
  question: Q;
  off: boolean;
}

/** `work` never rejects. */
export function newestQuestion<Q, A, E>(
  work: (question: Q, tell: (early: E) => void) => Promise<A>,
): Ask<Q, A, E> {
  let busy = false;
  let waiting: Asked<Q, A, E> | null = null;
  const next = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    while (waiting) {
      const asked: Asked<Q, A, E> = waiting;
      waiting = null;
      if (asked.off) continue;
      const answer = await work(asked.question, (early) => {
        if (!asked.off) asked.onEarly?.(early);
      });
      if (!asked.off) asked.onAnswer(answer);
    }
    busy = false;
  };
  return (question, hearer) => {
    const asked = { question, ...hearer, off: false };
    waiting = asked;
    void next();
    return () => {
      asked.off = true;
    };
  };
}
