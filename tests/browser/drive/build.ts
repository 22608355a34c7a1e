/** Builds the extension for both browsers when a source is newer than the build. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { CHROMIUM_BUILD, FIREFOX_BUILD, ROOT } from './places.ts';

const SOURCES = ['engine', 'extension', 'wxt.config.ts', 'package-lock.json'];

function newest(path: string): number {
  const own = statSync(path);
  if (!own.isDirectory()) return own.mtimeMs;
  return readdirSync(path).reduce((late, name) => Math.max(late, newest(join(path, name))), 0);
}

function isFresh(build: string): boolean {
  const manifest = join(build, 'manifest.json');
  if (!existsSync(manifest)) return false;
  const sources = SOURCES.map((name) => newest(join(ROOT, name)));
  return statSync(manifest).mtimeMs > Math.max(...sources);
}

function build(folder: string, args: readonly string[]): void {
  if (isFresh(folder)) return;
  const tool = join(ROOT, 'node_modules/wxt/bin/wxt.mjs');
  const run = spawnSync(process.execPath, [tool, 'build', ...args], {
    cwd: ROOT,
    encoding: 'utf8',
    // A test runner's own mode would make this a test build.
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (run.status !== 0) throw new Error(`The build failed:\n${run.stdout}\n${run.stderr}`);
}

/** Chromium's build alone, fresh. @throws {Error} with the build tool's words. */
export const buildChromium = (): void => build(CHROMIUM_BUILD, []);

/** Both builds, fresh. @throws {Error} with the build tool's words. */
export function buildBoth(): void {
  build(CHROMIUM_BUILD, []);
  build(FIREFOX_BUILD, ['-b', 'firefox']);
}
