/** Answers as they are printed, on standard output; files or lines from standard input. */
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import type { Job } from './arguments.ts';

const STANDARD_INPUT = 0;

/** One record in the form asked for; in words, records are set apart by a blank line. */
export const printed = <T>(job: Job, record: T, words: (record: T) => string): string =>
  job.json ? JSON.stringify(record) : `${words(record)}\n`;

/** The answer to one page: its record as it will be printed, or why there is none. */
export interface PageAnswer {
  ok: boolean;
  text: string;
}

/** What is said of a page that could not be answered. */
export const failedPage = (job: Job, file: string, error: string): PageAnswer => ({
  ok: false,
  text: printed(job, { file, error }, (record) => `${record.file}: ${record.error}`),
});

/** Writes a line to standard output and waits when its reader is slower, so that nothing piles up. */
export async function write(text: string): Promise<void> {
  if (!process.stdout.write(`${text}\n`)) await once(process.stdout, 'drain');
}

/** The lines of a file that hold something; no path means standard input. */
export const readLines = (path: string | null): string[] =>
  readFileSync(path ?? STANDARD_INPUT, 'utf8')
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '');

export const reason = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
