import type { Store } from '../../../store/db.ts';
import { storageMessage } from '../../../store/failure.ts';
import {
  deleteOwnFood,
  listOwnFoods,
  type OwnFoods,
  saveOwnFood,
} from '../../../store/kept/kept-packages.ts';
import { OwnFoods as OwnFoodsSection } from '../../../ui/packages/own-packages.tsx';

interface Props {
  store: Store;
  own: OwnFoods;
  onChanged(own: OwnFoods): void;
}

/** The user's packages, on disk: a change reaches the recipe on the screen at once. */
export function Packages({ store, own, onChanged }: Props) {
  const changing = async <T,>(job: () => Promise<T>): Promise<T> => {
    try {
      const outcome = await job();
      onChanged(await listOwnFoods(store));
      return outcome;
    } catch (error) {
      throw new Error(storageMessage(error));
    }
  };
  return (
    <OwnFoodsSection
      foods={own.foods}
      damaged={own.damaged}
      onKeep={(food, instead) => changing(() => saveOwnFood(store, food, instead?.id ?? null))}
      onRemove={(food) => changing(() => deleteOwnFood(store, food.id))}
    />
  );
}
