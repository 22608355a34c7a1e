/** Work that was not kept: other pages, other tabs, ends of the browser and of the extension. */
import { expect } from 'vitest';
import {
  again,
  askFor,
  bench,
  popupOn,
  press,
  type Row,
  settled,
  showsBudget,
  told,
} from './acts.ts';

const title = `return document.querySelector('.recipe h1, .popup-head .dish')?.textContent`;

export const WORK_ROWS: readonly Row[] = [
  {
    fault: 'another page is opened after a change, and the first one again',
    run: async (world) => {
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      await popupOn(world, 'porch-cookies.html');
      await popupOn(world, 'lemon-cake.html');
      await showsBudget(world, 9);
    },
  },
  {
    fault: 'the browser ends with a change that was not kept',
    run: async (world) => {
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      await popupOn(world, 'porch-cookies.html');
      await world.driven.restart();
      await popupOn(world, 'porch-cookies.html');
      await bench(world, '#kept');
      await press(world, 'Worked on, not kept');
      await press(world, 'Towpath Lemon');
      await settled(world);
      await showsBudget(world, 9);
      await popupOn(world, 'lemon-cake.html');
      await showsBudget(world, 9);
    },
  },
  {
    fault: 'the extension is loaded anew with the full page open on a change that was not kept',
    run: async (world) => {
      await popupOn(world, 'lemon-cake.html');
      await bench(world);
      await settled(world);
      await askFor(world, 9);
      await world.driven.reloadExtension();
      await bench(world);
      await settled(world);
      await showsBudget(world, 9);
    },
  },
  {
    fault: 'two tabs hold two recipes, and both are loaded again',
    run: async (world) => {
      const { driven } = world;
      const shown: [() => void, number, unknown][] = [];
      for (const [page, grams] of [
        ['lemon-cake.html', 9],
        ['porch-cookies.html', 11],
      ] as const) {
        await popupOn(world, page);
        await bench(world);
        await settled(world);
        await askFor(world, grams);
        shown.push([driven.here(), grams, await driven.evaluate(title)]);
      }
      expect(shown[0]?.[2]).not.toBe(shown[1]?.[2]);
      for (const [back, grams, name] of shown) {
        back();
        await again(world);
        await settled(world);
        await showsBudget(world, grams);
        expect(await driven.evaluate(title)).toBe(name);
      }
    },
  },
  {
    fault: 'two tabs change one recipe in different ways',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      const backs: (() => void)[] = [];
      for (const _ of [1, 2]) {
        await bench(world);
        await settled(world);
        backs.push(driven.here());
      }
      const [first, second] = backs as [() => void, () => void];
      first();
      await askFor(world, 9);
      second();
      await askFor(world, 11);
      for (const [back, grams] of [
        [first, 9],
        [second, 11],
      ] as const) {
        back();
        await again(world);
        await settled(world);
        await showsBudget(world, grams);
      }
    },
  },
  {
    fault: 'work that was let go is asked for by its old address',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      await bench(world, '#kept');
      await driven.waitFor(`return document.querySelector('.transfer') !== null`);
      await driven.evaluate(`
        const held = Object.keys(await chrome.storage.local.get(null)).filter((key) => key.startsWith('work:'));
        await chrome.storage.local.remove(held);
      `);
      await bench(world, '?work=gone#recipe');
      await told(world, 'not held any more');
    },
  },
  {
    fault: 'what is held is damaged',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      await driven.evaluate(
        `await chrome.storage.local.set({ 'work:x': { turn: 99, current: { recipe: 7 } }, 'work:y': 7 })`,
      );
      await bench(world);
      await settled(world);
      await showsBudget(world, 9);
    },
  },
  {
    fault: 'preferences and the place at the stove are damaged',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await driven.evaluate(`
        await chrome.storage.local.set({ preferences: { budgetG: 'many', avoid: 7, welcomed: true }, stove: { no: 'list' } });
      `);
      await bench(world, '#stove');
      await driven.waitFor(`return document.querySelector('.stove') !== null`);
      await popupOn(world, 'porch-cookies.html');
      await showsBudget(world, 15);
    },
  },
  {
    fault: 'a private window is opened beside kept work',
    run: async (world) => {
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      expect(await world.driven.runsInPrivate()).toBe(false);
      await again(world);
      await showsBudget(world, 9);
    },
  },
  {
    fault: 'the clock was moved back a year',
    run: async (world) => {
      const { driven } = world;
      await popupOn(world, 'lemon-cake.html');
      await askFor(world, 9);
      await bench(world);
      await settled(world);
      await driven.evaluate(`
        const now = Date.now;
        Date.now = () => now() - 31536000000;
      `);
      await askFor(world, 8);
      await again(world);
      await settled(world);
      await showsBudget(world, 8);
    },
  },
];
