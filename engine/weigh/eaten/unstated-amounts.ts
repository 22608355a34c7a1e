/** Weight of an item whose line states no amount: assumed where kitchen practice allows it. */

import { massInterval } from '../../interval.ts';
import type { Food, Interval, Item, Line } from '../../model.ts';
import type { Region } from '../../units.ts';
import { nameOf, plain } from '../line-words.ts';
import { PASTA_SALT_PER_GRAM } from './eaten-share.ts';
import { type Purpose, purposeOf, type RecipeWords } from './purpose.ts';
import { roughDish, roughPasta } from './rough-dish.ts';

export interface Assumed {
  grams: Interval;
  assumption: string;
}

/** A pinch, until the whole recipe is weighed and `salt-allowance.ts` knows what the dish lacks. */
const SALT: Assumed = {
  grams: massInterval(0, 0.3, 1.5),
  assumption: 'no amount of salt: a pinch assumed',
};
const PEPPER: Interval = { low: 0.1, best: 0.5, high: 2 };

/** Unstated amounts by purpose, g. Common practice, no source. */
const BY_PURPOSE: Partial<Record<Purpose, Assumed>> = {
  frying: {
    grams: massInterval(7, 20, 40),
    assumption: 'no amount: 20 g of frying fat assumed (7-40)',
  },
  greasing: {
    grams: massInterval(3, 5, 12),
    assumption: 'no amount: 5 g for the pan assumed (3-12)',
  },
  dusting: {
    grams: massInterval(5, 10, 20),
    assumption: 'no amount: 10 g for dusting assumed (5-20)',
  },
  brushing: {
    grams: massInterval(5, 10, 20),
    assumption: 'no amount: 10 g for brushing assumed (5-20)',
  },
  removed: { grams: massInterval(0, 0.5, 3), assumption: 'no amount; taken out before eating' },
};

/** A bath of oil: what is in the pan hardly matters, as only the uptake counts. */
const DEEP_BATH: Assumed = {
  grams: massInterval(500, 900, 1500),
  assumption: 'no amount: a bath of 900 g of oil assumed',
};

/** Common practice, no source. */
const ICE: Assumed = {
  grams: massInterval(50, 120, 250),
  assumption: 'no amount: 120 g of ice assumed, which holds no carbohydrate',
};

const SAYS_LITTLE =
  /^(?:just )?(?:a )?(?:very |tiny )?(?:little|touch|bit|smidgen|hint|trickle|lick)\b/;
/** About a teaspoon. Common practice, no source. */
const LITTLE: Assumed = {
  grams: massInterval(1, 5, 15),
  assumption: "'a little': 5 g assumed (1-15)",
};

function unstatedSalt(
  purpose: Purpose,
  line: Line,
  recipe: RecipeWords,
  region: Region,
): Assumed | null {
  const others = recipe.lines.filter((other) => other.text !== line.text);
  if (purpose !== 'pasta-water') return roughDish(others, region) > 0 ? SALT : null;
  const pasta = roughPasta(recipe.lines, region);
  if (pasta <= 0) return null;
  // The share eaten is worked out against this; ten times the uptake is a usual pot of water.
  const pot = pasta * PASTA_SALT_PER_GRAM * 10;
  return {
    grams: massInterval(pot * 0.5, pot, pot * 2),
    assumption: 'no amount: salted cooking water',
  };
}

/**
 * An assumed weight for salt, pepper, frying fat, greasing and dusting; null for anything else,
 * which the caller lists as uncounted.
 */
export function assumeUnstated(
  item: Item,
  line: Line,
  food: Food | null,
  recipe: RecipeWords,
  region: Region,
): Assumed | null {
  const name = nameOf(item, food);
  const purpose = purposeOf(item, line, food, null, recipe, region);
  if (purpose === 'serving') return null;
  if (purpose === 'deep-frying') return DEEP_BATH;
  const byPurpose = BY_PURPOSE[purpose];
  if (byPurpose) return byPurpose;
  if (food === null) return null;
  if (/\bsalt\b/.test(name) && !/garlic|onion|celery|unsalted/.test(name))
    return unstatedSalt(purpose, line, recipe, region);
  if (
    /\bpepper\b|peppercorn/.test(name) &&
    !/bell|sweet|chil|cayenne|jalapen|flake/.test(name) &&
    !/^vegetable/.test(food.group)
  ) {
    return { grams: PEPPER, assumption: 'no amount: 0.5 g of pepper assumed' };
  }
  if (food.id === 'ice') return ICE;
  if (/cooking spray/.test(name)) return BY_PURPOSE.greasing ?? null;
  return line.items.length === 1 && SAYS_LITTLE.test(plain(line.note ?? '')) ? LITTLE : null;
}
