/** Finds the method in the visible lines of a page. */
import type { Step } from '../../model.ts';
import { type Block, isEntry, type Spot, spots } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import { groupTitle } from '../markup/ingredient-values.ts';
import { splitMethod, tidySteps } from '../markup/instruction-values.ts';
import { ingredientsHeading, isButton, isStop, stepsHeading } from './heading-kinds.ts';
import { MAX_HEADING } from './heading-phrases.ts';
import { isSentence, looksLikeIngredient } from './line-shapes.ts';

const MAX_STEPS = 150;
/** Shortest step (characters). */
const MIN_STEP = 4;
/** Blocks passed over before the first entry at most, and looked ahead for entries: at first, between steps. */
const MOST_BEFORE = 6;
const AHEAD = 8;
const AHEAD_BETWEEN = 4;

/** Where the ingredients stand: their heading or first line, and the block after the last; keys of the lines. */
type Around = { from: number; end: number; lines: ReadonlySet<string> };

/** 'Step 3', '3.', 'Schritt 3 von 8': a label, not a step. */
function isLabel(text: string): boolean {
  return /^(?:\p{L}{1,12}\s*)?#?\d{1,2}\s*[.):]?(?:\s?(?:\/|von|of|av|de|van)\s?\d+)?$/iu.test(
    text,
  );
}

/** True for an entry that is one of the ingredient lines again. */
function isRepeated(block: Block, around: Around | null): boolean {
  if (!around || !isEntry(block) || block.text.length > 120) return false;
  return around.lines.has(textKey(block.text));
}

/** Entries of lists within the next blocks, before anything ends the method. */
function entriesAhead(
  blocks: readonly Block[],
  from: number,
  reach: number,
  around: Around | null,
): number {
  let entries = 0;
  for (let i = from; i < Math.min(blocks.length, from + reach); i += 1) {
    const block = blocks[i] as Block;
    if (isStop(block) || i === around?.from || ingredientsHeading(block) >= 2) break;
    if (isEntry(block) && block.text.length > 15 && !isRepeated(block, around)) entries += 1;
  }
  return entries;
}

/** Ends the method: a stop word, another ingredient list, or a heading of the same rank or above. */
function ends(block: Block, head: Block, found: number): boolean {
  if (isStop(block)) return true;
  if (ingredientsHeading(block) >= 2 && found > 0) return true;
  if (block.level === 0) return false;
  if (
    isLabel(block.text) ||
    /^(?:step|schritt|étape|paso|passo|stap|steg|trin)\s*\d/i.test(block.text)
  )
    return false;
  return head.level > 0 ? block.level <= head.level && found > 0 : found > 0;
}

/** A short line between steps that titles the ones below it. */
function isStepTitle(block: Block): boolean {
  const short = block.text.length <= MAX_HEADING && !/[.!?。]$/.test(block.text);
  return short && (block.level > 0 || block.bold) && !isEntry(block);
}

/** Takes the blocks below a method's heading, one after the other. */
class StepReader {
  readonly steps: Step[] = [];
  private section: string | null = null;
  /** Blocks passed over since the last step. */
  private passed = 0;
  /** The steps are entries of lists. */
  private readonly listed: boolean;

  constructor(
    private readonly blocks: readonly Block[],
    private readonly at: number,
    private readonly around: Around | null,
  ) {
    this.listed = entriesAhead(blocks, at + 1, AHEAD, around) >= 1;
  }

  /** Takes a block; false when the method ends before it. */
  take({ at, block }: Spot): boolean {
    const { text } = block;
    const { around, steps } = this;
    const head = this.blocks[this.at] as Block;
    if (around && at >= around.from && at < around.end) return true;
    if ((isButton(text) && block.level === 0) || isLabel(text)) return true;
    if (ends(block, head, steps.length) || (block.aside && !head.aside)) return false;
    // Some steps repeat the lines they use.
    if (isRepeated(block, around)) return true;
    if (isStepTitle(block)) {
      if (stepsHeading(block) === 0) this.section = groupTitle(text);
      return true;
    }
    if (this.listed && !isEntry(block)) return this.passOver(at);
    const isLine = steps.length === 0 && looksLikeIngredient(text) && !isSentence(text);
    if (text.length < MIN_STEP || isLine) return true;
    this.passed = 0;
    steps.push({ section: this.section, text });
    return true;
  }

