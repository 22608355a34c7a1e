/** Which kept dishes are shown, and in what order. */
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { locale } from '../words/say.ts';

export const ORDERS = ['changed', 'netCarbs', 'family', 'title'] as const;
export type Order = (typeof ORDERS)[number];

export interface Wanted {
  /** Words that all have to be in title, ingredients, note, name or tags. */
  text: string;
  /** One tag, or null for all dishes. */
  tag: string | null;
  /** Only what has worked. */
  worked: boolean;
  order: Order;
}

export const EVERYTHING: Wanted = { text: '', tag: null, worked: false, order: 'changed' };

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');

/** Dishes without a figure come last. */
const netOf = ({ figures }: ShelfRow): number => figures?.afterG ?? Number.POSITIVE_INFINITY;

const COMPARE: Record<Order, (a: ShelfRow, b: ShelfRow) => number> = {
  changed: (a, b) => b.updatedAt - a.updatedAt,
  netCarbs: (a, b) => netOf(a) - netOf(b) || b.updatedAt - a.updatedAt,
  family: (a, b) => (a.family ?? '~').localeCompare(b.family ?? '~') || b.updatedAt - a.updatedAt,
  title: (a, b) => a.title.localeCompare(b.title, locale()),
};

export function findKept(rows: readonly ShelfRow[], wanted: Wanted): ShelfRow[] {
  const words = wordsOf(wanted.text);
  return rows
    .filter(
      (row) =>
        (wanted.tag === null || row.tags.includes(wanted.tag)) &&
        (!wanted.worked || row.worked) &&
        words.every((word) => row.words.includes(word)),
    )
    .sort(COMPARE[wanted.order]);
}

/** Tags in use, the commonest first. */
export function tagsOf(rows: readonly ShelfRow[]): string[] {
  const counts = new Map<string, number>();
  for (const tag of rows.flatMap(({ tags }) => tags)) counts.set(tag, (counts.get(tag) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || a.localeCompare(b)).map(([tag]) => tag);
}
