/** Which foods belong together in the kitchen, such as binders or pasta: `data/tags.json`, asked by {@link hasTag}. */
import rows from './data/tags.json' with { type: 'json' };
import type { WrittenTag } from './tag-row.ts';

/** A class of foods; the file's keys are the tags. */
export type Tag = keyof typeof rows;

const ROWS: Readonly<Record<string, WrittenTag>> = rows;

/** Whether a word is the name of a class. */
export const isTag = (word: string): word is Tag => Object.hasOwn(ROWS, word);

const sets = new Map<string, ReadonlySet<string>>();

function foodsOf(tag: string): ReadonlySet<string> {
  const known = sets.get(tag);
  if (known) return known;
  const row = ROWS[tag];
  const found = new Set(row?.foods ?? []);
  sets.set(tag, found);
  for (const other of row?.includes ?? []) for (const id of foodsOf(other)) found.add(id);
  return found;
}

/**
 * Whether a food belongs to a class of foods.
 *
 * @param food a food, or its id
 * @example hasTag(food, 'binder')
 */
export const hasTag = (food: string | { readonly id: string }, tag: Tag): boolean =>
  foodsOf(tag).has(typeof food === 'string' ? food : food.id);

/** Ids of the foods of a class, in the file's order. */
export const foodsTagged = (tag: Tag): readonly string[] => [...foodsOf(tag)];
