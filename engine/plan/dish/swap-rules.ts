/** The swaps of `data/swaps/`, file by file, and the foods that must stay. */
import type { Family } from '../../model.ts';
import keepRows from '../data/keeps.json' with { type: 'json' };
import type { SwapRow } from '../data/schemas.ts';
import { SWAP_FILES } from '../data/swap-files.ts';
import { isDoughFamily } from './family/family-limits.ts';
import { mentionsAny } from './word-search.ts';

/** One way to replace a food; see `SwapRow` for what the fields mean. */
export interface SwapRule extends SwapRow {
  water: number;
  method: string;
  cautions: string[];
  source: string;
}

interface WrittenFile {
  source: string;
  swaps: readonly SwapRow[];
}

export const SWAP_RULES: readonly SwapRule[] = (
  Object.values(SWAP_FILES) as readonly WrittenFile[]
).flatMap(({ source, swaps }) =>
  swaps.map((row) => ({
    ...row,
    water: row.water ?? 0,
    method: row.method ?? '',
    cautions: row.cautions ?? [],
    source: row.source ?? source,
  })),
);

const byClass = new Map<string, SwapRule[]>();
for (const rule of SWAP_RULES)
  for (const cls of new Set(rule.replaces)) {
    const rules = byClass.get(cls);
    if (rules) rules.push(rule);
    else byClass.set(cls, [rule]);
  }

/** The swaps for a class of foods, in the tables' order. */
export const rulesFor = (foodClass: string): readonly SwapRule[] => byClass.get(foodClass) ?? [];

/** Whether a swap is meant for this dish family. */
export function suits(rule: SwapRule, family: Family): boolean {
  const kind = isDoughFamily(family) ? 'dough' : 'dish';
  return rule.in.some((word) => word === '*' || word === family || word === kind);
}

/** Whether a swap is for this food, and for a dish of these words (title, line and method). */
export function isFor(rule: SwapRule, foodId: string, words: string): boolean {
  if (rule.only !== undefined && !rule.only.includes(foodId)) return false;
  return rule.when === undefined || mentionsAny(rule.when, words);
}

/** Why a food of this class must stay in a dish of this title and method, or null when it need not. */
export function mustKeep(foodClass: string, title: string, method: string): string | null {
  const row = keepRows.find(
    (keep) =>
      keep.classes.includes(foodClass) &&
      (mentionsAny(keep.title, title) || mentionsAny(keep.method, method)),
  );
  return row?.why ?? null;
}
