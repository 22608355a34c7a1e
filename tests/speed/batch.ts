/**
 * The batch command over ten thousand pages in one process: pages a second of processor time as a share
 * of what parsing the same pages with parse5 alone gives in the same run, and how much memory grows after the first
 * thousand. The pages are the planner's hundred invented recipes, each among as much talk as real pages
 * have (some 120 KB). Exits 1 when a bound is not kept.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { parse } from 'parse5';
import { PASTED } from '../plan/pasted.ts';
import { longPage } from './long-page.ts';

const ROOT = join(import.meta.dirname, '../..');
/** Share of a 400 KB page that makes one of usual length. */
const SHARE = 0.3;
const THREADS = 2;
const FIRST = 1000;
/** MB that a batch may grow after its first thousand pages. */
const MOST_GROWTH = 100;

interface Bound {
  verb: 'read' | 'adapt';
  pages: number;
  /**
   * Pages a second over those that parse5 parses in one thread, at least. Measured on a machine that
   * parses 160 real pages a second: 60 reads and 40 reworks a second are 0.37 and 0.25 of it.
   */
  least: number;
}

const BOUNDS: readonly Bound[] = [
  { verb: 'read', pages: 10_000, least: 0.37 },
  { verb: 'adapt', pages: 3_000, least: 0.25 },
];

/** The pages as files in a folder; half of them have markup. */
function writePages(folder: string): string[] {
  return PASTED.map((dish, at) => {
    const file = join(folder, `${at}.html`);
    writeFileSync(file, longPage(at % 2 === 0, dish, SHARE));
    return file;
  });
}

/** Pages that parse5 alone parses in a second of one processor. */
function parsedPerSecond(files: readonly string[]): number {
  const texts = files.map((file) => readFileSync(file, 'utf8'));
  for (const text of texts) parse(text);
  const start = process.cpuUsage();
  for (const text of texts) parse(text);
  const { user, system } = process.cpuUsage(start);
  return (texts.length * 1_000_000) / (user + system);
}

/** Clock ticks of `/proc` in a second, on every Linux that Node runs on. */
const TICKS = 100;

/** Seconds of processor time that a process has used, over all its threads; null where the system does not say. */
function processorSeconds(pid: number | undefined): number | null {
  try {
    // What follows the name in brackets is counted from the third field on: user and system time are 14 and 15.
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
    return (Number(fields[11]) + Number(fields[12])) / TICKS;
  } catch {
    return null;
  }
}

/** Memory of a process that is in use, MB; null where the system does not say. */
function residentMb(pid: number | undefined): number | null {
  try {
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024;
  } catch {
    return null;
  }
}

interface Batch {
  /** Pages a second after the first thousand, by the clock. */
  byClock: number;
  /** The same had the processors nothing else to do: pages in a second of one, times the threads. */
  rate: number;
  /** Largest memory up to the first thousand pages and after them, MB. */
  before: number;
  after: number;
  answers: number;
}

async function runBatch(verb: string, list: string): Promise<Batch> {
  const child = spawn(
    process.execPath,
    [
      '--import',
      'tsx',
      'engine/cli.ts',
      verb,
      '--json',
      '--jobs',
      `${THREADS}`,
      '--files-from',
      list,
    ],
    { cwd: ROOT, stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const batch: Batch = { byClock: 0, rate: 0, before: 0, after: 0, answers: 0 };
  const now = () => ({ clock: performance.now() / 1000, processor: processorSeconds(child.pid) });
  let first = now();
  let last = first;
  for await (const line of createInterface({ input: child.stdout })) {
    if ('error' in JSON.parse(line)) throw new Error(line);
    batch.answers += 1;
    if (batch.answers % 50 !== 0) continue;
    last = now();
    if (batch.answers === FIRST) first = last;
    const memory = residentMb(child.pid) ?? Number.NaN;
    if (batch.answers <= FIRST) batch.before = Math.max(batch.before, memory);
    else batch.after = Math.max(batch.after, memory);
  }
  const answers = batch.answers - FIRST;
  batch.byClock = answers / (last.clock - first.clock);
  const spent = (last.processor ?? Number.NaN) - (first.processor ?? Number.NaN);
  batch.rate = spent > 0 ? (answers * THREADS) / spent : batch.byClock;
  return batch;
}

const folder = mkdtempSync(join(tmpdir(), 'crumbshift-batch-'));
try {
  const files = writePages(folder);
  const rows = [];
  for (const { verb, pages, least } of BOUNDS) {
    const list = join(folder, `${verb}.txt`);
    writeFileSync(
      list,
      Array.from({ length: pages }, (_, n) => files[n % files.length]).join('\n'),
    );
    const parsed = parsedPerSecond(files);
    const { byClock, rate, before, after, answers } = await runBatch(verb, list);
    const share = rate / parsed;
    const kept = answers === pages && share >= least && !(after - before > MOST_GROWTH);
    if (!kept) process.exitCode = 1;
    rows.push({
      verb,
      pages: answers,
      'pages a second by the clock': Number(byClock.toFixed(1)),
      'on two free cores': Number(rate.toFixed(1)),
      'parse5 on one': Number(parsed.toFixed(1)),
      ratio: Number(share.toFixed(2)),
      'at least': least,
      'MB up to 1,000': Math.round(before),
      'MB after': Math.round(after),
      kept,
    });
  }
  console.table(rows);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
