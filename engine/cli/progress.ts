/** How far a batch is, on one line of a terminal that is written over; nothing elsewhere. */
import type { WriteStream } from 'node:tty';

const EVERY_MS = 200;
const CLEAR_LINE = '\r\u001b[K';

export interface Progress {
  /** One more is done; `failed` of all so far. */
  step(failed: number): void;
  end(): void;
}

/** Shows progress on a stream when it is a terminal; one page needs none. */
export function showProgress(stream: WriteStream, total: number): Progress {
  if (!stream.isTTY || total < 2) return { step: () => {}, end: () => {} };
  const start = performance.now();
  let done = 0;
  let shown = 0;
  return {
    step(failed) {
      done += 1;
      const now = performance.now();
      if (now - shown < EVERY_MS) return;
      shown = now;
      const rate = Math.round((done * 1000) / (now - start));
      const failures = failed === 0 ? '' : `, ${failed} failed`;
      stream.write(`${CLEAR_LINE}${done} of ${total} pages, ${rate} a second${failures}`);
    },
    end: () => void stream.write(CLEAR_LINE),
  };
}
