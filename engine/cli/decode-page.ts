/** The bytes of a page as text, decoded in the order that browsers follow (WHATWG HTML, 'encoding sniffing'). */

/** What windows-1252 has in place of the control codes from 0x80 on (WHATWG Encoding, index windows-1252). */
const HIGH_CONTROLS =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

const latin1 = (bytes: Uint8Array): string =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');

/** Not left to `TextDecoder`: some releases of Node read these bytes as ISO 8859-1. */
const windows1252 = (bytes: Uint8Array): string =>
  latin1(bytes).replace(/[\x80-\x9f]/g, (sign) => HIGH_CONTROLS.charAt(sign.charCodeAt(0) - 0x80));

/** The encoding a label stands for, in the standard's own spelling; null when there is no such label. */
export function encodingOf(label: string): string | null {
  try {
    return new TextDecoder(label.trim()).encoding;
  } catch {
    return null;
  }
}

const BYTE_ORDER_MARKS: readonly (readonly [encoding: string, mark: readonly number[]])[] = [
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
];

const markedEncoding = (bytes: Uint8Array): string | null =>
  BYTE_ORDER_MARKS.find(([, mark]) => mark.every((byte, at) => bytes[at] === byte))?.[0] ?? null;

const ATTRIBUTE = /([^\s"'<>/=]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g;

/** The label in a meta tag's attributes: its own `charset`, or the one of a content type. */
function metaLabel(tag: string): string | null {
  const attributes = new Map(
    [...tag.matchAll(ATTRIBUTE)].map(([, name = '', double, single, bare]) => [
      name.toLowerCase(),
      double ?? single ?? bare ?? '',
    ]),
  );
  const charset = attributes.get('charset');
  if (charset !== undefined) return charset;
  if (attributes.get('http-equiv')?.toLowerCase() !== 'content-type') return null;
  return /charset\s*=\s*["']?\s*([^\s"';]+)/i.exec(attributes.get('content') ?? '')?.[1] ?? null;
}

/** A page that says UTF-16 in its own ASCII bytes is none; and this label is for old scripts only. */
const READ_AS: Record<string, string> = {
  'utf-16le': 'utf-8',
  'utf-16be': 'utf-8',
  'x-user-defined': 'windows-1252',
};

/** Elements whose content is text, in which a tag means nothing. */
const RAW_TEXT = /^<(script|style|title|textarea|template)\b/i;
const HEAD_ENDS = /^<(\/head|body)\b/i;
const LONGEST_TAG_NAME = 12;

/** Where the tag or comment that begins at `from` ends, its raw text included. */
function endOfTag(text: string, from: number): number {
  const start = text.slice(from, from + LONGEST_TAG_NAME);
  const raw = RAW_TEXT.exec(start)?.[1];
  const closing = start.startsWith('<!--') ? '-->' : '>';
  const end = text.indexOf(closing, from);
  if (end < 0) return text.length;
  if (raw === undefined) return end + closing.length;
  const close = new RegExp(`</${raw}`, 'gi');
  close.lastIndex = end;
  return close.exec(text)?.index ?? text.length;
}

/** The encoding that a meta tag in the head names; a head of any length is searched to its end. */
function declaredEncoding(bytes: Uint8Array): string | null {
  const text = latin1(bytes);
  for (let at = text.indexOf('<'); at >= 0; ) {
    const end = endOfTag(text, at);
    const start = text.slice(at, at + LONGEST_TAG_NAME);
    if (HEAD_ENDS.test(start)) return null;
    const label = /^<meta[\s/]/i.test(start) ? metaLabel(text.slice(at + 5, end)) : null;
    const encoding = label === null ? null : encodingOf(label);
    if (encoding !== null) return READ_AS[encoding] ?? encoding;
    at = text.indexOf('<', end);
  }
  return null;
}

function decodeAs(bytes: Uint8Array, encoding: string): string {
  return encoding === 'windows-1252' ? windows1252(bytes) : new TextDecoder(encoding).decode(bytes);
}

/** UTF-8 when the bytes are valid UTF-8, else windows-1252, which has a letter for every byte. */
function decodeUndeclared(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return windows1252(bytes);
  }
}

/**
 * The text of a page: by its byte order mark, else by `charset` (what the server's header said), else by
 * a meta tag anywhere in the head, else as UTF-8 when it is valid UTF-8 and as windows-1252 when not.
 * Never throws; a byte that the encoding does not have becomes U+FFFD.
 */
export function decodePage(bytes: Uint8Array, charset: string | null): string {
  const said = charset === null ? null : encodingOf(charset);
  const encoding = markedEncoding(bytes) ?? said ?? declaredEncoding(bytes);
  return encoding === null ? decodeUndeclared(bytes) : decodeAs(bytes, encoding);
}
