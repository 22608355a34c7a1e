/** Finds the method in the visible lines of a page. */
import type { Step } from '../../model.ts';
import { type Block, isEntry, isMadeLike, type Spot, spots } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import { groupTitle } from '../markup/ingredient-values.ts';
import { splitMethod, tidySteps } from '../markup/instruction-values.ts';
import {
  ingredientsHeading,
  isButton,
  isStop,
  opensWithStop,
  stepsHeading,
} from './heading-kinds.ts';
import { MAX_HEADING } from './heading-phrases.ts';
import {
  foodWords,
  isLabel,
  isSentence,
  looksLikeIngredient,
  startsWithFigure,
} from './line-shapes.ts';

/** The steps found, and whether they are entries of lists or have numbers beside them. */
type FoundSteps = { steps: Step[]; listed: boolean };

export const MAX_STEPS = 150;
/** Headings whose text is looked at, at most. */
const MOST_CANDIDATES = 30;
/** Shortest step (characters). */
const MIN_STEP = 4;
/** Longest of several lines in one (characters). */
const LONGEST_PART = 40;
/** Blocks passed over before the first entry at most, and looked ahead for entries: at first, between steps. */
const MOST_BEFORE = 6;
const AHEAD = 8;
const AHEAD_BETWEEN = 4;

/**
 * Where the ingredients stand: their heading or first line, and the block after the last; keys of the lines
 * and of the foods they name; places of further lines that stand beside the steps.
 */
type Around = {
  from: number;
  end: number;
  lines: ReadonlySet<string>;
  foods: readonly string[];
  beside: ReadonlySet<number>;
};

/** True for an entry that is one of the ingredient lines again. */
function isRepeated(block: Block, around: Around | null): boolean {
  if (!around || !isEntry(block) || block.text.length > 120) return false;
  return around.lines.has(textKey(block.text));
}

/** '60 g butter, 80 g flour' above a step: what it takes of the lines. */
function namesLines(text: string, foods: readonly string[]): boolean {
  if (!startsWithFigure(text) || /[.!?:]$/.test(text)) return false;
  return text.split(/,\s/).every((part) => {
    const own = textKey(foodWords(part));
    return part.length <= LONGEST_PART && foods.some((food) => own.includes(food));
  });
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

/** 'Step 3: bake': a heading of one step. */
const STEP_NUMBER = /^(?:step|schritt|étape|paso|passo|stap|steg|trin)\s*\d/i;

/** A short line between steps that titles the ones below it. */
function isStepTitle(block: Block): boolean {
  const short = block.text.length <= MAX_HEADING && !/[.!?。]$/.test(block.text);
  return short && (block.level > 0 || block.bold) && !isEntry(block);
}

/** Takes the blocks below a method's heading, one after the other. */
class StepReader {
  readonly steps: Step[] = [];
  private readonly isBold: boolean[] = [];
  private section: string | null = null;
  /** Rank of the heading that stood before the first step, 0 when none did. */
  private rank = 0;
  /** Blocks passed over since the last step. */
  private passed = 0;
  /** Numbers passed over that stand in blocks of their own. */
  private labels = 0;
  /** The steps are entries of lists. */
  readonly listed: boolean;

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
    if (around && ((at >= around.from && at < around.end) || around.beside.has(at))) return true;
    if (isLabel(text)) this.labels += 1;
    if ((isButton(text) && block.level === 0) || isLabel(text)) return true;
    if (this.isPast(block, head) || (block.aside && !head.aside)) return false;
    // Some steps repeat the lines they use.
    if (isRepeated(block, around) || (around && namesLines(text, around.foods))) return true;
    if (isStepTitle(block)) {
      if (steps.length === 0) this.rank = block.level;
      if (stepsHeading(block) < 3 || steps.length > 0) this.section = groupTitle(text);
      return true;
    }
    // A question in a heading is what readers ask.
    if (block.level > 0 && /\?$/.test(text)) return steps.length === 0;
    if (this.listed && !isEntry(block)) return this.passOver(at);
    const isLine = steps.length === 0 && looksLikeIngredient(text) && !isSentence(text);
    if (text.length < MIN_STEP || isLine) return true;
    this.passed = 0;
    steps.push({ section: this.section, text });
    this.isBold.push(block.bold);
    return true;
  }

  /**
   * Past the method: a stop word, another ingredient list, or a heading of the same rank or above that
   * does not name one more part of the method ('Method for the topping').
   */
  private isPast(block: Block, head: Block): boolean {
    const found = this.steps.length;
    if (isStop(block)) return true;
    if (ingredientsHeading(block) >= 2 && found > 0) return true;
    if (block.level === 0 || isLabel(block.text) || STEP_NUMBER.test(block.text)) return false;
    if (found === 0) return this.isPastTab(block, head);
    if (stepsHeading(block) === 2) return false;
    if (head.level > 0) return block.level <= head.level;
    return this.rank === 0 || block.level < this.rank;
  }

  /** Takes off what follows the last step: bold lines below plain steps, notes and tips. */
  trim(): void {
    const isPlain = this.isBold.includes(false);
    for (let last = this.steps.length - 1; last > 0; last -= 1) {
      const isExtra = (isPlain && this.isBold[last]) || opensWithStop(this.steps[last]?.text ?? '');
      if (!isExtra) return;
      this.steps.pop();
    }
  }

  /** The steps are entries, or have their numbers beside them: what follows the last one is none. */
  get isSure(): boolean {
    return this.listed || this.labels * 2 > this.steps.length;
  }

  /** A heading after the ingredients, when the method's heading above them was but the label of a tab. */
  private isPastTab(block: Block, head: Block): boolean {
    const { around } = this;
    if (!around || this.at >= around.from || stepsHeading(block) > 0) return false;
    return this.blocks.indexOf(block) >= around.end && block.level <= head.level;
  }

  /** Passes over a block between entries; false when no entry comes after it. */
  private passOver(at: number): boolean {
    this.passed += 1;
    if (this.steps.length === 0) return this.passed <= MOST_BEFORE;
    return entriesAhead(this.blocks, at + 1, AHEAD_BETWEEN, this.around) > 0;
  }
}

