/** The line reader's code stays small; its words are data and are counted apart. */
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { expect, it } from 'vitest';

/** Bytes of the minified bundle without the language data: own choice. */
const BOUND = 42 * 1024;

/** Bytes of the reader minified into one module, language data left out. */
async function codeSize(): Promise<number> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: 'esbuild',
      rollupOptions: {
        external: [/\.json$/],
        preserveEntrySignatures: 'strict',
        input: fileURLToPath(new URL('../../engine/parse/index.ts', import.meta.url)),
      },
    },
  });
  const outputs = Array.isArray(built) ? built : [built];
  return outputs
    .flatMap((output) => ('output' in output ? output.output : []))
    .reduce((sum, part) => sum + (part.type === 'chunk' ? ownCode(part.code).length : 0), 0);
}

/** The lines that name the data files go with the data: another language adds no code. */
const ownCode = (code: string): string => code.replace(/import \w+ from ?"[^"]+\.json"[^;]*;/g, '');

it('is less than 42 KB of minified code', async () => {
  const size = await codeSize();
  expect(size).toBeGreaterThan(10_000);
  expect(size).toBeLessThan(BOUND);
});
