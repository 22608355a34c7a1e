import { useMemo, useState } from 'preact/hooks';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import {
  aliasMap,
  aliasName,
  deleteAlias,
  listAliases,
  saveAlias,
} from '../../store/kept/aliases.ts';
import type { Alias } from '../../store/records.ts';

/** Runs a job on the store: the popup opens it for each, the full view keeps it open. */
export type WithStore = <T>(job: (store: Store) => Promise<T>) => Promise<T>;

export interface Names {
  aliases: readonly Alias[];
  /** As the engine takes them. */
  map: Record<string, string>;
  /** What went wrong last, in plain words. */
  failure: string | null;
  /** The food a name of a recipe stands for by the user's own word, or null. */
  meant(name: string): Alias | null;
  remember(name: string, food: { id: string; name: string }): void;
  forget(name: string): void;
  reload(): void;
}

/** The user's own names for foods, on disk: a change reaches the recipe on the screen at once. */
export function useNames(start: readonly Alias[], withStore: WithStore): Names {
  const [aliases, setAliases] = useState(start);
  const [failure, setFailure] = useState<string | null>(null);
  const map = useMemo(() => aliasMap(aliases), [aliases]);
  const change = (job: (store: Store) => Promise<void>) =>
    withStore(async (store) => {
      await job(store);
      return listAliases(store);
    }).then(
      (list) => {
        setAliases(list);
        setFailure(null);
      },
      (error) => setFailure(storageMessage(error)),
    );
  return {
    aliases,
    map,
    failure,
    meant: (name) => aliases.find((alias) => alias.name === aliasName(name)) ?? null,
    remember: (name, food) =>
      void change((store) =>
        saveAlias(store, {
          name,
          foodId: food.id,
          foodName: food.name,
          addedAt: Date.now(),
        }),
      ),
    forget: (name) => void change((store) => deleteAlias(store, name)),
    reload: () => void change(async () => {}),
  };
}
