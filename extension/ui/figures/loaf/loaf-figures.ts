/** What a loaf shows: a serving before and after, and the budget it is cut at. */
import type { Adaptation } from '../../../../engine/model.ts';
import { carbBlocks, type RoleGroup } from '../carb-blocks.ts';

/** The groups a loaf tells apart. */
export const LOAF_GROUPS = ['flour', 'sugar', 'plant', 'rest'] as const;
export type LoafGroup = (typeof LOAF_GROUPS)[number];

export interface LoafSide {
  /** Net carbs of a serving, g. */
  grams: number;
  /** Grams of each group, in the order of {@link LOAF_GROUPS}. */
  groups: Record<LoafGroup, number>;
}

export interface LoafFigures {
  before: LoafSide;
  after: LoafSide;
  /** Upper end of the likely range after the rework, g. */
  highG: number;
  budgetG: number;
}

const GROUP_OF: Record<RoleGroup, LoafGroup> = {
  flour: 'flour',
  starch: 'flour',
  sweet: 'sugar',
  plant: 'plant',
  wet: 'rest',
  rest: 'rest',
};

const none = (): Record<LoafGroup, number> => ({ flour: 0, sugar: 0, plant: 0, rest: 0 });

/** Figures of an adaptation; null when a side is not known. */
export function loafFigures(adaptation: Adaptation): LoafFigures | null {
  const before = adaptation.before.perServing.netCarbsG;
  const after = adaptation.after.perServing.netCarbsG;
  if (!before || !after) return null;
  const groups = { before: none(), after: none() };
  for (const block of carbBlocks(adaptation)) {
    groups.before[GROUP_OF[block.group]] += block.before;
    groups.after[GROUP_OF[block.group]] += block.after;
  }
  return {
    before: { grams: Math.max(0, before.best), groups: groups.before },
    after: { grams: Math.max(0, after.best), groups: groups.after },
    highG: after.high,
    budgetG: adaptation.goals.budgetG,
  };
}

/** Groups that bring at least a twentieth of either side: those worth a key. Own choice. */
export function groupsShown({ before, after }: LoafFigures): LoafGroup[] {
  const worth = ({ grams, groups }: LoafSide, group: LoafGroup) =>
    grams > 0 && groups[group] / grams >= 0.05;
  return LOAF_GROUPS.filter((group) => worth(before, group) || worth(after, group));
}
