/** Finds the rest of an ingredient list that is printed part by part beside the steps. */
import { type Block, isMadeLike, spots } from '../../document/block.ts';
import { ingredientsHeading, isStop, stepsHeading } from '../heading-kinds.ts';
import { foodWords, isLabel, isSentence, looksLikeIngredient } from '../line-shapes.ts';

/** Longest such line (characters), fewest of them, and fewest stretches of steps between. Own choice. */
const MAX_BESIDE = 80;
const FEWEST = 2;
const STRETCHES = 2;
/** Share of lines whose foods the list has already: then the steps repeat what they use. Own choice. */
const REPEATED = 0.34;

/** A line made like those of the list, or one with an amount. */
function isLine(block: Block, first: Block): boolean {
  if (block.link || block.level > 0 || block.text.length > MAX_BESIDE) return false;
  if (isSentence(block.text) || /[.!:：]$/.test(block.text)) return false;
  if (isMadeLike(block, first) && first.classes.trim() !== '') return true;
  return block.list >= 0 === first.list >= 0 && looksLikeIngredient(block.text);
}

/** Numbers with the same word before them that make it a word for steps ('krok 1'). Own choice. */
const NUMBERED = 3;

/** What stands before the numbers of steps: nothing, or a word that several numbers have. */
function stepWords(blocks: readonly Block[], from: number): (word: string) => boolean {
  const counts = new Map<string, number>([['', NUMBERED]]);
  for (const { block } of spots(blocks, from)) {
    if (!isLabel(block.text)) continue;
    const word = foodWords(block.text);
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return (word) => (counts.get(word) ?? 0) >= NUMBERED;
}

/**
 * Places of the blocks after a list (from `at` to before `end`) that go on with it, each between steps.
 * None where they name the same foods again.
 */
export function linesBeside(blocks: readonly Block[], at: number, end: number): number[] {
  const list = blocks.slice(at, end);
  const first = list.find((block) => looksLikeIngredient(block.text));
  if (!first) return [];
  const foods = new Set(list.map(({ text }) => foodWords(text)));
  const isStepWord = stepWords(blocks, end);
  const places: number[] = [];
  let stretches = 0;
  let told = false;
  for (const { at: i, block } of spots(blocks, end)) {
    if (isStop(block) || block.aside || ingredientsHeading(block) >= 2) break;
    if (stepsHeading(block) >= 2 && told) break;
    if (isLabel(block.text) && isStepWord(foodWords(block.text))) continue;
    if (isLine(block, first)) {
      if (told) stretches += 1;
      told = false;
      places.push(i);
    } else told ||= isSentence(block.text);
  }
  const repeated = places.filter((i) => foods.has(foodWords(blocks[i]?.text ?? ''))).length;
  const whole = places.length >= FEWEST && stretches >= STRETCHES;
  return whole && repeated <= places.length * REPEATED ? places : [];
}
