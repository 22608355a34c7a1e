/** One question at a time: while one is worked out only the newest of the others waits. */

/** Asks and gets an answer later; calling the returned function makes the answer go nowhere. */
export type Ask<Q, A> = (question: Q, onAnswer: (answer: A) => void) => () => void;

interface Asked<Q, A> {
  question: Q;
  onAnswer: (answer: A) => void;
  off: boolean;
}

/** `work` never rejects. */
export function newestQuestion<Q, A>(work: (question: Q) => Promise<A>): Ask<Q, A> {
  let busy = false;
  let waiting: Asked<Q, A> | null = null;
  const next = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    while (waiting) {
      const asked: Asked<Q, A> = waiting;
      waiting = null;
      if (asked.off) continue;
      const answer = await work(asked.question);
      if (!asked.off) asked.onAnswer(answer);
    }
    busy = false;
  };
  return (question, onAnswer) => {
    const asked = { question, onAnswer, off: false };
    waiting = asked;
    void next();
    return () => {
      asked.off = true;
    };
  };
}
