/** Reads a zip file's entries (PKWARE application note: end record, central directory, local headers). */
import { inflateRawSync } from 'node:zlib';

const END = 0x06054b50;
const STORED = 0;
const DEFLATED = 8;

export interface ZipEntry {
  name: string;
  bytes: Buffer;
}

function endRecord(zip: Buffer): number {
  for (let at = zip.length - 22; at >= 0; at -= 1) if (zip.readUInt32LE(at) === END) return at;
  throw new Error('not a zip file');
}

function contentOf(zip: Buffer, method: number, size: number, header: number): Buffer {
  const start = header + 30 + zip.readUInt16LE(header + 26) + zip.readUInt16LE(header + 28);
  const packed = zip.subarray(start, start + size);
  if (method === STORED) return packed;
  if (method === DEFLATED) return inflateRawSync(packed);
  throw new Error(`unknown method ${method}`);
}

/** Every file of a zip, in its order; folders are left out. @throws {Error} when it is damaged. */
export function zipEntries(zip: Buffer): ZipEntry[] {
  const end = endRecord(zip);
  const entries: ZipEntry[] = [];
  let at = zip.readUInt32LE(end + 16);
  for (let count = zip.readUInt16LE(end + 10); count > 0; count -= 1) {
    const [nameLength, extraLength, noteLength] = [28, 30, 32].map((to) =>
      zip.readUInt16LE(at + to),
    ) as [number, number, number];
    const name = zip.toString('utf8', at + 46, at + 46 + nameLength);
    if (!name.endsWith('/')) {
      const method = zip.readUInt16LE(at + 10);
      const size = zip.readUInt32LE(at + 20);
      entries.push({ name, bytes: contentOf(zip, method, size, zip.readUInt32LE(at + 42)) });
    }
    at += 46 + nameLength + extraLength + noteLength;
  }
  return entries;
}
