/**
 * The worker's modules as one script: a thread that finds and translates each of some hundred by itself takes
 * seconds to start.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export interface BuiltWorker {
  url: URL;
  /** Takes the script off the disk. */
  remove(): void;
}

const MODULE = fileURLToPath(new URL('./page-worker.ts', import.meta.url));

/** @throws {Error} when it cannot be built, or written to the system's folder for such files. */
export async function buildWorker(): Promise<BuiltWorker> {
  const folder = mkdtempSync(join(tmpdir(), 'crumbshift-worker-'));
  const remove = (): void => rmSync(folder, { recursive: true, force: true });
  const outfile = join(folder, 'page-worker.mjs');
  try {
    await build({
      entryPoints: [MODULE],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      logLevel: 'error',
    });
  } catch (error) {
    remove();
    throw error;
  }
  return { url: pathToFileURL(outfile), remove };
}
