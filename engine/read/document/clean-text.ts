/** Cleans text values of markup and pages: entities, tags, blanks, invisible characters. */
import { isBlock } from './block-tags.ts';
import { decodeEntities } from './html-entities.ts';

/** Longest single text value that is read; the rest is cut off (characters). */
const MAX_TEXT = 200_000;

const WORD_END = /[\p{L}\p{N}]$/u;
const WORD_START = /^[\p{L}\p{N}¼-¾⅐-⅞]/u;

/**
 * Whether a blank belongs between two pieces of text that inline tags part. `elementsTouch` says that two
 * elements touch, so words are separate; else letters on both sides are one word ('egg' + 's').
 */
export function needsBlank(left: string, right: string, elementsTouch: boolean): boolean {
  // A bracket in an element of its own is a remark: 'flour' + '(sifted)'.
  if (elementsTouch && /^\([^)]{3}/.test(right)) return WORD_END.test(left.slice(-2));
  if (!WORD_END.test(left.slice(-2)) || !WORD_START.test(right)) return false;
  if (elementsTouch) return true;
  return /\p{N}$/u.test(left) || /^\p{N}/u.test(right);
}

/** Takes out scripts, styles and comments; one that never closes takes the rest with it. */
function dropUnread(text: string): string {
  const opening = /<(?:(script|style)\b|!--)/gi;
  let out = '';
  let from = 0;
  for (let found = opening.exec(text); found; found = opening.exec(text)) {
    out += text.slice(from, found.index);
    const closing = found[1] ? new RegExp(`</${found[1]}\\s*>`, 'gi') : /-->/g;
    closing.lastIndex = opening.lastIndex;
    if (!closing.exec(text)) return out;
    from = closing.lastIndex;
    opening.lastIndex = from;
  }
  return out + text.slice(from);
}

/** Removes tags from text: block tags and `<br>` become line breaks, others vanish. */
function stripTags(text: string): string {
  let out = '';
  let last = 0;
  let pending = false;
  let tags = 0;
  const add = (piece: string) => {
    if (piece === '') return;
    if (pending && needsBlank(out, piece, tags > 1)) out += ' ';
    out += piece;
    pending = false;
    tags = 0;
  };
  const bare = dropUnread(text);
  for (const tag of bare.matchAll(/<\/?([a-zA-Z][a-zA-Z0-9-]{0,20})(?:\s[^<>]{0,2000})?\/?>/g)) {
    add(bare.slice(last, tag.index));
    last = tag.index + tag[0].length;
    if (isBlock((tag[1] ?? '').toLowerCase())) {
      out += '\n';
      pending = false;
    } else {
      pending = true;
      tags += 1;
    }
  }
  add(bare.slice(last));
  return out;
}

const INVISIBLE = /[\u00ad\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufffc]/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is removed
const CONTROL = /[\u0000-\u0008\u000b\u000e-\u001f\u007f]/g;
/** Arabic, Persian and full-width digits, written the same as '0' to '9' hereafter. */
const OTHER_DIGITS = /[\u0660-\u0669\u06f0-\u06f9\uff10-\uff19]/g;
const PLAIN = /^[\x20-\x25\x27-\x3b\x3d-\x7e]*$/;

/**
 * Cleans a text value and keeps its line breaks: entities decoded, tags removed, invisible
 * characters and text-direction overrides dropped, blanks collapsed. Lines are trimmed, empty
 * lines go.
 */
export function cleanLines(raw: string): string[] {
  const text = raw.length > MAX_TEXT ? raw.slice(0, MAX_TEXT) : raw;
  if (PLAIN.test(text)) {
    const line = text.replace(/ {2,}/g, ' ').trim();
    return line === '' ? [] : [line];
  }
  let now = decodeEntities(text);
  if (/<[a-zA-Z/!]/.test(now)) now = stripTags(now);
  now = now
    .replace(INVISIBLE, '')
    .replace(CONTROL, '')
    .replace(/\u00c2(?=[\u00a0\s]|[¼-¾°])/g, '')
    .replace(/\u2044/g, '/')
    .replace(OTHER_DIGITS, (digit) => String(digit.charCodeAt(0) & 15));
  const lines: string[] = [];
  for (const part of now.split(/[\r\n\f\u2028\u2029]+/)) {
    const line = part.replace(/[\s\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]+/g, ' ').trim();
    if (line !== '') lines.push(line);
  }
  return lines;
}

/** Cleans a text value to one line; see {@link cleanLines}. */
export function cleanText(raw: string): string {
  return cleanLines(raw).join(' ');
}

const PLAIN_TEXT = /^[\x20-\x7e]*$/;

/** Letters and digits only, lower case: equal for texts that differ in blanks and punctuation. */
export function textKey(text: string): string {
  if (PLAIN_TEXT.test(text)) return text.toLowerCase().replace(/[^a-z0-9]+/g, '');
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '');
}

/** True for what templates leave behind when a value is missing. */
export function isLeftover(text: string): boolean {
  return /^(?:undefined|null|nan|none|n\/a|false|true|\[object object\])?$/i.test(text.trim());
}
