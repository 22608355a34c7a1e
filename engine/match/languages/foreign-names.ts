/**
 * The food an item names in another language than English. To add a language, add its names and its
 * grammar to `foreign-name-index.ts`.
 */
import type { FoodTable } from '../../foods/index.ts';
import type { Food, Item, Line, Match } from '../../model.ts';
import falseFriends from '../data/false-friends.json' with { type: 'json' };
import type { State } from '../name-words.ts';
import { plainText } from '../normalise.ts';
import {
  endOfCompound,
  isAkin,
  longestInside,
  withoutLacking,
  withoutSlips,
} from './foreign-fallback.ts';
import { type NameIndex, nameIndex, otherIndexes, type Word } from './foreign-name-index.ts';
import { inState } from './siblings.ts';

/** Confidence of what each way finds. Own choice. */
const WHOLE = 0.95;
const WITHOUT_QUALITY = 0.92;
const OTHER_STATE = 0.91;
const HEAD = 0.65;
const DOUBTFUL = 0.45;
const SLIP = 0.6;
const COMPOUND = 0.5;
const CHOICE = 0.9;
const ANY_LANGUAGE = 0.7;

/** Words of a name that are tried together. */
const LONGEST = 6;
/** States that make another food of it where the table knows it in no such state. */
const CHANGING: ReadonlySet<State> = new Set(['cooked', 'dry']);
/** A longer preparation tells what to do with the food, not in which state it is. */
const SHORT_PREPARATION = 2;
/** A longer note is a remark: 'the peel may be bitter'. */
const SHORT_NOTE = 6;
const CANNED_UNITS: ReadonlySet<string | null> = new Set(['can', 'jar', 'tin']);
/** Herbs by these are fresh ones. */
const FRESH_UNITS: ReadonlySet<string | null> = new Set(['bunch', 'sprig']);

/** English words that name a food in another language. */
const FALSE_FRIENDS: ReadonlySet<string> = new Set(falseFriends);

interface Found {
  id: string;
  confidence: number;
  reason: string;
}

interface Run {
  id: string;
  from: number;
  to: number;
}

/** Is the language one whose names are looked up here? Takes a BCP 47 tag. */
export const isOtherLanguage = (language: string | null | undefined): boolean =>
  nameIndex(language) !== null;

const isQuality = (word: Word, index: NameIndex): boolean =>
  index.quality.has(word.folded) || index.states.has(word.folded);

/** The words that say which food it is; all of them when none would be left. */
function essential(words: readonly Word[], index: NameIndex): readonly Word[] {
  const kept = words.filter((word) => !isQuality(word, index));
  return kept.length === 0 ? words : kept;
}

function wholeName(words: readonly Word[], index: NameIndex): Found | null {
  const id = index.idOf(words);
  if (id !== null) {
    return { id, confidence: WHOLE, reason: `the same name in ${index.language}` };
  }
  const bare = essential(words, index);
  const found = bare.length < words.length ? index.idOf(bare) : null;
  if (found === null) return null;
  return {
    id: found,
    confidence: WITHOUT_QUALITY,
    reason: `the same name in ${index.language}, leaving out words of quality`,
  };
}

/** The longest run of words that is a name; of equal ones the one where the head stands. */
function longestRun(words: readonly Word[], index: NameIndex): Run | null {
  for (let length = Math.min(words.length, LONGEST); length > 0; length -= 1) {
    const starts = Array.from({ length: words.length - length + 1 }, (_, at) => at);
    if (index.headLast) starts.reverse();
    for (const from of starts) {
      const id = index.idOf(words.slice(from, from + length));
      if (id !== null) return { id, from, to: from + length };
    }
  }
  return null;
}

/**
 * A name with words that are not known. They make another food of it when they name one themselves
 * or stand where the head does ('farine de banane', 'Tomaten-Creme'): then there is no match.
 */
function headName(words: readonly Word[], index: NameIndex, foods: FoodTable): Found | null {
  const bare = essential(words, index);
  const run = longestRun(bare, index);
  if (!run) return null;
  const rest = [...bare.slice(0, run.from), ...bare.slice(run.to)];
  const others = rest.map((word) => index.idOf([word]));
  // 'Champignons de Paris blancs': two words at the start tell the food, whatever else 'blanc' names
  const isTold = !index.headLast && run.from === 0 && run.to > 1;
  if (!isTold && others.some((id) => id !== null && !isAkin(id, run.id, foods))) return null;
  // 'Soupe de légumes' is no vegetable
  if (!index.headLast && run.from > 0) return null;
  const isHead = index.headLast ? run.to === bare.length : true;
  const isKind = rest.some((word) => word.linked && bare.indexOf(word) >= run.to);
  const known = bare.slice(run.from, run.to).map((word) => word.text);
  return {
    id: run.id,
    confidence: isHead && !isKind ? HEAD : DOUBTFUL,
    reason: `only '${known.join(' ')}' of the name is known, in ${index.language}`,
  };
}

