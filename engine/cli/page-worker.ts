/** What runs in a worker thread: answers one page file after another with the job it was started for. */
import { Tinypool } from 'tinypool';
import { answerPage } from './page-answer.ts';
import type { PageTask, PageWork } from './page-pool.ts';
import type { PageAnswer } from './print.ts';

const { job, foods }: PageWork = Tinypool.workerData;

export default function answer({ file, begun }: PageTask): PageAnswer {
  begun.postMessage(null);
  return answerPage(job, file, foods);
}
