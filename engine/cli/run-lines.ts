/** The verb that takes ingredient lines. */

import { lineText } from './answer-text.ts';
import { lineRecord } from './answers.ts';
import type { Job } from './arguments.ts';
import { print, readLines } from './print.ts';

/** Answers each line on standard input; the exit status is always 0. */
export function runLines(job: Job): number {
  for (const line of readLines(null)) print(job, lineRecord(line), lineText);
  return 0;
}
