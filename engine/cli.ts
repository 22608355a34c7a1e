/** The batch command: pages or ingredient lines in, text or JSON lines out. */
import { type Job, readArguments, USAGE, UsageError } from './cli/arguments.ts';

// Loaded late, so that lines need no HTML parser and wrong usage answers at once.
const run = async (job: Job): Promise<number> =>
  job.verb === 'lines'
    ? (await import('./cli/run-lines.ts')).runLines(job)
    : (await import('./cli/run-files.ts')).runFiles(job);

async function main(argv: readonly string[]): Promise<number> {
  try {
    return await run(readArguments(argv));
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    console.error(error instanceof UsageError ? `${message}\n\n${USAGE}` : message);
    return 2;
  }
}

// A reader that has seen enough ('| head') closes the pipe; that is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

process.exitCode = await main(process.argv.slice(2));
