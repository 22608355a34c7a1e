/** Honey, malt or soda in the water that bagels and pretzels are boiled in. */
import { keptFor } from '../../kept-results.ts';
import type { Line } from '../../model.ts';
import { plain } from '../line-words.ts';

/** Dough that is boiled before it is baked. */
const BOILED = /\bbagel|\bpretzel|\bbrezel|\blaugen|\bbretzel|\bobwarz/;
/** What goes into its water and little of which stays on it. */
const IN_WATER =
  /\b(?:honey|sugar|malt|malt (?:syrup|powder)|syrup|molasses|baking soda|bicarbonate(?: of soda)?|soda|salt|natron|kaiser-?natron|honig|zucker|malz|gerstenmalz|miel|sucre|bicarbonate)$/;
const FOR_BOILING = /\bfor (?:the )?(?:boil|poach|bath|water)|\bwater bath\b|\bboiling water\b/;
const WATER = /\b(?:water|pot|wasser|topf|eau|casserole)\b/;
const BOILS = /\b(?:boil|simmer|water bath|koch|aufkoch|sied|bouill|ebullition)/;

/** A dough of its own among the lines: sugar boiled beside bought pretzels is a caramel, and eaten. */
const RAISED = /yeast|hefe|levure|levadura|lievito|gist\b|\bjast\b|\bstarter\b|sauerteig|levain/;
const DOUGH = /\b(?:flour|yeast|mehl|hefe|farine|levure)\b/;

interface Method {
  title: string;
  steps: readonly string[];
  lines: readonly Line[];
}

/** The sentences that make the bath ready; none where nothing of the kind is baked. */
const bathSentences = keptFor(({ title, steps, lines }: Method): readonly string[] => {
  const sentences = steps.flatMap((step) => plain(step).split(/(?<=[.;!?])\s+|\n/));
  if (!BOILED.test(`${plain(title)} ${sentences.join(' ').slice(0, 4000)}`)) return [];
  if (!lines.some((line) => RAISED.test(plain(line.text)))) return [];
  return sentences.filter((sentence, at) => {
    const near = `${sentences[at - 1] ?? ''} ${sentence}`;
    return WATER.test(near) && BOILS.test(near) && !DOUGH.test(sentence);
  });
});

/** How many lines hold a food of this last word: of two nothing tells which is in the dough. */
const linesOf = (head: string, lines: readonly Line[]): number =>
  lines.filter(({ items }) => items.some(({ name }) => plain(name).endsWith(head))).length;

/** Is the item stirred into the boiling water? `purpose` holds the line's own words of what it is for. */
export function isBoiledInBath(name: string, purpose: string, recipe: Method): boolean {
  const head = IN_WATER.exec(plain(name).trim())?.[0];
  const sentences = head === undefined ? [] : bathSentences(recipe);
  if (head === undefined || sentences.length === 0) return false;
  if (FOR_BOILING.test(purpose)) return true;
  return linesOf(head, recipe.lines) === 1 && sentences.some((words) => words.includes(head));
}

/** Water of a dough comes by the cup, that of a bath by the litre, g. Own choice. */
const BATH_FROM = 1000;

/** Is it the water that the dough is boiled in? */
export const isBathWater = (name: string, grams: number | null, recipe: Method): boolean =>
  /(?:water|wasser|eau|agua|acqua)$/.test(plain(name).trim()) &&
  (grams ?? 0) >= BATH_FROM &&
  bathSentences(recipe).length > 0;
