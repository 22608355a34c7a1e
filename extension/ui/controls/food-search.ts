/** Finding a food in the table by typed words. */
import type { Food } from '../../../engine/model.ts';
import { foodWord } from '../words/food-words.ts';

const plain = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();

/** Rank of a name for a query: 0 the same, 1 begins with it, 2 a word begins with it, 3 holds it, null none. */
function rank(name: string, query: string): number | null {
  if (name === query) return 0;
  if (name.startsWith(query)) return 1;
  if (name.includes(` ${query}`)) return 2;
  return name.includes(query) ? 3 : null;
}

/** An alias counts for less than a name, unless it is the very word. */
const ALIAS_PENALTY = 2.5;

/** Foods whose name, in English or on the screen, or alias holds the query, best first, at most `most`. */
export function searchFoods(foods: readonly Food[], query: string, most = 8): Food[] {
  const wanted = plain(query);
  if (wanted.length < 2) return [];
  const found: { food: Food; score: number }[] = [];
  for (const food of foods) {
    const names = new Set([food.name, foodWord(food.id, food.name)]);
    const byName = [...names].map((name) => rank(plain(name), wanted) ?? 99);
    const byAlias = food.aliases.map((name) => (rank(plain(name), wanted) ?? 99) + ALIAS_PENALTY);
    const score = Math.min(...byName, ...byAlias);
    if (score < 99) found.push({ food, score });
  }
  found.sort((a, b) => a.score - b.score || a.food.name.length - b.food.name.length);
  return found.slice(0, most).map(({ food }) => food);
}
