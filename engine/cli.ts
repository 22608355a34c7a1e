/** The batch command: pages or ingredient lines in, text or JSON lines out. */
import { readFileSync } from 'node:fs';
import { type Job, readArguments, USAGE, UsageError } from './cli/arguments.ts';
import { openPageFile } from './cli/page-file.ts';
import { adaptRecord, lineRecord, readRecord, tallyRecord } from './cli/records.ts';
import { adaptText, lineText, readText, tallyText } from './cli/text.ts';
import type { Recipe } from './model.ts';
import { readPage } from './read/index.ts';

const STANDARD_INPUT = 0;

const linesOf = (text: string): string[] =>
  text.split(/\r?\n/).filter((line) => line.trim() !== '');

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** One record in the form asked for; a page after another is set apart by a blank line. */
function print<T>(job: Job, record: T, words: (record: T) => string): void {
  console.log(job.json ? JSON.stringify(record) : `${words(record)}\n`);
}

function answer(job: Job, file: string, recipe: Recipe, others: readonly Recipe[]): void {
  if (job.verb === 'read') print(job, readRecord(file, recipe, others), readText);
  else if (job.verb === 'tally') print(job, tallyRecord(file, recipe, job.goals), tallyText);
  else print(job, adaptRecord(file, recipe, job.goals), adaptText);
}

/** Works one file and says whether it went well; a failure prints its own line. */
function runFile(job: Job, file: string): boolean {
  try {
    const document = openPageFile(file, job.url);
    const result = readPage(document, job.url === null ? {} : { url: job.url });
    const [recipe, ...others] = result.ok ? result.recipes : [];
    if (!recipe) throw new Error(result.ok ? 'the page holds no recipe' : result.why);
    answer(job, file, recipe, others);
    return true;
  } catch (error) {
    print(job, { file, error: reason(error) }, (record) => `${record.file}: ${record.error}`);
    return false;
  }
}

const fileList = (job: Job): string[] =>
  job.filesFrom === null
    ? job.files
    : linesOf(readFileSync(job.filesFrom === '-' ? STANDARD_INPUT : job.filesFrom, 'utf8'));

function runLines(job: Job): number {
  for (const line of linesOf(readFileSync(STANDARD_INPUT, 'utf8'))) {
    print(job, lineRecord(line), lineText);
  }
  return 0;
}

function runFiles(job: Job): number {
  const failed = fileList(job).filter((file) => !runFile(job, file));
  return failed.length === 0 ? 0 : 1;
}

function main(argv: readonly string[]): number {
  try {
    const job = readArguments(argv);
    return job.verb === 'lines' ? runLines(job) : runFiles(job);
  } catch (error) {
    console.error(error instanceof UsageError ? `${error.message}\n\n${USAGE}` : reason(error));
    return 2;
  }
}

process.exitCode = main(process.argv.slice(2));
