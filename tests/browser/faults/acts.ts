/** What a user does and sees in the fault tables, as bodies of functions that run in either browser. */
import type { Driven } from '../drive/both.ts';

export interface World {
  driven: Driven;
  /** 'http://127.0.0.1:PORT' of the demo pages. */
  origin: string;
}

export interface Row {
  /** What happens to the user. */
  fault: string;
  run(world: World): Promise<void>;
}

const BUDGET = `document.querySelector('.stepper input[aria-label^="Budget"]')`;
const SETTLED = `document.querySelector('[aria-busy=false] .verdict, .recipe[aria-busy=false]')`;

/** Everything the extension keeps is gone, as after its first start; the first questions are answered. */
export async function emptied({ driven }: World): Promise<void> {
  await driven.open('options.html');
  await driven.evaluate(`
    await chrome.storage.session.clear();
    await chrome.storage.local.clear();
    await chrome.storage.local.set({ preferences: { welcomed: true } });
    for (const { name } of await indexedDB.databases())
      await new Promise((done, failed) => {
        const asked = indexedDB.deleteDatabase(name);
        asked.onsuccess = done;
        asked.onerror = asked.onblocked = () => failed(new Error('not deleted'));
      });
  `);
  await driven.closeTab();
}

export async function popupOn({ driven, origin }: World, page: string): Promise<void> {
  await driven.visit(`${origin}/${page}`);
  await driven.click();
  await driven.waitFor(`return ${SETTLED} !== null`);
}

export async function bench({ driven }: World, address = '#recipe'): Promise<void> {
  await driven.open(`bench.html${address}`);
}

export const settled = ({ driven }: World): Promise<unknown> =>
  driven.waitFor(`return ${SETTLED} !== null`);

/** Loads the current page again and waits until it is another one. */
export async function again({ driven }: World): Promise<void> {
  await driven.evaluate('window.before = true; setTimeout(() => location.reload(), 0)');
  await driven.waitFor('return window.before === undefined');
}

/** Waits until the screen asks for this budget. */
export const showsBudget = ({ driven }: World, grams: number): Promise<unknown> =>
  driven.waitFor(`return ${BUDGET}?.value === '${grams}'`);

/** Types a budget and waits until it is held for the next page. */
export async function askFor({ driven }: World, grams: number): Promise<void> {
  await driven.waitFor(`return ${BUDGET} !== null`);
  await driven.evaluate(`
    const field = ${BUDGET};
    field.value = '${grams}';
    field.dispatchEvent(new Event('input', { bubbles: true }));
  `);
  await driven.waitFor(`
    const all = Object.values(await chrome.storage.local.get(null));
    return all.some(({ current }) => current?.goals.budgetG === ${grams});
  `);
}

/** Presses the first button or link with these words, once it is there. */
export const press = ({ driven }: World, words: string, seconds?: number): Promise<unknown> =>
  driven.waitFor(
    `
      const found = [...document.querySelectorAll('button, a, summary')]
        .find((one) => one.textContent.trim().startsWith(${JSON.stringify(words)}) && !one.disabled);
      found?.click();
      return found !== undefined;
    `,
    seconds,
  );

export const keep = ({ driven }: World): Promise<unknown> =>
  driven.waitFor(`
    const button = document.querySelector('button.keep:not(:disabled)');
    button?.click();
    return button !== null;
  `);

export async function keepAndWait(world: World): Promise<void> {
  await keep(world);
  await world.driven.waitFor(
    `return document.querySelector('.keep-state')?.textContent === 'Kept'`,
  );
}

/** Waits for a message that interrupts, with these words in it. */
export const told = ({ driven }: World, words: string): Promise<unknown> =>
  driven.waitFor(`
    return [...document.querySelectorAll('[role=alert]')]
      .some((one) => one.textContent.includes(${JSON.stringify(words)}));
  `);

/** Titles in Kept once they are this many, read on a page of their own. */
export async function keptTitles(world: World, count: number): Promise<string[]> {
  const { driven } = world;
  const back = driven.here();
  await bench(world, '#kept');
  const titles = `[...document.querySelectorAll('.kept-list .kept-title')].map((one) => one.textContent)`;
  await driven.waitFor(
    `return document.querySelector('.transfer') !== null && ${titles}.length === ${count}`,
  );
  const found = JSON.parse(String(await driven.evaluate(`return JSON.stringify(${titles})`)));
  await driven.closeTab();
  back();
  return found;
}

/** A file made in the page and chosen as a backup to read in; `text` is an expression. */
export const readIn = ({ driven }: World, text: string): Promise<unknown> =>
  driven.waitFor(`
    const field = document.querySelector('.transfer input[type=file]');
    if (!field) return false;
    const choice = new DataTransfer();
    choice.items.add(new File([].concat(${text}), 'backup.json', { type: 'application/json' }));
    field.files = choice.files;
    field.dispatchEvent(new Event('change', { bubbles: true }));
    return true;
  `);

/** Runs a body with \`db\`, the database as it is on the disk, opened at a version or as it is. */
export const inDatabase = ({ driven }: World, body: string, version = ''): Promise<unknown> =>
  driven.evaluate(`
    const db = await new Promise((done, failed) => {
      const opening = indexedDB.open('crumbshift'${version && `, ${version}`});
      opening.onsuccess = () => done(opening.result);
      opening.onerror = () => failed(opening.error);
    });
    try { ${body} } finally { db.close(); }
  `);