  /** Passes over a block between entries; false when no entry comes after it. */
  private passOver(at: number): boolean {
    this.passed += 1;
    if (this.steps.length === 0) return this.passed <= MOST_BEFORE;
    return entriesAhead(this.blocks, at + 1, AHEAD_BETWEEN, this.around) > 0;
  }
}

/** The method under a heading: entries of lists where there are any, else paragraphs. */
function collectSteps(blocks: readonly Block[], at: number, around: Around | null): Step[] {
  const reader = new StepReader(blocks, at, around);
  for (const spot of spots(blocks, at + 1))
    if (reader.steps.length >= MAX_STEPS || !reader.take(spot)) break;
  const [only, second] = reader.steps;
  if (!only || second) return tidySteps(withoutCopies(reader.steps));
  const parts = splitMethod(only.text.replace(/</g, '‹'));
  if (parts.length < 2) return tidySteps(reader.steps);
  return tidySteps(parts.map((text) => ({ section: only.section, text })));
}

/** Drops the second copy when the same steps stand twice in a row. */
function withoutCopies(steps: Step[]): Step[] {
  const half = steps.length / 2;
  if (steps.length < 4 || !Number.isInteger(half)) return steps;
  const same = steps
    .slice(0, half)
    .every((step, i) => textKey(step.text) === textKey(steps[half + i]?.text ?? ''));
  return same ? steps.slice(0, half) : steps;
}

/** Steps without a heading: the ordered list, else the sentences, that follow the ingredients. */
function stepsAfter(blocks: readonly Block[], from: number): Step[] {
  const steps: Step[] = [];
  let list = -1;
  for (let i = from; i < blocks.length && steps.length < MAX_STEPS; i += 1) {
    const block = blocks[i] as Block;
    if (block.aside || isStop(block)) break;
    if (isButton(block.text) || isLabel(block.text)) continue;
    if (block.level > 0 && steps.length > 0) break;
    if (list >= 0 && block.list !== list) break;
    if (!isSentence(block.text) && block.list < 0) continue;
    if (isEntry(block) && steps.length === 0 && entriesAhead(blocks, i, 3, null) >= 2)
      list = block.list;
    steps.push({ section: null, text: block.text });
  }
  return tidySteps(steps);
}

function weight(steps: readonly Step[]): number {
  return steps.reduce((sum, step) => sum + step.text.length, 0);
}

/**
 * The method of the page: under the first steps heading that holds enough text, best one after the
 * ingredients; else what follows the ingredients. `around` says where those stand.
 */
export function findSteps(blocks: readonly Block[], around: Around | null): Step[] {
  const candidates: { steps: Step[]; score: number }[] = [];
  for (let i = 0; i < blocks.length && candidates.length < 30; i += 1) {
    const block = blocks[i] as Block;
    const fit = stepsHeading(block);
    if (fit === 0 || (around && i > around.from && i < around.end)) continue;
    const steps = collectSteps(blocks, i, around);
    const size = weight(steps);
    if (steps.length === 0 || size < 40) continue;
    const after = around === null || i >= around.end - 1;
    const distance = around ? Math.abs(i - around.end) : 0;
    const numbered = steps.length >= 2 ? 1 : 0;
    candidates.push({
      steps,
      score: fit + (after ? 2 : 0) + numbered + (distance < 6 ? 1.5 : 0) - (block.aside ? 4 : 0),
    });
  }
  const best = candidates.reduce<(typeof candidates)[number] | null>(
    (top, one) => (top === null || one.score > top.score ? one : top),
    null,
  );
  if (best) return best.steps;
  return around ? stepsAfter(blocks, around.end) : [];
}
