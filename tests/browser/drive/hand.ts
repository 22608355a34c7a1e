/** A hand on either browser: pages of the extension, driven by what their elements say. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Driven, openDriven } from './both.ts';
import type { Engine } from './browsers.ts';
import { buildBoth } from './build.ts';
import { removeFolder } from './remove-folder.ts';

/** Functions that every body below may call. */
const HELP = `
  const all = (selector) => [...document.querySelectorAll(selector)];
  const seen = (text) => text.replace(/\\s+/g, ' ').trim();
  const named = (selector, text) =>
    all(selector).find((one) => seen(one.textContent).startsWith(text));
  const field = (label) => {
    const found = named('label', label);
    if (!found) throw new Error('no field ' + label);
    return found.control ?? document.getElementById(found.htmlFor);
  };
  const type = (label, text) => {
    const one = field(label);
    const kind = one.tagName === 'TEXTAREA' ? HTMLTextAreaElement : HTMLInputElement;
    Object.getOwnPropertyDescriptor(kind.prototype, 'value').set.call(one, text);
    one.dispatchEvent(new Event('input', { bubbles: true }));
    one.dispatchEvent(new Event('change', { bubbles: true }));
  };
  const press = (text, inside = 'body') => {
    const found = all(inside + ' button, ' + inside + ' summary, ' + inside + ' a').find((one) =>
      seen(one.textContent).startsWith(text));
    if (!found) throw new Error('nothing to press says ' + text + ': ' + seen(document.body.innerText));
    found.click();
  };
`;

export interface Hand {
  driven: Driven;
  open(path: string): Promise<void>;
  /** Runs a function body in the page; gives a string, number or boolean. */
  run(body: string): Promise<unknown>;
  /** Waits until a body gives something true. */
  wait(body: string): Promise<unknown>;
  /** Waits until the page says this. */
  says(text: string): Promise<unknown>;
  restart(): Promise<void>;
  /** Ends the browser and throws its profile away. */
  end(): Promise<void>;
}

/** A browser with a profile of its own. */
export async function openHand(engine: Engine): Promise<Hand> {
  buildBoth();
  const profile = mkdtempSync(join(tmpdir(), 'crumbshift-hand-'));
  const driven = await openDriven(engine, { profile });
  const wait = (body: string) =>
    driven.waitFor(`${HELP} try { ${body} } catch (error) { return null; }`, 20);
  return {
    driven,
    wait,
    open: (path) => driven.open(path),
    run: (body) => driven.evaluate(`${HELP} ${body}`),
    says: (text) => wait(`return seen(document.body.innerText).includes(${JSON.stringify(text)})`),
    restart: () => driven.restart(),
    end: async () => {
      await driven.close();
      removeFolder(profile);
    },
  };
}

/** Puts a pasted recipe on the bench of a new page. */
export async function pasted(hand: Hand, text: string): Promise<void> {
  await hand.open('bench.html#paste');
  await hand.wait(`return document.querySelector('textarea') !== null`);
  await hand.run(`
    const box = document.querySelector('textarea');
    Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value').set.call(box, ${JSON.stringify(text)});
    box.dispatchEvent(new Event('input', { bubbles: true }));
  `);
  await hand.run(`
    await new Promise((done) => setTimeout(done, 100));
    press('Rework this recipe');
  `);
  await hand.wait(`return document.querySelector('.recipe[aria-busy=false] .verdict') !== null`);
}

/** Opens the first kept dish of a new list. */
export async function openedKept(hand: Hand): Promise<void> {
  await hand.open('bench.html#kept');
  await hand.wait(`return document.querySelector('.kept-link') !== null`);
  await hand.run(`document.querySelector('.kept-link').click()`);
  await hand.wait(`return document.querySelector('.recipe[aria-busy=false] .verdict') !== null`);
}

/** Keeps what is on the screen and waits until it is on disk. */
export async function kept(hand: Hand): Promise<void> {
  await hand.run(`document.querySelector('button.keep').click()`);
  await hand.wait(`return document.querySelector('.keep-state').textContent === 'Kept'`);
}

/** Waits until what a page put into the browser's small storage is on disk and holds this text, as JSON. */
export async function stored(hand: Hand, text: string): Promise<void> {
  await hand.wait(`
    const held = await (globalThis.browser ?? chrome).storage.local.get(null);
    return JSON.stringify(held).includes(${JSON.stringify(text)});
  `);
}
