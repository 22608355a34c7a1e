/** The user's own names for foods. One food a name; a newer choice replaces the older. */
import type { Store } from '../db.ts';
import { Alias } from '../records.ts';

/** 'Strong  Flour ' and 'strong flour' are one name. */
export const aliasName = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();

/** Names that can be read, in alphabetical order. @throws the storage layer's error. */
export async function listAliases(store: Store): Promise<Alias[]> {
  const rows: unknown[] = await store.aliases.orderBy('name').toArray();
  return rows.flatMap((row) => {
    const read = Alias.safeParse(row);
    return read.success ? [read.data] : [];
  });
}

/** Resolves after the transaction has ended. @throws the storage layer's error; nothing is changed then. */
export async function saveAlias(store: Store, alias: Alias): Promise<void> {
  const row = { ...alias, name: aliasName(alias.name) };
  await store.transaction('rw', store.aliases, () => store.aliases.put(row));
}

/** @throws the storage layer's error; nothing is changed then. */
export async function deleteAlias(store: Store, name: string): Promise<void> {
  await store.transaction('rw', store.aliases, () => store.aliases.delete(aliasName(name)));
}

/** As the engine takes them: name to food id. */
export const aliasMap = (aliases: readonly Alias[]): Record<string, string> =>
  Object.fromEntries(aliases.map(({ name, foodId }) => [name, foodId]));
