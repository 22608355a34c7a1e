/** Keeps the programme of a long recipe small: like lines move together, and each line keeps its best stand-ins. */

import type { NetCarbRule } from '../../model.ts';
import type { Candidate, Dish } from '../dish/dish.ts';
import { netPerGram } from '../dish/food-figures.ts';
import type { Choice } from './decisions.ts';
import { groupsOf } from './rows/count-rows.ts';
import { isSetLine } from './rows/set-rows.ts';
import { asksForMore, leastSaving, savingOf } from './trouble.ts';

/** Stand-ins that one programme weighs at most; the ordinary recipe has fewer than fifty. Own choice, for its time. */
const MOST_SWAPS = 80;
/** Stand-ins a line keeps at least, so that there is something to choose. Own choice. */
const LEAST_EACH = 2;

export interface ChoiceSet {
  /** What the programme chooses among. */
  choices: Choice[];
  /** Of a choice that stands for several like lines: the lines' own choices. */
  members: ReadonlyMap<string, readonly Choice[]>;
  /** Some lines or stand-ins were left out, as there were too many. */
  leftOut: boolean;
}

type Swap = Choice & { candidate: Candidate };

const isSwap = (choice: Choice): choice is Swap => choice.candidate !== null;

/** Lines of which a swap may take the same share without anyone telling. */
function likeness({ candidate: { part, rule } }: Swap, dish: Dish): string {
  const own = isSetLine(dish.goals, part.key) ? part.key : '';
  return [
    own,
    rule.id,
    part.food.id,
    part.section,
    part.role,
    part.base,
    part.eaten,
    part.group,
  ].join();
}

/** One choice for several like lines, under the first one's name. */
function together(own: readonly Swap[]): Swap {
  const [first] = own as [Swap, ...Swap[]];
  if (own.length === 1) return first;
  return {
    ...first,
    changes: own.flatMap(({ changes }) => changes),
    cost: own.reduce((sum, { cost }) => sum + cost, 0),
    max: Math.min(...own.map(({ max }) => max)),
  };
}

const carbs = ({ changes }: Swap): number =>
  changes.reduce((sum, c) => sum + (c.grams < 0 ? -c.grams * c.eaten : 0), 0);

/** Closeness that a swap costs for each gram of net carbs it takes out of the dish. */
function price(swap: Swap, rule: NetCarbRule): number {
  const saved = swap.changes.reduce(
    (sum, c) => sum - c.grams * c.eaten * (netPerGram(c.food, rule) ?? 0),
    0,
  );
  return swap.cost / Math.max(saved * swap.max, 1e-9);
}

/** The swaps kept of many: the cheapest of each line, the lines with most carbohydrate first. */
function kept(swaps: readonly Swap[], rule: NetCarbRule): Set<Swap> {
  const lines = new Map<string, Swap[]>();
  for (const swap of swaps) {
    const { key } = swap.candidate.part;
    lines.set(key, [...(lines.get(key) ?? []), swap]);
  }
  const each = Math.max(LEAST_EACH, Math.floor(MOST_SWAPS / lines.size));
  const weight = (own: readonly Swap[]): number => {
    const [first] = own as [Swap, ...Swap[]];
    return carbs(first) * first.candidate.part.net;
  };
  return new Set(
    [...lines.values()]
      .sort((a, b) => weight(b) - weight(a))
      .flatMap((own) => [...own].sort((a, b) => price(a, rule) - price(b, rule)).slice(0, each))
      .slice(0, MOST_SWAPS),
  );
}

/** Whether the user has set an amount on the swap's line. */
const isSet = ({ candidate }: Swap, { goals }: Dish): boolean =>
  isSetLine(goals, candidate.part.key);

/** The swaps that can save enough to be worth the trouble; all of them when an accepted change asks for more. */
function worthwhile(swaps: readonly Swap[], dish: Dish, pieces: number): Swap[] {
  if (asksForMore(dish) || dish.goals.adjustments.length > 0) return [...swaps];
  const saves = (own: readonly Choice[]): boolean =>
    own.reduce((sum, c) => sum + savingOf(c, dish) * c.max, 0) >= leastSaving(dish, own, pieces);
  const enough = new Set<Choice>(groupsOf(swaps).filter(saves).flat());
  return swaps.filter((swap) => enough.has(swap) || isSet(swap, dish));
}

/** The choices a programme takes on: like lines as one, and of each line the stand-ins that are worth the trouble. */
export function fewChoices(every: readonly Choice[], dish: Dish, pieces: number): ChoiceSet {
  const alike = new Map<string, Swap[]>();
  for (const swap of every.filter(isSwap)) {
    const name = likeness(swap, dish);
    alike.set(name, [...(alike.get(name) ?? []), swap]);
  }
  const merged = worthwhile([...alike.values()].map(together), dish, pieces);
  const keep = merged.length <= MOST_SWAPS ? new Set(merged) : kept(merged, dish.goals.rule);
  const members = [...alike.values()].filter((own) => own.length > 1);
  return {
    choices: [
      ...merged.filter((swap) => keep.has(swap) || isSet(swap, dish)),
      ...every.filter((c) => !isSwap(c)),
    ],
    members: new Map(members.map((own) => [own[0]?.id ?? '', own])),
    leftOut: keep.size < merged.length,
  };
}

/** Values in which every line's own choice has what the choice that stands for it came to. */
export function spread(
  values: ReadonlyMap<string, number>,
  { members }: Pick<ChoiceSet, 'members'>,
): ReadonlyMap<string, number> {
  if (members.size === 0) return values;
  const all = new Map(values);
  for (const [id, value] of values)
    for (const member of members.get(id) ?? []) all.set(member.id, value);
  return all;
}
