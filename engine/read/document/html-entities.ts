/** Decodes character references ('&eacute;', '&#189;') without parsing markup. */
import named from '../data/html-entities.json' with { type: 'json' };

const NAMED = new Map<string, string>(Object.entries(named));

/**
 * Windows-1252 characters that numeric references 128-159 stand for.
 * Source: WHATWG HTML, numeric character reference end state.
 */
const C1 =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

/** Combining marks that names of accented letters end in: 'eacute' is an e with an acute. */
const ACCENTS: Record<string, string> = {
  acute: '\u0301',
  grave: '\u0300',
  circ: '\u0302',
  uml: '\u0308',
  tilde: '\u0303',
  caron: '\u030c',
  cedil: '\u0327',
  ring: '\u030a',
  breve: '\u0306',
  ogon: '\u0328',
  macr: '\u0304',
  dot: '\u0307',
  dblac: '\u030b',
};

/** The accented letter a name spells, where there is one. */
function accented(name: string): string | undefined {
  const mark = ACCENTS[name.slice(1)];
  const letter = mark === undefined ? '' : ((name[0] ?? '') + mark).normalize('NFC');
  return letter.length === 1 ? letter : undefined;
}

function fromCode(code: number): string {
  if (code >= 0x80 && code <= 0x9f) return C1[code - 0x80] ?? '';
  if (!(code > 0 && code <= 0x10ffff) || (code >= 0xd800 && code <= 0xdfff)) return '\ufffd';
  return String.fromCodePoint(code);
}

function decodeOnce(text: string): string {
  return text.replace(
    /&(?:#[xX]([0-9a-fA-F]{1,6})|#([0-9]{1,7})|([A-Za-z][A-Za-z0-9]{1,12}));?/g,
    (whole, hex?: string, decimal?: string, name?: string) => {
      if (hex) return fromCode(Number.parseInt(hex, 16));
      if (decimal) return fromCode(Number.parseInt(decimal, 10));
      const found = NAMED.get(name ?? '') ?? accented(name ?? '');
      // Without its semicolon only the oldest names count, so that '&copyright' or '&part' stay.
      if (
        found === undefined ||
        (!whole.endsWith(';') && !/^(?:nbsp|amp|lt|gt|quot)$/.test(name ?? ''))
      )
        return whole;
      return found;
    },
  );
}

/**
 * Decodes HTML character references, also ones encoded twice (three rounds at most). Pure text in,
 * pure text out: nothing is parsed as markup. Unknown names stay as they are.
 */
export function decodeEntities(text: string): string {
  let now = text;
  for (let round = 0; round < 3 && now.includes('&'); round += 1) {
    const next = decodeOnce(now);
    if (next === now) break;
    now = next;
  }
  return now;
}
