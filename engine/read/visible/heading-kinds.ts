/** Tells what a line of the page heads: ingredients, the method, or what comes after the recipe. */
import { withoutAccents } from '../../accents.ts';
import { LETTER } from '../../letters.ts';
import words from '../data/heading-words.json' with { type: 'json' };
import type { Block, HeadingReading } from '../document/block.ts';
import { listed } from '../values/word-lists.ts';
import {
  headingKey,
  INGREDIENTS,
  MAX_HEADING,
  NEEDS,
  phraseKey,
  STEPS,
} from './heading-phrases.ts';

/** Words that end the recipe's part of the page: a star stands for any ending, '!' for nothing after. */
const STOP = new RegExp(
  `^(?:${listed(words.stop)
    .map((word) => withoutAccents(word).replace('*', '\\S*').replace('!', '$'))
    .join('|')})(?!${LETTER})`,
);
/** Words that may stand before such a word in a heading. */
const MAX_STOP_LEAD = 3;
const BUTTONS = new Set(listed(words.buttons).map(withoutAccents));

/** Length of the words that end a recipe at the start of a key; 0 when it starts with none. */
function stopLength(key: string): number {
  return STOP.exec(key)?.[0].length ?? 0;
}

/** How sure a heading's key ends the recipe: 3 equal to such words, 2 starting, 1 ending with them, 0 no. */
function stopFit(key: string, lead: boolean): number {
  const length = stopLength(key);
  if (length > 0) return length === key.length ? 3 : 2;
  let at = lead ? key.indexOf(' ') + 1 : 0;
  for (let n = 0; at > 0 && n < MAX_STOP_LEAD; n += 1) {
    const rest = key.slice(at);
    if (stopLength(rest) === rest.length) return 1;
    const space = rest.indexOf(' ');
    at = space < 0 ? 0 : at + space + 1;
  }
  return 0;
}

const NOTHING: HeadingReading = { ingredients: 0, needs: false, steps: 0, stop: false };
const STOPS: HeadingReading = { ...NOTHING, stop: true };

/** Headings of methods that may end in any dish's name. */
const OPEN_STEPS =
  /^(?:how to (?:make|cook|prepare|bake)|so machst du|zo maak je|aan de slag|comment (?:faire|preparer)|como (?:fazer|hacer|preparar)|come (?:fare|preparare)|sa gor du|sadan laver du|slik lager du|jak zrobic|jak przygotowac|jak udelat|preparation (?:de|du|des)|zubereitung|elaboracion de|preparacion de|preparazione)(?!\p{L})/u;

function readBlock(block: Block): HeadingReading {
  if (block.text.length > MAX_HEADING) return NOTHING;
  const marked = block.level > 0 || block.bold || /head|title/.test(block.classes);
  const key = phraseKey(block.text);
  const heading = marked || /:$/.test(block.text);
  const fit = heading || block.list < 0 ? stopFit(key, block.level > 0) : 0;
  const stop = fit === 3 || (fit > 0 && heading);
  const needs = NEEDS.fit(key, marked);
  const ingredients = needs || INGREDIENTS.fit(key, marked);
  const steps = STEPS.fit(key, marked) || (marked && OPEN_STEPS.test(key) ? 1 : 0);
  if (ingredients === 0 && steps === 0) return stop ? STOPS : NOTHING;
  // 'Preparation tips' and 'How to make it: video' end the recipe; 'Method' is no such word.
  return { ingredients, needs: needs > 0, steps, stop: stop && ingredients < 3 && steps < 3 };
}

/** A block is asked about many times over; it is read once. */
function reading(block: Block): HeadingReading {
  block.reading ??= readBlock(block);
  return block.reading;
}

/** How sure a block heads the ingredients, 0..3. */
export function ingredientsHeading(block: Block): number {
  return reading(block).ingredients;
}

/** True for a heading that may list tools as well as foods: 'What you need'. */
export function isNeedsHeading(block: Block): boolean {
  return reading(block).needs;
}

/** How sure a block heads the method, 0..3; 'How to make …' may end in any dish name. */
export function stepsHeading(block: Block): number {
  return reading(block).steps;
}

/** True for a block that ends the recipe's part of the page: notes, nutrition, comments ... */
export function isStop(block: Block): boolean {
  return reading(block).stop;
}

/**
 * The heading word with its colon that a line starts with, when more follows; else ''. A word that ends
 * the recipe counts only where it is `bold`.
 */
export function headWithColon(text: string, bold: boolean): string {
  const at = text.search(/[:：]/);
  if (at < 3 || at > 40 || at + 8 > text.length) return '';
  const key = phraseKey(text.slice(0, at));
  if (bold && stopLength(key) > 0) return text.slice(0, at + 1);
  const known = [INGREDIENTS, NEEDS, STEPS].some((phrases) => phrases.has(key));
  // 'Preparation: 20 min' states a time.
  const rest = text.slice(at + 1).trim();
  return known && !/^\S{0,4}\s?\d+[\s–-]*\d*\s?(?:h|m|std|t)\p{L}*\.?/iu.test(rest)
    ? text.slice(0, at + 1)
    : '';
}

/** 'Note: the skewers are sharp': a text that begins with a word that ends the recipe, and a colon. */
export function opensWithStop(text: string): boolean {
  const at = text.search(/[:：]/);
  if (at < 3 || at > 20) return false;
  const key = phraseKey(text.slice(0, at));
  return stopLength(key) === key.length;
}

/** True for interface words that are no part of a recipe: buttons, scale marks, unit switches. */
export function isButton(text: string): boolean {
  if (text.length > 40 || /[\p{L})][:：]$/u.test(text)) return false;
  const key = headingKey(text);
  if (key === '') return true;
  return BUTTONS.has(key) || /^(?:[\d½/]+\s?x\s*)+$/i.test(text) || /^[^\p{L}\p{N}]+$/u.test(text);
}
