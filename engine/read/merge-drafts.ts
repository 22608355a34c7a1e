/** Merges what several markups of a page say about one recipe, and orders the recipes of a page. */
import { textKey } from './document/clean-text.ts';
import { type Draft, linesIn } from './draft.ts';

/** True when two titles name the same dish: equal, or one within the other. */
export function titlesAgree(a: string | null, b: string | null): boolean {
  const one = textKey(a ?? '');
  const two = textKey(b ?? '');
  if (one === '' || two === '') return false;
  if (one === two) return true;
  const [short, long] = one.length < two.length ? [one, two] : [two, one];
  return short.length >= 6 && long.includes(short);
}

/** How full a draft is, with weight on agreeing with the page's main heading. */
function fullness(draft: Draft, heading: string | null): number {
  const lines = linesIn(draft).length;
  return (
    (lines > 0 ? 4 : 0) +
    (draft.steps.length > 0 ? 4 : 0) +
    Math.min(lines, 20) / 10 +
    Math.min(draft.steps.length, 10) / 20 +
    (titlesAgree(draft.title, heading) ? 6 : 0)
  );
}

/** Fills what a draft lacks from another, field by field; the first one wins where both speak. */
export function fillFrom(draft: Draft, other: Draft): Draft {
  const takeLines =
    draft.groups.length === 0 || (draft.glued && !other.glued && other.groups.length > 0);
  return {
    markup: draft.markup,
    title: draft.title ?? other.title,
    url: draft.url ?? other.url,
    language: draft.language ?? other.language,
    author: draft.author ?? other.author,
    image: draft.image ?? other.image,
    yields: draft.yields.length > 0 ? draft.yields : other.yields,
    otherYields: [
      ...draft.otherYields,
      ...(draft.yields.length > 0 ? other.yields : []),
      ...other.otherYields,
    ],
    groups: takeLines ? other.groups : draft.groups,
    glued: takeLines ? other.glued : draft.glued,
    steps: draft.steps.length > 0 ? draft.steps : other.steps,
    times: {
      prep: [...draft.times.prep, ...other.times.prep],
      cook: [...draft.times.cook, ...other.times.cook],
      total: [...draft.times.total, ...other.times.total],
    },
    nutrition: draft.nutrition ?? other.nutrition,
    unsure: draft.unsure && other.unsure,
  };
}

/** Without lines and without steps. */
export function isBare(draft: Draft): boolean {
  return draft.groups.length === 0 && draft.steps.length === 0;
}

function sameRecipe(a: Draft, b: Draft): boolean {
  const one = linesIn(a);
  const two = linesIn(b);
  if (one.length > 0 && two.length > 0) {
    const keys = new Set(one.map(textKey));
    const shared = two.filter((line) => keys.has(textKey(line))).length;
    if (shared >= Math.min(one.length, two.length) * 0.6) return true;
  }
  // Two markups of one page rarely word the title alike; two nodes of one markup do.
  if (a.markup !== b.markup) return titlesAgree(a.title, b.title);
  return textKey(a.title ?? '') === textKey(b.title ?? '') && textKey(a.title ?? '') !== '';
}

/** Sources in the order they are trusted. */
const ORDER: readonly Draft['markup'][] = ['json-ld', 'microdata', 'rdfa', 'h-recipe'];

function rank(draft: Draft): number {
  const at = ORDER.indexOf(draft.markup);
  return at < 0 ? ORDER.length : at;
}

/**
 * Merges drafts of the same recipe (the more trusted markup first, then the fuller, filled from the other) and orders what is
 * left, the fullest and the one that agrees with the main heading first.
 */
export function mergeDrafts(drafts: readonly Draft[], heading: string | null): Draft[] {
  const order = [...drafts].sort((a, b) => fullness(b, heading) - fullness(a, heading));
  const merged: Draft[] = [];
  for (const draft of order) {
    const at = merged.findIndex((one) => sameRecipe(one, draft));
    const twin = merged[at];
    if (twin) merged[at] = rank(draft) < rank(twin) ? fillFrom(draft, twin) : fillFrom(twin, draft);
    else merged.push(draft);
  }
  const first = merged[0];
  // A bare node of another markup describes the only recipe there is.
  return merged.filter((draft) => draft === first || !isBare(draft));
}
