/** How many servings to reckon with. */
import type { Family, Recipe } from '../model.ts';
import { familyYield } from './cooked.ts';
import racc from './data/racc.json' with { type: 'json' };

export interface ServingsProposal {
  /** Above zero. */
  servings: number;
  /** True when the page itself says so. */
  stated: boolean;
  /** Plain words for the screen: where the number comes from. */
  text: string;
}

const FAMILY_GRAMS: Record<Family, { grams: number; source: string }> = racc.families;
/** One of these is a whole to be cut, not something one person eats. */
const WHOLE =
  /\b(loaf|loaves|cake|pie|tart|pizza|batch|recipe|tin|pan|tray|dish|pot|jar|bowl|cup|quart|litre|liter)s?\b/i;
const SLICE = /\b(slice|portion|piece|serving|wedge|square|bar)s?\b/i;
/** Times the reference amount that one whole (a small pizza) may weigh and still be a serving; own choice. */
const LARGEST_PIECE = 2;
/** Page counts above this are likelier pieces of something else than servings. */
const MOST_SERVINGS = 500;

/** Reference amount of a family, g eaten at one time (21 CFR 101.12(b)); a label unit, not advice. */
export function referenceGrams(family: Family, title: string): { grams: number; source: string } {
  const byTitle = racc.titles.find(({ words }) =>
    new RegExp(`\\b(${words})s?\\b`, 'i').test(title),
  );
  return byTitle ?? FAMILY_GRAMS[family];
}

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

function fromStated(recipe: Recipe): ServingsProposal | null {
  const { servings, text } = recipe.yield;
  if (servings === null) return null;
  // Rounded down: fewer and larger servings never understate one.
  const middle =
    servings.low === servings.high
      ? servings.low
      : Math.max(1, Math.floor((servings.low + servings.high) / 2));
  if (!(servings.low > 0) || middle > MOST_SERVINGS) return null;
  const pageWords = text ?? plural(middle, 'serving');
  const range =
    servings.low === servings.high
      ? ''
      : `; reckoned with ${middle}, the middle of ${servings.low} to ${servings.high}`;
  return { servings: middle, stated: true, text: `The page says '${pageWords}'${range}.` };
}

function fromPieces(
  recipe: Recipe,
  cookedGrams: number | null,
  reference: number,
): ServingsProposal | null {
  const { pieces } = recipe.yield;
  if (pieces === null || !(pieces.count > 0)) return null;
  const pageWords = recipe.yield.text ?? `${pieces.count} ${pieces.noun}`;
  const pieceGrams = cookedGrams === null ? null : cookedGrams / pieces.count;
  const isWhole = WHOLE.test(pieces.noun) && !SLICE.test(pieces.noun);
  // A pizza each is a serving, a loaf is not: the weight tells.
  if (pieceGrams === null ? isWhole : isWhole && pieceGrams > LARGEST_PIECE * reference)
    return null;
  const perServing =
    SLICE.test(pieces.noun) || pieceGrams === null
      ? 1
      : Math.max(1, Math.min(pieces.count, Math.round(reference / pieceGrams)));
  const servings = pieces.count / perServing;
  const each =
    perServing === 1 ? 'one is taken as a serving' : `${perServing} are taken as a serving`;
  return { servings, stated: false, text: `The page says '${pageWords}'; ${each}.` };
}

/**
 * Servings of a recipe: those the page states (the middle of a range, rounded down), else its pieces (several
 * small ones make a serving), else the finished weight over the reference amount of 21 CFR
 * 101.12(b), marked as estimated. `rawGrams` is what goes in; null leaves the whole recipe as one.
 */
export function proposeServings(
  recipe: Recipe,
  rawGrams: number | null,
  family: Family,
): ServingsProposal {
  const reference = referenceGrams(family, recipe.title);
  const cooked = rawGrams !== null && rawGrams > 0 ? rawGrams * familyYield(family).best : null;
  const known = fromStated(recipe) ?? fromPieces(recipe, cooked, reference.grams);
  if (known !== null) return known;
  if (cooked === null)
    return {
      servings: 1,
      stated: false,
      text: 'The page gives no servings and no weights: figures are for the whole recipe. Set the servings.',
    };
  const servings = Math.max(1, Math.round(cooked / reference.grams));
  const { text } = recipe.yield;
  const pageGap =
    text === null
      ? 'The page gives no servings.'
      : `The page says '${text}', not how many servings.`;
  return {
    servings,
    stated: false,
    text: `${pageGap} Estimated ${servings}, from about ${Math.round(cooked)} g finished and ${reference.grams} g each (${reference.source}). Set the servings you cut.`,
  };
}
