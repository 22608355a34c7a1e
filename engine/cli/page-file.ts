/** An HTML file as a document; no script runs, nothing is fetched. */
import { readFileSync } from 'node:fs';
import { JSDOM, VirtualConsole } from 'jsdom';

/** @throws {Error} when the file cannot be read. */
export function openPageFile(path: string, url: string | null): Document {
  const options = { virtualConsole: new VirtualConsole(), ...(url === null ? {} : { url }) };
  return new JSDOM(readFileSync(path), options).window.document;
}
