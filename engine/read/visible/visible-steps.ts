/** Finds the method in the visible lines of a page. */
import type { Step } from '../../model.ts';
import type { Block } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import { groupTitle } from '../markup/ingredient-values.ts';
import { splitMethod, tidySteps } from '../markup/instruction-values.ts';
import { ingredientsHeading, isButton, isStop, stepsHeading } from './heading-kinds.ts';
import { MAX_HEADING } from './heading-phrases.ts';
import { isSentence, looksLikeIngredient } from './line-shapes.ts';

const MAX_STEPS = 150;

/** Where the ingredients stand: their heading or first line, and the block after the last; keys of the lines. */
type Around = { from: number; end: number; lines: ReadonlySet<string> };

/** 'Step 3', '3.', 'Schritt 3 von 8': a label, not a step. */
function isLabel(text: string): boolean {
  return /^(?:\p{L}{1,12}\s*)?#?\d{1,2}\s*[.):]?(?:\s?(?:\/|von|of|av|de|van)\s?\d+)?$/iu.test(
    text,
  );
}

function isEntry(block: Block): boolean {
  return block.list >= 0 && block.level === 0;
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

/** The method under a heading: entries of lists where there are any, else paragraphs. */
function collectSteps(blocks: readonly Block[], at: number, around: Around | null): Step[] {
  const head = blocks[at] as Block;
  const listed = entriesAhead(blocks, at + 1, 8, around) >= 1;
  const steps: Step[] = [];
  let section: string | null = null;
  let missed = 0;
  for (let i = at + 1; i < blocks.length && steps.length < MAX_STEPS; i += 1) {
    const block = blocks[i] as Block;
    const { text } = block;
    if (around && i >= around.from && i < around.end) continue;
    if ((isButton(text) && block.level === 0) || isLabel(text)) continue;
    if (ends(block, head, steps.length) || (block.aside && !head.aside)) break;
    // Some steps repeat the lines they use.
    if (isRepeated(block, around)) continue;
    const titled =
      text.length <= MAX_HEADING && !/[.!?。]$/.test(text) && (block.level > 0 || block.bold);
    if (titled && !isEntry(block)) {
      if (stepsHeading(block) === 0) section = groupTitle(text);
      continue;
    }
    if (listed && !isEntry(block)) {
      missed += 1;
      if (steps.length === 0) {
        if (missed > 6) break;
        continue;
      }
      if (entriesAhead(blocks, i + 1, 4, around) === 0) break;
      continue;
    }
    if (text.length < 4 || (steps.length === 0 && looksLikeIngredient(text) && !isSentence(text)))
      continue;
    missed = 0;
    steps.push({ section, text });
  }
  if (steps.length === 1) {
    const only = steps[0] as Step;
    const parts = splitMethod(only.text.replace(/</g, '‹'));
    if (parts.length > 1)
      return tidySteps(parts.map((part) => ({ section: only.section, text: part })));
  }
  return tidySteps(withoutCopies(steps));
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
