/** Rows on how much of a line may go: the first half of a sugar or flour is missed less than the last. */
import type { ClosenessPart, Role } from '../../../model.ts';
import type { Part } from '../../dish/dish.ts';
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

export function depthRows(b: Builder): void {
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
    b.variable(id, cost, deep.part, 1);
    b.row({ id: `${id} most`, max: deep.from, terms: [...terms, [id, -1]] }, null);
  }
}
