import { useMemo, useState } from 'preact/hooks';
import { adaptRecipe, type FoodTable, foodTable, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Food, Goals } from '../../../engine/model.ts';
import type { Current } from '../../store/current.ts';
import type { Work } from '../../store/records.ts';
import type { Correction } from '../recipe/correct-line.tsx';

/** What the user has taught it. Packages or names that are another object count as changed. */
export interface Known {
  ownFoods: readonly Food[];
  /** Name to food id. */
  aliases: Record<string, string>;
  /** Grams of the dish on the scale when exactly this was baked, or null. */
  weighed?: (work: Work) => number | null;
}

export interface WorkState {
  current: Current;
  /** Null when the engine could not work the recipe out. */
  adaptation: Adaptation | null;
  table: FoodTable;
  /** What the adaptation was made with. */
  options: WalkOptions;
  changeGoals(goals: Partial<Goals>): void;
  correct(key: string, correction: Correction | null): void;
  setSavedId(id: string): void;
  replace(current: Current): void;
}

function solve({ recipe, goals }: Current, options: WalkOptions): Adaptation | null {
  try {
    return adaptRecipe(recipe, goals, options);
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
  { ownFoods, aliases, weighed }: Known,
  onChange: (current: Current) => void,
): WorkState {
  const [current, setCurrent] = useState(start);
  const { recipe, goals, corrections } = current;
  const reworkedGrams = weighed?.(current) ?? null;
  const options = useMemo<WalkOptions>(
    () => ({ ownFoods, aliases, corrections, reworkedGrams }),
    [recipe, goals, corrections, ownFoods, aliases, reworkedGrams],
  );
  const adaptation = useMemo(() => solve(current, options), [options]);
  const table = useMemo(() => foodTable(ownFoods), [ownFoods]);
  const update = (next: Current) => {
    setCurrent(next);
    onChange(next);
  };
  return {
    current,
    adaptation,
    table,
    options,
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
