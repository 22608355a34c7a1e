/**
 * The checks of the project in stages, each with its time: all of them, or with the word `quick` those
 * that need less than a minute. Lint and types must pass before any test runs.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { type Count, counted, type Report } from './report.ts';

interface StageCount extends Count {
  /** Files that failed at first and passed when run again by themselves. */
  secondLook?: readonly string[];
}

interface Stage {
  name: string;
  /** Nothing after it is worth running when it fails. */
  first: boolean;
  quick: boolean;
  run: () => StageCount;
}

const folder = mkdtempSync(join(tmpdir(), 'crumbshift-tests-'));

const runs = (command: string, args: readonly string[]): boolean =>
  spawnSync('npx', ['--no-install', command, ...args], { stdio: 'inherit' }).status === 0;

/** A tool that either passes or fails as a whole. */
const check = (command: string, ...args: string[]): Count =>
  runs(command, args)
    ? { passed: 1, failed: 0, skipped: [] }
    : { passed: 0, failed: 1, skipped: [] };

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
  return counted(existsSync(report) ? readFileSync(report, 'utf8') : '', ended);
}

/** More files than this failing is no matter of a busy machine. Own choice. */
const MOST_AGAIN = 2;

/**
 * Browsers are driven by the clock, and a machine that others use can be slow for a moment: a file or two that
 * failed are run once more, which the summary says; what fails again has failed.
 */
function browserSuite(): StageCount {
  const first = suite('browser');
  const files = first.failedFiles;
  if (first.failed === 0 || files.length === 0 || files.length > MOST_AGAIN) return first;
  console.log(`\n== browser, a second look at ${files.join(', ')}`);
  const again = suite('browser', files);
  if (again.failed > 0 || again.passed < first.failed) return first;
  return { ...first, passed: first.passed + first.failed, failed: 0, secondLook: files };
}

const STAGES: readonly Stage[] = [
  { name: 'lint', first: true, quick: true, run: () => check('biome', 'check', '.') },
  { name: 'types', first: true, quick: true, run: () => check('tsc', '--noEmit') },
  { name: 'unused', first: false, quick: false, run: () => check('knip') },
  { name: 'unit', first: false, quick: true, run: () => suite('unit') },
  { name: 'thorough', first: false, quick: false, run: () => suite('thorough') },
  {
    name: 'packages',
    first: false,
    quick: false,
    run: () => check('tsx', 'tests/release/check.ts', 'packages'),
  },
  { name: 'browser', first: false, quick: false, run: browserSuite },
];

const quickOnly = process.argv[2] === 'quick';
const total = { passed: 0, failed: 0, skipped: 0 };
const summary: string[] = [];
for (const stage of STAGES.filter(({ quick }) => quick || !quickOnly)) {
  console.log(`\n== ${stage.name}`);
  const start = performance.now();
  const { passed, failed, skipped, secondLook = [] } = stage.run();
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const counts = `${stage.name.padEnd(10)}${seconds.padStart(7)} s  ${passed} passed, ${failed} failed`;
  const again = secondLook.map((file) => ` (at a second look: ${relative('.', file)})`).join('');
  const apart = skipped.map((test) => ` (cannot run here: ${test})`).join('');
  const line = `${counts}${again}${apart}`;
  console.log(`== ${line}`);
  summary.push(line);
  total.passed += passed;
  total.failed += failed;
  total.skipped += skipped.length;
  if (failed > 0 && stage.first) {
    summary.push(`stopped here: mend ${stage.name} first`);
    break;
  }
}
rmSync(folder, { recursive: true, force: true });

const left = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`\n${summary.join('\n')}\n\n${total.passed} passed, ${total.failed} failed${left}`);
process.exitCode = total.failed === 0 ? 0 : 1;
