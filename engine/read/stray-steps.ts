/** Takes out of a marked-up method what is no step: ingredient lines, headings, the steps a second time. */
import type { Step } from '../model.ts';
import { textKey } from './document/clean-text.ts';
import { groupTitle } from './markup/ingredient-values.ts';
import { INGREDIENTS, MAX_HEADING, phraseKey, STEPS } from './visible/heading-phrases.ts';

/** 'Step 3', '4:', or an address: no step. */
const LABEL = /^(?:(?:\p{L}{2,8}\s*)?#?\d{1,2}\s*[.):]?|https?:\S+)$/u;

/** What a short text without a full stop heads; null when it reads as a step. */
function headOf(text: string): 'ingredients' | 'method' | 'part' | null {
  if (text.length > MAX_HEADING || /[.!?。,;]$/.test(text)) return null;
  const key = phraseKey(text);
  if (INGREDIENTS.fit(key, false) >= 2) return 'ingredients';
  const fit = STEPS.fit(key, false);
  return fit === 3 ? 'method' : fit === 2 ? 'part' : null;
}

/** The steps once, where all of them are there twice in a row. */
function once(steps: readonly Step[]): readonly Step[] {
  const half = steps.length / 2;
  if (half < 2 || !Number.isInteger(half)) return steps;
  const isCopy = (step: Step, i: number) =>
    textKey(step.text) === textKey(steps[half + i]?.text ?? '');
  return steps.slice(0, half).every(isCopy) ? steps.slice(0, half) : steps;
}

/** The steps of a method without the lines of the recipe and its headings; a heading of a part names it. */
export function withoutStrays(steps: readonly Step[], lines: readonly string[]): Step[] {
  const known = new Set(lines.map(textKey));
  const kept: Step[] = [];
  let part: string | null = null;
  let begun = false;
  for (const step of once(steps)) {
    const head = headOf(step.text);
    if (head === 'part') part = groupTitle(step.text);
    // What stands above the ingredients is talk.
    if (head === 'ingredients' && !begun) kept.length = 0;
    begun ||= head !== null;
    if (head !== null || LABEL.test(step.text) || known.has(textKey(step.text))) continue;
    kept.push({ ...step, section: step.section ?? part });
  }
  return kept;
}
