import { useEffect, useMemo, useState } from 'preact/hooks';
import type { FoodTable } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';

type Made = (ownFoods: readonly Food[]) => FoodTable;

async function readIn(): Promise<Made> {
  const { foodTable } = await import('../../../engine/foods/index.ts');
  return foodTable;
}

/** All foods, the user's own among them; null while they are read in, and until they are wanted. */
export function useFoodTable(wanted: boolean, ownFoods: readonly Food[]): FoodTable | null {
  const [made, setMade] = useState<{ table: Made } | null>(null);
  useEffect(() => {
    if (wanted) void readIn().then((table) => setMade({ table }));
  }, [wanted]);
  return useMemo(() => made?.table(ownFoods) ?? null, [made, ownFoods]);
}
