/** Quick looks at a document that touch only the elements asked for. */
import { isNamedIngredients } from '../visible/heading-phrases.ts';
import { MAX_SCRIPT } from './tree.ts';

/** Attributes that may name a recipe or its parts, with the words that do. */
const MARKS: readonly [string, RegExp][] = [
  ['itemtype', /recipe/i],
  ['typeof', /recipe/i],
  ['itemprop', /(?:^|\s)(?:recipeIngredient|ingredients|recipeInstructions)(?:\s|$)/],
];
const CLASSES = ['h-recipe', 'hrecipe', 'hRecipe', 'h-Recipe'];
/** Elements that head a part of a page, bold lines among them. */
const HEADINGS = ['h2', 'h3', 'h4', 'h5', 'strong', 'b'];
const RECIPE_TYPE = /"@type"\s*:\s*(?:\[[^\]]{0,200})?"(?:[^"]{0,60}[/#:])?recipe"/i;
/** Elements whose inside is never read; scripts in them do not count. */
const UNREAD = 'noscript,template,svg,iframe,object';
/** Elements of one kind looked at, at most. */
const MAX_HEADINGS = 60;

/** Texts of the page's JSON-LD scripts, page order; `cut` when they are too long to take all. */
export function jsonLdScripts(document: Document): { texts: string[]; cut: boolean } {
  const texts: string[] = [];
  let length = 0;
  for (const script of document.getElementsByTagName('script')) {
    if (!/ld\+json/i.test(script.getAttribute('type') ?? '')) continue;
    if (script.closest(UNREAD) !== null) continue;
    const text = script.textContent ?? '';
    length += text.length;
    if (length > MAX_SCRIPT) return { texts, cut: true };
    texts.push(text);
  }
  return { texts, cut: false };
}

/** True when attributes mark a recipe: microdata, RDFa or h-recipe. */
function hasMarkedElements(document: Document): boolean {
  // One plain selector at a time: browsers have an index for those.
  if (CLASSES.some((name) => document.getElementsByClassName(name).length > 0)) return true;
  return MARKS.some(([name, words]) =>
    [...document.querySelectorAll(`[${name}]`)].some((one) =>
      words.test(one.getAttribute(name) ?? ''),
    ),
  );
}

/**
 * Whether a page is likely to hold a recipe: marked up as one, or a heading for ingredients. Reads no
 * more than scripts and headings, so that it can run on every page; reading the page is what decides.
 */
export function mayHoldRecipe(document: Document): boolean {
  try {
    if (jsonLdScripts(document).texts.some((text) => RECIPE_TYPE.test(text))) return true;
    if (hasMarkedElements(document)) return true;
    for (const kind of HEADINGS) {
      const headings = document.getElementsByTagName(kind);
      for (let i = 0; i < headings.length && i < MAX_HEADINGS; i += 1)
        if (isNamedIngredients(headings[i]?.textContent ?? '')) return true;
    }
  } catch {
    // A document that cannot be asked holds nothing that can be read.
  }
  return false;
}
