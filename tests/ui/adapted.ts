/** Recipes for screen tests, worked out by the engine. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { JSDOM, VirtualConsole } from 'jsdom';
import {
  type Adaptation,
  adaptRecipe,
  DEFAULT_GOALS,
  type Goals,
  type Recipe,
  readPage,
  readText,
} from '../../engine/index.ts';

const PAGES = join(import.meta.dirname, '../pages/demo');

export const DEMO_PAGES = readdirSync(PAGES).filter((name) => name.endsWith('.html'));

function first(result: ReturnType<typeof readText>, what: string): Recipe {
  const recipe = result.ok ? result.recipes[0] : undefined;
  if (!recipe) throw new Error(`no recipe in ${what}`);
  return recipe;
}

/** The first recipe of a demo page, adapted. */
export function adaptedPage(page: string, goals: Partial<Goals> = {}): Adaptation {
  const html = readFileSync(join(PAGES, page), 'utf8');
  const { document } = new JSDOM(html, { virtualConsole: new VirtualConsole() }).window;
  return adaptRecipe(first(readPage(document), page), { ...DEFAULT_GOALS, ...goals });
}

/** Pasted text, adapted. */
export function adaptedText(text: string, goals: Partial<Goals> = {}): Adaptation {
  return adaptRecipe(first(readText(text), text), { ...DEFAULT_GOALS, ...goals });
}
