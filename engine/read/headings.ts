import type { Block } from './blocks.ts';
import words from './data/heading-words.json' with { type: 'json' };

/** Lower case, curly marks made plain, numbers of a list and closing colons taken off. */
export function headingKey(text: string): string {
  return text
    .toLowerCase()
    .replace(/[’‘´`]/g, "'")
    .replace(/[“”„"*#_:：!?.…|<>»«【】[\]▼▾⏬↓→➔]+/g, ' ')
    .replace(/^\s*[\d]+\s*[).]?\s+/, '')
    .replace(/\p{Extended_Pictographic}\ufe0f?/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

const INGREDIENTS = new Set(words.ingredients);
const STEPS = new Set(words.steps);
const STOP = new Set(words.stop);
const BUTTONS = new Set(words.buttons);

/** Words that may follow a heading word: 'Ingredients for 4 people', 'Zutaten (für 4 Personen)'. */
const TAIL =
  /^(?:[\s(,–—-]+(?:for|für|voor|pour|para|per|för|til|till|de|do|da|du|des|del|della|of|the|\d|\(|serves|about|ca|x|metric|us|makes|yield|recipe|rezept|persons?|people).*|\s*\(.*\)|\s+\d.*|\s?[-–—].*)$/;
/** Words that may stand before it: 'Cake ingredients', 'The ingredients', 'Recipe instructions'. */
const MAX_LEAD_WORDS = 4;

/** Longest text taken for a heading (characters). */
export const MAX_HEADING = 80;

/** How well a text is one of the words: 3 equal, 2 the word with a tail, 1 other words before it, 0 no. */
function wordFit(text: string, set: ReadonlySet<string>, lead: boolean): number {
  if (text.length > MAX_HEADING) return 0;
  const key = headingKey(text);
  if (key === '') return 0;
  if (set.has(key)) return 3;
  const parts = key.split(' ');
  for (let n = Math.min(parts.length - 1, 6); n >= 1; n -= 1) {
    const start = parts
      .slice(0, n)
      .join(' ')
      .replace(/[,(–—-]+$/, '')
      .trim();
    const rest = key.slice(parts.slice(0, n).join(' ').length);
    if (set.has(start) && TAIL.test(rest)) return 2;
  }
  if (!lead || parts.length > MAX_LEAD_WORDS + 1) return 0;
  for (let n = 1; n < parts.length; n += 1) {
    if (set.has(parts.slice(n).join(' '))) return 1;
  }
  return 0;
}

/** How sure a block heads the ingredients, 0..3. */
export function ingredientsHeading(block: Block): number {
  return wordFit(block.text, INGREDIENTS, block.level > 0 || block.bold);
}

/** How sure a block heads the method, 0..3; 'How to make …' may end in any dish name. */
export function stepsHeading(block: Block): number {
  const found = wordFit(block.text, STEPS, block.level > 0 || block.bold);
  if (found > 0 || (block.level === 0 && !block.bold) || block.text.length > MAX_HEADING)
    return found;
  const open =
    /^(?:how to (?:make|cook|prepare|bake)|so machst du|zo maak je|comment (?:faire|préparer)|cómo (?:hacer|preparar)|como (?:fazer|hacer|preparar)|come (?:fare|preparare)|så gör du|sådan laver du|slik lager du|préparation (?:de|du|des)|zubereitung|elaboración de|preparación de|preparazione)\b/u;
  return open.test(headingKey(block.text)) ? 1 : 0;
}

/** True for a block that ends the recipe's part of the page: notes, nutrition, comments ... */
export function isStop(block: Block): boolean {
  if (block.text.length > MAX_HEADING) return false;
  const heading = block.level > 0 || block.bold || /:$/.test(block.text);
  const found = wordFit(block.text, STOP, block.level > 0);
  if (found === 3) return heading || block.list < 0;
  return found > 0 && heading;
}

/** True for interface words that are no part of a recipe: buttons, scale marks, unit switches. */
export function isButton(text: string): boolean {
  if (text.length > 40) return false;
  const key = headingKey(text);
  if (key === '') return true;
  return BUTTONS.has(key) || /^(?:[\d½/]+\s?x\s*)+$/i.test(text) || /^[^\p{L}\p{N}]+$/u.test(text);
}
