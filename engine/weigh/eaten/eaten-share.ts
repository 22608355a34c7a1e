/** Share of an ingredient that is eaten, by what it is for, with the words that say so. */

import { hasTag } from '../../foods/tags.ts';
import { exact, massInterval } from '../../interval.ts';
import type { Food, Interval, Item, Line } from '../../model.ts';
import type { Region } from '../../units.ts';
import { nameOf, plain } from '../line-words.ts';
import { LEFT_BEHIND } from './marinade-steps.ts';
import { type Purpose, purposeOf, type RecipeWords } from './purpose.ts';
import { roughDish, roughPasta } from './rough-dish.ts';

export interface Share {
  share: Interval;
  assumption: string | null;
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** Default shares. Common practice, no source, unless one is named. */
const SHARES: Readonly<Record<string, readonly [number, number, number, string]>> = {
  frying: [0.2, 0.5, 0.9, 'half of the frying fat taken as eaten (20-90 %)'],
  greasing: [0.5, 0.75, 1, 'three quarters of the fat for the pan taken as eaten (50-100 %)'],
  brushing: [0.6, 0.8, 1, '80 % of what is brushed on taken as eaten'],
  removed: [0, 0, 0, 'taken out before eating'],
  'boiling-bath': [
    0.02,
    0.05,
    0.15,
    'in the water that bagels or pretzels are boiled in, which is poured away: 5 % taken as eaten',
  ],
  'cooking-water': [0, 0, 0, 'cooking water, poured away'],
  pickle: [
    0.2,
    0.4,
    0.7,
    'pickling liquid: what stays in the jar is left out, 40 % taken as eaten',
  ],
  rinsed: [0.05, 0.2, 0.5, 'salt that is rinsed off: 20 % taken as eaten'],
  strained: [0.1, 0.3, 0.6, 'strained out of the stock: 30 % taken as what the liquid took up'],
  serving: [0, 0, 1, 'optional or to serve: not in the main sum'],
  whole: [1, 1, 1, ''],
};

const fromTable = (purpose: Purpose): Share => {
  const [low, best, high, text] = SHARES[purpose] ?? [1, 1, 1, ''];
  return { share: massInterval(low, best, high), assumption: text === '' ? null : text };
};

/** `words`: the food's name and what its line says it is for. */
function coatingShare(purpose: Purpose, words: string, food: Food | null): Share {
  const onTop =
    /\bsugar|cocoa|sweetener/.test(words) || (food !== null && hasTag(food, 'sweetener'));
  if (purpose === 'dusting' && onTop) {
    return {
      share: massInterval(0.7, 0.9, 1),
      assumption: '90 % of what is dusted on top taken as eaten',
    };
  }
  if (purpose === 'dusting') {
    return { share: massInterval(0.3, 0.5, 0.8), assumption: 'half of the dusting taken as eaten' };
  }
  if (/crumb|panko|cornflake|cracker/.test(words)) {
    return {
      share: massInterval(0.6, 0.75, 0.9),
      assumption: '75 % of the crumbs taken as sticking (60-90 %)',
    };
  }
  return {
    share: massInterval(0.4, 0.6, 0.8),
    assumption: '60 % of the coating taken as sticking (40-80 %)',
  };
}

/** Uptake of oil in deep frying, share of the finished weight. Chips: USDA SR 170698; rest common practice. */
function fryingUptake(lines: readonly Line[]): readonly [number, number, number, string] {
  const text = plain(lines.map((line) => line.text).join(' '));
  if (/yeast/.test(text)) return [0.15, 0.2, 0.25, 'fried dough'];
  if (/crumb|panko/.test(text)) return [0.05, 0.08, 0.12, 'breaded food'];
  if (/flour|starch/.test(text)) return [0.08, 0.12, 0.18, 'battered food'];
  if (/potato/.test(text)) return [0.1, 0.145, 0.18, 'chips'];
  return [0.01, 0.02, 0.05, 'plain food'];
}

/** Weight left after frying, per gram before. Common practice, no source. */
const FRIED_YIELD = 0.8;

function deepFryingShare(grams: number, line: Line, recipe: RecipeWords, region: Region): Share {
  const rest = recipe.lines.filter((other) => other.text !== line.text);
  const base = Math.max(roughDish(rest, region) * FRIED_YIELD, 100);
  const [low, best, high, kind] = fryingUptake(rest);
  const share = (uptake: number): number =>
    grams <= 0 ? 1 : Math.min(1, (base * uptake) / (1 - uptake) / grams);
  const text = `deep-frying oil: only what ${kind} takes up is counted, ${percent(best)} of the fried weight`;
  return { share: massInterval(share(low), share(best), share(high)), assumption: text };
}

/** Sodium that cooked pasta takes from salted water: 130 mg per 100 g, as salt 0.8 g per 100 g dry (USDA SR 169751, 169737). */
export const PASTA_SALT_PER_GRAM = 0.008;

function pastaWaterShare(grams: number, recipe: RecipeWords, region: Region): Share {
  const pasta = roughPasta(recipe.lines, region);
  const text = 'salt for the cooking water: only what the pasta takes up is counted';
  if (pasta <= 0 || grams <= 0) return { share: massInterval(0.03, 0.1, 0.25), assumption: text };
  const share = Math.min(1, (pasta * PASTA_SALT_PER_GRAM) / grams);
  return { share: massInterval(share * 0.5, share, Math.min(1, share * 1.5)), assumption: text };
}

const COOKED_IN =
  /(simmer|boil|reduce|serve|spoon|baste)[^.]{0,40}(marinade)|with (its|the|their) marinade|baste/;
/** Poured over the raw meat as often as over the cooked. */
const POURED = /(pour|add|stir|drizzle)[^.]{0,40}(marinade)/;
const DISCARDS =
  /(discard|drain|shake|wipe|pat)[^.]{0,40}(marinade|excess)|pat\b[^.]{0,30}\bdry|(remove|lift|take|drain)[^.]{0,40}(from|out of) (the|its|their) marinade/;

/** Does what the method does with the marinade bring it into the dish? */
function isKept(steps: string): boolean {
  if (/discard[^.]{0,30}marinade/.test(steps)) return false;
  if (COOKED_IN.test(steps)) return true;
  return POURED.test(steps) && !LEFT_BEHIND.test(steps);
}

function marinadeShare(name: string, steps: string): Share {
  if (isKept(steps)) return { share: exact(1), assumption: null };
  const salty = /salt|soy sauce/.test(name);
  if (DISCARDS.test(steps)) {
    return salty
      ? {
          share: massInterval(0.05, 0.2, 0.5),
          assumption: 'marinade poured away: 20 % of its salt taken as eaten',
        }
      : {
          share: massInterval(0.05, 0.15, 0.3),
          assumption: 'marinade poured away: 15 % taken as eaten',
        };
  }
  return {
    share: massInterval(0.05, 1, 1),
    assumption: 'marinade: counted whole, as the recipe does not say it is poured away',
  };
}

/** Main foods may stand in a marinade group too; they are eaten. */
const BATH_PART =
  /salt|sugar|oil|vinegar|juice|sauce|honey|syrup|wine|water|molasses|yogurt|buttermilk|stock|broth|beer|mustard/;

/**
 * Share of the item that is eaten and the words for it. `grams` is its best weight; the frying bath
 * and the pasta water are judged against the rest of the dish.
 */
export function eatenShare(
  item: Item,
  line: Line,
  food: Food | null,
  grams: number,
  recipe: RecipeWords,
  region: Region,
): Share {
  const purpose = purposeOf(item, line, food, grams, recipe, region);
  const name = nameOf(item, food);
  if (purpose === 'deep-frying') return deepFryingShare(grams, line, recipe, region);
  if (purpose === 'pasta-water') return pastaWaterShare(grams, recipe, region);
  if (purpose === 'dusting' || purpose === 'breading')
    return coatingShare(purpose, `${name} ${plain(line.purpose ?? '')}`, food);
  if (purpose === 'marinade') {
    return BATH_PART.test(name)
      ? marinadeShare(name, plain(recipe.steps.join(' ').slice(0, 1990)))
      : fromTable('whole');
  }
  if (purpose === 'brine' && BATH_PART.test(name)) {
    return {
      share: massInterval(0.01, 0.05, 0.15),
      assumption: 'brine poured away: 5 % taken as eaten',
    };
  }
  if (purpose === 'syrup' && BATH_PART.test(name)) {
    return {
      share: massInterval(0.1, 0.3, 0.5),
      assumption: 'cooking liquid poured away: 30 % taken as eaten',
    };
  }
  return purpose === 'brine' || purpose === 'syrup' ? fromTable('whole') : fromTable(purpose);
}
