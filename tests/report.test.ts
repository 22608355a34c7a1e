import { describe, expect, it } from 'vitest';
import { counted } from './report.ts';

const test = (fullName: string, status: string) => ({ fullName, status });
const file = (name: string, status: string, ...assertionResults: object[]) => ({
  name,
  status,
  assertionResults,
});
const report = (...testResults: object[]) => JSON.stringify({ testResults });

describe('the count of a suite', () => {
  it('keeps a test that cannot run here apart from one that failed, by name', () => {
    const json = report(
      file('a', 'passed', test('one', 'passed'), test('needs root', 'skipped')),
      file('b', 'failed', test('two', 'failed')),
    );
    expect(counted(json, false)).toEqual({
      passed: 1,
      failed: 1,
      skipped: ['needs root'],
      failedFiles: ['b'],
    });
  });

  it('passes a suite whose only unrun tests skipped themselves', () => {
    const json = report(file('a', 'passed', test('one', 'passed'), test('needs root', 'pending')));
    expect(counted(json, true)).toMatchObject({ passed: 1, failed: 0, skipped: ['needs root'] });
  });

  it('fails a suite that ended badly, that ran nothing, or that left no report', () => {
    const good = report(file('a', 'passed', test('one', 'passed')));
    expect(counted(good, false).failed).toBe(1);
    expect(counted(report(), true).failed).toBe(1);
    expect(counted('{"testRes', true)).toMatchObject({ passed: 0, failed: 1 });
  });

  it('fails what a failed preparation kept from running', () => {
    const json = report(file('a', 'failed', test('one', 'skipped'), test('two', 'skipped')));
    expect(counted(json, false)).toMatchObject({ passed: 0, failed: 2, skipped: [] });
  });

  it('fails what has a status it does not know', () => {
    expect(counted(report(file('a', 'passed', test('one', 'odd'))), true).failed).toBe(1);
  });
});
