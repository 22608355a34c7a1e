/** Which state of a food the line asks for: raw, cooked, canned, dry or frozen. */
import type { Food, Item, Line } from '../model.ts';
import { plainText } from './normalise.ts';
import { type State, stateOfWord } from './words.ts';

const CANNED_UNITS: ReadonlySet<string> = new Set(['can', 'tin', 'jar']);
/** The amount is of the food before it is cooked: 'cooked according to the packet'. */
const COOKED_LATER =
  /\b(?:cooked|boiled|steamed)\b.{0,24}\b(?:according|following|directed|instructions?|pack(?:et|age)|until|till|al dente)\b/;

/** A longer note speaks of what else would do. */
const SHORT_NOTE = 3;
const PULSE = /bean|pea|lentil/i;
const SOAKED = /\b(soaked|picked over)\b/;
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
  if (item.amounts.some((amount) => amount.unit !== null && CANNED_UNITS.has(amount.unit))) {
    return 'canned';
  }
  const named = firstState(item.name, () => true);
  if (named !== null) return named;
  const after = item.preparation ?? '';
  if (after !== '' && !COOKED_LATER.test(plainText(after))) {
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
