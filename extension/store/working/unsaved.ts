/**
 * What is being worked on, recipe by recipe, whether it was kept or not: the last twenty, each under an id
 * of its own that stands in the full page's address. Held in `storage.local`, so that an end of the browser, a
 * crash or an update loses none of it; a page that was only looked at is forgotten at the browser's next start.
 */

import { sameWork } from '../kept/saved.ts';
import { Current, sameRecipe } from './current.ts';

/** The part of `browser.storage.local` that is used here. */
export interface WorkArea {
  /** One key, or everything when it is null. */
  get(key: string | null): Promise<Record<string, unknown>>;
  set(values: Record<string, unknown>): Promise<void>;
  remove(keys: string[]): Promise<void>;
}

/** A recipe being worked on, as a page got it from here or put it here. */
export interface Held {
  id: string;
  /** Counts up with every write, over all recipes: what is newest needs no clock. */
  turn: number;
  /** Something of it was changed by the user. */
  edited: boolean;
  current: Current;
}

/** Recipes held at most; what was only looked at goes first, then the one touched longest ago. */
export const MOST_HELD = 20;

const PREFIX = 'work:';

function heldOf(key: string, value: unknown): Held | null {
  const { turn, edited, current } = (value ?? {}) as Record<'turn' | 'edited' | 'current', unknown>;
  const read = Current.safeParse(current);
  if (!read.success || typeof turn !== 'number') return null;
  return { id: key.slice(PREFIX.length), turn, edited: edited !== false, current: read.data };
}

/** Everything held, newest first; what is damaged is left out. */
export async function listWork(area: WorkArea): Promise<Held[]> {
  const held = Object.entries(await area.get(null)).flatMap(([key, value]) => {
    const one = key.startsWith(PREFIX) ? heldOf(key, value) : null;
    return one ? [one] : [];
  });
  return held.sort((a, b) => b.turn - a.turn);
}

/** The work with this id, or null when it is not held any more. */
export async function loadWork(area: WorkArea, id: string): Promise<Held | null> {
  const key = PREFIX + id;
  return heldOf(key, (await area.get(key))[key]);
}

/** What was done last with this recipe as read from its page, or null. */
export async function findWork(area: WorkArea, recipe: Current['recipe']): Promise<Held | null> {
  return (await listWork(area)).find(({ current }) => sameRecipe(current.recipe, recipe)) ?? null;
}

/** An id for a recipe: the same text always gets the same one (FNV-1a of 32 bits, twice). */
export function workId(recipe: Current['recipe']): string {
  const text = JSON.stringify(recipe);
  let forth = 0x811c9dc5;
  let back = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    forth = Math.imul(forth ^ text.charCodeAt(at), 0x01000193);
    back = Math.imul(back ^ text.charCodeAt(text.length - 1 - at), 0x01000193);
  }
  return (forth >>> 0).toString(36) + (back >>> 0).toString(36);
}

/** An id that nothing is held under, made from the recipe's. */
function freeId(recipe: Current['recipe'], held: readonly Held[]): string {
  const taken = new Set(held.map(({ id }) => id));
  const base = workId(recipe);
  let id = base;
  for (let count = 2; taken.has(id); count += 1) id = `${base}-${count}`;
  return id;
}

/** The id of work in just this state, so that opening a recipe again and again holds it once. */
const twinOf = (current: Current, held: readonly Held[]): string | null =>
  held.find((one) => one.current.savedId === current.savedId && sameWork(one.current, current))
    ?.id ?? null;

/** Can be read again from its page as it is: nothing is lost with it. */
const onlyLookedAt = ({ edited, current }: Held): boolean =>
  !edited && current.savedId === null && current.recipe.url !== null;

/** The ids of so many that go first: what was only looked at, then what was touched longest ago. */
function outOfRoom(newestFirst: readonly Held[], count: number): string[] {
  const oldestFirst = newestFirst.toReversed();
  const order = [
    ...oldestFirst.filter(onlyLookedAt),
    ...oldestFirst.filter((one) => !onlyLookedAt(one)),
  ];
  return order.slice(0, Math.max(0, count)).map(({ id }) => id);
}

/**
 * Holds a state. `known` is what this page loaded or stored last, null for a recipe that is opened for the
 * first time. When another page has written the same work in between, this one goes on under an id of its
 * own, so that neither loses what it did. Resolves with what is held now.
 * @throws the storage layer's error, as when there is no room; nothing is changed then.
 */
export async function storeWork(
  area: WorkArea,
  current: Current,
  known: Held | null,
): Promise<Held> {
  const held = await listWork(area);
  const here = known && held.find(({ id }) => id === known.id);
  const own = known !== null && (here === undefined || here?.turn === known.turn);
  const id = own ? known.id : (twinOf(current, held) ?? freeId(current.recipe, held));
  const turn = (held[0]?.turn ?? 0) + 1;
  const before = held.find((one) => one.id === id) ?? known;
  const edited = before !== null && (before.edited || !sameWork(before.current, current));
  await area.set({ [PREFIX + id]: { turn, edited, current } });
  const others = held.filter((one) => one.id !== id);
  await forgetWork(area, outOfRoom(others, others.length - (MOST_HELD - 1)));
  return { id, turn, edited, current };
}

/** Lets go of work that is given up. @throws the storage layer's error. */
export async function forgetWork(area: WorkArea, ids: readonly string[]): Promise<void> {
  if (ids.length > 0) await area.remove(ids.map((id) => PREFIX + id));
}

/**
 * Lets go of what was only looked at, since which pages were opened is not for the disk; what the addresses
 * in `shown` stand for, as of tabs that were brought back, stays.
 */
export async function forgetLookedAt(area: WorkArea, shown: readonly string[]): Promise<void> {
  const open = new Set(shown.map((address) => new URL(address).searchParams.get('work')));
  const held = await listWork(area);
  await forgetWork(
    area,
    held.filter((one) => onlyLookedAt(one) && !open.has(one.id)).map(({ id }) => id),
  );
}

/** Holds what one page works on, one state after the other in the order they came. */
export interface WorkHolder {
  /** @throws the storage layer's error; a later state is held all the same. */
  hold(current: Current): Promise<Held>;
}

/** A holder for a page that started with `start`; another recipe on the same page begins anew. */
export function workHolder(area: WorkArea, start: Held | null): WorkHolder {
  let known = start;
  let last: Promise<unknown> = Promise.resolve();
  const store = async (current: Current): Promise<Held> => {
    const other = known !== null && !sameRecipe(known.current.recipe, current.recipe);
    known = await storeWork(area, current, other ? null : known);
    return known;
  };
  return {
    hold(current) {
      const held = last.then(() => store(current));
      last = held.catch(() => {});
      return held;
    },
  };
}
