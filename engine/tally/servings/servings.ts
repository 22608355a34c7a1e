/** How many servings to reckon with: what the page calls servings, else what its own figures fit. */

import { withoutAccents } from '../../accents.ts';
import type { Family, Recipe } from '../../model.ts';
import { familyYield } from '../cooked.ts';
import racc from '../data/racc.json' with { type: 'json' };
import { statedEnergy } from '../stated/stated-figures.ts';
import { servingsByEnergy } from './by-own-energy.ts';
import { mostSlices } from './loaf-slices.ts';
import { DOZEN, piecesOf } from './pieces-said.ts';
import { arePlates, jarsOfMethod, platesOfMethod } from './plates-told.ts';
import { volumeServings } from './volume-servings.ts';
import { isSlice, isWhole, slicesSaid } from './whole-or-slice.ts';

export interface ServingsProposal {
  /** A whole number above zero. */
  servings: number;
  /** True when the page itself says so. */
  stated: boolean;
  /** True when the page gives no number at all, not even of pieces. */
  assumed?: boolean;
  /** Plain words for the screen: where the number comes from. */
  text: string;
}

/** What is known of the dish before it is divided. */
export interface WholeDish {
  /** What goes in, g; null when nothing could be weighed. */
  rawGrams: number | null;
  /** Energy of all of it, kcal; null when unknown. */
  energyKcal: number | null;
  family: Family;
  /** Fillets, steaks or chops on its lines, where they are what is eaten; null or absent without them. */
  centrePieces?: number | null;
}

interface Reference {
  grams: number;
  source: string;
  /** What one person eats of a dish that is a meal, where it is more than the reference amount. */
  plate?: { grams: number; source: string };
}

const FAMILY_GRAMS: Record<Family, Reference> = racc.families;
/** Times the reference amount that one whole (a small pizza) may weigh and still be a serving; own choice. */
const LARGEST_PIECE = 2;
/** Page counts above this are likelier pieces of something else than servings. */
const MOST_SERVINGS = 500;
/** The page's energy of a serving fits a number of servings within this share. Own choice. */
const FITS_WITHIN = 0.25;
/** Beyond this the page's own servings and its own energy contradict each other. Own choice. */
const CONTRADICTS_FROM = 0.4;

/** Energy that one person may eat at once, kcal. Own choice. */
const MOST_KCAL_OF_ONE = 900;
/** From this on one piece, a sandwich or a burger, is a serving by itself, kcal. Own choice. */
const MEAL_KCAL = 350;

/** Titles of what is eaten beside something: potatoes by themselves. With potatoes in it, it is a plate of food. */
const OF_POTATO =
  /potat|kartoffel|patat|batata|pomme|aardappel|friet|fries|chips|wedge|mash|puree|gratin|hash|rosti|yam\b|squash|pumpkin|plantain|cassava|yuca|parsnip/i;

/** Titles of a sauce by itself; what is cooked in one is a plate of food. */
const OF_SAUCE =
  /sauce|sosse|soße|saus\b|salsa|sugo|ragu|gravy|roux|bechamel|veloute|custard|glaze|dressing|marinade|molho|\bsas\b/i;

/** A title in a script whose dish words are not known: nothing in it tells a sauce from a cake. */
const UNREAD = /^[^a-z]*$/i;

/** Reference amount of a family, g eaten at one time (21 CFR 101.12(b)); a label unit, not advice. */
function referenceGrams(family: Family, title: string): Reference {
  const plain = withoutAccents(title);
  const titles: readonly (Reference & { words: string })[] = racc.titles;
  const byTitle = titles.find(({ words }) => new RegExp(`\\b(${words})s?\\b`, 'i').test(plain));
  const mixed =
    (family === 'potato-dish' && !OF_POTATO.test(plain)) ||
    (family === 'thickened-sauce' && !OF_SAUCE.test(plain));
  if (byTitle) return byTitle;
  // Sugar and cream by themselves may be a cake: two spoonfuls would make it look small.
  if (family === 'sweet-sauce' && UNREAD.test(plain)) return FAMILY_GRAMS.custard;
  return FAMILY_GRAMS[mixed ? 'other' : family];
}

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

