/**
 * `npm run release`: packs the extension for both stores and looks at what was packed. The packages keep
 * within their size, the sources package holds the tree and nothing else, a build from it gives the same
 * bytes twice over, and the add-on store's own linter finds no error and no warning of ours. With the word
 * `packages` the linter, which has to be fetched, is left out; that is what `npm test` runs.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { zipEntries } from './zip-entries.ts';

const ROOT = join(import.meta.dirname, '../..');
const MOST_PACKAGE = 2_000_000;
/** Fetched for this run alone: it brings a whole other linter with it, which no other command needs. */
const LINTER = 'addons-linter@10.14.0';
/** The view library's own way to set markup, which nothing here uses; `trusted-types 'none'` forbids it as well. */
const NOT_OURS = 'UNSAFE_VAR_ASSIGNMENT';
/** It has one such place; a second one would be ours. */
const MOST_THEIRS = 1;

const { name, version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
const packed = (kind: string): string => join(ROOT, '.output', `${name}-${version}-${kind}.zip`);

let faults = 0;
function tell(what: string, found: readonly string[]): void {
  faults += found.length;
  console.log(`${found.length === 0 ? 'good ' : 'FAULT'} ${what}`);
  for (const one of found) console.log(`      ${one}`);
}

/** @throws {Error} with what the command said. */
function run(command: string, args: readonly string[], cwd = ROOT): string {
  const done = spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    maxBuffer: 1e8,
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (done.status !== 0) throw new Error(`${command} ${args[0]}: ${done.stdout}${done.stderr}`);
  return done.stdout;
}

const wxt = (args: readonly string[], cwd = ROOT) =>
  run(process.execPath, [join(cwd, 'node_modules/wxt/bin/wxt.mjs'), ...args], cwd);

const hash = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

function sizes(): void {
  for (const kind of ['chrome', 'firefox']) {
    const size = readFileSync(packed(kind)).length;
    const found = size > MOST_PACKAGE ? [`${size} bytes`] : [];
    tell(`the package for ${kind} has ${(size / 1e6).toFixed(2)} of at most 2 MB`, found);
  }
}

function sourcesHoldTheTree(): void {
  const tree = new Set(run('git', ['ls-files']).split('\n'));
  const names = zipEntries(readFileSync(packed('sources'))).map((entry) => entry.name);
  const foreign = names.filter((one) => !tree.has(one));
  const lacking = [...tree].filter(
    (one) => /^(engine|extension|package|wxt\.config|tsconfig)/.test(one) && !names.includes(one),
  );
  tell(`the sources package holds ${names.length} files of the tree and no other`, foreign);
  tell('the sources package lacks nothing that a build needs', lacking);
}

/** Files of a build by their path, with a hash each. */
function hashesIn(folder: string): Map<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  return new Map(files.map((file) => [relative(folder, file), hash(readFileSync(file))]));
}

/** Unpacks the sources elsewhere, with the packages that the lock file names, and builds. */
function builtFromSources(): Map<string, string> {
  const folder = mkdtempSync(join(tmpdir(), 'crumbshift-sources-'));
  try {
    for (const { name: path, bytes } of zipEntries(readFileSync(packed('sources')))) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), bytes);
    }
    symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
    wxt(['prepare'], folder);
    wxt(['build', '-b', 'firefox'], folder);
    return hashesIn(join(folder, '.output/firefox-mv3'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function differences(one: Map<string, string>, other: Map<string, string>): string[] {
  return [...new Set([...one.keys(), ...other.keys()])].filter(
    (path) => one.get(path) !== other.get(path),
  );
}

function sameBytesTwice(): void {
  const entries = zipEntries(readFileSync(packed('firefox')));
  const shipped = new Map(entries.map((entry) => [entry.name, hash(entry.bytes)]));
  for (const round of ['first', 'second'])
    tell(
      `the ${round} build from the sources package has the bytes of the Firefox package`,
      differences(shipped, builtFromSources()),
    );
}

interface Finding {
  code: string;
  message: string;
  file?: string;
}

function linted(): void {
  const output = run('npx', ['--yes', LINTER, '--output', 'json', packed('firefox')]);
  const { errors, warnings, notices } = JSON.parse(output) as Record<string, Finding[]>;
  const told = (all: Finding[] = []) => all.map((one) => `${one.code} ${one.file}: ${one.message}`);
  const theirs = (warnings ?? []).filter(({ code }) => code === NOT_OURS).slice(0, MOST_THEIRS);
  const ours = (warnings ?? []).filter((one) => !theirs.includes(one));
  tell(`${LINTER}: no error`, told(errors));
  tell(`${LINTER}: no warning of ours (${theirs.length} of the view library)`, told(ours));
  console.log(`      ${notices?.length ?? 0} notices`);
}

wxt(['zip']);
wxt(['zip', '-b', 'firefox']);
sizes();
sourcesHoldTheTree();
sameBytesTwice();
if (process.argv[2] !== 'packages') linted();
process.exitCode = faults === 0 ? 0 : 1;
