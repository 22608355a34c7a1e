/** Data that a newer build has written: it is read and exported, and nothing of it is changed. */
import type Dexie from 'dexie';
import type { DBCore, Middleware } from 'dexie';

/** Native versions are ten times the version numbers in `db.ts` (Dexie documentation). */
const STEP = 10;

class NewerDataError extends Error {
  override readonly name = 'NewerDataError';
}

/**
 * The browser's database factory without the library's own mending: opening data of a newer build, that would
 * add tables it misses and raise the version by one, which no declared version does.
 */
export function unmended(factory: IDBFactory): IDBFactory {
  const open: IDBFactory['open'] = (name, version) => {
    if (version === undefined) return factory.open(name);
    if (version % STEP !== 0) throw new DOMException('no mending of newer data', 'VersionError');
    return factory.open(name, version);
  };
  return {
    open,
    cmp: (a, b) => factory.cmp(a, b),
    databases: () => factory.databases(),
    deleteDatabase: (name) => factory.deleteDatabase(name),
  };
}

/** True when the open database was written by a build with a higher version than `declared`. */
export const isNewer = (db: Dexie, declared: number): boolean =>
  db.backendDB().version >= (declared + 1) * STEP;

/** Refuses every change while `closed` says so. @throws {NewerDataError} from what would have changed something. */
export const readOnlyWhen = (closed: () => boolean): Middleware<DBCore> => ({
  stack: 'dbcore',
  name: 'read-only',
  create: (core) => ({
    ...core,
    table: (name) => {
      const table = core.table(name);
      return {
        ...table,
        mutate: (request) => {
          if (closed()) throw new NewerDataError('written by a newer build');
          return table.mutate(request);
        },
      };
    },
  }),
});
