/**
 * A tolerant JSON parser for markup that strict parsers refuse: raw line breaks in strings, trailing
 * or missing commas, comments and CDATA wrappers, unknown escapes, single quotes, inner quotes,
 * truncation. It never throws, does not recurse, and never sets a prototype.
 */

/** Plain JSON data; objects have no prototype. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

type Frame = { value: Json[] | { [key: string]: Json }; key: string | null };

const CLOSERS = ',:}]';

class Scanner {
  at = 0;
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }

  /** Skips blanks, comments and wrappers outside strings. */
  skip(): void {
    const { text } = this;
    for (;;) {
      const c = text.charCodeAt(this.at);
      if (c <= 32 || c === 0xfeff || c === 0xa0) this.at += 1;
      else if (text.startsWith('<![CDATA[', this.at)) this.at += 9;
      else if (text.startsWith(']]>', this.at) || text.startsWith('-->', this.at)) this.at += 3;
      else if (text.startsWith('<!--', this.at)) this.at += 4;
      else if (text.startsWith('//', this.at)) {
        // A comment line; but a wrapper inside it ('//<![CDATA[ {') is skipped on its own.
        const wrapper = /^\/\/\s*(?:<!\[CDATA\[|\]\]>)/.exec(text.slice(this.at, this.at + 40));
        const end = text.indexOf('\n', this.at);
        this.at = wrapper ? this.at + wrapper[0].length : end < 0 ? text.length : end + 1;
      } else if (text.startsWith('/*', this.at)) {
        const end = text.indexOf('*/', this.at + 2);
        this.at = end < 0 ? text.length : end + 2;
      } else return;
      if (this.at >= text.length) return;
    }
  }

  /** The character after `from`, blanks passed over, or '' at the end. */
  private nextVisible(from: number): string {
    let i = from;
    while (i < this.text.length && this.text.charCodeAt(i) <= 32) i += 1;
    return this.text[i] ?? '';
  }

  /** Reads a quoted string whose opening quote is at `at`. */
  string(): string {
    const { text } = this;
    const quote = text[this.at] ?? '"';
    let out = '';
    let i = this.at + 1;
    let from = i;
    for (; i < text.length; i += 1) {
      const c = text[i];
      if (c === '\\') {
        out += text.slice(from, i);
        const [piece, length] = escapeAt(text, i + 1);
        out += piece;
        i += length;
        from = i + 1;
      } else if (c === quote) {
        const next = this.nextVisible(i + 1);
        if (next === '' || CLOSERS.includes(next) || next === '"' || next === ';') break;
      }
    }
    out += text.slice(from, i);
    this.at = i + 1;
    return out;
  }

  /** Reads a bare word or number up to a delimiter. */
  bare(): Json {
    const match = /[^,:{}[\]\s"]+/y;
    match.lastIndex = this.at;
    const word = match.exec(this.text)?.[0] ?? '';
    if (word === '') {
      this.at += 1;
      return null;
    }
    this.at += word.length;
    if (word === 'true') return true;
    if (word === 'false') return false;
    if (/^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/.test(word)) return Number(word);
    return word === 'null' || word === 'undefined' || word === 'NaN' ? null : word;
  }
}

const ESCAPES: Record<string, string> = {
  b: '\b',
  f: '\f',
  n: '\n',
  r: '\r',
  t: '\t',
};

/** What the escape after a backslash stands for, and how many characters it takes. */
function escapeAt(text: string, at: number): [string, number] {
  const c = text[at];
  if (c === undefined) return ['', 0];
  if (c === 'u') {
    const hex = text.slice(at + 1, at + 5);
    if (/^[0-9a-fA-F]{4}$/.test(hex)) return [String.fromCharCode(Number.parseInt(hex, 16)), 5];
  }
  return [ESCAPES[c] ?? c, 1];
}

function isEmpty(value: Json): boolean {
  return value === null || value === '' || (Array.isArray(value) && value.length === 0);
}

/** Puts a value into the open frame; of a doubled key the last one that is not empty wins. */
function put(frame: Frame, value: Json): void {
  if (Array.isArray(frame.value)) {
    frame.value.push(value);
    return;
  }
  if (frame.key === null) return;
  const before = frame.value[frame.key];
  if (before === undefined || isEmpty(before) || !isEmpty(value)) frame.value[frame.key] = value;
  frame.key = null;
}

/** How many open frames a stray closer may reach over; bounds the work on hostile input. */
const CLOSER_REACH = 16;

/** Reads one value from the scanner; what is still open at the end of input counts as closed. */
function readValue(scanner: Scanner): Json {
  const { text } = scanner;
  const stack: Frame[] = [];
  let root: Json = null;
  const give = (value: Json): void => {
    const top = stack.at(-1);
    if (top) put(top, value);
    else root = value;
  };
  for (;;) {
    scanner.skip();
    if (scanner.at >= text.length) return root;
    const c = text[scanner.at];
    const top = stack.at(-1);
    if (c === '{' || c === '[') {
      const value: Json = c === '{' ? Object.create(null) : [];
      give(value);
      stack.push({ value: value as Frame['value'], key: null });
      scanner.at += 1;
    } else if (c === '}' || c === ']') {
      scanner.at += 1;
      // A closer of the wrong kind closes the nearest frame of its kind, if there is one.
      const from = Math.max(0, stack.length - CLOSER_REACH);
      for (let i = stack.length - 1; i >= from; i -= 1) {
        if (Array.isArray(stack[i]?.value) !== (c === ']')) continue;
        stack.length = i;
        break;
      }
    } else if (c === ',' || c === ':' || c === ';') {
      scanner.at += 1;
    } else {
      const value = c === '"' || c === "'" ? scanner.string() : scanner.bare();
      if (top && !Array.isArray(top.value) && top.key === null) {
        scanner.skip();
        if (text[scanner.at] === ':') top.key = String(value);
      } else give(value);
    }
    if (stack.length === 0) return root;
  }
}

/** Most top-level values read from one script. */
const MAX_VALUES = 50;

/**
 * Reads every value in a text, the way {@link readValue} does. Returns an empty list when nothing
 * can be made out. Never throws.
 */
export function parseTolerant(text: string): Json[] {
  const scanner = new Scanner(text);
  const values: Json[] = [];
  while (values.length < MAX_VALUES) {
    // Anything outside an object or list at the top is noise ('var x =', ';', a stray word).
    const open = /[{[]/g;
    scanner.skip();
    open.lastIndex = scanner.at;
    const found = open.exec(text);
    if (!found) break;
    scanner.at = found.index;
    values.push(readValue(scanner));
  }
  return values;
}

/** Strict parse first, then the tolerant one. Returns the values found, possibly none. */
export function parseJson(text: string): Json[] {
  if (text.trim() === '') return [];
  try {
    return [JSON.parse(text) as Json];
  } catch {
    return parseTolerant(text);
  }
}
