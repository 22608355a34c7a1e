/** The verbs that take pages: many at once in worker threads, answers in the order of the files. */

import type { Food } from '../model.ts';
import { answersInOrder } from './answers-in-order.ts';
import type { Job } from './arguments.ts';
import { buildWorker } from './built-worker.ts';
import { openPagePool } from './page-pool.ts';
import { readLines, write } from './print.ts';
import { showProgress } from './progress.ts';

const fileList = (job: Job): string[] =>
  job.filesFrom === null ? job.files : readLines(job.filesFrom === '-' ? null : job.filesFrom);

async function ownFoods(job: Job): Promise<Food[]> {
  if (job.ownFoods === null) return [];
  // Loaded late, as most jobs have none.
  const { readOwnFoods } = await import('./own-foods-file.ts');
  const { foods, warnings } = readOwnFoods(job.ownFoods);
  for (const warning of warnings) console.error(warning);
  return foods;
}

/**
 * Works every file of the job; the exit status is 1 when any of them failed, whose line says why.
 * @throws {Error} when the list of files or the file of own foods cannot be read.
 */
export async function runFiles(job: Job): Promise<number> {
  const foods = await ownFoods(job);
  const files = fileList(job);
  const threads = Math.max(1, Math.min(job.threads, files.length));
  const worker = await buildWorker();
  const pool = openPagePool({ job, foods, threads }, worker.url);
  const progress = showProgress(process.stderr, files.length);
  let failed = 0;
  try {
    for await (const { ok, text } of answersInOrder(files, pool.answer, threads)) {
      if (!ok) failed += 1;
      await write(text);
      progress.step(failed);
    }
  } finally {
    progress.end();
    await pool.close();
    worker.remove();
  }
  return failed === 0 ? 0 : 1;
}
