import { join } from 'node:path';
import type { Plugin } from 'vite';
import { defineConfig } from 'wxt';
import { foodTable } from './engine/foods/index.ts';
import { keysOf } from './engine/match/name-keys.ts';

/** No connection of any kind, and no string ever becomes markup or script (Trusted Types). */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'none'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
  // The worker's address, the only script address that pages make.
  'trusted-types solver',
].join('; ');

const FIREFOX = {
  gecko: {
    id: 'crumbshift@crumbshift.invalid',
    strict_min_version: '142.0',
    data_collection_permissions: { required: ['none' as const] },
  },
};

const SOLVER = join(import.meta.dirname, 'extension/ui/solver');

/** Builds the worker with the pages, from chunks they share, and tells them its address. */
const solverWorker = (): Plugin => {
  let worker = '';
  return {
    name: 'solver-worker',
    buildStart() {
      const id = join(SOLVER, 'solver-worker.ts');
      worker = this.emitFile({ type: 'chunk', id, name: 'solver' });
    },
    load: (id) =>
      id === join(SOLVER, 'solver-address.ts')
        ? `export const SOLVER_ADDRESS = import.meta.ROLLUP_FILE_URL_${worker};`
        : null,
  };
};

/** Holds ready under which keys the built-in foods' names are looked up, so that no start waits for it. */
const readyKeys = (): Plugin => ({
  name: 'ready-keys',
  load: (id) =>
    id === join(import.meta.dirname, 'engine/match/ready-keys.ts')
      ? `export const READY_KEYS = JSON.parse(${JSON.stringify(JSON.stringify(keysOf(foodTable().foods)))});`
      : null,
});

/** Chunks that the pages share, by what is in them; the shapes are apart because small pages need no more. */
const CHUNKS: readonly (readonly [name: string, path: RegExp])[] = [
  ['checking', /\/node_modules\/zod\//],
  ['database', /\/node_modules\/dexie\//],
  // With the styles of every page, which must come before a page's own.
  [
    'libraries',
    /\/node_modules\/|^\0|\/styles\/(styles|tokens|base|controls|wishes|loaf|recipe|about)\./,
  ],
  ['engine-shapes', /\/engine\/model(\/(?!families|nutrients)|\.ts$)/],
];

/** Modules of the engine do nothing but hold what they export: what a page does not use, it does not load. */
const doesSomething = (id: string): boolean => !/\/engine\//.test(id);

/** Parts smaller than this, bytes, join others: to ask for one takes longer than to read it. Own choice. */
const LEAST_CHUNK = 1500;

const chunkOf = (id: string): string | undefined => CHUNKS.find(([, path]) => path.test(id))?.[0];

/** What is left over and shared is cut by the bundler, which would name it after any one component. */
const chunkFile = ({ name }: { name: string }): string =>
  `chunks/${['solver', ...CHUNKS.map(([known]) => known)].includes(name) ? name : 'components'}-[hash].js`;

export default defineConfig({
  srcDir: 'extension',
  publicDir: 'extension/public',
  manifestVersion: 3,
  modules: ['@wxt-dev/webextension-polyfill'],
  manifest: ({ browser, command }) => ({
    default_locale: 'en',
    // What is kept outlives a window, so in private windows, which must leave nothing, it does not run.
    incognito: 'not_allowed',
    name: '__MSG_extensionName__',
    description: '__MSG_extensionDescription__',
    permissions: ['activeTab', 'contextMenus', 'scripting', 'storage', 'unlimitedStorage'],
    // Asked for only when the user switches on that pages with a recipe are marked.
    optional_host_permissions: ['*://*/*'],
    commands: {
      _execute_action: { suggested_key: { default: 'Alt+Shift+Y' } },
      'rework-selection': {
        suggested_key: { default: 'Alt+Shift+U' },
        description: '__MSG_reworkSelection__',
      },
    },
    ...(command === 'build'
      ? { content_security_policy: { extension_pages: CONTENT_SECURITY_POLICY } }
      : {}),
    ...(browser === 'firefox' ? { browser_specific_settings: FIREFOX } : {}),
  }),
  vite: () => ({
    esbuild: { jsx: 'automatic', jsxImportSource: 'preact' },
    build: { target: 'es2022' },
  }),
  hooks: {
    // What runs in pages is made as small as it gets; the rest is built the quick way. Brackets round
    // the whole function make engines compile it at once, not twice: a read takes a quarter of the time.
    'vite:build:extendConfig': (entrypoints, config) => {
      config.build = {
        ...config.build,
        rollupOptions: {
          ...config.build?.rollupOptions,
          treeshake: { moduleSideEffects: doesSomething },
        },
      };
      const output = config.build.rollupOptions?.output;
      if (entrypoints.some(({ name }) => name === 'popup') && output && !Array.isArray(output)) {
        // As one string a file is read many times faster than as a script's own lists.
        config.json = { stringify: true, namedExports: false };
        Object.assign(output, {
          manualChunks: chunkOf,
          onlyExplicitManualChunks: true,
          chunkFileNames: chunkFile,
          experimentalMinChunkSize: LEAST_CHUNK,
        });
        config.plugins = [...(config.plugins ?? []), solverWorker(), readyKeys()];
      }
      if (entrypoints.some(({ name }) => name === 'reader'))
        config.build = {
          ...config.build,
          minify: 'terser',
          terserOptions: {
            ecma: 2020,
            compress: {
              passes: 5,
              unsafe_arrows: true,
              pure_getters: true,
              keep_fargs: false,
              lhs_constants: false,
            },
            format: { wrap_iife: true },
          },
        };
    },
  },
  zip: { excludeSources: ['.cache/**', 'tests/**/output/**'] },
});
