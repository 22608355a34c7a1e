/** Which foods bring the net carbs of a serving, before and after, in groups. */
import type { Adaptation, Role } from '../../../engine/model.ts';

/** Groups of roles that share a colour and a pattern. */
export const ROLE_GROUPS = ['flour', 'starch', 'sweet', 'plant', 'wet', 'rest'] as const;
export type RoleGroup = (typeof ROLE_GROUPS)[number];

const GROUP_OF: Record<Role, RoleGroup> = {
  structure: 'flour',
  coating: 'flour',
  wrapper: 'flour',
  'starch-bulk': 'starch',
  thickener: 'starch',
  binder: 'rest',
  sweetness: 'sweet',
  'yeast-food': 'sweet',
  vegetable: 'plant',
  fruit: 'plant',
  liquid: 'wet',
  fat: 'wet',
  egg: 'wet',
  protein: 'wet',
  leavening: 'rest',
  yeast: 'rest',
  salt: 'rest',
  acid: 'rest',
  flavour: 'rest',
  other: 'rest',
};

export interface Block {
  key: string;
  name: string;
  /** Null for a line without a known food, and for several foods. */
  foodId: string | null;
  group: RoleGroup;
  /** Keys of the tally that the block stands for. */
  keys: string[];
  before: number;
  after: number;
}

/** A block smaller than this before and after (g a serving) goes into 'smaller amounts'. */
const SMALLEST_G = 0.1;

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

type Named = Omit<Block, 'keys' | 'before' | 'after'>;

/** A tally's key is a line's own, or 'line>food' for a food that the plan puts in its place. */
function describe({ plan, ingredients }: Adaptation, key: string): Named {
  const [line = key, foodId] = key.split('>');
  const planned = plan.items.find(
    (item) => item.key === line && (foodId === undefined || item.foodId === foodId),
  );
  if (foodId !== undefined) {
    const name = planned?.foodName ?? foodId;
    return { key, name, foodId, group: GROUP_OF[planned?.role ?? 'other'] };
  }
  const ingredient = ingredients.find((one) => one.key === key);
  const name = ingredient?.match?.foodName ?? planned?.foodName ?? ingredient?.item.name ?? key;
  const own = ingredient?.match?.foodId ?? planned?.foodId ?? null;
  const group = GROUP_OF[plan.roles[key]?.[0] ?? planned?.role ?? 'other'];
  return { key, name, foodId: own, group };
}

/** Blocks of one serving, largest first by the larger of before and after. */
export function carbBlocks(adaptation: Adaptation): Block[] {
  const figures = (which: 'before' | 'after'): Map<string, number> => {
    const map = new Map<string, number>();
    for (const { key, netCarbsG } of adaptation[which].contributions) {
      map.set(key, (map.get(key) ?? 0) + Math.max(0, netCarbsG?.best ?? 0));
    }
    return map;
  };
  const before = figures('before');
  const after = figures('after');
  const all = [...new Set([...before.keys(), ...after.keys()])].map((key) => ({
    ...describe(adaptation, key),
    keys: [key],
    before: before.get(key) ?? 0,
    after: after.get(key) ?? 0,
  }));
  const size = (block: { before: number; after: number }) => Math.max(block.before, block.after);
  const large = all.filter((block) => size(block) >= SMALLEST_G);
  const small = all.filter((block) => size(block) < SMALLEST_G && size(block) > 0);
  large.sort((a, b) => size(b) - size(a) || a.key.localeCompare(b.key));
  if (small.length > 0) {
    large.push({
      key: 'small',
      keys: small.map(({ key }) => key),
      name: 'smaller amounts',
      foodId: null,
      group: 'rest',
      before: sum(small.map((block) => block.before)),
      after: sum(small.map((block) => block.after)),
    });
  }
  return large;
}
