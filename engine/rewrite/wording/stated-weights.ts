/** Weights that a page states of its dough or batter, when the reworked one weighs more or less. */
import type { Plan } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';
import { partOfItem, partOfKey } from '../parts/part-of.ts';

/** '580 g each', '660 grams per pan'. */
const EACH =
  /\b(\d{2,4})(\s?(?:g|grams?)\s(?:each\b|apiece\b|per (?:pan|tin|layer|piece|ball|half|loaf|roll|bun)\b))/gi;
const DOUGH = /\b(?:dough|batter|mixture)\b/i;
/** A change of mass that a divider of dough would not see: own choice. */
const UNSEEN = 0.05;

const weighed = (grams: number): string =>
  String(grams >= 100 ? Math.round(grams / 5) * 5 : Math.round(grams));

/** How many times the original mass a part of the dish has now; 1 when that is not known. */
export function massFactor(plan: Plan, mentions: readonly Mention[], part: number | null): number {
  const whole = plan.parts.length < 2;
  if (part === null && !whole) return 1;
  const lines = new Map(
    mentions
      .filter(({ ingredient: { key } }) => whole || partOfKey(plan, key) === part)
      .map(({ ingredient: { key, weight } }) => [key, weight?.grams.best ?? 0]),
  );
  const before = [...lines.values()].reduce((sum, grams) => sum + grams, 0);
  const now = plan.items
    .filter((item) => whole || partOfItem(plan, item) === part)
    .reduce((sum, { grams }) => sum + grams, 0);
  return before > 0 && now > 0 ? now / before : 1;
}

/** The text with the weights of pieces of dough and pans of batter times the factor. */
export function withStatedWeights(text: string, factor: number): string {
  if (Math.abs(factor - 1) <= UNSEEN || !DOUGH.test(text)) return text;
  return text.replace(
    EACH,
    (_, grams: string, rest: string) => `${weighed(Number(grams) * factor)}${rest}`,
  );
}
