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

export default (file) => {
  WAYS[file]?.();
  return { ok: true, text: `answer to ${file}` };
};
