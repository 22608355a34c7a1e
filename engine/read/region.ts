import { textKey } from './clean.ts';
import { type Draft, linesIn } from './draft.ts';

/** Share of the marked-up lines a part of the page must hold (common practice, no source). */
const HELD = 0.8;
/** Levels gone down at most. */
const MAX_LEVELS = 60;
/** Characters of a page's text above which looking for the part would take longer than it saves. */
const MAX_PAGE = 2_000_000;
/** Characters the heading above the list may add when the part's parent is taken in its place. */
const MARGIN = 1_500;

const UNREAD = new Set(['SCRIPT', 'STYLE', 'TEMPLATE', 'NOSCRIPT', 'SVG', 'svg']);
/** Parts that the reading of the whole page treats apart; see the class words in blocks.ts. */
const SIDE =
  /(?:^|[\s_-])(?:comment|respond|review|related|sidebar|breadcrumb|cookie|newsletter|share|social|menu|navbar|navigation|footer)/i;

/** The longest word of each text: what is looked for first, because that is cheap. */
function telling(texts: readonly string[]): string[] {
  const words = texts.map((text) =>
    (text.match(/\p{L}{3,}/gu) ?? []).reduce((a, b) => (b.length > a.length ? b : a), ''),
  );
  return [...new Set(words)].filter((word) => word !== '');
}

function holds(text: string, parts: readonly string[]): boolean {
  let missing = 0;
  const allowed = parts.length * (1 - HELD);
  for (const part of parts) {
    if (text.includes(part)) continue;
    missing += 1;
    if (missing > allowed) return false;
  }
  return true;
}

function isSide(element: Element): boolean {
  if (/^(?:NAV|FOOTER|ASIDE)$/i.test(element.tagName)) return true;
  return SIDE.test(` ${element.getAttribute('class') ?? ''} ${element.id}`);
}

/** The only child that holds the words, or of several the only one that holds the lines. */
function childWith(
  parent: Element,
  words: readonly string[],
  keys: readonly string[],
): Element | null {
  const fitting: Element[] = [];
  for (let kid = parent.firstElementChild; kid; kid = kid.nextElementSibling) {
    if (UNREAD.has(kid.tagName)) continue;
    if (holds(kid.textContent ?? '', words)) fitting.push(kid);
  }
  if (fitting.length < 2) return fitting[0] ?? null;
  const exact = fitting.filter((kid) => holds(textKey(kid.textContent ?? ''), keys));
  return exact.length === 1 ? (exact[0] as Element) : null;
}

/**
 * The smallest part of the page that shows a marked-up recipe's lines, with what stands around it,
 * so that the rest of a large page need not be looked at. Null when the page does not show them, shows
 * them in a side part, or only as a whole, or when `spent` answers true.
 */
export function recipeRegion(
  document: Document,
  draft: Draft,
  spent: () => boolean,
): Element | null {
  const { body } = document;
  if (!body || (body.textContent ?? '').length > MAX_PAGE) return null;
  const lines = linesIn(draft);
  const words = telling([...lines, ...draft.steps.map((step) => step.text)]);
  const keys = lines.map(textKey);
  let at: Element = body;
  for (let level = 0; level < MAX_LEVELS; level += 1) {
    if (spent()) return null;
    const next = childWith(at, words, keys);
    if (!next) break;
    at = next;
  }
  while (at !== body && !spent() && !holds(textKey(at.textContent ?? ''), keys))
    at = at.parentElement ?? body;
  const size = (at.textContent ?? '').length;
  for (let up = at.parentElement; up && up !== body; up = up.parentElement) {
    if (spent() || (up.textContent ?? '').length > size + MARGIN) break;
    at = up;
  }
  if (at === body) return null;
  for (let up: Element | null = at; up && up !== body; up = up.parentElement)
    if (isSide(up)) return null;
  return at;
}
