/** Whole-number rows: which swaps and new foods are used, how many, and at least how much of each. */
import type { Food } from '../../model.ts';
import type { Dish, Section } from '../dish/dish.ts';
import type { Row } from '../solver/programme.ts';
import { type Choice, foodCost, LEAST_USE, SWAP_COST } from './decisions.ts';
import type { Builder, PlanVariable } from './row-builder.ts';
import { idIn } from './variable-ids.ts';

/** Most new foods for the flours of one part of a dish, and for any other line: what a baker will buy and weigh. Own choice. */
export const MOST_NEW = { flours: 3, line: 3 } as const;

/** Largest value of each choice that single rows allow, the others standing where they help it most. */
export function boundsOf(
  choices: readonly Choice[],
  variables: readonly PlanVariable[],
  rows: readonly Row[],
): Map<string, number> {
  const most = new Map(variables.map((v) => [v.id, v.max ?? Number.POSITIVE_INFINITY]));
  for (const choice of choices) most.set(choice.id, choice.max);
  const open = new Set(choices.filter((c) => c.candidate).map((c) => c.id));
  const tighten = (terms: Row['terms'], sign: 1 | -1, max: number): void => {
    let least = 0;
    for (const [id, value] of terms) {
      const c = sign * value;
      if (c < 0) least += c * (most.get(id) ?? Number.POSITIVE_INFINITY);
    }
    if (!Number.isFinite(least)) return;
    for (const [id, value] of terms) {
      const c = sign * value;
      if (c <= 0 || !open.has(id)) continue;
      // A hair of room, so that rounding in the sums cuts nothing off.
      const bound = ((max - least) / c) * (1 + 1e-9) + 1e-9;
      if (bound < (most.get(id) ?? 0)) most.set(id, Math.max(LEAST_BOUND, bound));
    }
  };
  for (let pass = 0; pass < 2; pass++)
    for (const { min, max, terms } of rows) {
      if (max !== undefined) tighten(terms, 1, max);
      if (min !== undefined) tighten(terms, -1, -min);
    }
  return most;
}

/** Bounds below this are as good as none of it, and would make the switch's price a cliff. */
const LEAST_BOUND = 1e-4;

/** Least share of a line that a swap takes once it is used; a pinch is enough of what a change asks for. */
function leastUse(choice: Choice, most: number, asked: (food: Food) => boolean): number {
  if (choice.candidate?.rule.whole) return choice.max;
  return foodsOf(choice).some(asked) ? Math.min(PINCH, most / 2) : Math.min(LEAST_USE, most / 2);
}

const PINCH = 0.01;

/** A new choice of foods in a section: the lines it serves, and the switch that says it is used. */
interface Use {
  id: string;
  choices: Choice[];
}

/** Swaps by what is bought for them: one rule for several flours of a dough is one choice. */
function groupsOf(b: Builder): Choice[][] {
  const groups = new Map<string, Choice[]>();
  for (const choice of b.choices) {
    const { candidate } = choice;
    if (!candidate) continue;
    const shared = candidate.part.base && !candidate.rule.whole;
    const key = shared ? `${choice.section} ${candidate.rule.id}` : choice.id;
    groups.set(key, [...(groups.get(key) ?? []), choice]);
  }
  return [...groups.values()];
}

function useRows(b: Builder, asked: (food: Food) => boolean): Use[] {
  const bounds = boundsOf(b.choices, b.variables, b.rows);
  b.limit(bounds);
  return groupsOf(b).flatMap((choices): Use[] => {
    const [first] = choices;
    if (!first) return [];
    const id = `use ${first.id}`;
    const opens = choices.map((c) => ({ id: c.id, most: bounds.get(c.id) ?? c.max }));
    b.variables.push({ id, cost: SWAP_COST + ownFoods(b.dish, choices), binary: true, opens });
    b.partOf.set(id, first.part);
    for (const { id: opened, most } of opens)
      b.row(
        {
          id: `link ${opened}`,
          max: 0,
          terms: [
            [opened, 1],
            [id, -most],
          ],
          switch: id,
        },
        null,
      );
    const largest = Math.max(...choices.map((c) => gramsOf(c)));
    const least = leastUse(first, Math.max(...opens.map(({ most }) => most)), asked);
    b.row(
      {
        id: `least ${first.id}`,
        min: 0,
        terms: [
          ...choices.map((c): [string, number] => [c.id, gramsOf(c) / largest]),
          [id, -least],
        ],
        switch: id,
      },
      null,
    );
    return [{ id, choices }];
  });
}

