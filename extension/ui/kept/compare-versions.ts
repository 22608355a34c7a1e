/** What changed from one state of a recipe to another, by food and part, in words. */
import type { Adaptation, Interval, PlannedItem } from '../../../engine/model.ts';
import { short } from '../figures/format.ts';
import { foodWord } from '../words/food-words.ts';
import { say } from '../words/say.ts';

/** A food of a part whose amount is another; grams are 0 on the side that has none. */
export interface FoodChange {
  foodId: string;
  foodName: string;
  was: number;
  now: number;
}

export interface PartChange {
  /** Heading of the part, or null when the dish is one. */
  part: string | null;
  foods: FoodChange[];
}

/** Less than a scale shows, g. */
const LEAST = 0.05;

/** Where an item belongs; parts are told apart only where the dish has several. */
function partOf({ plan }: Adaptation, { key, part }: PlannedItem): string | null {
  if (plan.parts.length < 2) return null;
  const own = plan.parts.find(({ keys }) => keys.includes(key)) ?? plan.parts[part ?? 0];
  return own?.title ?? null;
}

type Amounts = Map<
  string,
  { part: string | null; foodId: string; foodName: string; grams: number }
>;

function amountsOf(adaptation: Adaptation): Amounts {
  const amounts: Amounts = new Map();
  for (const item of adaptation.plan.items) {
    const { foodId, foodName, grams } = item;
    const part = partOf(adaptation, item);
    const key = `${part ?? ''} ${foodId}`;
    amounts.set(key, { part, foodId, foodName, grams: (amounts.get(key)?.grams ?? 0) + grams });
  }
  return amounts;
}

const size = ({ was, now }: FoodChange): number => Math.abs(now - was);

/** Foods whose grams differ, part by part in the dish's order, the largest change first. */
export function foodChanges(then: Adaptation, now: Adaptation): PartChange[] {
  const [before, after] = [amountsOf(then), amountsOf(now)];
  const parts = new Map<string | null, FoodChange[]>();
  for (const key of new Set([...after.keys(), ...before.keys()])) {
    const one = after.get(key) ?? before.get(key);
    const change = { was: before.get(key)?.grams ?? 0, now: after.get(key)?.grams ?? 0 };
    if (!one || Math.abs(change.now - change.was) < LEAST) continue;
    const { part, foodId, foodName } = one;
    parts.set(part, [...(parts.get(part) ?? []), { foodId, foodName, ...change }]);
  }
  return [...parts].map(([part, foods]) => ({
    part,
    foods: foods.sort((a, b) => size(b) - size(a)),
  }));
}

function foodText({ foodId, foodName, was, now }: FoodChange): string {
  const food = foodWord(foodId, foodName);
  if (was === 0) return say('newFood', short(now), food);
  if (now === 0) return say('goneFood', short(was), food);
  return say(now > was ? 'moreFood' : 'lessFood', short(Math.abs(now - was)), food);
}

const netOf = ({ after }: Adaptation): Interval | null => after.perServing.netCarbsG;

function netText(then: Adaptation, now: Adaptation): string | null {
  const [was, is] = [netOf(then), netOf(now)];
  if (!was || !is) return was === is ? null : say('netNotKnownInOne');
  const by = Math.round((is.best - was.best) * 10) / 10;
  return by === 0 ? null : say(by > 0 ? 'moreNet' : 'lessNet', short(Math.abs(by)));
}

/** What was asked for, where it differs. */
function askedTexts(then: Adaptation, now: Adaptation): string[] {
  const texts: string[] = [];
  if (then.goals.budgetG !== now.goals.budgetG)
    texts.push(say('budgetNowWas', short(now.goals.budgetG), short(then.goals.budgetG)));
  if (then.after.servings !== now.after.servings)
    texts.push(say('servingsNowWas', short(now.after.servings), short(then.after.servings)));
  return texts;
}

/** '40 g less bread flour, 15 g more water', a sentence a part, then the figures; empty when all is the same. */
export function changeTexts(then: Adaptation, now: Adaptation): string[] {
  const parts = foodChanges(then, now).map(({ part, foods }) => {
    const words = foods.map(foodText).join(', ');
    return part === null ? words : `${part}: ${words}`;
  });
  const net = netText(then, now);
  return [...parts, ...(net === null ? [] : [net]), ...askedTexts(then, now)];
}
