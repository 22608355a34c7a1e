/**
 * Rows on a light plan: two changes and two products. Sugar is one change and its stand-in one product, in however
 * many lines; so are the flours of a dough.
 */
import type { Part } from '../../dish/dish.ts';
import type { Builder } from '../row-builder.ts';
import { type Bought, type Counted, follower, SWEET_KINDS } from './count-rows.ts';

/** Most changes and products of a light plan, and most lines they are made in. Own choice. */
const LIGHT = { changes: 2, products: 2, lines: 4 } as const;

export function atMost(
  b: Builder,
  id: string,
  max: number,
  members: readonly { id: string }[],
  text: string | null,
): void {
  if (members.length <= max) return;
  b.row({ id, max, terms: members.map((m): [string, number] => [m.id, 1]) }, text);
}

/** One variable for all of them, which is 1 as soon as one of the switches is; the only one stands for itself. */
function together(
  b: Builder,
  id: string,
  all: readonly { id: string; leaders: readonly string[] }[],
): { id: string }[] {
  if (all.length < 2) return [...all];
  follower(b, id, 0, [...new Set(all.flatMap(({ leaders }) => leaders))]);
  return [{ id }];
}

/** Lines that a cook changes in one thought: all the sugars, all the flours of a dough. */
function changeOf({ role, base, section, key }: Part): string {
  if (role === 'sweetness') return 'sugar';
  return base ? `flours ${section}` : key;
}

export function lightRows(b: Builder, lines: Counted['lines'], bought: readonly Bought[]): void {
  const groups = new Map<string, { id: string; leaders: string[] }[]>();
  for (const { part, id, uses } of lines) {
    const change = changeOf(part);
    groups.set(change, [...(groups.get(change) ?? []), { id, leaders: uses.map((use) => use.id) }]);
  }
  const changes = [...groups].flatMap(([change, own]) => together(b, `light ${change}`, own));
  atMost(b, 'light-changes', LIGHT.changes, changes, null);
  atMost(b, 'light-lines', LIGHT.lines, lines, null);
  const kindOf = ({ food }: Bought): string | undefined =>
    SWEET_KINDS.find(([, is]) => is(food))?.[0];
  const sweet = SWEET_KINDS.flatMap(([kind]) =>
    together(
      b,
      `light ${kind}`,
      bought.filter((one) => kindOf(one) === kind),
    ),
  );
  const products = [...bought.filter((one) => kindOf(one) === undefined), ...sweet];
  atMost(b, 'light-foods', LIGHT.products, products, null);
}
