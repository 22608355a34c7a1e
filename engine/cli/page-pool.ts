/** Worker threads that answer pages; a page that takes too long or breaks its thread costs only its own answer. */
import { MessageChannel, type MessagePort } from 'node:worker_threads';
import { Tinypool } from 'tinypool';
import type { Food } from '../model.ts';
import type { Job } from './arguments.ts';
import { failedPage, type PageAnswer, reason } from './print.ts';

export interface PageWork {
  job: Job;
  /** The user's own foods. */
  foods: readonly Food[];
}

/** What a worker is given: a file, and where it says that it begins with it. */
export interface PageTask {
  file: string;
  begun: MessagePort;
}

export interface PagePool {
  /** Never rejects. */
  answer(file: string): Promise<PageAnswer>;
  close(): Promise<void>;
}

/** Heap of a worker, MB: own choice; the largest pages seen need a tenth. */
const MOST_MEMORY = 1024;

/**
 * Room for what a page leaves behind at once, MB: own choice. With half of it a tenth of the time goes into moving
 * what is still in use; with twice as much ten thousand pages take 140 MB more than the first thousand.
 */
const YOUNG_MEMORY = 64;

/** A limit that runs from when the worker begins: what it takes to start a thread is no page's fault. */
function limitFrom(seconds: number): { signal: AbortSignal; begun: MessagePort; end: () => void } {
  const { port1, port2 } = new MessageChannel();
  const limit = new AbortController();
  let timer: NodeJS.Timeout | undefined;
  port1.once('message', () => {
    timer = setTimeout(() => limit.abort(), seconds * 1000);
  });
  const end = (): void => {
    clearTimeout(timer);
    port1.close();
  };
  return { signal: limit.signal, begun: port2, end };
}

/** Opens `threads` workers, each of which loads the engine once from the script `worker`. */
export function openPagePool(
  { threads, ...work }: PageWork & { threads: number },
  worker: URL,
): PagePool {
  const { job } = work;
  const pool = new Tinypool({
    filename: worker.href,
    minThreads: threads,
    maxThreads: threads,
    workerData: work,
    resourceLimits: {
      maxOldGenerationSizeMb: MOST_MEMORY,
      maxYoungGenerationSizeMb: YOUNG_MEMORY,
    },
  });
  const answer = async (file: string): Promise<PageAnswer> => {
    const { signal, begun, end } = limitFrom(job.limitSeconds);
    try {
      const task: PageTask = { file, begun };
      return await pool.run(task, { signal, transferList: [begun] });
    } catch (error) {
      const late = `took longer than ${job.limitSeconds} seconds and was given up`;
      return failedPage(job, file, signal.aborted ? late : reason(error));
    } finally {
      end();
    }
  };
  return { answer, close: () => pool.destroy() };
}
