/** Lines that pasted text tells by their words alone: how much it makes, and what heads a part. */
import parts from '../data/part-words.json' with { type: 'json' };
import { groupTitle } from '../markup/ingredient-values.ts';
import { statedServings } from '../values/stated-servings.ts';
import { readYield } from '../values/yield.ts';
import { isMeasured, isSentence } from '../visible/line-shapes.ts';

/** Longest line that states a yield, and longest heading of a part (characters, words). Own choice. */
const MAX_YIELD = 80;
const MAX_PART = 50;
const MAX_WORDS = 5;

const STATES_YIELD =
  /^(?:makes|yields?|serves|servings?|feeds|portions?|ergibt|ergeben|reicht für|portionen|personen|donne|rinde|raciones|porciones|rende|porções|dosi per|porzioni|opbrengst|goed voor|porties|ger|räcker till|rækker til|gir|portioner)(?!\p{L})[\s:]*\D{0,20}\d/iu;
/** 'Für 4 Personen', 'Pour 6', 'Für etwa 12 Stück'. */
const FOR_SO_MANY =
  /^(?:for|für|voor|pour|para|per|för|till?)\s+(?:(?:ca\.?|circa|about|etwa|environ|ongeveer|unas?|cerca de)\s+)?\d/iu;
/** '4 portioner', '6-8 servings': a number and one word. */
const SO_MANY = /^\d+(?:\s?[-–]\s?\d+)?\s\p{L}+\.?$/u;

const HEADS_PART =
  /^(?:for (?:the|a)|für (?:den|die|das)|pour (?:la|le|les|un|une)|pour l['’]|para (?:la|el|los|las|a|o|as|os)|per (?:la|il|lo|le|i|gli)|per l['’]|voor (?:de|het)|till)\s?\p{L}/iu;

/** True for a line that says how much the recipe makes and nothing else. */
export function isYieldLine(text: string): boolean {
  if (text.length > MAX_YIELD) return false;
  if (SO_MANY.test(text)) return statedServings(text) !== null;
  const forSoMany = FOR_SO_MANY.test(text) && !isMeasured(text.replace(/^\S+\s+/, ''));
  if (!forSoMany && !STATES_YIELD.test(text)) return false;
  const { servings, pieces } = readYield([text]);
  return servings !== null || pieces !== null;
}

/** True for 'Für den Teig', 'For the lemon cream', 'Belag': words that may head the lines below them. */
export function mayHeadPart(text: string): boolean {
  if (text.length > MAX_PART || /\d/.test(text) || isSentence(text)) return false;
  const title = groupTitle(text) ?? '';
  if (parts.includes(title.toLowerCase())) return true;
  return HEADS_PART.test(title) && title.split(/\s+/).length <= MAX_WORDS;
}
