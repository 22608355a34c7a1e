/** Cleans a line of what is not language: entities left over, bullets, marks, prices. */
import entities from '../data/leftover-entities.json' with { type: 'json' };

/** Named entities that survive in recipe markup. */
const ENTITIES: Readonly<Record<string, string>> = entities;

/** Resolves the named and numeric entities that survive in recipe markup; unknown ones stay. */
function decodeEntities(text: string): string {
  return text.replace(/&(#x?[\da-f]+|[a-z]+\d*);?/gi, (whole, name: string) => {
    if (!name.startsWith('#')) return ENTITIES[name.toLowerCase()] ?? whole;
    const code = Number(name.slice(1).replace(/^x/i, '0x'));
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
  });
}

/** What a line that needs cleaning has; most lines have nothing of it. */
const UNTIDY =
  /[^ -~½¼¾⅓⅔⅛–’é]|[&<*$[\]"]| {2}|^[ -]| $|[A-Za-z]\([a-z]{1,3}\)|^\d{1,2}\)|:\/\/|^(?:k?gr?|[mcd]?l)\.? \d|\/[en]/;

/** 'gr. 500 di farina': the unit stands before its number. */
const UNIT_FIRST = /^(k?gr?|[mcd]?l)\.?\s+(\d+(?:[.,]\d+)?)(?![\d.,/]|\s*(?:k?gr?|[mcd]?l)\b)/;
const PRICE = /(?:\(\s*)?[$€£¥]\s?\d+(?:[.,]\d+)?(?:\s*\))?/g;
/** Bullets, ticked boxes and list numbers, however many stand there. */
const BULLETS = /^(?:[\s•·●○◦▪▢□☐☑☒■✓✔✗‣⁃]|[-–—]\s|\[[ xX]?\]|\d{1,2}\)\s+(?=\d))+/;
const QUOTED = /^["“”„«‹](.+)["“”»›]$/;
const RAISED_FRACTION = /([⁰¹²³⁴-⁹]+)[/⁄∕]([₀-₉]+|\d+)/g;
const FOOTNOTE = /(?<=\p{L})[⁰¹²³⁴-⁹]+(?!\p{L})|\*+|[†‡§]|\[\d+\]/gu;

/**
 * One line as plain text: entities decoded, markup and invisible characters removed; bullets, list
 * numbers, footnote marks, prices, web addresses and quotes round the whole line dropped; spaces
 * single. Returns '' for a line with nothing in it.
 */
export function tidy(text: string): string {
  if (!UNTIDY.test(text)) return text;
  const t = decodeEntities(text.replaceAll('&amp;', '&'))
    .replace(/<sup>\s*(\d+)\s*<\/sup>\s*(?:&frasl;|[/⁄])\s*<sub>\s*(\d+)\s*<\/sub>/gi, ' $1/$2')
    .replace(/<\/?[a-z][^>]*>/gi, ' ')
    .replace(PRICE, ' ')
    .replace(/[\u200b-\u200f\u2060\ufeff\u00ad]/g, '')
    .replace(/(?<=\d)\u202f(?=\d{3}(?!\d))/g, '')
    .replace(RAISED_FRACTION, (fraction) => ` ${fraction.normalize('NFKD')}`)
    .replace(FOOTNOTE, ' ')
    .replace(/https?:\/\/\S+/g, ' ')
    .trim();
  return t
    .replace(BULLETS, '')
    .replace(QUOTED, '$1')
    .replace(UNIT_FIRST, '$2 $1')
    .replace(/\bm\.-(?=gro)/gi, 'mittel')
    .replace(/(\p{L})\((?:e?n|nen|er?|e?s|x|r)\)|(?<=\p{L}{3})\/(?:e?n|er?)(?!\p{L})/giu, '$1')
    .replace(/\s+/g, ' ')
    .trim();
}
