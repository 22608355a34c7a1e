/** Which state of a food the line asks for: raw, cooked, canned, dry or frozen. */
import type { Food, Item, Line } from '../model.ts';
import { type State, stateOfWord } from './name-words.ts';
import { plainText } from './normalise.ts';

const CANNED_UNITS: ReadonlySet<string> = new Set(['can', 'tin', 'jar']);
/** Units in which herbs are fresh, whatever the bare name means in a spoon. */
const FRESH_UNITS: ReadonlySet<string> = new Set(['sprig', 'bunch', 'branch', 'frond', 'stem']);
const HANDFUL = 'handful';
const HERB =
  /\b(?:herbs?|basil|chervil|dill|marjoram|mint|oregano|parsley|rosemary|sage|savory|tarragon|thyme)\b/i;
/** The amount is of the food before it is cooked: 'cooked according to the packet'. */
const COOKED_LATER =
  /\b(?:cooked|boiled|steamed)\b.{0,24}\b(?:according|following|directed|instructions?|pack(?:et|age)|until|till|al dente|min(?:ute)?s?|then)\b/;

/** 'Canned are also fine', 'frozen works too': what else would do. */
const WOULD_DO =
  /\b(?:canned|tinned|frozen|cooked)(?: ones)? (?:(?:is|are|would be|can be|will|works?|may|also|too)\b).*$/i;

/** A longer note speaks of what else would do. */
const SHORT_NOTE = 3;
const PULSE = /bean|pea|lentil/i;
/** A weight of pasta is the packet's: '12 oz spaghetti, cooked and drained' is boiled afterwards. */
const PASTA =
  /\b(?:pasta|noodles?|spaghetti|macaroni|penne|fusilli|rotini|rigatoni|linguin[ei]|fettuccin[ei]|tagliatelle|vermicelli|orzo|farfalle|ziti|lasagn[ae])\b/i;
const THEN_COOKED = /,[^(]*\b(?:cooked|boiled)\b(?! weight)/i;
const MASS_UNITS: ReadonlySet<string> = new Set(['g', 'kg', 'oz', 'lb']);
/** Grains of a pouch that only want warming, and rice noodles that are sold soft. */
const READY =
  /\b(?:ready(?!-made)|microwav(?:e|able)|pre-?cooked)\b.*\b(?:rice|quinoa|grains|couscous|farro)$|^fresh (?:[a-z]+ )*rice noodles?$/i;
const SOAKED = /\b(soaked|picked over|picked through|sorted|washed)\b/;
const DRAINED = /\b(drained|rinsed)\b/;

const firstState = (text: string, allowed: (state: State) => boolean): State | null => {
  const states = (plainText(text).match(/[a-z]+/g) ?? [])
    .map(stateOfWord)
    .filter((state): state is State => state !== null && allowed(state));
  // 'Freshly cooked', 'fresh-frozen': fresh is the weakest of them.
  return states.find((state) => state !== 'raw') ?? states[0] ?? null;
};

/**
 * The state the line's words or unit ask for, or null when they say nothing. 'Cooked' after the
 * comma counts; 'dried' there does not ('rinsed and dried').
 */
export function wantedState(item: Item, line: Line): State | null {
  if (READY.test(item.name)) return 'cooked';
  const named = firstState(item.name, () => true);
  const has = (units: ReadonlySet<string>): boolean =>
    item.amounts.some(({ unit }) => unit !== null && units.has(unit));
  // '15 oz dried beans, or 2 cans' is about dried ones.
  if (named !== 'dry' && has(CANNED_UNITS)) return 'canned';
  if (named !== null) return named;
  if (has(FRESH_UNITS) || (item.amounts[0]?.unit === HANDFUL && HERB.test(item.name))) return 'raw';
  const after = (item.preparation ?? '').replace(WOULD_DO, '');
  const boiledAfter =
    COOKED_LATER.test(plainText(after)) ||
    (PASTA.test(item.name) && has(MASS_UNITS) && THEN_COOKED.test(line.text));
  // '8 oz udon noodles, cooked according to the packet'
  if (boiledAfter && PASTA.test(item.name) && has(MASS_UNITS)) return 'dry';
  if (after !== '' && !boiledAfter) {
    const prepared = firstState(after, (state) => state !== 'dry' && state !== 'raw');
    if (prepared !== null) return prepared;
    if (SOAKED.test(plainText(after)) && PULSE.test(item.name)) return 'dry';
    if (DRAINED.test(plainText(after)) && PULSE.test(item.name)) return 'canned';
  }
  return line.note === null || line.note === '' || line.note.split(' ').length > SHORT_NOTE
    ? null
    : firstState(line.note, (state) => state === 'canned' || state === 'cooked');
}

/** Groups whose dry and cooked forms differ nearly threefold in carbohydrate. */
const STARCHY = /^(grains|legumes|pasta|rice)/;

/** Freezing changes nothing in their composition. */
const PRODUCE = /^(vegetables|fruit)/;

/** A dry food for a cooked one, or the other way round: no match at all. */
export const OPPOSED = -0.6;

/** What a food in this state is worth against the wanted one, added to a score: -0.6..0.13. */
export function stateFit(food: Food, wanted: State | null): number {
  const { group, state } = food;
  const starchy = STARCHY.test(group);
  if (wanted !== null) {
    if (state === wanted) return 0.13;
    if (state === 'as-is') return 0;
    if (wanted === 'frozen' && state === 'raw' && PRODUCE.test(group)) return 0;
    if (wanted === 'dry' && state === 'raw' && group === 'fruit') return OPPOSED;
    if (wanted === 'raw') return starchy && state === 'dry' ? 0.1 : -0.2;
    if (starchy && (wanted === 'dry') !== (state === 'dry') && wanted !== 'frozen') return OPPOSED;
    const soft = wanted === 'canned' || wanted === 'cooked';
    return soft && (state === 'cooked' || state === 'canned') ? 0 : -0.2;
  }
  if (state === 'dry') return starchy ? 0.03 : 0;
  if (state === 'cooked') return -0.04;
  if (state === 'canned' || state === 'frozen') return -0.03;
  return 0.02;
}
