/** What a line's food is for, when not all of it is eaten. */
import { keptFor } from '../../kept-results.ts';
import type { Food, Item, Line } from '../../model.ts';
import type { Region } from '../../units.ts';
import abroad from '../data/breading-words.json' with { type: 'json' };
import foreign from '../data/purpose-words.json' with { type: 'json' };
import { hasWord, nameOf, plain } from '../line-words.ts';
import { isBathWater, isBoiledInBath } from './boiling-bath.ts';
import { isPicklingLiquid, isRinsedSalt } from './left-in-jar.ts';
import { isMarinadeOfSteps } from './marinade-steps.ts';
import { roughDish } from './rough-dish.ts';
import { isStrainedOut } from './strained-out.ts';

export type Purpose =
  | 'deep-frying'
  | 'frying'
  | 'greasing'
  | 'dusting'
  | 'breading'
  | 'brushing'
  | 'pasta-water'
  | 'cooking-water'
  | 'boiling-bath'
  | 'brine'
  | 'marinade'
  | 'syrup'
  | 'pickle'
  | 'rinsed'
  | 'removed'
  | 'strained'
  | 'serving'
  | 'whole';

export interface RecipeWords {
  title: string;
  steps: string[];
  lines: readonly Line[];
  /** As many as the page states; null or absent where it states none, or a range. */
  servings?: number | null;
}

/** Oil for frying from this much up is a deep bath, g. Common practice, no source. */
const DEEP_FROM = 240;

/** Oil from this share of the other lines on is a bath. Own choice. */
const BATH_SHARE = 0.5;

const FAT = /\boil|\blard|\bshortening|\bghee|\bbutter|\bfat\b|\bmargarine|\bspray|\bdripping/;
const COATING_DRY = /flour|starch|bread ?crumb|panko|crumb|cornmeal|semolina|cracker|polenta|sugar/;
/** What else may coat, where a line says that it does. */
const COATING_OTHER =
  /parmesan|cheese|rinds?\b|almond|hazelnut|walnut|pecan|coconut|seeds?\b|whey|lupin|oats/;
/** A line that says it goes on the pieces, and the step that puts it there. */
const FOR_COATING = /\bfor (?:coating|breading|dredging)\b/;
const COATS_PIECES =
  /\b(?:coat|dip|dredge|roll)(?:ed|s)? (?:the|each|both|one|a|them|in|into|with)\b/;
/** Crumbs that go on, not into the mince: 'press into the crumbs', 'crumbs to coat'. */
const COATS =
  /\bbreading\b|\b(?:dredg|dip|coat)\w*\b[^.]{0,80}\b(?:in|into|with|through)\b[^.]{0,40}\b(?:bread ?crumbs?|panko|crumbs?|cornflakes?)|\broll\w*\b[^.]{0,40}\bin (?:the )?[^.]{0,25}(?:crumbs?|panko)|\b(?:bread ?crumbs?|panko|crumbs?|cornflakes?)\b[^.]{0,40}\b(?:to coat|adher|stick)/;
const CRUMBS = /bread ?crumb|panko|cracker crumb|cornflake/;
const REMOVED =
  /\bbay (leaf|leaves)|^bay$|cinnamon stick|tea ?bag|\bparchment|\bskewer|\btoothpick|\bbouquet garni|\bkombu\b|\bcheesecloth/;

const stepsText = keptFor((recipe: RecipeWords) => plain(recipe.steps.join(' ').slice(0, 1990)));

/** A breaded dish has crumbs among its lines and steps that dip or dredge. Every line asks. */
const isBreaded = keptFor((recipe: RecipeWords): boolean => {
  const lines = recipe.lines.map((line) => plain(line.text));
  const steps = stepsText(recipe);
  if (lines.some((text) => hasWord(text, abroad.crumbs)))
    return hasWord(steps, abroad.crumbs) && hasWord(steps, abroad.coats);
  if (!lines.some((text) => CRUMBS.test(text))) return false;
  const saysSo = lines.some((text) => FOR_COATING.test(text)) && COATS_PIECES.test(steps);
  return saysSo || COATS.test(steps);
});

const FRIES = /\bdeep[- ]?fr(?:y|ied)|\bfr(?:y|ying|ies)\b/;
const NOT_IN_OIL = /\b(?:air|stir|oven)[- ]?fr(?:y|yer|ying|ied)/;

/** Much oil beside little else, in a recipe that fries: the pan holds more than the dish takes up. */
function isBath(grams: number | null, steps: string, recipe: RecipeWords, rest: number): boolean {
  const words = `${plain(recipe.title)} ${steps}`;
  const fries = FRIES.test(words) && !NOT_IN_OIL.test(words);
  return fries && (grams ?? 0) >= DEEP_FROM && (grams ?? 0) >= rest * BATH_SHARE;
}

function fatPurpose(text: string, steps: string, grams: number | null): Purpose {
  const says = /\b(fry|frying|deep-?fr|saut|sear|browning|for cooking|to cook)/.test(text);
  if (/deep.?(fat )?fr/.test(text)) return 'deep-frying';
  if (says) return (grams ?? 0) >= DEEP_FROM || /deep.?fr/.test(steps) ? 'deep-frying' : 'frying';
  if (
    /greas|coat the pan|oiling|for (the )?(pan|tin|bowl|dish|griddle|grill|skillet)|spray/.test(
      text,
    )
  )
    return 'greasing';
  if (/brush/.test(text)) return 'brushing';
  return (grams ?? 0) >= 2 * DEEP_FROM && /deep.?fr/.test(steps) ? 'deep-frying' : 'whole';
}

