/** Makes ingredient lines and groups out of the values that markup gives for them. */
import type { IngredientGroup } from '../../model.ts';
import { cleanLines, cleanText, isLeftover } from '../document/clean-text.ts';
import { isServingsLine } from '../values/stated-servings.ts';
import type { Json } from './tolerant-json.ts';

/** Most ingredient lines of one recipe, and most characters of one line, that are read. */
export const MAX_LINES = 400;
const MAX_LINE = 1_000;

/** What a value of ingredients says. `glued`: one run-together text, or a summary without amounts. */
export type IngredientList = { groups: IngredientGroup[]; glued: boolean };

/** Marks of a heading or of bold text that some editors leave in: '## Glaze', '**For the glaze**'. */
function withoutMarks(line: string): { line: string; heading: boolean } {
  if (!/^#|\*\*/.test(line)) return { line, heading: false };
  const heading = /^#{1,4}\s|^\*\*[^*\d]+\*\*:?$/.test(line);
  return { line: line.replace(/^#{1,4}\s+/, '').replace(/\*\*([^*]+)\*\*/g, '$1'), heading };
}

/** Puts an ingredient line in order without changing its words: bullets, doubled brackets, repeats. */
export function tidyLine(text: string): string {
  let line = text.length > MAX_LINE ? text.slice(0, MAX_LINE) : text;
  line = line
    .replace(/^(?:[\s•·●○◦▪▫■□▢☐☑✓✔‣➤➢►▸*]+|[-–—]+\s+)+/u, '')
    .replace(/\(\s*\(/g, '(')
    .replace(/\)\s*\)/g, ')')
    .replace(/\(\s*,\s*/g, '(')
    .replace(/\s*\(\s*\)/g, '')
    .replace(/\s+([,;])(?=\s)/g, '$1');
  // An exact repeat of amount and unit, of the unit, or of the amount ('1/2 cup 1/2 butter'): '1 cup 1 cup milk', '500 g g flour'.
  line = line
    .replace(/^(\d[\d.,/]*\s?\p{L}{1,12})\s+\1(?=\s)/iu, '$1')
    .replace(/^(\d[\d.,/]*\s?)(\p{L}{1,12}\.?)\s+\2(?=\s)/iu, '$1$2')
    .replace(/^(\d[\d.,/]*)((?:\s\p{L}{1,12})?)\s+\1(?=\s[\p{L}(])/u, '$1$2');
  return line.trim();
}

/** True for a line that heads a group rather than naming an ingredient. */
export function isHeadingLine(text: string): boolean {
  if (text.length > 70 || /\d|[¼½¾⅓⅔]/.test(text)) return false;
  if (/^(?:optional|note|notes|opcional|facultatif)\s*:/i.test(text)) return false;
  if (/:$/.test(text)) return true;
  return /^\p{Lu}[\p{Lu}\s&'’.-]{3,}$/u.test(text) && /\p{Lu}{3}/u.test(text);
}

const VERSION =
  /^(?:version|variation|option|variante) (?:\d+|[a-d])\b|\b(?:version|variation|variante)$/i;

/** True for a title that names one of several versions of the dish: 'Yeast version', 'Option 2'. */
export function isVersionTitle(title: string): boolean {
  return title.length <= 40 && VERSION.test(title);
}

/** A group's title without its colon; null when nothing is left. */
export function groupTitle(text: string): string | null {
  const title = text.replace(/^[\s*#•▢-]+/, '').replace(/[\s:*#]+$/, '');
  return title === '' ? null : title;
}

/** Sorts flat lines into groups at the headings among them. */
export function groupLines(
  lines: readonly string[],
  title: string | null = null,
): IngredientGroup[] {
  const groups: IngredientGroup[] = [];
  let now: IngredientGroup = { title, lines: [] };
  // Where every line is in capitals, capitals mark nothing.
  const capitals = lines.filter((line) => line === line.toUpperCase()).length;
  const shouting = capitals > lines.length / 2;
  // A line in capitals with no lines after it was an ingredient after all.
  let unsure: string | null = null;
  // The title of a version goes on over the titles of its parts.
  const head = (text: string): IngredientGroup => {
    const before = now.lines.length === 0 && now.title !== null && isVersionTitle(now.title);
    const own = groupTitle(text);
    return { title: before && own !== null ? `${now.title}: ${own}` : own, lines: [] };
  };
  const close = () => {
    if (now.lines.length > 0) groups.push(now);
    else if (unsure !== null) {
      const last = groups.at(-1);
      if (last) last.lines.push(unsure);
      else groups.push({ title: null, lines: [unsure] });
    }
  };
  for (const raw of lines) {
    const marked = withoutMarks(raw);
    const line = tidyLine(marked.line);
    if (line === '' || isLeftover(line) || isServingsLine(line)) continue;
    if (marked.heading) {
      const next = head(line);
      close();
      now = next;
      unsure = null;
    } else if (isHeadingLine(line) && (!shouting || line.endsWith(':'))) {
      const next = head(line);
      close();
      now = next;
      unsure = line.endsWith(':') ? null : line;
    } else now.lines.push(line);
  }
  close();
  return groups;
}

function property(value: { [key: string]: Json }, ...names: string[]): string {
  for (const name of names) {
    const found = value[name];
    if (typeof found === 'string' || typeof found === 'number') return String(found);
  }
  return '';
}

/** The line an object of unknown make stands for: '@value', 'text', or amount, unit and name. */
function lineOfObject(value: { [key: string]: Json }): string {
  const whole = property(value, '@value', 'text', 'original', 'display');
  if (whole !== '') return whole;
  const amount = property(value, 'amount', 'quantity', 'value');
  const unit = property(value, 'unit', 'unitText', 'unitCode');
  const name = property(value, 'name', 'ingredient', 'food', 'item');
  const note = property(value, 'note', 'notes', 'comment');
  const line = [amount, unit, name].filter((part) => part !== '').join(' ');
  return note === '' ? line : `${line}, ${note}`;
}

function fromText(text: string): IngredientList {
  const lines = cleanLines(text);
  if (lines.length > 1) return { groups: groupLines(lines), glued: false };
  const line = lines[0] ?? '';
  if (line === '' || isLeftover(line)) return { groups: [], glued: false };
  const commas = line.split(/\s*[,;]\s*/).filter((part) => part !== '');
  if (!/\d/.test(line) && commas.length > 1) return { groups: groupLines(commas), glued: true };
  return { groups: groupLines([line]), glued: true };
}

/** Reads a `recipeIngredient` value in any of its forms. */
export function readIngredients(value: Json | undefined): IngredientList {
  if (typeof value === 'string') return fromText(value);
  if (value === null || value === undefined || typeof value !== 'object')
    return { groups: [], glued: false };
  if (!Array.isArray(value)) {
    const inner = value.itemListElement;
    if (inner !== undefined) return readIngredients(inner);
    const line = cleanText(lineOfObject(value));
    return { groups: groupLines([line]), glued: false };
  }
  if (value.length === 1 && typeof value[0] === 'string') {
    const only = fromText(value[0]);
    // One short entry is an ingredient; one long one is a list run together.
    const long = (value[0].match(/\d+/g)?.length ?? 0) > 3 || value[0].length > 120;
    return { groups: only.groups, glued: only.glued && long };
  }
  if (value.some(Array.isArray)) {
    const groups = value.flatMap((part) =>
      Array.isArray(part)
        ? groupLines(part.slice(0, MAX_LINES).map(lineOf))
        : groupLines([lineOf(part)]),
    );
    return { groups, glued: false };
  }
  return { groups: groupLines(value.slice(0, MAX_LINES).map(lineOf)), glued: false };
}

function lineOf(value: Json): string {
  if (typeof value === 'string') return cleanText(value);
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return '';
  return cleanText(lineOfObject(value));
}

const AMOUNT = /\d|[¼-¾⅐-⅞一二三四五六七八九十半]/;

/** True when a line states an amount in figures. */
export function hasAmount(line: string): boolean {
  return AMOUNT.test(line);
}
