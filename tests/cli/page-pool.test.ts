/** One bad page costs its own answer and nothing else. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answersInOrder } from '../../engine/cli/answers-in-order.ts';
import { readArguments } from '../../engine/cli/arguments.ts';
import { openPagePool, type PagePool } from '../../engine/cli/page-pool.ts';

const poolOf = (limit: string): PagePool => {
  const job = readArguments(['read', 'x.html', '--json', '--limit', limit]);
  const worker = new URL('./trying-worker.mjs', import.meta.url);
  return openPagePool({ job, foods: [], threads: 2 }, worker);
};

let pool: PagePool;
beforeAll(() => {
  pool = poolOf('3');
});
afterAll(() => pool.close());

describe('a pool of workers', () => {
  it('gives up a page that never ends, says so, and goes on; starting a thread counts for no page', async () => {
    const files = ['one', 'never-ends', 'two', 'three', 'four'];
    const answers: string[] = [];
    for await (const { ok, text } of answersInOrder(files, pool.answer, 2))
      answers.push(ok ? text : JSON.parse(text).error);
    expect(answers).toEqual([
      'answer to one',
      'took longer than 3 seconds and was given up',
      'answer to two',
      'answer to three',
      'answer to four',
    ]);
  });

  it('outlives a page that takes all the memory', async () => {
    const patient = poolOf('60');
    const { ok, text } = await patient.answer('breaks');
    expect(ok).toBe(false);
    expect(JSON.parse(text).error).toMatch(/memory/);
    expect(await patient.answer('after')).toEqual({ ok: true, text: 'answer to after' });
    await patient.close();
  }, 90_000);

  it('says what failed in a page and uses the thread again', async () => {
    const { ok, text } = await pool.answer('fails');
    expect(ok).toBe(false);
    expect(JSON.parse(text)).toEqual({ file: 'fails', error: 'a failure of its own' });
    expect(await pool.answer('after')).toEqual({ ok: true, text: 'answer to after' });
  });
});

describe('answers in order', () => {
  const later = (ms: number) => new Promise((done) => setTimeout(done, ms));

  it('come in the order of the things, whichever is done first', async () => {
    const things = [30, 1, 20, 2, 10, 0];
    const answers: number[] = [];
    const work = (ms: number) => later(ms).then(() => ms);
    for await (const answer of answersInOrder(things, work, 3)) answers.push(answer);
    expect(answers).toEqual(things);
  });

  it('never run more at once than allowed, nor run ahead without end', async () => {
    let running = 0;
    let most = 0;
    let started = 0;
    let shown = 0;
    let ahead = 0;
    const work = async (thing: number) => {
      running += 1;
      started += 1;
      most = Math.max(most, running);
      ahead = Math.max(ahead, started - shown);
      await later(thing === 0 ? 40 : 0);
      running -= 1;
      return thing;
    };
    const things = Array.from({ length: 200 }, (_, at) => at);
    for await (const _ of answersInOrder(things, work, 4, 20)) shown += 1;
    expect(shown).toBe(200);
    expect(most).toBe(4);
    expect(ahead).toBeLessThanOrEqual(20);
    expect(ahead).toBeGreaterThan(10);
  });

  it('are none for no things', async () => {
    for await (const _ of answersInOrder([], async () => 1, 2)) expect.fail('an answer');
  });
});