function coatingPurpose(
  name: string,
  text: string,
  group: string,
  recipe: RecipeWords,
): Purpose | null {
  if (/dust|rolling|kneading|work surface|flouring|for (the )?(board|surface|counter)/.test(text))
    return 'dusting';
  const coats = COATING_DRY.test(name) || COATING_OTHER.test(name);
  if (/dredg|coating|breading/.test(`${group} ${text}`) && coats) return 'breading';
  if (/egg[- ]?wash|brush|glaz/.test(text) && /egg|milk|cream/.test(name)) return 'brushing';
  if (!isBreaded(recipe)) return null;
  const dry = CRUMBS.test(name) || /flour/.test(name);
  return dry || /^egg|\begg\b/.test(name) ? 'breading' : null;
}

function bathPurpose(name: string, line: Line, text: string): Purpose | null {
  const group = plain(line.group ?? '');
  const water = /\bwater\b/.test(name);
  if (
    /salt/.test(name) &&
    /pasta water|cooking water|boiling water|cooking (the )?pasta|for (the )?water/.test(text)
  )
    return 'pasta-water';
  if (water && /for (boiling|soaking|cooking|poaching|steaming)|water bath|bain/.test(text))
    return 'cooking-water';
  if (/\bbrine\b/.test(`${group} ${text}`) && !/\bdry[- ]brine/.test(`${group} ${text}`))
    return 'brine';
  if (/marinad/.test(`${group} ${plain(line.purpose ?? '')}`)) return 'marinade';
  if (/poaching (syrup|liquid)|pickling liquid/.test(`${group} ${text}`)) return 'syrup';
  return null;
}

const EXTRA =
  /^(?:plus|and|with|\+|&)?\s*(?:a (?:little|bit) |some |a few )?(?:more|extra|additional)\b/;
/** 'Butter & extra' for greasing. */
const ENDS_IN_EXTRA = /(?:&|\+|\band|\bplus)\s*(?:(?:a (?:little|bit|few)|some) )?(?:more|extra)$/i;

/** The line's words of purpose. 'Plus extra for dusting' speaks of the extra, not of the amount. */
function purposeWords(item: Item, line: Line): string {
  const stated = item.amounts.length > 0;
  const told = [item.name, item.preparation ?? ''].map((part) => part.trim());
  const ofExtra = stated && told.some((part) => ENDS_IN_EXTRA.test(part));
  const purpose = ofExtra ? null : line.purpose;
  const parts = [purpose, line.note, item.preparation].filter((part) => part !== null);
  const purposeText = parts
    .flatMap((part) => plain(part).split(/[,;(]/))
    .filter((part) => !/^\s*reserv/.test(part))
    .filter((part) => !(stated && (EXTRA.test(part.trim()) || /^plus\b/.test(part.trim()))))
    .join(', ');
  const inEnglish = foreign.flatMap(([words = '', english = '']) =>
    hasWord(purposeText, words) ? [english] : [],
  );
  return [purposeText, ...inEnglish].join(', ');
}

/** Squeezed over at the table and eaten, unlike a wedge. */
const JUICE = /\bjuice\b/;

/**
 * What the item is for. `grams` is its weight when known: much oil in a fried dish is a bath.
 * 'whole' means it all stays in the dish.
 */
export function purposeOf(
  item: Item,
  line: Line,
  food: Food | null,
  grams: number | null,
  recipe: RecipeWords,
  region: Region,
): Purpose {
  const name = nameOf(item, food);
  const purposeText = purposeWords(item, line);
  const steps = stepsText(recipe);
  const isJuice = JUICE.test(name) && item.amounts.length > 0;
  if (line.optional) return 'serving';
  if (
    !isJuice &&
    /to serve|for serving|garnish|to garnish|to decorate|for decorat|to finish|on the side/.test(
      purposeText,
    )
  )
    return 'serving';
  if (REMOVED.test(plain(item.name)) || REMOVED.test(name)) return 'removed';
  const bath = bathPurpose(name, line, purposeText);
  if (bath) return bath;
  if (isBathWater(item.name, grams, recipe)) return 'cooking-water';
  if (isBoiledInBath(item.name, purposeText, recipe)) return 'boiling-bath';
  if (isPicklingLiquid(item.name, plain(line.group ?? ''), grams, recipe)) return 'pickle';
  if (isRinsedSalt(item.name, grams, recipe)) return 'rinsed';
  if (isMarinadeOfSteps(item, recipe)) return 'marinade';
  if (isStrainedOut(item, line, food, recipe)) return 'strained';
  const coating = coatingPurpose(name, purposeText, plain(line.group ?? ''), recipe);
  if (coating) return coating;
  if (!FAT.test(name) || /\bpeanut butter|almond butter/.test(name)) return 'whole';
  const purpose = fatPurpose(purposeText, steps, grams);
  if (purpose !== 'whole' || !/\boil\b|\blard\b|\bshortening\b/.test(name)) return purpose;
  const others = recipe.lines.filter((other) => other.text !== line.text);
  return isBath(grams, steps, recipe, roughDish(others, region)) ? 'deep-frying' : 'whole';
}