const wholeNumber = (count: number): number => Math.max(1, Math.round(count));

const usable = (count: number): boolean => count > 0 && count <= MOST_SERVINGS;

/** How far the page's energy of a serving is from ours at so many servings, as a share of theirs. */
type Misfit = (servings: number) => number | null;

function misfitOf(recipe: Recipe, energyKcal: number | null): Misfit {
  const theirs = recipe.statedNutrition === null ? null : statedEnergy(recipe.statedNutrition);
  return (servings) =>
    theirs === null || theirs <= 0 || energyKcal === null || energyKcal <= 0
      ? null
      : Math.abs(energyKcal / servings - theirs) / theirs;
}

/** The candidate that the page's own energy fits best; null when none lies within a quarter. */
function fitting(candidates: readonly number[], misfit: Misfit): number | null {
  const apart = (servings: number): number => misfit(servings) ?? Number.POSITIVE_INFINITY;
  const best = candidates
    .filter(usable)
    .reduce<number | null>(
      (least, servings) => (least === null || apart(servings) < apart(least) ? servings : least),
      null,
    );
  return best !== null && apart(best) <= FITS_WITHIN ? best : null;
}

/** '2 dozen', '10 as a side (6 as a main)': every count in the page's words that measures nothing. */
const COUNT =
  /(?<![\d./,½¼¾⅓⅔-])(\d{1,3})(?![\d./,½¼¾⅓⅔]|\s*(?:-?\s*inch|cm\b|mm\b|g\b|kg\b|grams?\b|ml\b|l\b|oz\b|ounces?\b|lbs?\b|pounds?\b|cups?\b|quarts?\b|pints?\b|tbsp|tsp|tablespoons?|teaspoons?|"|″|%|kcal|calories|hours?|minutes?|(?:large |small |\d+[ -]?(?:oz|ounces?|ml|g)[ -])?(?:loaf|loaves|cakes?|pies?|tarts?|pizzas?|batch|recipes?|tins?|pans?|trays?|jars?)\b)|-(?:oz|ounces?|ml|lbs?|pounds?)\b)(\s*dozen)?/gi;

/** All the counts that the page's statement of its yield names: servings, pieces, what is in brackets. */
function countsOnPage(recipe: Recipe): number[] {
  const { yield: made } = recipe;
  const words = [...(made.text ?? '').slice(0, 200).matchAll(COUNT)].map(
    ([, digits, dozen]) => Number(digits) * (dozen === undefined ? 1 : DOZEN),
  );
  const pieces = made.pieces && !isWhole(made.pieces.noun) ? [made.pieces.count] : [];
  const servings = made.servings ? [made.servings.low, made.servings.high] : [];
  const elsewhere = (made.stated ?? []).flatMap(({ low, high, noun }) =>
    noun !== null && isWhole(noun) ? [] : [low, high],
  );
  // One of something is the whole dish, unless the page calls it a serving.
  const byVolume = volumeServings(recipe) ?? 1;
  const several = [...pieces, ...words, ...elsewhere, byVolume].filter((count) => count > 1);
  return [...new Set([...servings, ...several].map(wholeNumber))].filter(usable);
}

const OWN_FIGURES = "the page's own figures of a serving fit that";

function fromRange(low: number, high: number, misfit: Misfit): { servings: number; why: string } {
  const [first, last] = [wholeNumber(low), wholeNumber(high)];
  if (first >= last) return { servings: first, why: '' };
  const inside = Array.from({ length: Math.min(last - first + 1, 50) }, (_, at) => first + at);
  const fits = fitting(inside, misfit);
  if (fits !== null) return { servings: fits, why: `; reckoned with ${fits}, as ${OWN_FIGURES}` };
  // Rounded down: fewer and larger servings never understate one.
  const middle = Math.max(1, Math.floor((low + high) / 2));
  return { servings: middle, why: `; reckoned with ${middle}, the middle of ${low} to ${high}` };
}

function fromStated(recipe: Recipe, misfit: Misfit): ServingsProposal | null {
  const { servings, text } = recipe.yield;
  if (servings === null || !(servings.low > 0)) return null;
  const own = fromRange(servings.low, servings.high, misfit);
  if (!usable(own.servings)) return null;
  const pageWords = text ?? plural(own.servings, 'serving');
  const apart = misfit(own.servings);
  const other =
    apart !== null && apart > CONTRADICTS_FROM ? fitting(countsOnPage(recipe), misfit) : null;
  if (other !== null && other !== own.servings)
    return {
      servings: other,
      stated: true,
      text: `The page says '${pageWords}'; ${other} are taken, as ${OWN_FIGURES}.`,
    };
  return { servings: own.servings, stated: true, text: `The page says '${pageWords}'${own.why}.` };
}

/** '1 tray, cuts into 12', '1.5 litres (4 generous bowls)': the page tells what is made of the whole. */
function fromSlices({ yield: made }: Recipe): ServingsProposal | null {
  const servings = slicesSaid(made.text ?? '');
  return servings === null || !usable(servings)
    ? null
    : { servings, stated: true, text: `The page says '${made.text}'; ${servings} are taken.` };
}

/** How many pieces of a weight make up the reference amount; one where a piece is a meal. */
function piecesAServing(
  count: number,
  pieceGrams: number,
  reference: number,
  energyKcal: number | null,
): number {
  if (energyKcal !== null && energyKcal / count >= MEAL_KCAL) return 1;
  return Math.max(1, Math.min(count, Math.round(reference / pieceGrams)));
}

function fromPieces(
  recipe: Recipe,
  cookedGrams: number | null,
  reference: number,
  energyKcal: number | null,
  misfit: Misfit,
): ServingsProposal | null {
  const { text } = recipe.yield;
  const pieces = piecesOf(recipe.yield);
  const pageWords = text ?? (pieces ? `${pieces.count} ${pieces.noun}` : '');
  const fits = fitting(countsOnPage(recipe), misfit);
  if (fits !== null)
    return {
      servings: fits,
      stated: true,
      text: `The page says '${pageWords}'; ${plural(fits, 'serving')} taken, as ${OWN_FIGURES}.`,
    };
  if (pieces === null || !(pieces.count > 0)) return null;
  const pieceGrams = cookedGrams === null ? null : cookedGrams / pieces.count;
  const eatenFrom =
    /\bjars?\b/i.test(pieces.noun) &&
    jarsOfMethod(recipe.steps.map((step) => step.text)) === pieces.count;
  const whole = isWhole(pieces.noun) && !eatenFrom;
  // A pizza each is a serving, a loaf is not: the weight tells.
  if (pieceGrams === null ? whole : whole && pieceGrams > LARGEST_PIECE * reference) return null;
  const perServing =
    eatenFrom || isSlice(pieces.noun) || pieceGrams === null
      ? 1
      : piecesAServing(pieces.count, pieceGrams, reference, energyKcal);
  const grouped = wholeNumber(pieces.count / perServing);
  const single = wholeNumber(pieces.count);
  const [misfitGrouped, misfitSingle] = [misfit(grouped), misfit(single)];
  // Figures that fit neither are still those of one piece when they are nearer to it.
  const ofOne = misfitGrouped !== null && misfitSingle !== null && misfitSingle < misfitGrouped;
  const servings = ofOne ? single : grouped;
  const each =
    servings === single
      ? 'one is taken as a serving'
      : `about ${perServing} are taken as a serving`;
  return { servings, stated: false, text: `The page says '${pageWords}'; ${each}.` };
}

/** A mug of cocoa, a lunch bowl: the page's figures are of all of it, and one person can eat that. */
function asOne(recipe: Recipe, energyKcal: number | null, misfit: Misfit): ServingsProposal | null {
  const apart = misfit(1);
  if (apart === null || apart > FITS_WITHIN || (energyKcal ?? 0) > MOST_KCAL_OF_ONE) return null;
  return {
    servings: 1,
    stated: true,
    text: `The page says '${recipe.yield.text ?? 'nothing'}'; all of it is one serving, as ${OWN_FIGURES}.`,
  };
}

/** Where the page states no yield: the plates that its method fills, or the pieces that everybody gets one of. */
function fromPlates(
  recipe: Recipe,
  cookedGrams: number | null,
  reference: Reference,
  { energyKcal, centrePieces = null }: WholeDish,
): ServingsProposal | null {
  if (recipe.yield.text !== null || cookedGrams === null) return null;
  const plate = (reference.plate ?? reference).grams;
  const fits = (count: number | null): count is number =>
    count !== null && arePlates(count, cookedGrams, plate, energyKcal);
  const filled = platesOfMethod(recipe.steps.map(({ text }) => text));
  if (fits(filled))
    return {
      servings: filled,
      stated: false,
      assumed: true,
      text: `The page gives no servings; its method makes ${filled} portions, which are taken.`,
    };
  const each = centrePieces !== null && centrePieces % 2 === 0 ? centrePieces / 2 : null;
  const servings = [centrePieces, each].find(fits);
  if (servings === undefined || servings === null) return null;
  return {
    servings,
    stated: false,
    assumed: true,
    text: `The page gives no servings. ${servings} taken, as it has ${centrePieces} pieces of meat or fish. Set the servings.`,
  };
}

/** Of four pizzas every one is cut alike: so many servings that each whole gives the same number. */
function evenly(recipe: Recipe, servings: number): number {
  const pieces = piecesOf(recipe.yield);
  const wholes = pieces !== null && isWhole(pieces.noun) ? pieces.count : 1;
  return Number.isInteger(wholes) && wholes > 1 && wholes < servings
    ? wholes * wholeNumber(servings / wholes)
    : wholeNumber(servings);
}

function estimated(
  recipe: Recipe,
  cookedGrams: number | null,
  reference: Reference,
  { family, energyKcal }: WholeDish,
): ServingsProposal {
  const plate = reference.plate ?? reference;
  if (cookedGrams === null)
    return {
      servings: 1,
      stated: false,
      assumed: true,
      text: 'The page gives no servings and no weights: figures are for the whole recipe. Set the servings.',
    };
  const byWeight = evenly(recipe, cookedGrams / plate.grams);
  const byEnergy = servingsByEnergy(recipe, energyKcal, byWeight);
  if (byEnergy !== null)
    return {
      servings: byEnergy,
      stated: false,
      assumed: true,
      text: `The page gives no servings. ${byEnergy} taken, as ${OWN_FIGURES}. Set the servings you cut.`,
    };
  const loaf = mostSlices(recipe, family);
  const { text } = recipe.yield;
  const pageGap =
    text === null
      ? 'The page gives no servings.'
      : `The page says '${text}', not how many servings.`;
  if (loaf !== null && byWeight > loaf)
    return {
      servings: loaf,
      stated: false,
      assumed: true,
      text: `${pageGap} ${loaf} taken, the slices of a loaf cake. Set the servings you cut.`,
    };
  return {
    servings: byWeight,
    stated: false,
    assumed: true,
    text: `${pageGap} Estimated ${byWeight}, from about ${Math.round(cookedGrams)} g finished and ${plate.grams} g each (${plate.source}). Set the servings you cut.`,
  };
}

/**
 * Servings of a recipe, a whole number: those the page states (of a range, what its own energy of a
 * serving fits, else the middle, rounded down), unless its own energy contradicts them and fits another
 * count of the page; else one, where its energy is of all of it and not above 900 kcal; else the count of the page that its energy fits within a quarter; else its pieces
 * (several small ones make a serving); else the plates its method fills or its fillets; else the finished weight over what one person is usually served,
 * or the reference amount of 21 CFR 101.12(b), marked as estimated. Without any weight the whole recipe is one.
 */
export function proposeServings(recipe: Recipe, dish: WholeDish): ServingsProposal {
  const { rawGrams, energyKcal, family } = dish;
  const reference = referenceGrams(family, recipe.title);
  const cooked = rawGrams !== null && rawGrams > 0 ? rawGrams * familyYield(family).best : null;
  const misfit = misfitOf(recipe, energyKcal);
  return (
    fromStated(recipe, misfit) ??
    fromSlices(recipe) ??
    asOne(recipe, energyKcal, misfit) ??
    fromPieces(recipe, cooked, reference.grams, energyKcal, misfit) ??
    fromPlates(recipe, cooked, reference, dish) ??
    estimated(recipe, cooked, reference, dish)
  );
}
