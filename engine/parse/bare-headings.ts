/** Headings that a page lists like ingredients: 'Apple slaw', 'Chipotle mayo' before the lines they are made of. */
import { withoutAccents } from '../accents.ts';
import type { Line } from '../model.ts';
import data from './data/part-names.json' with { type: 'json' };

const wordSet = (words: string): ReadonlySet<string> => new Set(plain(words).split(' '));
const MADE = wordSet(data.made);
const SOLD = wordSet(data.sold);
const MAKES = plain(data.makes);

/** More words are a sentence or a food with its preparation. Own choice. */
const MOST_WORDS = 4;
/** So many lines with amounts behind it show that it titles them. Own choice. */
const LINES_BEHIND = 2;
const BARE = /^[\p{L}\p{M}'’ -]+$/u;

function plain(text: string): string {
  return withoutAccents(text.toLowerCase()).trim();
}

const hasAmount = (line: Line): boolean =>
  line.kind === 'ingredient' && (line.items[0]?.amounts.length ?? 0) > 0;

const isBare = ({ kind, text, items, purpose, note, optional }: Line): boolean =>
  kind === 'ingredient' &&
  items.length === 1 &&
  items[0]?.amounts.length === 0 &&
  items[0].preparation === null &&
  purpose === null &&
  note === null &&
  !optional &&
  BARE.test(text.trim());

/** 'For the slaw', 'make the chipotle mayo': the method makes it. */
const isMade = (name: string, steps: string): boolean =>
  new RegExp(`\\b(?:${MAKES})\\b[^.]{0,12}? ${name.replace(/[^\p{L}' -]/gu, '')}\\b`, 'u').test(
    steps,
  );

function titles(line: Line, behind: readonly Line[], steps: string): boolean {
  const words = plain(line.text).split(/\s+/);
  const head = words.at(-1) ?? '';
  if (words.length > MOST_WORDS || behind.length < LINES_BEHIND) return false;
  if (!behind.every((one) => hasAmount(one))) return false;
  if (behind.some((one) => one.group !== line.group)) return false;
  if (MADE.has(head)) return isMade(head, steps) || isMade(words.join(' '), steps);
  // A bought one is called by its kind alone: all of the name must come again.
  return words.length > 1 && SOLD.has(head) && isMade(words.join(' '), steps);
}

/** The lines; one without an amount that names what the lines behind it and the method make is a heading. */
export function withBareHeadings(lines: readonly Line[], steps: readonly string[]): Line[] {
  const said = plain(steps.join(' ').slice(0, 8000));
  return lines.map((line, at) =>
    isBare(line) && titles(line, lines.slice(at + 1, at + 1 + LINES_BEHIND), said)
      ? { ...line, kind: 'heading' }
      : line,
  );
}
