import { useMemo, useState } from 'preact/hooks';
import { adaptRecipe, type FoodTable, foodTable } from '../../engine/index.ts';
import type { Adaptation, Food, Goals } from '../../engine/model.ts';
import type { Current } from '../store/current.ts';
import type { Correction } from './correct-line.tsx';

export interface WorkState {
  current: Current;
  /** Null when the engine could not work the recipe out. */
  adaptation: Adaptation | null;
  table: FoodTable;
  changeGoals(goals: Partial<Goals>): void;
  correct(key: string, correction: Correction | null): void;
  setSavedId(id: string): void;
  replace(current: Current): void;
}

function solve(current: Current, ownFoods: readonly Food[]): Adaptation | null {
  const { recipe, goals, corrections } = current;
  try {
    return adaptRecipe(recipe, goals, { ownFoods, corrections });
  } catch (error) {
    console.error(error);
    return null;
  }
}

/**
 * The recipe being worked on and its adaptation, worked out again at every change.
 * `onChange` receives each new state, for keeping.
 */
export function useWork(
  start: Current,
  ownFoods: readonly Food[],
  onChange: (current: Current) => void,
): WorkState {
  const [current, setCurrent] = useState(start);
  const { recipe, goals, corrections } = current;
  const adaptation = useMemo(
    () => solve(current, ownFoods),
    [recipe, goals, corrections, ownFoods],
  );
  const table = useMemo(() => foodTable(ownFoods), [ownFoods]);
  const update = (next: Current) => {
    setCurrent(next);
    onChange(next);
  };
  return {
    current,
    adaptation,
    table,
    changeGoals: (change) => update({ ...current, goals: { ...goals, ...change } }),
    correct: (key, correction) => {
      const { [key]: _old, ...others } = corrections;
      update({
        ...current,
        corrections: correction ? { ...others, [key]: correction } : others,
      });
    },
    setSavedId: (savedId) => update({ ...current, savedId }),
    replace: update,
  };
}
