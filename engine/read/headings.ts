import type { Block, HeadingReading } from './blocks.ts';
import words from './data/heading-words.json' with { type: 'json' };
import { LETTER } from './letters.ts';
import {
  fold,
  headingKey,
  INGREDIENTS,
  MAX_HEADING,
  NEEDS,
  Phrases,
  phraseKey,
} from './phrases.ts';

export { MAX_HEADING };

const STEPS = new Phrases(words.steps);
/** Words that end the recipe's part of the page: a star stands for any ending, '!' for nothing after. */
const STOP = `(?:${words.stop.map((word) => fold(word).replace('*', '\\S*').replace('!', '$')).join('|')})`;
const STOP_WHOLE = new RegExp(`^${STOP}$`);
const STOP_START = new RegExp(`^${STOP}(?!${LETTER})`);
const STOP_END = new RegExp(`^(?:\\S+ ){1,3}${STOP}$`);
const BUTTONS = new Set(words.buttons.map(fold));

/** How sure a heading's key ends the recipe: 3 equal to such words, 2 starting, 1 ending with them, 0 no. */
function stopFit(key: string, lead: boolean): number {
  if (STOP_WHOLE.test(key)) return 3;
  if (STOP_START.test(key)) return 2;
  return lead && STOP_END.test(key) ? 1 : 0;
}

const NOTHING: HeadingReading = { ingredients: 0, needs: false, steps: 0, stop: false };
const STOPS: HeadingReading = { ...NOTHING, stop: true };

/** Headings of methods that may end in any dish's name. */
const OPEN_STEPS =
  /^(?:how to (?:make|cook|prepare|bake)|so machst du|zo maak je|comment (?:faire|preparer)|como (?:fazer|hacer|preparar)|come (?:fare|preparare)|sa gor du|sadan laver du|slik lager du|jak zrobic|jak przygotowac|jak udelat|preparation (?:de|du|des)|zubereitung|elaboracion de|preparacion de|preparazione)(?!\p{L})/u;

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
  if (bold && STOP_START.test(key)) return text.slice(0, at + 1);
  const known = [INGREDIENTS, NEEDS, STEPS].some((phrases) => phrases.has(key));
  // 'Preparation: 20 min' states a time.
  const rest = text.slice(at + 1).trim();
  return known && !/^\S{0,4}\s?\d+[\s–-]*\d*\s?(?:h|m|std|t)\p{L}*\.?/iu.test(rest)
    ? text.slice(0, at + 1)
    : '';
}

/** True for interface words that are no part of a recipe: buttons, scale marks, unit switches. */
export function isButton(text: string): boolean {
  if (text.length > 40 || /[\p{L})][:：]$/u.test(text)) return false;
  const key = headingKey(text);
  if (key === '') return true;
  return BUTTONS.has(key) || /^(?:[\d½/]+\s?x\s*)+$/i.test(text) || /^[^\p{L}\p{N}]+$/u.test(text);
}
