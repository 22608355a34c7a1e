/** What the command line says of a demo page: the extension must show the same. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect } from 'vitest';
import { DEMO_PAGES, ROOT } from '../places.ts';
import { type PopupWords, terminalText } from './popup-words.ts';

export interface CommandLineResult {
  title: string;
  servings: number;
  before: Record<string, number | null>;
  after: Record<string, number | null>;
  swaps: { from: { food: string; grams: number } | null; to: { food: string; grams: number }[] }[];
}

/** The `adapt` record of a demo page. @throws {Error} when the command fails. */
export function adaptByCommandLine(page: string): CommandLineResult {
  const run = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'engine/cli.ts', 'adapt', '--json', join(DEMO_PAGES, page)],
    { cwd: ROOT, encoding: 'utf8' },
  );
  if (run.status !== 0) throw new Error(`the command line failed: ${run.stderr}${run.stdout}`);
  return JSON.parse(run.stdout.split('\n')[0] ?? '');
}

const rounded = (value: number): string => String(Math.round(value * 10) / 10);

/** Net carbs before the rework as the verdict's sentence writes them: whole from 20 on. */
export function shownBefore(value: number | null | undefined): string {
  if (typeof value !== 'number') throw new Error('the command line gives no figure');
  return value >= 19.95 ? value.toFixed(0) : rounded(value);
}

/** Net carbs after it: at most one decimal, in grams. */
export function shownGrams(value: number | null | undefined): string {
  if (typeof value !== 'number') throw new Error('the command line gives no figure');
  return `${rounded(value)} g`;
}

/** What `npm start` prints of the popup has each part, and the command line's figures. */
export function expectInTerminal(words: PopupWords, said: CommandLineResult): void {
  const text = terminalText(words);
  const lines = text.split('\n');
  expect(lines[0]).toBe(said.title);
  expect(lines[1]).toMatch(
    /^(Probably fits|Fits|Fits, not all counted|Cannot be told|Too much)\. \S/,
  );
  expect(lines[2]).toBe(
    `${lines[2]?.split(' has ')[0]} has about ${shownGrams(said.after.netCarbsG)}, it was ${shownBefore(said.before.netCarbsG)}.`,
  );
  const doing = lines.slice(lines.indexOf('What you do') + 1);
  expect(doing[0]).toMatch(/^ {2}[\d.]+ g {2}\p{L}+/u);
  expect(lines.find((line) => line.startsWith('net carbs'))).toMatch(/\d\.\d.* \d+\.\d/);
}
