/**
 * The checks of the project in stages, each with its time: all of them, or with the word `quick` those
 * that need less than a minute. Lint and types must pass before any test runs.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

interface Count {
  passed: number;
  failed: number;
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

/** A suite that could not even report counts as one failure. */
function counted(report: string, ended: boolean): Count {
  try {
    const { numPassedTests, numFailedTests, numTotalTests } = JSON.parse(
      readFileSync(report, 'utf8'),
    );
    const unrun = numTotalTests - numPassedTests - numFailedTests;
    const failed = numFailedTests + unrun;
    return { passed: numPassedTests, failed: ended ? failed : Math.max(1, failed) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

/** A project of `vitest.config.ts`. */
function suite(project: string): Count {
  const report = join(folder, `${project}.json`);
  const ended = runs('vitest', [
    'run',
    '--config=tests/vitest.config.ts',
    `--project=${project}`,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  return counted(report, ended);
}

const STAGES: readonly Stage[] = [
  { name: 'lint', first: true, quick: true, run: () => check('biome', 'check', '.') },
  { name: 'types', first: true, quick: true, run: () => check('tsc', '--noEmit') },
  { name: 'unused', first: false, quick: false, run: () => check('knip') },
  { name: 'unit', first: false, quick: true, run: () => suite('unit') },
  { name: 'thorough', first: false, quick: false, run: () => suite('thorough') },
  { name: 'browser', first: false, quick: false, run: () => suite('browser') },
];

const quickOnly = process.argv[2] === 'quick';
const total: Count = { passed: 0, failed: 0 };
const summary: string[] = [];
for (const stage of STAGES.filter(({ quick }) => quick || !quickOnly)) {
  console.log(`\n== ${stage.name}`);
  const start = performance.now();
  const { passed, failed } = stage.run();
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const line = `${stage.name.padEnd(10)}${seconds.padStart(7)} s  ${passed} passed, ${failed} failed`;
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