/** Where some words stand in the line, in this order and near each other; null when they do not. */
function placeOf(words: readonly Word[], line: readonly Word[]): Omit<Run, 'id'> | null {
  const [first] = words;
  for (const [from, word] of line.entries()) {
    if (word.text !== first?.text) continue;
    let to = from;
    const found = words.every((one) => {
      const at = line.findIndex((other, n) => n >= to && other.text === one.text);
      to = at + 1;
      return at >= 0;
    });
    if (found && to - from <= LONGEST) return { from, to };
  }
  return null;
}

/**
 * A longer name that the line has around the item's: 'gemahlene Mandeln', whose first word the item
 * tells as preparation, or 'feuilles de gélatine', whose first one it tells as unit.
 */
function widerName(words: readonly Word[], line: Line, index: NameIndex): Found | null {
  const all = index.wordsOf(line.text);
  const place = placeOf(words, all);
  if (!place) return null;
  const length = place.to - place.from;
  const least = length > words.length ? 0 : 1;
  for (let more = LONGEST - length; more >= least; more -= 1) {
    for (let before = more; before >= 0; before -= 1) {
      const from = place.from - before;
      const to = place.to + more - before;
      const id = from < 0 || to > all.length ? null : index.idOf(all.slice(from, to));
      if (id !== null) {
        return { id, confidence: WHOLE, reason: `the same name in ${index.language}` };
      }
    }
  }
  return null;
}

const stateIn = (words: readonly Word[], index: NameIndex): State | null => {
  const states = words.flatMap((word) => index.states.get(word.folded) ?? []);
  // 'Frisch gekocht': fresh is the weakest of them.
  return states.find((state) => state !== 'raw') ?? states[0] ?? null;
};

/** The state the item's words or its unit ask for; null when they say nothing. */
function wantedState(item: Item, index: NameIndex): State | null {
  const words = index.wordsOf(item.preparation ?? '');
  const prepared = words.length > SHORT_PREPARATION ? null : stateIn(words, index);
  const stated = stateIn(index.wordsOf(item.name), index) ?? prepared;
  const canned = item.amounts.some(({ unit }) => CANNED_UNITS.has(unit));
  // '1 bote de garbanzos cocidos'
  if (canned && (stated === null || stated === 'cooked')) return 'canned';
  const fresh = item.amounts.some(({ unit }) => FRESH_UNITS.has(unit));
  return stated ?? (fresh ? 'raw' : null);
}

function toMatch(found: Found, food: Food): Match {
  return {
    foodId: food.id,
    foodName: food.name,
    confidence: found.confidence,
    reason: found.reason,
    others: [],
  };
}

const CITRUS: ReadonlySet<string> = new Set(['lemon', 'lime', 'orange', 'grapefruit']);

/** 'Saft von 1 Zitrone' is juice, 'le zeste d'un citron' zest; zest and juice together the juice. */
function takenPart(
  food: Food,
  item: Item,
  line: Line,
  index: NameIndex,
  foods: FoodTable,
): Food | null {
  const fruit = food.id.replace(/-zest$/, '');
  if (!CITRUS.has(fruit)) return null;
  const isRemark = (line.note ?? '').split(' ').length > SHORT_NOTE;
  const note = line.items.length === 1 && !isRemark ? (line.note ?? '') : '';
  const words = index.wordsOf(`${item.preparation ?? ''} ${note}`).map((word) => word.folded);
  if (words.some((word) => index.juice.has(word))) return foods.byId(`${fruit}-juice`);
  // 'Con o sin piel' says what the fruit has, not what of it is taken.
  if (words.some((word) => index.without.has(word))) return null;
  return words.some((word) => index.zest.has(word)) ? foods.byId(`${fruit}-zest`) : null;
}

/** The food found, or the part or state of it that the line asks for. */
function asAsked(
  found: Found,
  item: Item,
  line: Line,
  index: NameIndex,
  foods: FoodTable,
): Match | null {
  const food = foods.byId(found.id);
  if (!food) return null;
  const part = takenPart(food, item, line, index, foods);
  if (part) return toMatch({ ...found, reason: `${found.reason}, the part that is taken` }, part);
  const state = wantedState(item, index);
  const stated = state === null ? food : inState(food, state, foods);
  if (stated === food) {
    // 'Panna cotta' is no cream: a food that is not known in this state may be another one
    const isChanged = state !== null && CHANGING.has(state) && food.state !== state;
    const isLeftOut = found.confidence === WITHOUT_QUALITY;
    return toMatch(isChanged && isLeftOut ? { ...found, confidence: HEAD } : found, food);
  }
  const confidence = Math.min(found.confidence, OTHER_STATE);
  return toMatch({ ...found, confidence, reason: `${found.reason}, ${stated.state}` }, stated);
}

