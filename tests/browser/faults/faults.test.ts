/** What may befall a user, one row a fault, in both browsers: each ends in plain words and with nothing lost. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, it } from 'vitest';
import { openDriven } from '../drive/both.ts';
import { buildBoth } from '../drive/build.ts';
import { removeFolder } from '../drive/remove-folder.ts';
import { type Served, serveDemo } from '../drive/server.ts';
import { emptied, type World } from './acts.ts';
import { FILES_ROWS } from './files-rows.ts';
import { FAULTY_PAGES, PAGE_ROWS } from './page-rows.ts';
import { STORE_ROWS } from './store-rows.ts';
import { WORK_ROWS } from './work-rows.ts';

const ROWS = [...WORK_ROWS, ...STORE_ROWS, ...FILES_ROWS, ...PAGE_ROWS];

describe.each(['chromium', 'firefox'] as const)('in %s', (engine) => {
  let folder: string;
  let pages: Served;
  let world: World;

  beforeAll(async () => {
    buildBoth();
    folder = mkdtempSync(join(tmpdir(), 'crumbshift-faults-'));
    pages = await serveDemo(FAULTY_PAGES);
    world = { driven: await openDriven(engine, { profile: folder }), origin: pages.origin };
  });

  afterAll(async () => {
    await world?.driven.close();
    await pages?.close();
    removeFolder(folder);
  });

  beforeEach(() => emptied(world));

  it.each(ROWS.map((row) => [row.fault, row] as const))('%s', (_, { run }) => run(world));
});
