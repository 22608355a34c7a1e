/** What can be done with a line of the list. */
import type { FoodTable, WalkOptions } from '../../../../engine/index.ts';
import type { Food, Goals } from '../../../../engine/model.ts';
import type { Names } from '../../hooks/use-names.ts';
import type { WorkState } from '../../hooks/use-work.ts';
import type { Correction } from './correct-line.tsx';

export interface LineActions {
  goals: Goals;
  table: FoodTable;
  options: WalkOptions;
  ownFoods: readonly Food[];
  names: Names;
  /** How much of the recipe is made. */
  factor: number;
  onGoals(goals: Partial<Goals>): void;
  onCorrect(key: string, correction: Correction | null): void;
  /** Never adds this food, in this and in later recipes. */
  onNever(food: { id: string; name: string }): void;
}

export function lineActions(
  work: WorkState,
  rest: Pick<LineActions, 'table' | 'ownFoods' | 'names' | 'factor' | 'onNever'>,
): LineActions {
  const { current, options, changeGoals, correct } = work;
  return {
    ...rest,
    goals: current.goals,
    options,
    onGoals: changeGoals,
    onCorrect: correct,
  };
}

/** The line stays as the page has it, or may change again. */
export function pinnedWith(goals: Goals, key: string, on: boolean): Partial<Goals> {
  const others = goals.pinned.filter((one) => one !== key);
  return { pinned: on ? [...others, key] : others };
}
