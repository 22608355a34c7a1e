/** Whole-number rows: which swaps are used and how much of each at least, the lines they change and the foods they bring. */
import { hasTag } from '../../../foods/tags.ts';
import type { Food } from '../../../model.ts';
import type { Dish, Part } from '../../dish/dish.ts';
import type { Row } from '../../solver/programme.ts';
import { type Choice, foodCost, LEAST_USE, SWAP_COST } from '../decisions.ts';
import type { Builder, PlanVariable } from '../row-builder.ts';
import {
  isLess,
  LINE_TROUBLE,
  leastSaving,
  purchaseTrouble,
  savingOf,
  TWO_KINDS_TROUBLE,
} from '../trouble.ts';

/** Bounds below this are as good as none of it, and would make the switch's price a cliff. */
const LEAST_BOUND = 1e-4;

/** Least of what a change after a bake asks for, share of a line. */
const PINCH = 0.01;

/** Largest value of each choice that single rows allow, the others standing where they help it most. */
function boundsOf(
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

/** A new choice of foods in a section: the lines it serves, and the switch that says it is used. */
export interface Use {
  id: string;
  choices: readonly Choice[];
}

const foodsOf = ({ candidate, food }: Choice): Food[] =>
  candidate?.to.map((one) => one.food) ?? (food ? [food] : []);

/** Swaps by what is bought for them: one rule for several flours of a dough is one choice. */
export function groupsOf(swaps: readonly Choice[]): Choice[][] {
  const groups = new Map<string, Choice[]>();
  for (const choice of swaps) {
    const { candidate } = choice;
    if (!candidate) continue;
    const shared = candidate.part.base && !candidate.rule.whole;
    const key = shared ? `${choice.section} ${candidate.rule.id}` : choice.id;
    groups.set(key, [...(groups.get(key) ?? []), choice]);
  }
  return [...groups.values()];
}

const gramsOf = ({ candidate }: Choice): number => candidate?.part.grams ?? 1;

/** A stand-in put together of several foods is a recipe of its own: closeness that each food more costs. Own choice. */
const MIXING_COST = 0.01;

const mixing = ({ candidate }: Choice): number =>
  candidate?.part.base === false ? MIXING_COST * Math.max(0, candidate.to.length - 1) : 0;

/** A switch for each group of swaps, with the most it lets in. */
function switchRows(b: Builder, asked: (food: Food) => boolean, pieces: number): Use[] {
  const bounds = boundsOf(b.choices, b.variables, b.rows);
  b.limit(bounds);
  return groupsOf(b.choices).flatMap((choices): Use[] => {
    const [first] = choices;
    if (!first) return [];
    const id = `use ${first.id}`;
    const opens = choices.map((c) => ({ id: c.id, most: bounds.get(c.id) ?? c.max }));
    b.binary(id, SWAP_COST + mixing(first), first.part, opens);
    const most = Math.max(...opens.map((open) => open.most));
    leastRows(
      b,
      { id, choices },
      most,
      choices.some((c) => foodsOf(c).some(asked)),
      pieces,
    );
    return [{ id, choices }];
  });
}

/** Of a line of which there is simply to be less, at least this share of what may go: less is not done by halves. Own choice. */
const LEAST_LESS = 0.6;

const leastUse = (choice: Choice): number =>
  isLess(choice)
    ? Math.max(LEAST_USE, LEAST_LESS * choice.max)
    : Math.min(LEAST_USE, choice.max / 2);

/**
 * Once a swap is used it takes a share of its line worth the trouble, all of it when halves make no
 * sense, and saves enough; of what an accepted change asks for, a pinch will do.
 */
function leastRows(
  b: Builder,
  { id, choices }: Use,
  most: number,
  asked: boolean,
  pieces: number,
): void {
  const [first] = choices;
  if (!first) return;
  const largest = Math.max(...choices.map(gramsOf));
  const whole = first.candidate?.rule.whole === true;
  const share = whole ? first.max : Math.min(asked ? PINCH : leastUse(first), most);
  b.row(
    {
      id: `least ${first.id}`,
      min: 0,
      terms: [...choices.map((c): [string, number] => [c.id, gramsOf(c) / largest]), [id, -share]],
      switch: id,
    },
    null,
  );
  const least = asked ? 0 : leastSaving(b.dish, choices, pieces);
  if (least <= 0) return;
  const saved = choices.map((c): [string, number] => [c.id, savingOf(c, b.dish)]);
  b.row({ id: `worth ${first.id}`, min: 0, terms: [...saved, [id, -least]], switch: id }, null);
}

/** A variable that is 1 as soon as one of the switches is. */
export function follower(
  b: Builder,
  id: string,
  trouble: number,
  leaders: readonly string[],
): void {
  b.trouble(id, trouble);
  for (const leader of leaders)
    b.row(
      {
        id: `${id} with ${leader}`,
        max: 0,
        terms: [
          [leader, 1],
          [id, -1],
        ],
        follows: { leader, follower: id },
      },
      null,
    );
}

/** A new food, the variable that counts it, and the switches that bring it. */
export interface Bought {
  food: Food;
  id: string;
  leaders: readonly string[];
}

const isNew = (dish: Dish, food: Food): boolean => !dish.parts.some((p) => p.food.id === food.id);

/** One variable for each new food, wherever in the dish it goes. */
function foodRows(b: Builder, uses: readonly Use[]): Bought[] {
  const by = new Map<Food, { part: Choice['part']; leaders: string[] }>();
  for (const { id, choices } of uses) {
    const [first] = choices;
    for (const food of first ? foodsOf(first) : []) {
      if (!first || !isNew(b.dish, food)) continue;
      const row = by.get(food) ?? { part: first.part, leaders: [] };
      row.leaders.push(id);
      by.set(food, row);
    }
  }
  return [...by].map(([food, { part, leaders }]) => {
    const id = `food ${food.id}`;
    follower(b, id, purchaseTrouble(food, b.dish), leaders);
    b.costs(id, foodCost(b.dish, food), part);
    return { food, id, leaders };
  });
}

/** One variable for each line that a swap changes. */
function lineRows(b: Builder, uses: readonly Use[]): { part: Part; id: string; uses: Use[] }[] {
  const lines = new Map<Part, Use[]>();
  for (const use of uses)
    for (const part of new Set(use.choices.flatMap((c) => c.candidate?.part ?? [])))
      lines.set(part, [...(lines.get(part) ?? []), use]);
  return [...lines].map(([part, own]) => {
    const id = `line ${part.key}`;
    follower(
      b,
      id,
      LINE_TROUBLE,
      own.map((use) => use.id),
    );
    return { part, id, uses: own };
  });
}

export interface Counted {
  uses: Use[];
  foods: Bought[];
  lines: { part: Part; id: string; uses: Use[] }[];
}

const polyolsIn = ({ per100g }: Food): number =>
  Object.values(per100g.polyolsG ?? {}).reduce((sum, grams) => sum + (grams ?? 0), 0);

export const SWEET_KINDS: readonly (readonly [string, (food: Food) => boolean])[] = [
  ['allulose', (food) => hasTag(food, 'sweetener') && (food.per100g.alluloseG ?? 0) > 0],
  ['polyols', (food) => hasTag(food, 'sweetener') && polyolsIn(food) > 0],
];

/** Whether a use brings a new sweetener of a kind. */
const brings = (b: Builder, { choices }: Use, is: (food: Food) => boolean): boolean =>
  choices.some((c) => foodsOf(c).some((food) => isNew(b.dish, food) && is(food)));

/**
 * Two kinds of bulk sweetener in one dish taste of two things and leave two bags half used; a light plan
 * has none but those that belong together in one stand-in.
 */
function sweetKindRows(b: Builder, uses: readonly Use[], light: boolean): void {
  const isPair = (use: Use): boolean => SWEET_KINDS.every(([, is]) => brings(b, use, is));
  const counted = light ? uses.filter((use) => !isPair(use)) : uses;
  const kinds = SWEET_KINDS.flatMap(([kind, is]) => {
    const leaders = counted.filter((use) => brings(b, use, is));
    return leaders.length > 0 ? [{ id: `sweet ${kind}`, leaders: leaders.map((u) => u.id) }] : [];
  });
  if (kinds.length < SWEET_KINDS.length) return;
  for (const { id, leaders } of kinds) follower(b, id, 0, leaders);
  const terms = kinds.map(({ id }): [string, number] => [id, 1]);
  if (!light) b.trouble('sweet both', TWO_KINDS_TROUBLE);
  b.row({ id: 'sweet both', max: 1, terms: light ? terms : [...terms, ['sweet both', -1]] }, null);
}

/** Swaps in use, the foods they bring and the lines they change; little of what is `asked` for may be enough. */
export function countRows(
  b: Builder,
  asked: (food: Food) => boolean,
  light: boolean,
  pieces: number,
): Counted {
  const uses = switchRows(b, asked, pieces);
  const additions = additionRows(b);
  sweetKindRows(b, uses, light);
  return { uses, foods: foodRows(b, [...uses, ...additions]), lines: lineRows(b, uses) };
}

/** A switch for each addition of a food that must be bought. */
function additionRows(b: Builder): Use[] {
  return b.choices.flatMap((choice): Use[] => {
    const { food } = choice;
    if (choice.kind !== 'add' || !food || purchaseTrouble(food, b.dish) <= 0) return [];
    const id = `use ${choice.id}`;
    b.binary(id, 0, choice.part, [{ id: choice.id, most: choice.max }]);
    return [{ id, choices: [choice] }];
  });
}
