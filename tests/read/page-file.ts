/** Pages of this tree and of tests as documents. */
import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { readPage } from '../../engine/read/index.ts';

/** One window's parser for all: a window of its own for each page takes ten times as long. */
const parser = new new JSDOM('').window.DOMParser();

const parsed = (html: string): Document => parser.parseFromString(html, 'text/html');

/** A page file of this tree as a document. */
export const documentOf = (path: string): Document =>
  parsed(readFileSync(new URL(`../pages/${path}`, import.meta.url), 'utf8'));

/** A document in a window of its own, from markup: body content only unless it starts with a doctype. */
export const documentFrom = (html: string): Document => new JSDOM(html).window.document;

/** The recipes of a page given as markup; empty when there is none. */
export function recipesIn(html: string, url?: string) {
  const result = readPage(parsed(html), url === undefined ? {} : { url });
  return result.ok ? result.recipes : [];
}
