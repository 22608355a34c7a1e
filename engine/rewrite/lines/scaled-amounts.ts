/** Amounts of a food in metric or US measures, and counts and units times a factor. */
import type { Amount, Food, Role } from '../../model.ts';
import { gramsOf, OUNCES_PER_POUND } from '../../units.ts';
import { edibleTail } from './line-wording.ts';
import { halvesOf, type PieceCount, pluralUnit, standInText } from './piece-counts.ts';
import {
  besideText,
  fractionText,
  kitchenGrams,
  liquidText,
  pieceText,
} from './written-amounts.ts';

/** `metric`: grams first, millilitres or spoons beside. `us`: cups and spoons first, grams beside; ounces for the rest. */
export type System = 'metric' | 'us';

const GRAMS_PER_OUNCE = gramsOf('oz') ?? Number.NaN;

/** A food to be written on a line. */
export interface Portion {
  food: Food;
  grams: number;
  role: Role;
  name: string;
  tail: string;
  /** '2 large onions': what was counted, already scaled. */
  count: PieceCount | null;
  /** Whether the count is that of what the food stands for. */
  standIn?: boolean;
}

const ounces = (grams: number): string => {
  const all = grams / GRAMS_PER_OUNCE;
  if (all < 2 * OUNCES_PER_POUND) return `${Math.round(all * 10) / 10} oz`;
  return `${Math.round((all / OUNCES_PER_POUND) * 100) / 100} lb`;
};

const grammed = (grams: number, beside: string | null): string =>
  beside === null ? `${grams} g` : `${grams} g (${beside})`;

function amountIn(system: System, food: Food, grams: number, role: Role): string {
  if (system === 'metric')
    return grammed(grams, liquidText(food, grams, role) ?? besideText(food, grams, 'eu'));
  const measure = besideText(food, grams, 'us');
  if (measure !== null) return `${measure} (${grams} g)`;
  return grammed(grams, grams < GRAMS_PER_OUNCE ? null : ounces(grams));
}

/** Things whose grams in brackets would be read as those of each one: '3 cans (400 g)'. */
const SIZED: ReadonlySet<string> = new Set(
  'bag block bottle box can carton container envelope jar packet pouch roll sachet tin tub'.split(
    ' ',
  ),
);
const isSized = (unit: string | null): boolean =>
  unit !== null && SIZED.has(unit.split(' ').at(-1) ?? '');

/** '4 large onions', or null when the count comes to no half or whole. */
function countText({ count, name }: Portion): string | null {
  // 'Cloves' alone is the spice, behind a number it would be garlic's.
  if (count === null || isSized(count.unit) || /^cloves?$/i.test(name)) return null;
  const halves = halvesOf(count.quantity);
  if (halves === null) return null;
  const words = [
    fractionText(halves),
    count.size,
    count.unit === null ? null : pluralUnit(count.unit, halves),
    name,
  ];
  return words.filter((word) => word !== null && word !== '').join(' ');
}

/** A line for a food, and the grams it states. */
export function portionText(portion: Portion, system: System): { text: string; grams: number } {
  const { food, role, name, tail } = portion;
  const grams = kitchenGrams(food, portion.grams, role);
  const pieces = pieceText(food, grams);
  if (pieces !== null) return { text: `${pieces}${tail}`, grams };
  const counted = portion.standIn
    ? portion.count && standInText(portion.count, name, grams, null)
    : countText(portion);
  const edible = edibleTail(food, name + tail);
  if (counted !== null && portion.standIn) return { text: `${counted}${tail}${edible}`, grams };
  if (counted !== null) return { text: `${counted} (${grams} g)${tail}${edible}`, grams };
  return { text: `${amountIn(system, food, grams, role)} ${name}${tail}${edible}`, grams };
}

/** An amount that cannot be weighed, times the factor, in its own unit. */
export function amountTimes({ quantity, max, unit }: Amount, factor: number): string {
  const tidy = (value: number): string => {
    const near = fractionText(value);
    const exact = Math.round(value * 100) / 100;
    return Math.abs(value - Math.round(value * 12) / 12) < 0.005 ? near : String(exact);
  };
  const end = max === null ? '' : `-${tidy(max * factor)}`;
  const times = Math.max(quantity, max ?? 0) * factor;
  const words = [
    `${tidy(quantity * factor)}${end}`,
    unit === null ? null : pluralUnit(unit, times),
  ];
  return words.filter((word) => word !== null).join(' ');
}
