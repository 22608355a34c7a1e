/**
 * Every check of the project, one after another: lint, types, unit and published checks, and the
 * built extension in real browsers. Ends with one line that counts them all.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

interface Count {
  passed: number;
  failed: number;
}

const folder = mkdtempSync(join(tmpdir(), 'crumbshift-tests-'));

const runs = (command: string, args: readonly string[]): boolean =>
  spawnSync('npx', ['--no-install', command, ...args], { stdio: 'inherit' }).status === 0;

/** A tool that either passes or fails as a whole. */
function check(name: string, command: string, args: readonly string[]): Count {
  console.log(`\n== ${name}`);
  return runs(command, args) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

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

function suite(project: string): Count {
  console.log(`\n== ${project} tests`);
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

const counts = [
  check('lint', 'biome', ['check', '.']),
  check('types', 'tsc', ['--noEmit']),
  suite('unit'),
  suite('browser'),
];
rmSync(folder, { recursive: true, force: true });

const total = (part: keyof Count): number => counts.reduce((sum, count) => sum + count[part], 0);
console.log(`\n${total('passed')} passed, ${total('failed')} failed`);
process.exitCode = total('failed') === 0 ? 0 : 1;
