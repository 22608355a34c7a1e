/**
 * The checks of the project in stages, each with its time: all of them, or with the word `quick` those
 * that need less than a minute. Lint and types must pass before any test runs.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';

interface Count {
  passed: number;
  failed: number;
  /** Files that failed at first and passed when run again by themselves. */
  secondLook?: readonly string[];
}

interface Stage {
  name: string;
  /** Nothing after it is worth running when it fails. */
  first: boolean;
  quick: boolean;
  run: () => Count;
}

const folder = mkdtempSync(join(tmpdir(), 'crumbshift-tests-'));

const runs = (command: string, args: readonly string[]): boolean =>
  spawnSync('npx', ['--no-install', command, ...args], { stdio: 'inherit' }).status === 0;

/** A tool that either passes or fails as a whole. */
const check = (command: string, ...args: string[]): Count =>
  runs(command, args) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

interface Report extends Count {
  failedFiles: readonly string[];
}

interface FileResult {
  name: string;
  status: string;
}

/** A suite that could not even report counts as one failure. */
function counted(report: string, ended: boolean): Report {
  try {
    const { numPassedTests, numFailedTests, numTotalTests, testResults } = JSON.parse(
      readFileSync(report, 'utf8'),
    );
    const unrun = numTotalTests - numPassedTests - numFailedTests;
    const failed = numFailedTests + unrun;
    const failedFiles = testResults
      .filter(({ status }: FileResult) => status !== 'passed')
      .map(({ name }: FileResult) => name);
    return { passed: numPassedTests, failed: ended ? failed : Math.max(1, failed), failedFiles };
  } catch {
    return { passed: 0, failed: 1, failedFiles: [] };
  }
}

/** A project of `vitest.config.ts`, or some of its files. */
function suite(project: string, files: readonly string[] = []): Report {
  const report = join(folder, `${project}-${files.length}.json`);
  const ended = runs('vitest', [
    'run',
    '--config=tests/vitest.config.ts',
    `--project=${project}`,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...files,
  ]);
  return counted(report, ended);
}

/** More files than this failing is no matter of a busy machine. Own choice. */
const MOST_AGAIN = 2;

/**
 * Browsers are driven by the clock, and a machine that others use can be slow for a moment: a file or two that
 * failed are run once more, which the summary says; what fails again has failed.
 */
function browserSuite(): Count {
  const first = suite('browser');
  const files = first.failedFiles;
  if (first.failed === 0 || files.length === 0 || files.length > MOST_AGAIN) return first;
  console.log(`\n== browser, a second look at ${files.join(', ')}`);
  const again = suite('browser', files);
  if (again.failed > 0 || again.passed < first.failed) return first;
  return { passed: first.passed + first.failed, failed: 0, secondLook: files };
}

const STAGES: readonly Stage[] = [
  { name: 'lint', first: true, quick: true, run: () => check('biome', 'check', '.') },
  { name: 'types', first: true, quick: true, run: () => check('tsc', '--noEmit') },
  { name: 'unused', first: false, quick: false, run: () => check('knip') },
  { name: 'unit', first: false, quick: true, run: () => suite('unit') },
  { name: 'thorough', first: false, quick: false, run: () => suite('thorough') },
  { name: 'browser', first: false, quick: false, run: browserSuite },
];

const quickOnly = process.argv[2] === 'quick';
const total: Count = { passed: 0, failed: 0 };
const summary: string[] = [];
for (const stage of STAGES.filter(({ quick }) => quick || !quickOnly)) {
  console.log(`\n== ${stage.name}`);
  const start = performance.now();
  const { passed, failed, secondLook = [] } = stage.run();
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const counts = `${stage.name.padEnd(10)}${seconds.padStart(7)} s  ${passed} passed, ${failed} failed`;
  const again = secondLook.map((file) => ` (at a second look: ${relative('.', file)})`).join('');
  const line = `${counts}${again}`;
  console.log(`== ${line}`);
  summary.push(line);
  total.passed += passed;
  total.failed += failed;
  if (failed > 0 && stage.first) {
    summary.push(`stopped here: mend ${stage.name} first`);
    break;
  }
}
rmSync(folder, { recursive: true, force: true });

console.log(`\n${summary.join('\n')}\n\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;
