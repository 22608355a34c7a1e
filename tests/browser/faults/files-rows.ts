/** Files read in: cut off, wrong, huge, stopped midway. What was kept before stays whatever comes. */
import { expect } from 'vitest';
import {
  bench,
  inDatabase,
  keepAndWait,
  keptTitles,
  popupOn,
  press,
  type Row,
  readIn,
  told,
  type World,
} from './acts.ts';

const FORMAT = 'crumbshift-backup';

async function withOneKept(world: World): Promise<void> {
  await popupOn(world, 'lemon-cake.html');
  await keepAndWait(world);
  await bench(world, '#kept');
}

/** A file that is refused, with words that say why; the kept recipe is still there. */
const refused = (fault: string, text: string, words: string): Row => ({
  fault,
  run: async (world) => {
    await withOneKept(world);
    await readIn(world, text);
    await told(world, words);
    await told(world, 'Nothing was changed');
    expect(await keptTitles(world, 1)).toHaveLength(1);
  },
});

/** An expression for a backup with copies of the kept recipe, each under an id of its own. */
const COPIES = (count: number) => `await (async () => {
  const db = await new Promise((done) => {
    const opening = indexedDB.open('crumbshift');
    opening.onsuccess = () => done(opening.result);
  });
  const row = await new Promise((done) => {
    const asked = db.transaction('recipes').objectStore('recipes').getAll();
    asked.onsuccess = () => done(asked.result[0]);
  });
  db.close();
  row.adaptation = null;
  const recipes = Array.from({ length: ${count} }, (_, n) => JSON.stringify({ ...row, id: 'copy-' + n }));
  return '{"format":"${FORMAT}","version":2,"exportedAt":"","recipes":[' + recipes.join(',') + ']}';
})()`;

/** More than are written in the moments between two looks. */
const MANY = 10_000;

/** Counts what a page writes into the database from now on. */
const COUNT_WRITES = `
  window.written = 0;
  for (const name of ['add', 'put']) {
    const own = IDBObjectStore.prototype[name];
    IDBObjectStore.prototype[name] = function (...row) {
      window.written += 1;
      return own.apply(this, row);
    };
  }
`;

const rowsOnDisk = (world: World) =>
  inDatabase(
    world,
    `return await new Promise((done) => {
      const asked = db.transaction('recipes').objectStore('recipes').count();
      asked.onsuccess = () => done(asked.result);
    });`,
  );

export const FILES_ROWS: readonly Row[] = [
  refused(
    'a backup was cut off',
    `'{"format":"${FORMAT}","version":2,"recip'`,
    'not complete JSON',
  ),
  refused(
    'a backup is from a newer build',
    `'{"format":"${FORMAT}","version":99,"exportedAt":"","recipes":[]}'`,
    'newer Crumbshift',
  ),
  refused(
    'a backup has parts of wrong types',
    `'{"format":"${FORMAT}","version":2,"exportedAt":"","recipes":[7,null,{"id":3}]}'`,
    'Every entry of this backup is damaged',
  ),
  refused('a picture is read in as a backup', `'\\u0089PNG\\r\\n\\u001a'`, 'not complete JSON'),
  refused(
    'a backup has 300 MB',
    `(() => { const part = ' '.repeat(1_000_000); return Array(300).fill(part); })()`,
    'too large',
  ),
  {
    fault: 'a backup has 10,000 recipes',
    run: async (world) => {
      await withOneKept(world);
      await readIn(world, COPIES(10_000));
      await press(world, 'Bring these in', 60);
      await world.driven.waitFor(
        `return (document.querySelector('.transfer [role=status]')?.textContent ?? '').includes('10,000 recipes')`,
        100,
      );
      expect(await rowsOnDisk(world)).toBe(10_001);
    },
  },
  {
    fault: 'the page is closed in the middle of reading a backup in',
    run: async (world) => {
      const { driven } = world;
      await withOneKept(world);
      await readIn(world, COPIES(MANY));
      await driven.evaluate(COUNT_WRITES);
      await press(world, 'Bring these in');
      // Rows are being written, and the last of them is far.
      await driven.waitFor('return window.written > 20');
      expect(Number(await driven.evaluate('return window.written'))).toBeLessThan(MANY);
      await driven.closeTab();
      await driven.open('options.html');
      // None of what was written stays.
      expect(await rowsOnDisk(world)).toBe(1);
      await driven.waitFor(`return document.body.innerText.trim() !== ''`);
    },
  },
];
