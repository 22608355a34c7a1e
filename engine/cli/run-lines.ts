/** The verb that takes ingredient lines. */
import type { Job } from './arguments.ts';
import { print, readLines } from './print.ts';
import { lineText } from './record-text.ts';
import { lineRecord } from './records.ts';

/** Answers each line on standard input; the exit status is always 0. */
export function runLines(job: Job): number {
  for (const line of readLines(null)) print(job, lineRecord(line), lineText);
  return 0;
}
