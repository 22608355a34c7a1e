/** Amounts, times and heats in a step that the page's own step does not have. */

/** A figure with its unit: '95 g', '170 °C', '3-6 minutes', '1⅓ cups'. */
const FIGURE =
  /(?<![\p{L}\p{N}])[\d½¼¾⅓⅔⅛][\d½¼¾⅓⅔⅛.,]*(?:\s?[-–]\s?\d[\d.,]*)?\s?(?:°\s?[CF]|g|kg|ml|l|oz|lb|cups?|tbsp|tsp|EL|TL|min(?:utes?|uten?)?|hours?|h|Stunden?|Minuten?|seconds?)(?![\p{L}\p{N}])/giu;

const bare = (text: string): string => text.toLowerCase().replace(/\s+/g, '');

export interface StepPart {
  text: string;
  isNew: boolean;
}

/** The step in pieces; pieces that are new are amounts. `before` is null for a step that is new. */
export function stepParts(after: string, before: string | null): StepPart[] {
  const old = new Set((before ?? '').match(FIGURE)?.map(bare));
  const parts: StepPart[] = [];
  let at = 0;
  for (const found of after.matchAll(FIGURE)) {
    if (old.has(bare(found[0]))) continue;
    if (found.index > at) parts.push({ text: after.slice(at, found.index), isNew: false });
    parts.push({ text: found[0], isNew: true });
    at = found.index + found[0].length;
  }
  if (at < after.length) parts.push({ text: after.slice(at), isNew: false });
  return parts;
}
