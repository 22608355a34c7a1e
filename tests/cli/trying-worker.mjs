/** A worker for tests: never ends, breaks, fails or answers, as the file's name says. */
const WAYS = {
  'never-ends': () => {
    for (;;);
  },
  breaks: () => {
    const kept = [];
    for (;;) kept.push(new Array(1_000_000).fill(kept.length));
  },
  fails: () => {
    throw new Error('a failure of its own');
  },
};

// Longer to start than a page may take.
await new Promise((done) => setTimeout(done, 3500));

export default ({ file, begun }) => {
  begun.postMessage(null);
  WAYS[file]?.();
  return { ok: true, text: `answer to ${file}` };
};
