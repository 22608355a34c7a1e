/** Answers on standard output, and files or lines from standard input. */
import { readFileSync } from 'node:fs';
import type { Job } from './arguments.ts';

const STANDARD_INPUT = 0;

/** One record in the form asked for; in words, records are set apart by a blank line. */
export function print<T>(job: Job, record: T, words: (record: T) => string): void {
  console.log(job.json ? JSON.stringify(record) : `${words(record)}\n`);
}

/** The lines of a file that hold something; no path means standard input. */
export const readLines = (path: string | null): string[] =>
  readFileSync(path ?? STANDARD_INPUT, 'utf8')
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '');

export const reason = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
