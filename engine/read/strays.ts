/** Takes out of lists and methods what is no line and no step: figures of nutrition, headings, lines among steps. */
import type { IngredientGroup, Step } from '../model.ts';
import { textKey } from './document/clean-text.ts';
import { groupTitle } from './markup/ingredient-values.ts';
import { tidySteps } from './markup/instruction-values.ts';
import { INGREDIENTS, MAX_HEADING, phraseKey, STEPS } from './visible/heading-phrases.ts';

/** 'Step 3', '4:', or an address: no step. */
const LABEL = /^(?:(?:\p{L}{2,8}\s*)?#?\d{1,2}\s*[.):]?|https?:\S+)$/u;

/** A button, or what the page files the recipe under. */
const MENU =
  /^(?:pin (?:it|this|recipe)|print(?: this)?(?: recipe)?|share(?: this)?|jump to (?:the )?recipe)[.!]?$|^recipe type:\s/iu;

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
    if (head !== null || LABEL.test(step.text) || MENU.test(step.text)) continue;
    if (known.has(textKey(step.text))) continue;
    kept.push({ ...step, section: step.section ?? part });
  }
  // Numbers that a heading among them kept from being a sequence.
  return tidySteps(kept);
}

/** What a list of ingredients names, in a line of its own: prices, file sizes, figures of nutrition, where the list is. */
const NO_FOOD =
  /^[$€£¥]\s?\d[\d.,]*$|^\d+[.,]\d{2}\s?[$€£¥]$|\d\s?[kM]B\b|^(?:serving|portion)s?[\s-]size\b|^(?:ingredients?|zutaten|ingrédients|ingredientes|ingrediënten):\s?\S|^<?\d[\d.,]*\s?(?:m?g|µg)?\s(?:of\s)?(?:calories|(?:total|saturated|trans) fat|cholesterol|sodium|potassium|(?:total |dietary )?fib(?:er|re)|protein|(?:total )?carbohydrates?|carbs|kcal|kj)$|^(?:calories|kalorien)[\s:]+\d+$|^(?:energy|(?:total|saturated) fat|saturates|cholesterol|carbohydrates?|carbs|(?:dietary )?fib(?:er|re)|protein|eiweiß|kohlenhydrate|koolhydraten|vitamin \w{1,3}|calcium|iron|potassium|sodium)[\s:]+<?\d[\d.,]*\s?(?:m?g|µg|kcal|cal|kj|%)$|\bdaily values?\b|^\*{0,2}not included:?$|^(?:for|see)\b[^,;]{0,20}\bingredients?(?: list)?\b[^.]{0,20}\b(?:see|below|above|nutrition)\b/i;

/** True for a line that is no ingredient whatever it stands among. */
function isNoIngredient(line: string): boolean {
  return NO_FOOD.test(line);
}

/** The groups without lines that are no ingredients. */
export function withoutNoFood(groups: readonly IngredientGroup[]): IngredientGroup[] {
  return groups
    .map(({ title, lines }) => ({ title, lines: lines.filter((line) => !isNoIngredient(line)) }))
    .filter(({ lines }) => lines.length > 0);
}
