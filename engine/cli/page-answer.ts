/** The answer to one page: its record as it will be printed, or why there is none. */
import { readFileSync, statSync } from 'node:fs';
import type { Food, Recipe } from '../model.ts';
import { readPage } from '../read/index.ts';
import { adaptText, readText, tallyText } from './answer-text.ts';
import { adaptRecord, readRecord, tallyRecord } from './answers.ts';
import type { Job } from './arguments.ts';
import { decodePage } from './decode-page.ts';
import { parsePage } from './light-document/parse-page.ts';
import { failedPage, type PageAnswer, printed, reason } from './print.ts';

type Found = readonly [Recipe, ...Recipe[]];

function recordText(job: Job, file: string, found: Found, own: readonly Food[]): string {
  const [recipe, ...others] = found;
  if (job.verb === 'read') return printed(job, readRecord(file, recipe, others), readText);
  if (job.verb === 'tally')
    return printed(job, tallyRecord(file, recipe, job.goals, own), tallyText);
  const options = { ownFoods: own, frontier: job.frontier };
  return printed(job, adaptRecord(file, recipe, job.goals, options), adaptText);
}

/** @throws {Error} when the file cannot be read or holds no recipe; the message says which. */
function recipesOf(job: Job, file: string): Found {
  if (!statSync(file).isFile()) throw new Error('is not a file');
  const document = parsePage(decodePage(readFileSync(file), job.charset));
  const result = readPage(document, job.url === null ? {} : { url: job.url });
  if (!result.ok) throw new Error(result.why);
  const [recipe, ...others] = result.recipes;
  if (recipe === undefined) throw new Error('the page holds no recipe');
  return [recipe, ...others];
}

/** Works one page; an error becomes an answer that is not ok. */
export function answerPage(job: Job, file: string, own: readonly Food[]): PageAnswer {
  try {
    return { ok: true, text: recordText(job, file, recipesOf(job, file), own) };
  } catch (error) {
    return failedPage(job, file, reason(error));
  }
}
