/** Decides, field by field, whether the visible page should stand in for the markup. */
import type { IngredientGroup, Step } from '../model.ts';
import { textKey } from './document/clean-text.ts';
import { linesIn } from './draft.ts';
import { hasAmount } from './markup/ingredient-values.ts';
import {
  foodWords,
  isSentence,
  looksLikeIngredient,
  startsWithFigure,
} from './visible/line-shapes.ts';

/** Words and figures of a line, in order. */
function tokens(line: string): string[] {
  // '1½' and '1 1/2' are the same figures.
  const plain = line
    .replace(/(\d)(?=[¼-¾⅐-⅞])/g, '$1 ')
    .normalize('NFKC')
    .replace(/⁄/g, '/');
  const found = plain.toLowerCase().match(/\p{L}+|\d+(?:[.,/]\d+)?/gu) ?? [];
  return found.map((token) => token.replace(',', '.'));
}

/** Letters of a word's end that may differ: 'tomato' and 'tomatoes'. */
const ENDING = 3;
const SHORTEST_STEM = 4;

function isSameWord(one: string, other: string): boolean {
  if (one === other || /^\d/.test(one)) return one === other;
  const stem = Math.max(SHORTEST_STEM, Math.min(one.length, other.length) - ENDING);
  return one.length >= stem && one.slice(0, stem) === other.slice(0, stem);
}

