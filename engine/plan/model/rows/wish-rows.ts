/** Rows for what the user asks besides the budget. Each gives way, at a price, when it cannot be met. */

import type { Part } from '../../dish/dish.ts';
import { type Attribute, type Linear, scaled } from '../expressions.ts';
import type { Builder } from '../row-builder.ts';

/** Closeness paid for missing a wish by all of it: far above any change of the dish. Own choice. */
const MISSED = 5;

export const WISHES = ['fibre-floor', 'sodium-limit', 'energy-limit'] as const;
export type Wish = (typeof WISHES)[number];

/** Room left for kitchen rounding, share of the wish: flours are rounded to 5 g. Own choice. */
const ROUNDING: Record<Wish, number> = {
  'fibre-floor': 0.03,
  'sodium-limit': 0.015,
  'energy-limit': 0.015,
};

const perGram =
  (figure: 'fiberG' | 'sodiumMg' | 'energyKcal'): Attribute =>
  (c) =>
    ((c.food.per100g[figure] ?? 0) / 100) * c.eaten;

/** What each wish counts, per gram of a food: fibre g, sodium mg, energy kcal. */
export const COUNTED: Record<Wish, Attribute> = {
  'fibre-floor': perGram('fiberG'),
  'sodium-limit': perGram('sodiumMg'),
  'energy-limit': perGram('energyKcal'),
};

const TEXT: Record<Wish, string> = {
  'fibre-floor': 'The fibre you ask for a serving takes stand-ins with more fibre.',
  'sodium-limit': 'The limit of sodium a serving takes salt out and keeps salty stand-ins away.',
  'energy-limit': 'The limit of energy a serving keeps rich stand-ins away.',
};

/** Flours of a dish, whatever they do in it. */
const isFlour = (part: Part): boolean => part.base || part.class.endsWith('-flours');

/** At least a share of the original flour stays; the original always fits. */
function flourRow(b: Builder): void {
  const { dish } = b;
  const share = dish.goals.flourKept;
  const flours = dish.parts.filter(isFlour);
  const total = flours.reduce((sum, part) => sum + part.grams, 0);
  if (share <= 0 || total <= 0) return;
  const terms = b.choices.flatMap((c): [string, number][] =>
    c.candidate && flours.includes(c.candidate.part)
      ? [[c.id, c.candidate.part.grams / total]]
      : [],
  );
  b.row(
    { id: 'flour-kept', max: 1 - Math.min(1, share), terms },
    `You keep at least ${Math.round(share * 100)} % of the flour.`,
  );
}

function wishRow(b: Builder, wish: Wish, bound: number | null): void {
  if (bound === null) return;
  const line = b.sum(COUNTED[wish], b.dish.servings);
  const room = wish === 'fibre-floor' ? 1 + ROUNDING[wish] : 1 - ROUNDING[wish];
  const target = bound * room;
  const unit = Math.max(target, 1e-6);
  const missed = `missed ${wish}`;
  const share: Linear = scaled(line, 1 / unit);
  if (share.terms.length === 0) return;
  b.missed(missed, MISSED);
  const level = target / unit - share.constant;
  if (wish === 'fibre-floor')
    b.row({ id: wish, min: level, terms: [...share.terms, [missed, 1]] }, TEXT[wish]);
  else b.row({ id: wish, max: level, terms: [...share.terms, [missed, -1]] }, TEXT[wish]);
}

/** Flour that stays, fibre, sodium and energy of a serving. */
export function wishRows(b: Builder): void {
  const { goals } = b.dish;
  flourRow(b);
  wishRow(b, 'fibre-floor', goals.fibreFloorG);
  wishRow(b, 'sodium-limit', goals.sodiumLimitMg);
  wishRow(b, 'energy-limit', goals.energyLimitKcal);
}
