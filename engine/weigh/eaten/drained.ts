/** The label weight of a can against what the food's record stands for: solids without liquid. */

import { massInterval } from '../../interval.ts';
import type { Food, Interval, Item } from '../../model.ts';
import { gramsOf } from '../../units.ts';

/** [group, low, best, high]: shares of the label weight. */
type Share = readonly [RegExp, number, number, number];

/** Drained share of the label weight. Common practice, no source. */
const DRAINED: readonly Share[] = [
  [/^legumes/, 0.55, 0.6, 0.68],
  [/^fish/, 0.7, 0.75, 0.85],
  [/^(vegetable|fruit)/, 0.5, 0.6, 0.7],
];

/**
 * Pulses with their liquid hold as much carbohydrate as this share of drained ones: USDA SR 175206
 * against 173800 (chickpeas) 0.60, SR 175195 against 174285 (kidney beans) 0.69; poured off without
 * a word, 0.55 and more.
 */
const WITH_LIQUID: Share = [/^legumes/, 0.55, 0.62, 0.7];

/** Sold in a sauce that is eaten: the record is of the whole can. */
const IN_SAUCE = /baked|refried|chili|soup|stew/;

const CONTAINERS: ReadonlySet<string> = new Set(['can', 'tin', 'jar', 'carton']);

/** Is the mass the label weight of a container? */
const isLabelWeight = (item: Item): boolean =>
  item.amounts.some(({ unit }) => unit !== null && CONTAINERS.has(unit)) &&
  item.amounts.some(({ unit, kind }) => kind !== 'stated' && gramsOf(unit) !== null);

const STATED_DRAINED =
  /drained weight|abtropfgewicht|uitlekgewicht|poids (?:net )?egoutte|peso (?:neto )?escurrido|(?:peso )?sgocciolat[oi]|peso drenado|avrunnen vikt|draenet vaegt|\b(?:g|grams|oz|ounces|cups?) (?:of )?(?:rinsed )?drained\b/;

/** What cans weigh by their labels. Common practice, no source. */
const CAN_OUNCES: ReadonlySet<number> = new Set([14, 14.5, 15, 15.5, 16, 19, 28, 29]);
const CAN_GRAMS: ReadonlySet<number> = new Set([400, 410, 425, 439, 540, 800]);

/** '15 ounces beans, drained' is one can, though no can is counted. */
function isCanSize({ amounts: [first, ...others] }: Item, text: string): boolean {
  if (!first || others.length > 0 || first.max !== null) return false;
  if (!/\b(?:canned|tinned|drained|rinsed)\b/.test(text)) return false;
  const sizes = first.unit === 'oz' ? CAN_OUNCES : first.unit === 'g' ? CAN_GRAMS : null;
  return sizes?.has(first.quantity) ?? false;
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;

function left(grams: Interval, [, low, best, high]: Share, assumption: string) {
  return {
    grams: massInterval(grams.low * low, grams.best * best, grams.high * high),
    assumption: assumption.replace('{}', percent(best)),
  };
}

/**
 * Grams of drained food in a container of a stated label weight. A line that drains it keeps the
 * drained share; pulses without a word of draining count as the drained ones of the same
 * carbohydrate. Null for anything else, or when the line states the drained weight itself.
 */
export function drained(
  grams: Interval,
  item: Item,
  text: string,
  food: Food | null,
): { grams: Interval; assumption: string } | null {
  if (!food || (food.state !== 'canned' && food.state !== 'cooked')) return null;
  const oneCan = isCanSize(item, text);
  if ((!isLabelWeight(item) && !oneCan) || IN_SAUCE.test(food.name)) return null;
  if (STATED_DRAINED.test(text)) return null;
  const group = ([words]: Share): boolean => words.test(food.group);
  const liquidKept = /\b(undrained|not drained|don'?t drain|with (?:the |their |its )?liquid)\b/;
  if (/\b(drained|rinsed)\b/.test(text) && !liquidKept.test(text)) {
    const share = DRAINED.find(group);
    const kept = share ? left(grams, share, 'drained: {} of the label weight taken as left') : null;
    // Somebody may have weighed the drained ones.
    return kept && oneCan ? { ...kept, grams: { ...kept.grams, high: grams.high } } : kept;
  }
  return group(WITH_LIQUID) && !oneCan
    ? left(
        grams,
        WITH_LIQUID,
        'label weight with liquid: counted as the drained pulses of the same carbohydrate, {} of it',
      )
    : null;
}
