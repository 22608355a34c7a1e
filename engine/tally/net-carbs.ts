/**
 * Net carbohydrate by one explicit rule: carbohydrate expected to be digested to absorbable sugars,
 * plus a counted share of polyols. Neither US nor EU law defines the term; carbohydrate bases are
 * those of 21 CFR 101.9(c)(6) and Reg. (EU) 1169/2011 Annex I.
 */

import { add, clampAtZero, exact, scale, spanning, subtract } from '../interval.ts';
import type { CarbohydrateBasis, Interval, NetCarbRule } from '../model.ts';
import data from './data/polyols.json' with { type: 'json' };

/** A polyol and its grams; `null` grams means it is named, but its amount is not known. */
export interface PolyolAmount {
  kind: string;
  grams: Interval | null;
}

/** Every mass is grams of the same denominator (100 g, a serving, a recipe). */
export interface NetCarbInput {
  carbohydrate: Interval | null;
  fiber: Interval | null;
  basis: CarbohydrateBasis;
  /** True for US, CA, EU and UK figures; false for AU, NZ and ZA. */
  polyolsInCarbohydrate: boolean;
  policy: NetCarbRule['polyols'];
  polyols?: readonly PolyolAmount[];
  allulose?: Interval | null;
  sugars?: Interval | null;
  /** Polyols in one serving, g: decides `half_over_5g`. Left out, the amounts given are taken as one serving. */
  polyolsPerServingG?: number;
  /** A raw starchy food that the recipe cooks: its fibre may be starch granules that cooking opens. */
  rawStarchWillBeCooked?: boolean;
  /** The same food by the older fibre method or cooked, used when the raw-starch trap applies. */
  safeRecord?: { carbohydrate: Interval; fiber: Interval };
  /** Fibre of the nearest like food, for the lower bound when fibre is unknown. */
  likeFiberG?: number;
  /** Monosaccharide equivalents per gram: starch 1.10, disaccharides 1.05, monosaccharides 1. */
  mseDivisor?: number;
}

export interface NetCarbResult {
  /** Null when carbohydrate is unknown. */
  net: Interval | null;
  /** FIBRE_UNKNOWN, BASIS_ASSUMED, RAW_STARCH_FIBRE, FIBRE_EXCEEDS_CARB, HIGHER_GI_POLYOL, POLYOL_AMOUNT_UNKNOWN, POLYOL_KIND_UNKNOWN. */
  flags: string[];
}

/** Above this share of fibre in the carbohydrate of a raw starchy food, the fibre is not believed. Common practice, no source. */
const RAW_STARCH_FIBER_SHARE = 0.35;
/** Monosaccharide equivalents of an unknown mix: 1.08, within starch 1.10 and disaccharides 1.05 (UK composition tables). */
const MSE = { low: 1.05, best: 1.08, high: 1.1 };
/** Older teaching counts polyols in part only above this amount per serving. */
const POLYOL_THRESHOLD_G = 5;

interface PolyolFacts {
  kind: string;
  half: number;
  usKcal: number;
  euKcal: number;
  flag?: string;
  countedInFull?: boolean;
}
const FACTS = new Map<string, PolyolFacts>(data.kinds.map((row) => [row.kind, row]));

/** Figures of a polyol by its common English name; `known` is false for any other word. */
export function polyolFacts(kind: string): PolyolFacts & { known: boolean } {
  const facts = FACTS.get(kind.trim().toLowerCase());
  return facts ? { ...facts, known: true } : { ...data.unknown, known: false };
}

/**
 * Counted share (0..1) of a gram of a polyol. `overThreshold`: more than 5 g polyols in the serving.
 * An unknown polyol has the range 0..1 under the half rules.
 */
function countedShare(
  kind: string,
  policy: NetCarbRule['polyols'],
  overThreshold: boolean,
): Interval {
  const facts = polyolFacts(kind);
  if (facts.countedInFull) return exact(1);
  if (policy === 'all') return exact(0);
  if (policy === 'none' || (policy === 'half_over_5g' && !overThreshold)) return exact(1);
  const share = policy === 'energy' ? facts.usKcal / 4 : facts.half;
  return facts.known ? exact(share) : { low: 0, best: share, high: 1 };
}

/** Counted share of a gram of allulose: nothing, except by energy (0.4 of 4 kcal) or when nothing may be subtracted. */
function alluloseShare(policy: NetCarbRule['polyols']): number {
  if (policy === 'none') return 1;
  return policy === 'energy' ? data.allulose.usKcalShare : 0;
}

