/** The user's disk: full, newer, older, damaged, deleted; saves that are cut off. */
import { expect } from 'vitest';
import {
  again,
  askFor,
  bench,
  inDatabase,
  keep,
  keepAndWait,
  keptTitles,
  popupOn,
  press,
  type Row,
  settled,
  showsBudget,
  told,
} from './acts.ts';

/** Stores of the first release; version numbers on the disk are ten times the schema's. */
const FIRST_RELEASE = `
  await new Promise((done, failed) => {
    const opening = indexedDB.open('crumbshift', 10);
    opening.onupgradeneeded = () => {
      const db = opening.result;
      const recipes = db.createObjectStore('recipes', { keyPath: 'id' });
      for (const name of ['updatedAt', 'url']) recipes.createIndex(name, name);
      db.createObjectStore('versions', { keyPath: 'id' }).createIndex('recipeId', 'recipeId');
      db.createObjectStore('foods', { keyPath: 'id' });
      for (const row of rows) recipes.add(row);
    };
    opening.onsuccess = () => { opening.result.close(); done(); };
    opening.onerror = () => failed(opening.error);
  });
`;

const FIRST_GOALS = [
  'budgetG',
  'servings',
  'rule',
  'avoid',
  'pinned',
  'excludedSwaps',
  'excludedFoods',
  'sweetness',
  'family',
];

const DELETE_DATABASE = `
  await new Promise((done, failed) => {
    const asked = indexedDB.deleteDatabase('crumbshift');
    asked.onsuccess = done;
    asked.onerror = () => failed(asked.error);
  });
`;

export const STORE_ROWS: readonly Row[] = [
  {
    fault: 'the popup closes in the middle of a save',
    run: async (world) => {
      await popupOn(world, 'lemon-cake.html');
      await keep(world);
      await world.driven.closeTab();
      await bench(world, '#kept');
      expect(await keptTitles(world, 1)).toHaveLength(1);
    },
  },
  {
    fault: 'the background is ended before a save, and again right after it was asked for',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await driven.endBackground();
      await keepAndWait(world);
      await popupOn(world, 'porch-cookies.html');
      await keep(world);
      await driven.endBackground();
      // Either it was kept, or the popup says that it was not and keeps it at the next press.
      await driven.waitFor(`
        return document.querySelector('.keep-state')?.textContent === 'Kept'
          || document.querySelector('.popup-bar [role=alert]') !== null;
      `);
      if (
        await driven.evaluate(`return document.querySelector('.popup-bar [role=alert]') !== null`)
      )
        await keepAndWait(world);
      expect(await keptTitles(world, 2)).toHaveLength(2);
    },
  },
  {
    fault: 'the extension is loaded anew with a kept recipe open',
    run: async (world) => {
      await popupOn(world, 'lemon-cake.html');
      await keepAndWait(world);
      await bench(world);
      await settled(world);
      await world.driven.reloadExtension();
      expect(await keptTitles(world, 1)).toHaveLength(1);
    },
  },
  {
    fault: 'the database is deleted under an open page',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      await bench(world);
      await settled(world);
      const back = driven.here();
      await driven.open('options.html');
      await driven.evaluate(DELETE_DATABASE);
      back();
      await told(world, 'Reload');
      await again(world);
      await settled(world);
      await showsBudget(world, 9);
      await keepAndWait(world);
      expect(await keptTitles(world, 1)).toHaveLength(1);
    },
  },
  {
    fault: 'a newer build has written the data',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await keepAndWait(world);
      await driven.open('options.html');
      await inDatabase(world, '', '990');
      await bench(world, '#kept');
      await driven.waitFor(`return document.querySelectorAll('.kept-title').length === 1`);
      await popupOn(world, 'porch-cookies.html');
      await keep(world);
      await told(world, 'newer Crumbshift');
      expect(await keptTitles(world, 1)).toHaveLength(1);
      expect(await inDatabase(world, 'return db.version')).toBe(990);
    },
  },
  {
    fault: 'the first release left its data',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      await keepAndWait(world);
      const text = String(
        await inDatabase(
          world,
          `return await new Promise((done) => {
            const asked = db.transaction('recipes').objectStore('recipes').getAll();
            asked.onsuccess = () => done(JSON.stringify(asked.result));
          });`,
        ),
      );
      // As that release wrote a row: without a name, tags or a note, and without what goals learnt since.
      const rows = JSON.parse(text).map((row: Record<string, unknown>) => {
        const { name, worked, tags, note, adaptation, ...first } = row;
        expect([name, worked, tags, note]).toEqual(['', false, [], '']);
        expect(adaptation).not.toBeNull();
        const goals = row.goals as Record<string, unknown>;
        const known = Object.entries(goals).filter(([key]) => FIRST_GOALS.includes(key));
        expect(known).toHaveLength(FIRST_GOALS.length);
        return { ...first, adaptation: null, goals: Object.fromEntries(known) };
      });
      await driven.open('options.html');
      await driven.evaluate(DELETE_DATABASE);
      await driven.evaluate(`const rows = ${JSON.stringify(rows)}; ${FIRST_RELEASE}`);
      expect(await keptTitles(world, 1)).toHaveLength(1);
      await bench(world, '#kept');
      await driven.waitFor(`
        const link = document.querySelector('.kept-title');
        link?.click();
        return link !== null;
      `);
      await settled(world);
      await showsBudget(world, 9);
    },
  },
  {
    fault: 'a kept row is damaged',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await keepAndWait(world);
      await inDatabase(
        world,
        `await new Promise((done) => {
          const change = db.transaction('recipes', 'readwrite');
          change.objectStore('recipes').put({ id: 'broken', updatedAt: 1, url: '' });
          change.oncomplete = done;
        });`,
      );
      await bench(world, '#kept');
      await told(world, 'One kept recipe cannot be read');
      await driven.waitFor(`return document.querySelectorAll('.kept-title').length === 1`);
    },
  },
  {
    fault: 'a kept recipe is opened that is gone',
    run: async (world) => {
      await bench(world, '?id=never-there');
      await told(world, 'not here any more');
    },
  },
  {
    fault: 'the user erases everything, having thought better of it once',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await keepAndWait(world);
      await askFor(world, 9);
      await bench(world, '#privacy');
      await driven.waitFor(`return document.body.innerText.includes('one dish kept')`);
      await press(world, 'Erase everything');
      await press(world, 'Leave it');
      expect(await keptTitles(world, 1)).toHaveLength(1);
      await press(world, 'Erase everything');
      await press(world, 'Yes, erase everything');
      await driven.waitFor(`return document.body.innerText.includes('Everything is erased')`);
      await driven.waitFor(`return document.body.innerText.includes('0 dishes kept')`);
      expect(await keptTitles(world, 0)).toEqual([]);
      const left = `return Object.keys(await chrome.storage.local.get(null)).join()`;
      expect(await driven.evaluate(left)).toBe('');
    },
  },
  {
    fault: 'the browser has no room to hold what is worked on',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      // Whatever is written from now on is refused, as by a browser without room.
      await driven.evaluate(
        `chrome.storage.local.set = () => Promise.reject(new Error('QuotaExceededError: no room'))`,
      );
      await driven.evaluate(`
        const field = document.querySelector('.stepper input[aria-label^="Budget"]');
        field.value = '9';
        field.dispatchEvent(new Event('input', { bubbles: true }));
      `);
      await told(world, 'no room to hand this recipe over');
      await keepAndWait(world);
      expect(await keptTitles(world, 1)).toHaveLength(1);
      await press(world, 'Whole recipe');
    },
  },
];
