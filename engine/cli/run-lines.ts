/** The verb that takes ingredient lines. */
import { lineText } from './answer-text.ts';
import { lineRecord } from './answers.ts';
import type { Job } from './arguments.ts';
import { printed, readLines, write } from './print.ts';

/** Answers each line on standard input; the exit status is always 0. */
export async function runLines(job: Job): Promise<number> {
  for (const line of readLines(null)) await write(printed(job, lineRecord(line), lineText));
  return 0;
}
