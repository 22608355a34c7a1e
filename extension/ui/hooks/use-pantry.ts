import { useState } from 'preact/hooks';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { addToPantry, listPantry, takeFromPantry } from '../../store/kept/pantry.ts';
import type { PantryFood } from '../../store/pantry-food.ts';

export interface Pantry {
  foods: readonly PantryFood[];
  failure: string | null;
  add(food: PantryFood): void;
  take(foodId: string): void;
  reload(): void;
}

/** What the user has at home, on disk. */
export function usePantry(start: readonly PantryFood[], store: Store): Pantry {
  const [foods, setFoods] = useState(start);
  const [failure, setFailure] = useState<string | null>(null);
  const change = (job: () => Promise<void>) =>
    job()
      .then(() => listPantry(store))
      .then(
        (list) => {
          setFoods(list);
          setFailure(null);
        },
        (error) => setFailure(storageMessage(error)),
      );
  return {
    foods,
    failure,
    add: (food) => void change(() => addToPantry(store, food)),
    take: (foodId) => void change(() => takeFromPantry(store, foodId)),
    reload: () => void change(async () => {}),
  };
}
