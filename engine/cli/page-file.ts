/** An HTML file as a document; no script runs, nothing is fetched. */
import { readFileSync } from 'node:fs';
import { JSDOM, VirtualConsole } from 'jsdom';
import { decodePage } from './decode-page.ts';

export interface PageSource {
  /** The page's address, when the page does not say it. */
  url: string | null;
  /** The encoding that its server named. */
  charset: string | null;
}

/** @throws {Error} when the file cannot be read. */
export function openPageFile(path: string, { url, charset }: PageSource): Document {
  const options = { virtualConsole: new VirtualConsole(), ...(url === null ? {} : { url }) };
  return new JSDOM(decodePage(readFileSync(path), charset), options).window.document;
}
