/** What runs in a worker thread: answers one page file after another with the job it was started for. */
import { Tinypool } from 'tinypool';
import { answerPage } from './page-answer.ts';
import type { PageWork } from './page-pool.ts';
import type { PageAnswer } from './print.ts';

const { job, foods }: PageWork = Tinypool.workerData;

export const answer = (file: string): PageAnswer => answerPage(job, file, foods);
