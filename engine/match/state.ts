/** Which state of a food the line asks for: raw, cooked, canned, dry or frozen. */
import type { Food, Item, Line } from '../model.ts';
import { plainText } from './normalise.ts';
import { type State, stateOfWord } from './words.ts';

const CANNED_UNITS: ReadonlySet<string> = new Set(['can', 'tin', 'jar']);
const DRAINED = /\b(drained|rinsed)\b/;

const firstState = (text: string, allowed: (state: State) => boolean): State | null => {
  for (const word of plainText(text).match(/[a-z]+/g) ?? []) {
    const state = stateOfWord(word);
    if (state !== null && allowed(state)) return state;
  }
  return null;
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
  if (after !== '') {
    const prepared = firstState(after, (state) => state !== 'dry' && state !== 'raw');
    if (prepared !== null) return prepared;
    if (DRAINED.test(plainText(after)) && /bean|pea|lentil/i.test(item.name)) return 'canned';
  }
  return line.note === null || line.note === ''
    ? null
    : firstState(line.note, (state) => state === 'canned' || state === 'cooked');
}

const STARCHY = /pasta|noodle|rice|grain|legume|pulse|bean|lentil/;

/** What a food in this state is worth against the wanted one, added to a score: -0.2..0.13. */
export function stateFit(food: Food, wanted: State | null): number {
  const { state } = food;
  if (wanted !== null) {
    if (state === wanted) return 0.13;
    if (state === 'as-is') return 0;
    if (wanted === 'canned' && state === 'cooked') return 0;
    if (wanted === 'cooked' && state === 'canned') return 0;
    if (wanted === 'raw' && state === 'dry') return STARCHY.test(food.group) ? 0.05 : -0.2;
    return -0.2;
  }
  const starchy = STARCHY.test(food.group);
  if (state === 'dry') return starchy ? 0.03 : 0;
  if (state === 'cooked') return -0.04;
  if (state === 'canned' || state === 'frozen') return -0.03;
  return 0.02;
}