/** True when each word and figure of `part` stands in `whole`, in any order. */
function holds(whole: readonly string[], part: readonly string[]): boolean {
  const left = [...whole];
  return part.every((token) => {
    const at = left.findIndex((other) => isSameWord(token, other));
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}

/** How many times the marked-up lines the page may show, and the share of the others that must be foods. */
const MOST_MORE = 3;
const MOSTLY = 2 / 3;

/** Letters of a line without its figures. */
function lettersOf(line: string): number {
  return textKey(line).replace(/\d/g, '').length;
}

/** Shortest beginning of a line that counts as that line cut off (letters and figures). */
const SHORTEST_START = 5;

/** True when the page shows every marked-up line and, among them, more lines of other foods. */
function leavesOut(own: readonly string[], shown: readonly string[]): boolean {
  if (own.length < 3 || shown.length > own.length * MOST_MORE) return false;
  const keys = own.map(textKey);
  const foods = new Set(own.map(foodWords));
  // The last line of markup that is cut off is the beginning of the page's.
  const isOwn = (line: string) => {
    const key = textKey(line);
    return keys.some((one) => one === key || (one.length >= SHORTEST_START && key.startsWith(one)));
  };
  const extra = shown.filter((line) => !isOwn(line));
  return (
    shown.length - extra.length >= own.length &&
    extra.length > 0 &&
    extra.filter((line) => looksLikeIngredient(line) && !foods.has(foodWords(line))).length >=
      extra.length * MOSTLY
  );
}

/** Share of the lines that are sentences without an amount first: then they are no ingredients. */
const PROSE = 0.5;

function isProse(lines: readonly string[]): boolean {
  const sentences = lines.filter((line) => isSentence(line) && !startsWithFigure(line));
  return sentences.length > lines.length * PROSE;
}

const isBroken = (line: string): boolean => line.includes('\ufffd');

/**
 * Whether the page's list should stand in for the marked-up one: that one is empty, a glued text or a
 * summary, has no amounts where the page has them, or is the page's list with words cut off.
 */
export function pageListIsFuller(
  marked: { groups: readonly IngredientGroup[]; glued: boolean },
  page: { groups: readonly IngredientGroup[]; headed: boolean },
): string | null {
  const own = linesIn(marked);
  const shown = linesIn(page);
  if (shown.length === 0) return null;
  if (own.length === 0) return 'the markup lists none';
  if (marked.glued && shown.length > 1) return 'the markup runs them together';
  if (!own.some(hasAmount) && shown.length >= own.length && shown.some(hasAmount))
    return 'the markup leaves the amounts out';
  if (isProse(own) && !isProse(shown) && shown.some(hasAmount)) return 'the markup gives sentences';
  // Finer differences count only under a heading that says these are the ingredients.
  if (!page.headed) return null;
  if (own.length < shown.length && leavesOut(own, shown)) return 'the markup lists fewer';
  if (own.length !== shown.length) return null;
  if (own.some(isBroken) && !shown.some(isBroken)) return 'the markup has broken letters';
  const same = own.every((line, i) => holds(tokens(shown[i] ?? ''), tokens(line)));
  // Figures that stand there twice make no line fuller.
  const length = (lines: readonly string[]) =>
    lines.reduce((sum, line) => sum + lettersOf(line), 0);
  if (same && length(shown) > length(own) && length(shown) < length(own) * 2)
    return 'the markup cuts the lines short';
  return null;
}

/** Share of the markup's lines that the page must show with their amounts first. Own choice. */
const REORDERED = 0.8;

/**
 * The page's groups, when the markup writes amounts after names ('flour 200g') and the page shows the same
 * words the usual way round; what only the markup has follows them. Null when it is not so.
 */
export function amountsFirst(
  marked: readonly IngredientGroup[],
  page: { groups: readonly IngredientGroup[]; headed: boolean },
): IngredientGroup[] | null {
  const own = linesIn({ groups: marked });
  const shown = linesIn(page);
  if (!page.headed || own.length < 3 || own.filter(startsWithFigure).length > own.length / 3)
    return null;
  const left = own.map((line) => tokens(line));
  for (const line of shown) {
    const at = left.findIndex((words) => holds(tokens(line), words));
    if (at < 0) return null;
    left.splice(at, 1);
  }
  const turned = shown.filter(startsWithFigure).length;
  if (turned < own.length * REORDERED - 1 || left.length > own.length * (1 - REORDERED))
    return null;
  const rest = own.filter((line) => left.some((words) => words.join() === tokens(line).join()));
  return rest.length === 0 ? [...page.groups] : [...page.groups, { title: null, lines: rest }];
}

/** Lines whose figures differ between markup and page though their words agree. */
export function differingAmounts(
  marked: readonly IngredientGroup[],
  page: readonly IngredientGroup[],
): { marked: string; page: string }[] {
  const own = linesIn({ groups: marked });
  const shown = linesIn({ groups: page });
  if (own.length !== shown.length) return [];
  const words = (line: string) =>
    tokens(line)
      .filter((token) => !/^\d/.test(token))
      .join(' ');
  const figures = (line: string) =>
    tokens(line)
      .filter((token) => /^\d/.test(token))
      .join(' ');
  const out: { marked: string; page: string }[] = [];
  own.forEach((line, i) => {
    const other = shown[i] ?? '';
    if (words(line) === words(other) && figures(line) !== figures(other) && figures(line) !== '')
      out.push({ marked: line, page: other });
  });
  return out;
}

/** Letters and figures of all steps, one after the other. */
function joined(steps: readonly Step[]): string {
  return steps.map((step) => textKey(step.text)).join('');
}

/** Shares of length above which a method is another's whole, or an article. Own choice. */
const WHOLE = 1.3;
const ARTICLE = 3;
/** Share of the page's steps that an article must hold, and of it that must come before them. */
const HELD = 0.6;
const TALK = 0.3;
const FEWEST_STEPS = 3;
/** Shortest method that may stand in for an article (letters). */
const FEWEST_LETTERS = 150;

/** The marked-up text holds the page's steps, and much else, or much talk before them. */
function isArticle(
  marked: readonly Step[],
  own: string,
  page: readonly Step[],
  shown: number,
): boolean {
  if (page.length < FEWEST_STEPS || shown <= FEWEST_LETTERS) return false;
  if (marked.length === 1 && own.length > shown * ARTICLE) return true;
  const places = page.map((step) => own.indexOf(textKey(step.text)));
  const held = places.filter((place) => place >= 0);
  if (held.length < page.length * HELD) return false;
  return own.length > shown * ARTICLE || Math.min(...held) > own.length * TALK;
}

/** The page's steps begin with all of the marked-up ones and go on well beyond them. */
function stopsEarly(marked: readonly Step[], page: readonly Step[], shown: string): boolean {
  if (page.length < marked.length + 2) return false;
  const own = joined(marked);
  return shown.length > own.length * WHOLE && own.length > 0 && shown.startsWith(own);
}

/**
 * Whether the page's method should stand in for the marked-up one: that one is empty, one long text that
 * the page shows in steps, stops before the page's does, or is an article round the page's steps.
 */
export function pageStepsAreBetter(
  marked: readonly Step[],
  { steps: page, listed }: { steps: readonly Step[]; listed: boolean },
): string | null {
  if (page.length === 0) return null;
  if (marked.length === 0) return 'the markup gives none';
  const own = joined(marked);
  const shown = joined(page);
  const alike = own.length < shown.length * WHOLE && shown.length < own.length * WHOLE;
  if (marked.length === 1 && page.length > 1 && alike) return 'the markup gives one text';
  // Paragraphs after the last step may be anything.
  if (listed && stopsEarly(marked, page, shown)) return 'the markup stops early';
  return isArticle(marked, own, page, shown.length) ? 'the markup gives an article' : null;
}
