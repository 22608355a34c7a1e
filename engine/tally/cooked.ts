/** Weight of the finished dish: measured, or reckoned from what goes in. */
import { hasTag } from '../foods/tags.ts';
import { scale } from '../interval.ts';
import type { Family, Interval } from '../model.ts';
import type { CountedLine } from './counted.ts';
import data from './data/yields.json' with { type: 'json' };

interface Yields {
  low: number;
  best: number;
  high: number;
  source: string;
}
const FAMILY_YIELDS: Record<Family, Yields> = data.families;
const DRY_YIELDS: Record<string, { yield: number; source: string }> = data.dry;

const isOil = (line: CountedLine): boolean => (line.food.per100g.fatG ?? 0) >= 99;

/** Dry pasta or grain takes up water that no line states, unless the dish brings its own liquid. */
function takesUpWater(line: CountedLine, lines: readonly CountedLine[]): boolean {
  const dry = DRY_YIELDS[line.food.id];
  if (dry === undefined) return false;
  const liquid = lines
    .filter((other) => (other.food.per100g.waterG ?? 0) >= 85 && isDrinkable(other))
    .reduce((sum, other) => sum + other.grams, 0);
  return liquid < line.grams;
}

const isDrinkable = (line: CountedLine): boolean =>
  line.food.id === 'water' || hasTag(line.food, 'milk-or-stock');

type Holder = (typeof data.bakeLoss.holders)[number];

/** From this much fibre (g a 100 g) a food is an isolated fibre or gum. */
const FIBRE_FROM = 50;

const HOLDS: Readonly<Record<string, (line: CountedLine) => boolean>> = {
  fibre: ({ food }) => (food.per100g.fiberG ?? 0) >= FIBRE_FROM,
  allulose: ({ food }) => (food.per100g.alluloseG ?? 0) >= FIBRE_FROM,
};

/** How far a dough is full of what holds water in the oven, 0..1. */
function fullness({ kind, fullFrom }: Holder, lines: readonly CountedLine[]): number {
  const total = lines.reduce((sum, { grams }) => sum + grams, 0);
  const held = lines
    .filter((line) => HOLDS[kind]?.(line) === true)
    .reduce((sum, { grams }) => sum + grams, 0);
  return total > 0 ? Math.min(1, held / total / fullFrom) : 0;
}

/** The family's loss, less where fibre or allulose hold water; the stronger of the two counts. */
function lessLoss(lines: readonly CountedLine[], family: Family): Yields & { words: string[] } {
  const usual = FAMILY_YIELDS[family];
  const effects = data.bakeLoss.families.includes(family)
    ? data.bakeLoss.holders.map((holder) => ({ holder, full: fullness(holder, lines) }))
    : [];
  const drop = ({ holder, full }: (typeof effects)[number]): number => full * (1 - holder.best);
  const [strongest] = effects.sort((a, b) => drop(b) - drop(a));
  if (strongest === undefined || drop(strongest) < 0.01) return { ...usual, words: [] };
  const { holder, full } = strongest;
  const left = (share: number, factor: number): number =>
    1 - (1 - share) * (1 - full * (1 - factor));
  const percentOf = Math.round((1 - drop(strongest)) * 100);
  return {
    low: left(usual.low, holder.high),
    best: left(usual.best, holder.best),
    high: left(usual.high, holder.low),
    source: usual.source,
    words: [`${holder.words}: ${percentOf} % of the usual loss (${holder.source})`],
  };
}

/** Cooked over raw mass of a family, with its range and source. */
export const familyYield = (family: Family): Yields => FAMILY_YIELDS[family];

/**
 * Grams of the finished dish and where they come from. `measured` is the user's own weight in g, `taught`
 * what such dishes weighed, as a share of what goes in.
 * Null when nothing is counted. The bounds cover the loss only: scatter of the raw grams moves the
 * nutrients and the weight together.
 */
export function cookedWeight(
  lines: readonly CountedLine[],
  family: Family,
  measured: number | null,
  taught: { share: Interval; source: string } | null = null,
): { grams: Interval | null; source: string } {
  if (measured !== null && measured > 0)
    return {
      grams: { low: measured, best: measured, high: measured },
      source: 'weighed',
    };
  if (lines.length === 0) return { grams: null, source: 'nothing to weigh' };
  if (taught !== null) {
    const raw = lines.reduce((sum, { grams }) => sum + grams, 0);
    return { grams: scale(taught.share, raw), source: taught.source };
  }
  const { low, best, high, source, words: why } = lessLoss(lines, family);
  let fixed = 0;
  let cooking = 0;
  const dryNames: string[] = [];
  for (const line of lines) {
    const dry = DRY_YIELDS[line.food.id];
    if (dry !== undefined && takesUpWater(line, lines)) {
      fixed += line.grams * dry.yield;
      dryNames.push(`${line.food.name} x ${dry.yield} (${dry.source})`);
    } else if (family === 'breaded-food' && isOil(line)) fixed += line.grams;
    else cooking += line.grams;
  }
  const at = (share: number): number => fixed + cooking * share;
  const words = [`estimated: ${percent(best)} of what goes in (${source})`, ...why, ...dryNames];
  return { grams: { low: at(low), best: at(best), high: at(high) }, source: words.join('; ') };
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
