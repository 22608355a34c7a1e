/**
 * Rows on a light plan: two changes and two products, and one thing more of which there is simply less. Sugar is one
 * change and its stand-in one product, in however many lines; so are the flours of a dough.
 */
import type { Part } from '../../dish/dish.ts';
import type { Builder } from '../row-builder.ts';
import { isLess } from '../trouble.ts';
import { type Bought, type Counted, follower, SWEET_KINDS, type Use } from './count-rows.ts';

/** Most changes of a light plan, those that only take less counted too, its products, and its lines. */
export interface Light {
  changes: number;
  withLess: number;
  products: number;
  lines: number;
}

/** Own choice. */
export const FEW: Light = { changes: 2, withLess: 3, products: 2, lines: 4 };

/** Of a dish with three large sources, such as crumb base, sugar and chocolate. Own choice. */
export const FULLER: Light = { changes: 3, withLess: 3, products: 3, lines: 5 };

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

const isLessOnly = ({ choices }: Use): boolean => choices.every(isLess);

/** Few changes; one more where nothing is bought or weighed out for it. */
function changeRows(b: Builder, light: Light, lines: Counted['lines']): void {
  const groups = new Map<string, Counted['lines']>();
  for (const line of lines) {
    const change = changeOf(line.part);
    groups.set(change, [...(groups.get(change) ?? []), line]);
  }
  const all = [...groups].flatMap(([change, own]) =>
    together(
      b,
      `light ${change}`,
      own.map(({ id, uses }) => ({ id, leaders: uses.map((use) => use.id) })),
    ),
  );
  // A dough or batter has no such thing: what it loses, it misses.
  const most = b.dish.main.dough ? light.changes : light.withLess;
  atMost(b, 'light-changes-with-less', most, all, null);
  if (most === light.changes) return;
  const replacing = [...groups].flatMap(([change, own]) => {
    const uses = new Set(own.flatMap((line) => line.uses).filter((use) => !isLessOnly(use)));
    return together(
      b,
      `light new ${change}`,
      [...uses].map(({ id }) => ({ id, leaders: [id] })),
    );
  });
  atMost(b, 'light-changes', light.changes, replacing, null);
}

export function lightRows(
  b: Builder,
  light: Light,
  lines: Counted['lines'],
  bought: readonly Bought[],
): void {
  changeRows(b, light, lines);
  atMost(b, 'light-lines', light.lines, lines, null);
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
  atMost(b, 'light-foods', light.products, products, null);
}