/** The method under a heading: entries of lists where there are any, else paragraphs. */
function collectSteps(blocks: readonly Block[], at: number, around: Around | null): FoundSteps {
  const reader = new StepReader(blocks, at, around);
  for (const spot of spots(blocks, at + 1))
    if (reader.steps.length >= MAX_STEPS || !reader.take(spot)) break;
  reader.trim();
  const listed = reader.isSure;
  const [only, second] = reader.steps;
  if (!only || second) return { steps: tidySteps(withoutCopies(reader.steps)), listed };
  const parts = splitMethod(only.text.replace(/</g, '‹'));
  if (parts.length < 2) return { steps: tidySteps(reader.steps), listed };
  return { steps: tidySteps(parts.map((text) => ({ section: only.section, text }))), listed };
}

/** Drops what is the method's beginning, or all of it, once more. */
function withoutCopies(steps: Step[]): Step[] {
  const keys = steps.map((step) => textKey(step.text));
  const again = keys.indexOf(keys[0] ?? '', 2);
  const isCopy = again > 0 && keys.slice(again).every((key, i) => key === keys[i]);
  return isCopy ? steps.slice(0, again) : steps;
}

/**
 * Steps without a heading that was taken: the ordered list, else the sentences, that follow the ingredients.
 * A short text counts only in an ordered list or below a heading of the method.
 */
function stepsAfter(blocks: readonly Block[], from: number): Step[] {
  const steps: Step[] = [];
  let list = -1;
  let sure = false;
  let last: Block | undefined;
  for (const { at, block } of spots(blocks, from)) {
    if (block.aside || isStop(block) || steps.length >= MAX_STEPS) break;
    if (isButton(block.text) || isLabel(block.text)) continue;
    if (stepsHeading(block) > 0) sure = true;
    if (block.level > 0 && steps.length > 0) break;
    if (block.level > 0 || block.link || (list >= 0 && block.list !== list)) {
      if (list >= 0) break;
      continue;
    }
    const listed = block.list >= 0 && block.ordered;
    // 'Sprinkle with parsley.' goes on with the paragraphs above it.
    const goesOn = last !== undefined && isMadeLike(block, last) && /\p{L}\.$/u.test(block.text);
    if (!isSentence(block.text) && !listed && !goesOn) continue;
    sure ||= listed;
    if (isEntry(block) && steps.length === 0 && entriesAhead(blocks, at, 3, null) >= 2)
      list = block.list;
    steps.push({ section: null, text: block.text });
    last = block;
  }
  const enough = sure || weight(steps) >= ENOUGH;
  return enough && proseShare(steps) > 0 ? tidySteps(steps) : [];
}

/** Letters of a method below which it counts for little. */
const ENOUGH = 40;

function weight(steps: readonly Step[]): number {
  return steps.reduce((sum, step) => sum + step.text.length, 0);
}

/** Share of the steps that are sentences: menus and tabs hold none. */
function proseShare(steps: readonly Step[]): number {
  return steps.filter(({ text }) => isSentence(text)).length / steps.length;
}

/** How likely the steps under a heading are the recipe's method. */
function fitOf(
  steps: readonly Step[],
  blocks: readonly Block[],
  at: number,
  around: Around | null,
) {
  const head = blocks[at] as Block;
  const after = around === null || at >= around.end - 1;
  const distance = around ? Math.abs(at - around.end) : 0;
  return (
    stepsHeading(head) +
    (after ? 2 : 0) +
    (steps.length >= 2 ? 1 : 0) +
    (distance < 6 ? 1.5 : 0) -
    (head.aside ? 4 : 0) +
    proseShare(steps) * 3
  );
}

/**
 * The method of the page: under the first steps heading that holds enough text, best one after the
 * ingredients; else what follows the ingredients. `around` says where those stand.
 */
export function findSteps(blocks: readonly Block[], around: Around | null): FoundSteps {
  const candidates: (FoundSteps & { score: number })[] = [];
  for (const { at, block } of spots(blocks, 0)) {
    if (candidates.length >= MOST_CANDIDATES) break;
    if (stepsHeading(block) === 0 || (around && at > around.from && at < around.end)) continue;
    const found = collectSteps(blocks, at, around);
    const { steps } = found;
    if (steps.length === 0 || weight(steps) < ENOUGH) continue;
    candidates.push({ ...found, score: fitOf(steps, blocks, at, around) });
  }
  const most = Math.max(...candidates.map(({ score }) => score));
  const best = candidates.find(({ score }) => score === most);
  if (best) return best;
  return { steps: around ? stepsAfter(blocks, around.end) : [], listed: false };
}
