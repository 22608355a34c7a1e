/** The verbs that take pages. */
import type { Food, Recipe } from '../model.ts';
import { readPage } from '../read/index.ts';
import { adaptText, readText, tallyText } from './answer-text.ts';
import { adaptRecord, readRecord, tallyRecord } from './answers.ts';
import type { Job } from './arguments.ts';
import { readOwnFoods } from './own-foods-file.ts';
import { openPageFile } from './page-file.ts';
import { print, readLines, reason } from './print.ts';

function answer(
  job: Job,
  file: string,
  [recipe, ...others]: readonly [Recipe, ...Recipe[]],
  own: readonly Food[],
): void {
  if (job.verb === 'read') print(job, readRecord(file, recipe, others), readText);
  else if (job.verb === 'tally') print(job, tallyRecord(file, recipe, job.goals, own), tallyText);
  else print(job, adaptRecord(file, recipe, job.goals, own), adaptText);
}

/** Works one file and says whether it went well; a failure prints its own line. */
function runFile(job: Job, file: string, own: readonly Food[]): boolean {
  try {
    const document = openPageFile(file, job);
    const result = readPage(document, job.url === null ? {} : { url: job.url });
    const [recipe, ...others] = result.ok ? result.recipes : [];
    if (!recipe) throw new Error(result.ok ? 'the page holds no recipe' : result.why);
    answer(job, file, [recipe, ...others], own);
    return true;
  } catch (error) {
    print(job, { file, error: reason(error) }, (record) => `${record.file}: ${record.error}`);
    return false;
  }
}

const fileList = (job: Job): string[] =>
  job.filesFrom === null ? job.files : readLines(job.filesFrom === '-' ? null : job.filesFrom);

/**
 * Works every file of the job; the exit status is 1 when any of them failed.
 * @throws {Error} when the list of files or the file of own foods cannot be read.
 */
export function runFiles(job: Job): number {
  const { foods, warnings } = readOwnFoods(job.ownFoods);
  for (const warning of warnings) console.error(warning);
  const failed = fileList(job).filter((file) => !runFile(job, file, foods));
  return failed.length === 0 ? 0 : 1;
}
