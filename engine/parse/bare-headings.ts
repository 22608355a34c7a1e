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

/** 'For the frosting', 'Für den Teig': with lines behind it, nothing else. */
const FOR = /^(?:for|fur|pour|para|per|voor|till|til) \p{L}/u;
const MOST_WORDS_FOR = 5;

/** A heading of what comes last. */
const FOODLESS =
  /^(?:to (?:serve|finish|assemble|garnish|decorate)|zum (?:servieren|garnieren|dekorieren|anrichten)|au(?:ss|ß)erdem|pour (?:servir|decorer)|para (?:servir|decorar)|per (?:servire|decorare)|om te serveren|til servering|till servering)$/;

const isBare = ({ kind, text, items, note, optional }: Line): boolean =>
  kind === 'ingredient' &&
  items.length === 1 &&
  items[0]?.amounts.length === 0 &&
  items[0].preparation === null &&
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
  if (behind.length < LINES_BEHIND || !behind.every((one) => hasAmount(one))) return false;
  if (behind.some((one) => one.group !== line.group)) return false;
  if (FOR.test(plain(line.text))) return words.length <= MOST_WORDS_FOR;
  if (words.length > MOST_WORDS || line.purpose !== null) return false;
  if (MADE.has(head)) return isMade(head, steps) || isMade(words.join(' '), steps);
  // A bought one is called by its kind alone: all of the name must come again.
  return words.length > 1 && SOLD.has(head) && isMade(words.join(' '), steps);
}

/**
 * The lines; one without an amount that names what the lines behind it and the method make is a heading, and
 * those behind it are its group.
 */
export function withBareHeadings(lines: readonly Line[], steps: readonly string[]): Line[] {
  // 'To serve' by itself names no food; what stands behind it keeps its own group
  const isFoodless = (line: Line, at: number): boolean =>
    at + 1 < lines.length && isBare(line) && FOODLESS.test(plain(line.text));
  const said = plain(steps.join(' ').slice(0, 8000));
  let heading: { title: string; within: string | null } | null = null;
  return lines.map((line, at) => {
    const behind = lines.slice(at + 1, at + 1 + LINES_BEHIND);
    if (line.kind === 'heading' || (isBare(line) && titles(line, behind, said))) {
      heading = { title: line.text.trim(), within: line.group };
      return { ...line, kind: 'heading' };
    }
    if (isFoodless(line, at)) return { ...line, kind: 'heading' };
    if (heading === null || line.group !== heading.within) return line;
    return { ...line, group: heading.title };
  });
}
