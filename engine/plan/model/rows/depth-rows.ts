/** Rows on how much of a line may go: the first half of a sugar or flour is missed less than the last. */
import type { ClosenessPart, Role } from '../../../model.ts';
import type { Dish, Part } from '../../dish/dish.ts';
import { isBaseOfCream } from '../decisions.ts';
import type { Builder } from '../row-builder.ts';
import { isSpoonOfSweet } from '../seasoning-sugar.ts';

/**
 * Share of a line that goes at its plain price, and what all of the rest costs besides, in points of
 * closeness when the line is the dish's only one of its role. A role that is not named may go as a
 * whole: half a tortilla helps nobody. Own choice, after what bakers and cooks left in their reworks.
 */
const DEEP: Partial<Record<Role, { from: number; cost: number; part: ClosenessPart }>> = {
  sweetness: { from: 0.6, cost: 0.12, part: 'sweetness' },
  structure: { from: 0.35, cost: 0.15, part: 'structure' },
  liquid: { from: 0.5, cost: 0.08, part: 'flavour' },
  fruit: { from: 0.4, cost: 0.12, part: 'flavour' },
  vegetable: { from: 0.5, cost: 0.1, part: 'flavour' },
};

/** Share a line has of everything in its role. */
function shareOfRole(part: Part, parts: readonly Part[]): number {
  const same = parts.filter(({ role }) => role === part.role);
  return (
    part.grams /
    Math.max(
      same.reduce((sum, { grams }) => sum + grams, 0),
      1e-9,
    )
  );
}

/**
 * The last of a batter's sugar holds its crust and keeps it from clinging: it stays, unless nothing else brings a piece
 * within the budget. Then it is trouble, but no distance. Price of all of it, in points of closeness. Own choice.
 */
const LAST_SUGAR = { from: 0.7, cost: 0.6, families: ['quick-bread', 'cake', 'brownie'] };

function isSugarOfBatter({ class: kind, section }: Part, { sections }: Dish): boolean {
  const own = sections[section];
  return kind === 'dry-sugars' && own?.dough === true && LAST_SUGAR.families.includes(own.family);
}

/** How much of a line may go at the price of its depth, and what stands for the rest. */
function depthOf(
  b: Builder,
  part: Part,
  from: number,
  last: boolean,
): [number, [string, number][]] {
  if (!isSugarOfBatter(part, b.dish)) return [1, []];
  const most = LAST_SUGAR.from - from;
  if (!last) return [most, []];
  const id = `last ${part.key}`;
  b.trouble(id, LAST_SUGAR.cost * shareOfRole(part, b.dish.parts));
  return [most, [[id, -1]]];
}

/** `last`: whether the last of a batter's sugar may go. */
export function depthRows(b: Builder, last: boolean): void {
  const lines = new Map<Part, [string, number][]>();
  for (const choice of b.choices) {
    const part = choice.candidate?.part;
    if (part) lines.set(part, [...(lines.get(part) ?? []), [choice.id, 1]]);
  }
  for (const [part, terms] of lines) {
    const deep = DEEP[part.role];
    if (part.role === 'fruit' && isSpoonOfSweet(part, b.dish)) continue;
    // A crumb base goes as a whole, and is the lesser part.
    if (!deep || (part.role === 'structure' && isBaseOfCream(part, b.dish))) continue;
    const id = `deep ${part.key}`;
    const cost = (deep.cost * shareOfRole(part, b.dish.parts)) / (1 - deep.from);
    const [most, rest] = depthOf(b, part, deep.from, last);
    b.variable(id, cost, deep.part, most);
    b.row({ id: `${id} most`, max: deep.from, terms: [...terms, [id, -1], ...rest] }, null);
  }
}
