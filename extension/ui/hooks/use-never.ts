/** 'Never use this' is one step with the change of the recipe: what is undone is off the list again. */
import { useEffect, useRef } from 'preact/hooks';
import type { Preferences } from '../../store/prefs.ts';

interface NeverList {
  never: Preferences['never'];
  onNever(never: Preferences['never']): void;
}

/**
 * Gives what puts a food on the list. `excluded` are the foods that the recipe on the screen goes without: a
 * food that was put on the list here leaves it when a step back lets it in again, and comes back with the step.
 */
export function useNever(excluded: readonly string[], { never, onNever }: NeverList) {
  const byHand = useRef(new Map<string, string>());
  const last = useRef(excluded);
  useEffect(() => {
    const before = last.current;
    last.current = excluded;
    const moved = [...byHand.current].filter(
      ([id]) => before.includes(id) !== excluded.includes(id),
    );
    if (moved.length === 0) return;
    const others = never.filter(({ foodId }) => moved.every(([id]) => id !== foodId));
    const again = moved.filter(([id]) => excluded.includes(id));
    onNever([...others, ...again.map(([foodId, foodName]) => ({ foodId, foodName }))]);
  }, [excluded]);
  return ({ id, name }: { id: string; name: string }) => {
    if (never.some(({ foodId }) => foodId === id)) return;
    byHand.current.set(id, name);
    onNever([...never, { foodId: id, foodName: name }]);
  };
}
