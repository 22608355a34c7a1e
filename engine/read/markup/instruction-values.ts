/** Makes steps out of the values that markup gives for a method. */
import type { Step } from '../../model.ts';
import { cleanLines, cleanText, isLeftover, textKey } from '../document/clean-text.ts';
import type { Json } from './tolerant-json.ts';

export const MAX_STEPS = 300;
/** Depth to which lists in lists of steps are followed. */
const MAX_DEPTH = 8;

/** Starts of '1.', '2)' ... that run in sequence from 1 in a text, or null with fewer than two. */
function runningNumbers(text: string): number[] | null {
  const starts: number[] = [];
  let from = 0;
  for (let n = 1; n <= MAX_STEPS; n += 1) {
    const mark = new RegExp(`(?<![\\d,/]|\\d\\.)${n}\\s?[.):]\\s*(?=[\\p{L}"'(])`, 'u');
    const found = mark.exec(text.slice(from));
    if (!found || (n === 1 && found.index > 40)) break;
    starts.push(from + found.index);
    from += found.index + found[0].length;
  }
  return starts.length >= 2 ? starts : null;
}

function cutAt(text: string, starts: readonly number[]): string[] {
  const parts = starts.map((start, i) => text.slice(start, starts[i + 1]).trim());
  const lead = text.slice(0, starts[0]).trim();
  return lead === '' ? parts : [lead, ...parts];
}

/** Cuts at full stops glued to a capital, the trace of lost paragraphs ('golden.Add'). */
function cutAtGlue(text: string): string[] {
  return text
    .split(/(?<=[\p{Ll}\d)°’”"!?][.!?])(?=\p{Lu}\p{Ll})/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/**
 * Splits one text that holds the whole method: at line breaks and block tags or at running
 * numbers, whichever gives more, else at full stops glued to a capital. It is never cut at every full stop.
 */
export function splitMethod(raw: string): string[] {
  const lines = cleanLines(raw);
  const text = lines.join(' ');
  if (text === '') return [];
  const numbers = runningNumbers(text);
  // A line break within a step or two parts fewer texts than its numbers do.
  if (numbers && numbers.length > lines.length)
    return cutAt(text.replace(/(?:\s\d{1,2}[.)])+$/, ''), numbers);
  return lines.length > 1 ? lines : cutAtGlue(text);
}

const OWN_NUMBER =
  /^(?:(?:step|schritt|étape|etape|paso|passo|stap|steg|trin|trinn)\s*)?(\d{1,2})\s?[.):–-]?\s+(?=\S)/iu;
const GLUED_NUMBER = /^(\d{1,2})[.)]\s*(?=\p{L})/u;

function ownNumber(text: string): { n: number; length: number } | null {
  const found = GLUED_NUMBER.exec(text) ?? OWN_NUMBER.exec(text);
  return found ? { n: Number(found[1]), length: found[0].length } : null;
}

/** Fewest numbers in a row that count though other steps have none: a step in several paragraphs. */
const FEWEST_NUMBERS = 3;

function isSequence(numbers: readonly number[]): boolean {
  const first = numbers[0] ?? 0;
  return numbers.length >= FEWEST_NUMBERS && first <= 2 && numbers.every((n, i) => n === first + i);
}

/** Takes the steps' own numbers off when they run in sequence, and drops empty steps. */
export function tidySteps(steps: readonly Step[]): Step[] {
  const kept = steps.filter((step) => !isLeftover(step.text) && /[\p{L}\p{N}]/u.test(step.text));
  const numbers = kept.map((step) => ownNumber(step.text));
  // A single '1 cup of it ...' is no number of a list; '1. Mix' is.
  const marked = kept.length > 1 || /^(?:\p{L}+\s?)?1\s?[.):]/u.test(kept[0]?.text ?? '');
  const running =
    (marked && numbers.every((own, i) => own !== null && (own.n === i + 1 || own.n === 1))) ||
    isSequence(numbers.flatMap((own) => own?.n ?? []));
  return kept.slice(0, MAX_STEPS).map((step, i) => {
    const own = running ? numbers[i] : null;
    return own ? { section: step.section, text: step.text.slice(own.length).trim() } : step;
  });
}

/** Plain texts to steps of one section. */
export function stepsOf(texts: readonly string[], section: string | null = null): Step[] {
  return tidySteps(texts.map((text) => ({ section, text })));
}

function textIn(value: Json | undefined): string {
  if (typeof value === 'string') return value;
  if (value && typeof value === 'object' && !Array.isArray(value)) {
    const inner = value['@value'];
    if (typeof inner === 'string') return inner;
  }
  return '';
}

/** A step's name when it is a heading of its own, not the text again, cut short, or 'Step 3'. */
function realHeading(name: string, text: string): string | null {
  const label = cleanText(name).replace(/[\s:.]+$/, '');
  if (label === '' || label.length > 80 || isLeftover(label)) return null;
  if (/^\p{L}*\s*#?\d+$/u.test(label)) return null;
  const short = textKey(label.replace(/(?:…|\.\.\.)$/, ''));
  return short === '' || textKey(text).includes(short) ? null : label;
}

type Collected = { section: string | null; text: string };

function collect(
  value: Json | undefined,
  section: string | null,
  depth: number,
  out: Collected[],
): void {
  if (value === undefined || value === null || depth > MAX_DEPTH || out.length > MAX_STEPS) return;
  if (typeof value === 'string') {
    out.push({ section, text: value });
    return;
  }
  if (typeof value !== 'object') return;
  if (Array.isArray(value)) {
    for (const part of value) collect(part, section, depth + 1, out);
    return;
  }
  const type = JSON.stringify(value['@type'] ?? '').toLowerCase();
  const list = value.itemListElement ?? value.steps ?? value.step;
  const text = textIn(value.text);
  const name = textIn(value.name);
  if (
    type.includes('section') ||
    (list !== undefined && text.trim() === '' && !type.includes('step'))
  ) {
    const title = cleanText(name).replace(/[\s:]+$/, '');
    collect(
      list ?? value.text,
      title === '' || isLeftover(title) ? section : title,
      depth + 1,
      out,
    );
    return;
  }
  if (text.trim() !== '') {
    const heading = realHeading(name, text);
    out.push({ section: heading ?? section, text });
    return;
  }
  const before = out.length;
  if (list !== undefined) collect(list, section, depth + 1, out);
  if (value.item !== undefined) collect(value.item, section, depth + 1, out);
  if (out.length > before) {
    // The parts of one step are one step.
    if (type.includes('step') && out.length - before > 1) {
      const parts = out.splice(before).map((part) => cleanText(part.text));
      out.push({ section, text: parts.join(' ') });
    }
    return;
  }
  const rest = name.trim() !== '' ? name : textIn(value.description);
  if (rest.trim() !== '') out.push({ section, text: rest });
}

/** Reads a `recipeInstructions` value in any of its forms. Never throws. */
export function readInstructions(value: Json | undefined): Step[] {
  const parts: Collected[] = [];
  collect(value, null, 0, parts);
  const whole = parts.length === 1;
  const steps: Step[] = [];
  for (const part of parts) {
    const texts = whole ? splitMethod(part.text) : cutAtGlue(cleanText(part.text));
    for (const text of texts) steps.push({ section: part.section, text });
  }
  return tidySteps(steps);
}
