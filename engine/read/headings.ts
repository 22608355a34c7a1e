import type { Block, HeadingReading } from './blocks.ts';
import words from './data/heading-words.json' with { type: 'json' };
import { LETTER } from './letters.ts';

/** Without accents, so that 'PREPARACION' and 'preparación' are one word. */
function fold(text: string): string {
  return /[^\x20-\x7e]/.test(text)
    ? text
        .normalize('NFKD')
        .replace(/\p{Mn}+/gu, '')
        .normalize('NFC')
    : text;
}

/** Lower case, accents and marks taken off, with numbers of a list and closing colons. */
export function headingKey(text: string): string {
  const lower = text.toLowerCase();
  if (/^[a-z](?:[a-z']| (?! ))*$/.test(lower)) return lower;
  return fold(lower)
    .replace(/[’‘´`]/g, "'")
    .replace(/\(/g, ' (')
    .replace(/[“”„"*#_:：!?.…|<>»«【】[\]▼▾⏬↓→➔]+/g, ' ')
    .replace(/^\s*[\d]+\s*[).]?\s+/, '')
    .replace(/\p{Extended_Pictographic}\ufe0f?/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

type Kind = 'ingredients' | 'needs' | 'steps';
const KINDS: readonly Kind[] = ['ingredients', 'needs', 'steps'];

/** Phrases of one kind. */
const WHOLE = new Map<Kind, ReadonlySet<string>>();
/** First and last words of all phrases, so that most lines are turned down at once. */
const FIRSTS = new Set<string>();
const LASTS = new Set<string>();
for (const kind of KINDS) {
  const phrases = words[kind].map(fold);
  WHOLE.set(kind, new Set(phrases));
  for (const phrase of phrases) {
    FIRSTS.add(phrase.split(' ')[0] ?? '');
    LASTS.add(phrase.split(' ').at(-1) ?? '');
  }
}
/** Words that end the recipe's part of the page: a star stands for any ending, '!' for nothing after. */
const STOP = `(?:${words.stop.map((word) => fold(word).replace('*', '\\S*').replace('!', '$')).join('|')})`;
const STOP_WHOLE = new RegExp(`^${STOP}$`);
const STOP_START = new RegExp(`^${STOP}(?!${LETTER})`);
const STOP_END = new RegExp(`^(?:\\S+ ){1,3}${STOP}$`);
/** Articles and the like before a heading word. */
const ARTICLE =
  /^(?:the|die|der|das|le|la|les|los|las|el|gli|il|lo|os|as|de|az|our|my|mes|nos|notre|unser|mein|recipe) /;
const BUTTONS = new Set(words.buttons.map(fold));

/** Words that may follow a heading word: 'Ingredients for 4 people', 'Zutaten (für 4 Personen)'. */
const TAIL =
  /^(?:[\s(,–—-]+(?:(?:for|fur|voor|pour|para|per|til|till|pro|na|dla|za|zum|zur|az?|для|на|για|de|do|da|du|des|del|della|of|the|serves|about|ca|x|metric|us|makes|yield|recipe|rezept|persons?|people)(?!\p{L})|\d|\().*|\s*\(.*\)|\s+\d.*|\s?[-–—].*)$/u;
/** Words that may stand before it: 'Cake ingredients', 'The ingredients', 'Recipe instructions'. */
const MAX_LEAD_WORDS = 5;

/** Longest text taken for a heading (characters). */
export const MAX_HEADING = 80;

/** How sure a heading's key ends the recipe: 3 equal to such words, 2 starting, 1 ending with them, 0 no. */
function stopFit(key: string, lead: boolean): number {
  if (STOP_WHOLE.test(key)) return 3;
  if (STOP_START.test(key)) return 2;
  return lead && STOP_END.test(key) ? 1 : 0;
}

/** How well a heading's key is one of the words: 3 equal, 2 the word with a tail, 1 other words before it, 0 no. */
function wordFit(key: string, parts: readonly string[], kind: Kind, lead: boolean): number {
  const known = WHOLE.get(kind);
  if (!known) return 0;
  if (known.has(key)) return 3;
  for (let n = Math.min(parts.length - 1, 6); n >= 1; n -= 1) {
    const start = parts.slice(0, n).join(' ');
    if (known.has(start.replace(/[\s,(–—-]+$/, '')) && TAIL.test(key.slice(start.length))) return 2;
  }
  if (!lead || parts.length > MAX_LEAD_WORDS + 1) return 0;
  for (let n = 1; n < parts.length; n += 1) {
    if (known.has(parts.slice(n).join(' '))) return 1;
  }
  return 0;
}

const NOTHING: HeadingReading = { ingredients: 0, needs: false, steps: 0, stop: false };
const STOPS: HeadingReading = { ...NOTHING, stop: true };

/** Headings of methods that may end in any dish's name. */
const OPEN_STEPS =
  /^(?:how to (?:make|cook|prepare|bake)|so machst du|zo maak je|comment (?:faire|preparer)|como (?:fazer|hacer|preparar)|come (?:fare|preparare)|sa gor du|sadan laver du|slik lager du|jak zrobic|jak przygotowac|jak udelat|preparation (?:de|du|des)|zubereitung|elaboracion de|preparacion de|preparazione)(?!\p{L})/u;

function readBlock(block: Block): HeadingReading {
  if (block.text.length > MAX_HEADING) return NOTHING;
  const marked = block.level > 0 || block.bold || /head|title/.test(block.classes);
  const key = headingKey(block.text).replace(ARTICLE, '');
  const heading = marked || /:$/.test(block.text);
  const fit = heading || block.list < 0 ? stopFit(key, block.level > 0) : 0;
  const stop = fit === 3 || (fit > 0 && heading);
  const space = key.indexOf(' ');
  const first = (space < 0 ? key : key.slice(0, space)).replace(/[,(–—-]+$/, '');
  const known = FIRSTS.has(first) || (marked && LASTS.has(key.slice(key.lastIndexOf(' ') + 1)));
  const open = marked && OPEN_STEPS.test(key);
  if (!known && !open) return stop ? STOPS : NOTHING;
  const parts = key.split(' ');
  const needs = wordFit(key, parts, 'needs', marked);
  const ingredients = needs || wordFit(key, parts, 'ingredients', marked);
  const steps = wordFit(key, parts, 'steps', marked) || (open ? 1 : 0);
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
  const key = headingKey(text.slice(0, at)).replace(ARTICLE, '');
  if (bold && STOP_START.test(key)) return text.slice(0, at + 1);
  if (!FIRSTS.has(key.split(' ')[0] ?? '')) return '';
  const known = KINDS.some((kind) => WHOLE.get(kind)?.has(key));
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

/** True for a heading's text that says ingredients follow, sure or with other words around it. */
export function isNamedIngredients(text: string): boolean {
  const line = text.trim();
  if (line === '' || line.length > MAX_HEADING) return false;
  const key = headingKey(line).replace(ARTICLE, '');
  const parts = key.split(' ');
  if (!FIRSTS.has(parts[0] ?? '') && !LASTS.has(parts.at(-1) ?? '')) return false;
  return wordFit(key, parts, 'ingredients', true) > 0 || wordFit(key, parts, 'needs', true) > 0;
}
