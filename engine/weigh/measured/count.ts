/** Counts -> grams: pieces by size, cloves, cans, sticks, bunches. */

import { massAround, scaleMass } from '../../interval.ts';
import type { Food, Interval, Item } from '../../model.ts';
import kinds from '../data/kinds.json' with { type: 'json' };
import pieces from '../data/pieces.json' with { type: 'json' };
import wholes from '../data/whole.json' with { type: 'json' };
import { hasWord, nameOf, plain } from '../line-words.ts';
import { choosePiece, sizeOf } from './household-measures.ts';
import { weighLikened } from './likened.ts';
import type { Weighed } from './volume.ts';

interface PieceRow {
  words: string;
  grams: number;
  scatter: number;
  source: string;
}

const PIECES: Readonly<Record<string, readonly PieceRow[]>> = pieces;

/** Words for units that weigh as another one does. */
const WEIGHS_AS: Readonly<Record<string, string>> = {
  tin: 'can',
  packet: 'package',
  pack: 'package',
  box: 'package',
  envelope: 'package',
  sachet: 'package',
  pouch: 'package',
  container: 'tub',
  punnet: 'tub',
  pot: 'tub',
  rib: 'stalk',
  stem: 'stalk',
  branch: 'sprig',
  bundle: 'bunch',
  frond: 'sprig',
  thumb: 'knob',
};

/** Half-widths of one piece. Common practice, no source; egg sizes after USDA's weights by size. */
const SIZED = 0.1;
const UNSIZED = 0.35;
const EGG = 0.12;
const LABELLED = 0.1;

/** Weight of other sizes against medium. Common practice, no source. */
const SIZE_FACTOR: Readonly<Record<string, number>> = {
  small: 0.65,
  medium: 1,
  large: 1.4,
  'extra large': 1.7,
  jumbo: 1.7,
};

/** The same for eggs and their parts: USDA SR 171287, 38, 44, 50, 56 and 63 g without shell. */
const EGG_FACTOR: Readonly<Record<string, number>> = {
  small: 0.76,
  medium: 0.88,
  large: 1,
  'extra large': 1.12,
  jumbo: 1.26,
};

/** Cuts of meat and fish differ less than plants do. Common practice, no source. */
const CUT_FACTOR: Readonly<Record<string, number>> = {
  small: 0.8,
  medium: 1,
  large: 1.2,
  'extra large': 1.4,
  jumbo: 1.4,
};

const isEgg = (food: Food): boolean => /\beggs?\b/.test(food.name);

function sizeFactors(food: Food): Readonly<Record<string, number>> {
  if (isEgg(food)) return EGG_FACTOR;
  return /^(?:meat|fish)/.test(food.group) ? CUT_FACTOR : SIZE_FACTOR;
}

/** Units that say nothing of a size. */
const VAGUE = /^(serving|portion|part|batch|recipe|inch|cm|mm|ft)$/;

const CONTAINERS =
  /^(can|tin|jar|bottle|pack|packet|stick|envelope|sachet|bag|block|sheet|sleeve|tube|tub|carton|box|pouch|punnet|basket|case)/;

const gramsText = (grams: number): string =>
  grams >= 10 ? grams.toFixed(0) : String(+grams.toFixed(2));

function scatterOf(unit: string | null, size: string | null, food: Food): number {
  if (unit === 'stick') return 0.02;
  if (isEgg(food)) return size === null ? EGG : 0.06;
  if (unit !== null && CONTAINERS.test(unit)) return LABELLED;
  return size === null ? UNSIZED : SIZED;
}

function byOwnMeasure(
  count: number,
  unit: string | null,
  size: string | null,
  food: Food,
  text: string,
): Weighed | null {
  const exact = choosePiece(food, unit, size, text);
  const measure = exact ?? (unit === 'piece' ? choosePiece(food, null, size, text) : null);
  if (!measure) return null;
  const sized = size !== null && measure.unit.includes(size);
  const factor = size === null || sized ? 1 : (sizeFactors(food)[size] ?? 1);
  const grams = measure.grams * factor;
  const scatter = scatterOf(unit, sized ? size : null, food);
  return {
    grams: massAround(count * grams, scatter),
    basis: 'count',
    assumptions: [`${size ?? ''} ${unit ?? 'piece'} of ${gramsText(grams)} g`.trim()],
  };
}

/** What one of a food without a word is, where it has no weight by the piece: '1/2 red cabbage'. */
const WHOLE_UNITS = ['head', 'bulb', 'loaf'] as const;

function ownMeasure(
  count: number,
  unit: string | null,
  size: string | null,
  food: Food,
  text: string,
): Weighed | null {
  const own = byOwnMeasure(count, unit, size, food, text);
  if (own || unit !== null) return own;
  const whole = WHOLE_UNITS.find((word) => choosePiece(food, word, size, text) !== null);
  return whole === undefined ? null : byOwnMeasure(count, whole, size, food, text);
}

const firstRow = (rows: readonly PieceRow[], name: string): PieceRow | null =>
  rows.find((row) => hasWord(name, row.words)) ?? null;

/** Grams by kitchen practice when the food has no measure of its own. */
function byPractice(
  count: number,
  unit: string | null,
  size: string | null,
  name: string,
): Weighed | null {
  const key = unit === null ? null : (WEIGHS_AS[unit] ?? unit);
  const rows = key !== null && Object.hasOwn(PIECES, key) ? (PIECES[key] ?? []) : [];
  const row =
    firstRow(rows, name) ?? (key === null || key === 'piece' ? firstRow(wholes, name) : null);
  if (!row) return null;
  const factor = size === null ? 1 : (SIZE_FACTOR[size] ?? 1);
  const grams = row.grams * factor;
  return {
    grams: massAround(count * grams, row.scatter),
    basis: 'count',
    assumptions: [`${unit ?? 'piece'} of about ${gramsText(grams)} g (${row.source})`],
  };
}

