import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { readPage } from '../../engine/read/index.ts';

/** A page file of this tree as a document. */
export function documentOf(path: string): Document {
  return new JSDOM(readFileSync(new URL(`../pages/${path}`, import.meta.url), 'utf8')).window
    .document;
}

/** A document from markup, body content only unless it starts with a doctype. */
export function documentFrom(html: string): Document {
  return new JSDOM(html).window.document;
}

/** The recipes of a page given as markup; empty when there is none. */
export function recipesIn(html: string, url?: string) {
  const result = readPage(documentFrom(html), url === undefined ? {} : { url });
  return result.ok ? result.recipes : [];
}