function carbohydrateByWeight(input: NetCarbInput, carbohydrate: Interval): Interval {
  if (input.basis !== 'available_mse') return carbohydrate;
  if (input.mseDivisor !== undefined) return scale(carbohydrate, 1 / input.mseDivisor);
  return {
    low: carbohydrate.low / MSE.high,
    best: carbohydrate.best / MSE.best,
    high: carbohydrate.high / MSE.low,
  };
}

/** Carbohydrate without fibre, or by difference without it already. */
function withoutFiber(input: NetCarbInput, carbohydrate: Interval, flags: string[]): Interval {
  if (input.basis === 'unknown') flags.push('BASIS_ASSUMED');
  if (input.basis !== 'total') return carbohydrateByWeight(input, carbohydrate);
  const { fiber } = input;
  if (fiber === null) {
    flags.push('FIBRE_UNKNOWN');
    // Half as much again as the like food's fibre bounds what methods and cultivars differ by.
    const low = carbohydrate.low - 1.5 * (input.likeFiberG ?? 0);
    return spanning(low, carbohydrate.best, carbohydrate.high);
  }
  const trapped =
    input.rawStarchWillBeCooked === true && fiber.best > RAW_STARCH_FIBER_SHARE * carbohydrate.best;
  if (!trapped) return subtract(carbohydrate, fiber);
  flags.push('RAW_STARCH_FIBRE');
  const { safeRecord } = input;
  return safeRecord ? subtract(safeRecord.carbohydrate, safeRecord.fiber) : carbohydrate;
}

/** Uncounted grams of a polyol that sits inside the carbohydrate. */
const uncounted = (grams: Interval, share: Interval): Interval => ({
  low: grams.low * (1 - share.high),
  best: grams.best * (1 - share.best),
  high: grams.high * (1 - share.low),
});

const counted = (grams: Interval, share: Interval): Interval => ({
  low: grams.low * share.low,
  best: grams.best * share.best,
  high: grams.high * share.high,
});

/** Room left for a polyol whose amount is not stated: what is neither sugar nor fibre. */
function unknownRoom(net: Interval, sugars: Interval | null | undefined): Interval {
  return { low: Math.min(net.low, sugars?.low ?? 0), best: net.best, high: net.high };
}

function applyPolyols(input: NetCarbInput, start: Interval, flags: string[]): Interval {
  const polyols = input.polyols ?? [];
  const perServing =
    input.polyolsPerServingG ?? polyols.reduce((sum, p) => sum + (p.grams?.best ?? 0), 0);
  let net = start;
  for (const { kind, grams } of polyols) {
    const facts = polyolFacts(kind);
    if (grams !== null && grams.high <= 0) continue;
    if (facts.flag && input.policy !== 'none') flags.push(facts.flag);
    if (!facts.known) flags.push('POLYOL_KIND_UNKNOWN');
    if (grams === null) {
      flags.push('POLYOL_AMOUNT_UNKNOWN');
      if (input.polyolsInCarbohydrate) net = unknownRoom(net, input.sugars);
      continue;
    }
    const share = countedShare(kind, input.policy, perServing > POLYOL_THRESHOLD_G);
    net = input.polyolsInCarbohydrate
      ? subtract(net, uncounted(grams, share))
      : add(net, counted(grams, share));
  }
  return net;
}

function applyAllulose(input: NetCarbInput, net: Interval): Interval {
  if (!input.allulose) return net;
  const share = exact(alluloseShare(input.policy));
  return input.polyolsInCarbohydrate
    ? subtract(net, uncounted(input.allulose, share))
    : add(net, counted(input.allulose, share));
}

/**
 * Net carbohydrate in grams, with bounds that cover every combination of the inputs' bounds, and
 * flags saying what was assumed. Never below zero. Basis rules: see the file's head.
 */
export function netCarbs(input: NetCarbInput): NetCarbResult {
  const flags: string[] = [];
  if (input.carbohydrate === null) return { net: null, flags };
  const base = withoutFiber(input, input.carbohydrate, flags);
  const net = applyAllulose(input, applyPolyols(input, base, flags));
  const tolerance = Math.max(0.05 * input.carbohydrate.best, 0);
  if (net.best < -0.5 || (net.best < 0 && -net.best > tolerance)) flags.push('FIBRE_EXCEEDS_CARB');
  return { net: clampAtZero(net), flags: [...new Set(flags)] };
}
