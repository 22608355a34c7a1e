/** Worker threads that answer pages; a page that takes too long or breaks its thread costs only its own answer. */
import { Tinypool } from 'tinypool';
import type { Food } from '../model.ts';
import type { Job } from './arguments.ts';
import { failedPage, type PageAnswer, reason } from './print.ts';

export interface PageWork {
  job: Job;
  /** The user's own foods. */
  foods: readonly Food[];
}

export interface PagePool {
  /** Never rejects. */
  answer(file: string): Promise<PageAnswer>;
  close(): Promise<void>;
}

/** Heap of a worker, MB: own choice; the largest pages seen need a tenth. */
const MOST_MEMORY = 1024;

const WORKER = new URL('./page-worker-start.mjs', import.meta.url);

/** Opens `threads` workers, each of which loads the engine once; `worker` is another module in tests. */
export function openPagePool(
  { threads, ...work }: PageWork & { threads: number },
  worker: URL = WORKER,
): PagePool {
  const { job } = work;
  const pool = new Tinypool({
    filename: worker.href,
    minThreads: threads,
    maxThreads: threads,
    workerData: work,
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY },
  });
  const answer = async (file: string): Promise<PageAnswer> => {
    const limit = AbortSignal.timeout(job.limitSeconds * 1000);
    try {
      return await pool.run(file, { signal: limit });
    } catch (error) {
      const late = `took longer than ${job.limitSeconds} seconds and was given up`;
      return failedPage(job, file, limit.aborted ? late : reason(error));
    }
  };
  return { answer, close: () => pool.destroy() };
}
