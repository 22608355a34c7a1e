/** What a suite reports of itself, counted: a test that ran and failed is one thing, one that could not run here another. */

export interface Count {
  passed: number;
  failed: number;
  /** Names of tests that this machine cannot run. */
  skipped: readonly string[];
}

export interface Report extends Count {
  failedFiles: readonly string[];
}

interface OneTest {
  fullName: string;
  status: string;
}

interface OneFile {
  name: string;
  status: string;
  assertionResults: readonly OneTest[];
}

const NOT_RUN = ['skipped', 'pending', 'todo', 'disabled'];

/**
 * Counts a report of the runner (JSON). A suite that could not report, or that ended badly without a failed
 * test, counts as one failure; what neither passed nor was skipped by its own words failed.
 */
export function counted(json: string, ended: boolean): Report {
  let files: readonly OneFile[];
  try {
    files = JSON.parse(json).testResults;
  } catch {
    return { passed: 0, failed: 1, skipped: [], failedFiles: [] };
  }
  const tests = files.flatMap(({ assertionResults }) => assertionResults);
  const passed = tests.filter(({ status }) => status === 'passed').length;
  // In a file that failed, what was not run was kept from running.
  const skipped = files
    .filter(({ status }) => status === 'passed')
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => NOT_RUN.includes(status));
  const failed = tests.length - passed - skipped.length;
  return {
    passed,
    failed: ended && tests.length > 0 ? failed : Math.max(1, failed),
    skipped: skipped.map(({ fullName }) => fullName),
    failedFiles: files.filter(({ status }) => status !== 'passed').map(({ name }) => name),
  };
}