const named = (name: string, line: Line, index: NameIndex, foods: FoodTable): Found | null => {
  const all = index.wordsOf(name.replace(/\([^)]*\)?/g, ' '));
  const known = widerName(all, line, index) ?? wholeName(all, index);
  if (known) return known;
  if (index.unspaced) return insideName(all, index);
  const words = withoutLacking(all, index);
  const shorter = words.length < all.length ? wholeName(words, index) : null;
  return (
    shorter ??
    firstOfSlash(name, index) ??
    headName(words, index, foods) ??
    withSlips(words, index) ??
    atEnd(words, index, foods)
  );
};

/** '适量马苏里拉芝士碎': the longest name among signs without blanks; at their end it is the head. */
function insideName(words: readonly Word[], index: NameIndex): Found | null {
  const name = longestInside(words, index);
  const id = name === null ? null : index.idOf(index.wordsOf(name));
  if (id === null || name === null) return null;
  const isHead = words.some(({ text }) => text.endsWith(name));
  return {
    id,
    confidence: isHead ? HEAD : DOUBTFUL,
    reason: `only '${name}' of the name is known, in ${index.language}`,
  };
}

/** 'Butter/Margarine', 'Sahne / Obers': the first of two names. */
function firstOfSlash(name: string, index: NameIndex): Found | null {
  const [first = '', ...others] = name.split('/');
  if (others.length === 0) return null;
  const found = wholeName(index.wordsOf(first), index);
  return found && { ...found, confidence: found.confidence * CHOICE };
}

function withSlips(words: readonly Word[], index: NameIndex): Found | null {
  const mended = withoutSlips(words, index);
  const found = mended && wholeName(mended, index);
  const read = mended?.map((word) => word.text).join(' ');
  return found && { ...found, confidence: SLIP, reason: `${found.reason} (read as '${read}')` };
}

function atEnd(words: readonly Word[], index: NameIndex, foods: FoodTable): Found | null {
  const id = endOfCompound(essential(words, index), index, foods);
  const reason = `only the end of the name is known, in ${index.language}`;
  return id === null ? null : { id, confidence: COMPOUND, reason };
}

const CUT_SHORT = /[-‐–]$/;
/** Letters of the shared end: shorter ones tell nothing. */
const SHORTEST_SHARED = 2;

/** 'Weizen- oder Reismehl': the first name with the end that it shares with the other. */
function withSharedEnd({ name, alternatives: [other] }: Item, index: NameIndex): string {
  if (!CUT_SHORT.test(name.trim()) || other === undefined) return name;
  const start = name.trim().replace(CUT_SHORT, '');
  for (let at = 1; at <= other.name.length - SHORTEST_SHARED; at += 1) {
    const whole = start + other.name.slice(at);
    if (wholeName(index.wordsOf(whole), index)) return whole;
  }
  return other.name;
}

/** The food a name stands for in a language other than English, or null. */
export function matchOtherLanguage(
  item: Item,
  line: Line,
  language: string | null | undefined,
  foods: FoodTable,
): Match | null {
  const index = nameIndex(language);
  if (!index) return null;
  const found = named(withSharedEnd(item, index), line, index, foods);
  if (found && found.confidence > SLIP) return asAsked(found, item, line, index, foods);
  for (const other of item.alternatives) {
    const choice = wholeName(index.wordsOf(other.name), index);
    if (!choice) continue;
    const reason = `${choice.reason}; the line offers a choice`;
    const confidence = choice.confidence * CHOICE;
    return asAsked({ ...choice, confidence, reason }, item, line, index, foods);
  }
  return found && asAsked(found, item, line, index, foods);
}

/**
 * A name that its own language does not know, looked up in the others: whole names only, and only
 * when they agree on the food. Null otherwise.
 */
export function matchAnyLanguage(
  item: Item,
  line: Line,
  language: string | null | undefined,
  foods: FoodTable,
): Match | null {
  if (FALSE_FRIENDS.has(plainText(item.name).trim())) return null;
  const all = otherIndexes(language).flatMap((index) => {
    const words = index.wordsOf(item.name.replace(/\([^)]*\)?/g, ' '));
    const name = widerName(words, line, index) ?? wholeName(words, index);
    const match = name && asAsked(name, item, line, index, foods);
    if (!match || match.confidence <= HEAD) return [];
    return [{ match, language: index.language, listed: index.lists(words) }];
  });
  const listed = all.filter((one) => one.listed);
  // 'Farine' is French as it stands, and Swedish only when bent
  const found = listed.length > 0 ? listed : all;
  const [first] = found;
  if (!first || found.some(({ match }) => match.foodId !== first.match.foodId)) return null;
  const languages = found.map((one) => one.language).join(' and ');
  return {
    ...first.match,
    confidence: ANY_LANGUAGE,
    reason: `no name in the language of the page; the same name in ${languages}`,
  };
}