interface KindRow extends PieceRow {
  /** The counted unit; left out for whole pieces. */
  unit?: string;
  /** Only of this food, where it is counted without a unit. */
  food?: string;
  /** Only where as many of them are counted. */
  from?: number;
}
const KINDS: readonly KindRow[] = kinds;

/** 'Fingerling potatoes', 'baguette slices': kinds that share a food with far larger or smaller ones. */
function byKind(count: number, unit: string | null, item: Item, food: Food | null): Weighed | null {
  const name = plain(`${item.size ?? ''} ${item.name}`.trim());
  const stated = item.amounts[0]?.quantity ?? count;
  const rowFor = (asked: string | null): (typeof KINDS)[number] | undefined =>
    KINDS.find(
      (row) =>
        (row.unit ?? null) === asked &&
        stated >= (row.from ?? 0) &&
        (row.food === undefined || (row.food === food?.id && unit === null)) &&
        hasWord(name, row.words),
    );
  const row = rowFor(unit) ?? (unit === 'piece' ? rowFor(null) : undefined);
  return row === undefined
    ? null
    : {
        grams: massAround(count * row.grams, row.scatter),
        basis: 'count',
        assumptions: [
          `${row.unit ?? 'piece'} of about ${row.grams} g of this kind (${row.source})`,
        ],
      };
}

/** 'Fat' cloves and stalks are large ones; fat meat is not. */
const PLUMP: ReadonlySet<string | null> = new Set(['clove', 'stalk', 'spear', 'stem']);
const plumpness = (unit: string | null, item: Item): string | null =>
  PLUMP.has(unit) && /\b(?:fat|plump)\b/.test(plain(item.preparation ?? '')) ? 'large' : null;

/** A portion of fish, meat or cheese is one piece of it. */
const PORTIONED = /^(?:fish|meat)/;
const isPortion = (unit: string | null, food: Food | null): boolean =>
  unit === 'portion' && food !== null && PORTIONED.test(food.group);

/** Herbs and leaves: one of them is no piece of 100 g. */
const isLeafy = (food: Food): boolean =>
  food.measures.some((measure) => /^(leaf|sprig|handful)\b/.test(measure.unit));

/** A piece of a vegetable or fruit nothing is known of: a wide range, called a guess. */
function byGroup(count: number, size: string | null, food: Food | null): Weighed | null {
  if (food?.state !== 'raw' || !/vegetable|fruit/.test(food.group) || isLeafy(food)) return null;
  const grams = 100 * (size === null ? 1 : (SIZE_FACTOR[size] ?? 1));
  const span: Interval = { low: 0.3 * grams, best: grams, high: 2.5 * grams };
  return {
    grams: scaleMass(span, count),
    basis: 'assumed',
    assumptions: [
      `no weight of one known; about ${gramsText(grams)} g assumed, which is a rough guess`,
    ],
  };
}

const PARTS =
  /\b(leaf|leaves|cloves?|sprigs?|stalks?|ribs?|stems?|heads?|bulbs?|ears?|slices?|sticks?|sheets?|wedges?|spears?|strips?|rashers?|cubes?|fronds?|florets?|hearts?|loaf|loaves)$/;

/** 'basil leaves', 'garlic cloves': the counted part when the name ends with it, else null. */
function partNamed(name: string): string | null {
  // 'celery stalks with leaves' are stalks
  const [own = ''] = plain(name).trim().split(' with ');
  const part = PARTS.exec(own)?.[1];
  if (part === undefined || own === part) return null;
  if (part === 'leaves') return 'leaf';
  return part === 'loaves' ? 'loaf' : part.replace(/s$/, '');
}

/** A piece cut by eye may be a small part of what the food's own piece is. */
const CUT_PIECE = 0.15;

/**
 * Grams of `count` units of a food; `unit` null means whole pieces. Null when neither the food nor
 * kitchen practice knows what one weighs.
 */
export function weighCount(
  count: number,
  stated: string | null,
  item: Item,
  food: Food | null,
  text: string,
): Weighed | null {
  const named = stated ?? partNamed(item.name);
  const unit = isPortion(named, food) ? 'piece' : named;
  const size = sizeOf(item.size) ?? plumpness(unit, item);
  const special = weighLikened(count, unit, item) ?? byKind(count, unit, item, food);
  if (special) return special;
  const own = food ? ownMeasure(count, unit, size, food, text) : null;
  if (own && stated === 'piece' && size === null) {
    return { ...own, grams: { ...own.grams, low: own.grams.low * CUT_PIECE } };
  }
  if (own) return own;
  const practice = byPractice(count, unit, size, nameOf(item, food));
  if (practice) return practice;
  if (unit !== null && unit !== 'piece') {
    if (VAGUE.test(unit)) return null;
    const whole = food ? byOwnMeasure(count, null, size, food, text) : null;
    if (whole && !CONTAINERS.test(unit)) {
      const grams = {
        low: whole.grams.low * 0.5,
        best: whole.grams.best,
        high: whole.grams.high * 1.2,
      };
      return { ...whole, grams, assumptions: [`no weight of a ${unit} known; taken as one whole`] };
    }
    return null;
  }
  return byGroup(count, size, food);
}
