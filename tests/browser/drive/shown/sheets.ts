/** How many sheets a PDF has. */
import { inflateSync } from 'node:zlib';

const PAGE = /\/Type\s*\/Page\b/g;

/** What one packed part of the file holds, as text; '' for pictures and the like. */
function unpacked(part: Buffer): string {
  try {
    return inflateSync(part).toString('latin1');
  } catch {
    return '';
  }
}

/** Pages stand in the file as they are, or in its packed parts. @throws {Error} when there is none. */
export function sheetsOf(pdf: Buffer): number {
  const text = pdf.toString('latin1');
  const packed = [...text.matchAll(/stream\r?\n/g)].flatMap(({ 0: head, index }) => {
    if (text.slice(index - 3, index) === 'end') return [];
    const from = index + head.length;
    return unpacked(pdf.subarray(from, text.indexOf('endstream', from)));
  });
  const sheets = [text, ...packed].reduce((sum, all) => sum + (all.match(PAGE)?.length ?? 0), 0);
  if (sheets === 0) throw new Error('the file has no page');
  return sheets;
}