const gramsOf = ({ candidate }: Choice): number => candidate?.part.grams ?? 1;

const foodsOf = (choice: Choice): Food[] => choice.candidate?.to.map(({ food }) => food) ?? [];

/** New foods that no other choice of the section brings are paid for with the choice itself. */
function ownFoods(dish: Dish, choices: readonly Choice[]): number {
  const [first] = choices;
  if (!first) return 0;
  return foodsOf(first)
    .filter((food) => isNew(dish, food) && !broughtElsewhere(dish, food, first))
    .reduce((sum, food) => sum + foodCost(dish, food), 0);
}

const isNew = (dish: Dish, food: Food): boolean => !dish.parts.some((p) => p.food.id === food.id);

const broughtElsewhere = (dish: Dish, food: Food, choice: Choice): boolean =>
  dish.candidates.some(
    (c) =>
      c.part.section === choice.section &&
      (c.rule.id !== choice.candidate?.rule.id ||
        (c.part !== choice.candidate.part && !c.part.base)) &&
      c.to.some((t) => t.food.id === food.id),
  );

/** One variable for each new food that several choices of a section bring: 1 as soon as one of them is used. */
function sharedFoods(b: Builder, section: Section, uses: readonly Use[]): Map<string, string> {
  const foods = new Map<string, { food: Food; by: Use[] }>();
  for (const use of uses) {
    const [first] = use.choices;
    if (!first) continue;
    for (const food of foodsOf(first)) {
      if (!isNew(b.dish, food) || !broughtElsewhere(b.dish, food, first)) continue;
      const row = foods.get(food.id) ?? { food, by: [] };
      row.by.push(use);
      foods.set(food.id, row);
    }
  }
  const ids = new Map<string, string>();
  for (const { food, by } of foods.values()) {
    const [first] = by;
    if (!first?.choices[0]) continue;
    const id = idIn(section, `food ${food.id}`);
    b.variable(id, foodCost(b.dish, food), first.choices[0].part, 1);
    for (const use of by)
      b.row(
        {
          id: `brings ${food.id} ${use.id}`,
          max: 0,
          terms: [
            [use.id, 1],
            [id, -1],
          ],
          follows: { leader: use.id, follower: id },
        },
        null,
      );
    ids.set(food.id, id);
  }
  return ids;
}

/** Swaps in use (little of what is `asked` for may be enough), the foods they bring, and the most of them for flours and for each other line. */
export function countRows(b: Builder, asked: (food: Food) => boolean): void {
  const uses = useRows(b, asked);
  for (const section of b.dish.sections) {
    const own = uses.filter((u) => u.choices[0]?.section === section.id);
    if (own.length === 0) continue;
    const shared = sharedFoods(b, section, own);
    const terms = new Map<string, number>();
    for (const { id, choices } of own) {
      const [first] = choices;
      if (!first?.candidate?.part.base) continue;
      for (const food of foodsOf(first)) {
        if (!isNew(b.dish, food)) continue;
        const name = shared.get(food.id);
        if (name !== undefined) terms.set(name, 1);
        else terms.set(id, (terms.get(id) ?? 0) + 1);
      }
    }
    if (terms.size > MOST_NEW.flours)
      b.row(
        { id: idIn(section, 'new-flours'), max: MOST_NEW.flours, terms: [...terms] },
        b.inSection(
          section,
          `No more than ${MOST_NEW.flours} new flours, so that it can be weighed out.`,
        ),
      );
    for (const part of b.dish.parts) {
      const lines = own.filter((u) => u.choices.some((c) => c.candidate?.part === part));
      if (part.base || lines.length <= MOST_NEW.line) continue;
      b.row(
        {
          id: `few ${part.key}`,
          max: MOST_NEW.line,
          terms: lines.map((u): [string, number] => [u.id, 1]),
        },
        null,
      );
    }
  }
}
