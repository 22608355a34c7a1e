/** A minute's worth of damaged input; `npm run fuzz` tries a hundred times as much. */
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { KINDS } from './kinds.ts';

const seed = Number(process.env.CRUMBSHIFT_SEED ?? Date.now() % 2 ** 31);

describe(`damaged input, CRUMBSHIFT_SEED=${seed}`, () => {
  it.each(KINDS)(
    '$name: nothing throws, hangs, or weighs what cannot be',
    async (kind) => {
      await fc.assert(kind.property, { numRuns: kind.cases, seed });
    },
    180_000,
  );
});
