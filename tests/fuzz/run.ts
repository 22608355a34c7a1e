/**
 * The long run: 200,000 damaged inputs, or the count named. Prints the seed, the cases of each kind and the
 * largest heap seen; exits 1 when something throws, takes over 2 s or weighs what cannot be. Its command gives
 * it no more than 300 MB to keep things in: whatever holds on to more ends the run with the engine's own error.
 */
import fc from 'fast-check';
import { KINDS } from './kinds.ts';

const LONG = 200_000;

const wanted = Number(process.argv[2] ?? LONG);
const seed = Number(process.env.CRUMBSHIFT_SEED ?? Date.now() % 2 ** 31);
const all = KINDS.reduce((sum, { cases }) => sum + cases, 0);
let largest = 0;
const watch = setInterval(() => {
  largest = Math.max(largest, process.memoryUsage().heapUsed / 2 ** 20);
}, 500);

console.log(`CRUMBSHIFT_SEED=${seed}`);
for (const { name, cases, property } of KINDS) {
  const numRuns = Math.ceil((cases * wanted) / all);
  const result = await fc.check(property, { numRuns, seed });
  console.log(`${name}: ${result.numRuns} tried, ${result.failed ? 'FAILED' : 'all well'}`);
  if (!result.failed) continue;
  console.log(fc.defaultReportMessage(result));
  process.exitCode = 1;
}
clearInterval(watch);
console.log(`largest heap ${largest.toFixed(0)} MB, with what was not yet collected`);
