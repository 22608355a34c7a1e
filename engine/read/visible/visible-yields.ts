/** Finds what the visible page says of how much a recipe makes. */
import { type Block, spots } from '../document/block.ts';
import type { YieldStatement } from '../draft.ts';
import { isServingsLabel, statedServings } from '../values/stated-servings.ts';
import { isButton, isStop } from './heading-kinds.ts';

const MAKES =
  /^(?:makes|yields?|serves|servings?|portions?|ergibt|für|voor|pour|rendimento|rinde|rendement|porzioni|dosi per|dosi|portioner|antal|adag|per)(?=[\s:\d])/i;
/** The size of one serving, not how many there are. */
const SIZE = /^(?:serving|portion)s?[\s-]?size\P{L}*\p{L}/iu;
/** Class names of elements that hold the number of servings. */
const SERVINGS_CLASS = /person|portion|porti[eo]|serving|yield|porci/;
const TIME = /\d\s?(?:h|m|min|std|uur|час|ч|мин)\p{L}*\.?$/iu;

/** Blocks round the ingredients' start that count as near, and blocks looked at above it. */
const NEAR = 12;
const ABOVE = 150;
/** Longest line that states servings, and that starts with a word for making (characters). */
const MAX_SERVINGS = 120;
const MAX_MAKES = 60;
/** Statements kept. */
const MOST = 6;

/** Places in the order they are looked at: round the ingredients' start, nearest first, then above. */
function placesFrom(at: number): { near: number[]; above: number[] } {
  const near: number[] = [at];
  for (let d = 1; d <= NEAR; d += 1) near.push(at + d, at - d);
  const above: number[] = [];
  for (let i = Math.max(0, at - ABOVE); i < at - NEAR; i += 1) above.push(i);
  return { near, above };
}

/** 'Servings' and '4', or '4' and 'people', in blocks of their own. */
function inTwoBlocks(block: Block, next: Block | undefined): string | null {
  const other = next?.text ?? '';
  if (other.length >= 40) return null;
  if (isServingsLabel(block.text) && /^\d/.test(other))
    return `${block.text.replace(/[\s:]+$/, '')}: ${other}`;
  return /^\d{1,2}$/.test(block.text) && isServingsLabel(other) && !/^yield|:$/i.test(other)
    ? `${block.text} ${other}`
    : null;
}

/** A bare number in an element named after servings, or beside the time in a list above the ingredients. */
function isBareServings(blocks: readonly Block[], i: number, at: number): boolean {
  const block = blocks[i];
  if (!block || !/^\d{1,2}$/.test(block.text) || i >= at) return false;
  if (SERVINGS_CLASS.test(block.classes)) return true;
  const beside = (other: Block | undefined) =>
    other !== undefined && other.list === block.list && TIME.test(other.text);
  return block.list >= 0 && (beside(blocks[i - 1]) || beside(blocks[i + 1]));
}

/** What the block at a place states of servings, or null. */
function servingsAt(blocks: readonly Block[], i: number, at: number): string | null {
  const block = blocks[i];
  if (!block || block.text.length > MAX_SERVINGS) return null;
  const two = inTwoBlocks(block, blocks[i + 1]);
  if (two !== null) return two;
  if (isButton(block.text) && !/^\d+$/.test(block.text)) return null;
  if (!/\d/.test(block.text) || SIZE.test(block.text)) return null;
  return statedServings(block.text) || isBareServings(blocks, i, at) ? block.text : null;
}

/** Blocks below the ingredients in which a line may say what a recipe makes, when none above does. */
const BELOW = 60;

/** 'Yield: 24 rolls' at the end of the recipe. */
function yieldBelow(blocks: readonly Block[], at: number): string[] {
  for (const { block } of spots(blocks, at, at + BELOW)) {
    if (isStop(block) || block.aside) break;
    if (isMade(block.text)) return [block.text];
  }
  return [];
}

const isMade = (text: string): boolean =>
  text.length <= MAX_MAKES && MAKES.test(text) && !SIZE.test(text) && /\d/.test(text);

/** Yield statements near the ingredients at a block, nearest first, then above them, else below. */
export function yieldsNear(blocks: readonly Block[], at: number): YieldStatement[] {
  const { near, above } = placesFrom(at);
  // Where the ingredients stand in a side part, so does how much they make.
  const isElsewhere = (i: number) =>
    blocks[i]?.aside === true && !(blocks[at]?.aside && Math.abs(i - at) <= NEAR);
  const here = [...near, ...above].filter((i) => blocks[i] !== undefined && !isElsewhere(i));
  const texts = here.flatMap((i) => servingsAt(blocks, i, at) ?? []);
  for (const i of here.filter((place) => Math.abs(place - at) <= NEAR || place < at)) {
    const { text } = blocks[i] as Block;
    if (isMade(text)) texts.push(text);
  }
  if (texts.length === 0) texts.push(...yieldBelow(blocks, at));
  return [...new Set(texts)].slice(0, MOST).map((text) => ({ text, from: 'page' }));
}
