/** Lessons of the bakes as the plan of one recipe takes them. */
import { type BakeFacts, type Lesson, lessonsFrom, type Taught } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';

export const lessonsOf = (facts: readonly BakeFacts[], own: readonly Food[]): Lesson[] =>
  lessonsFrom(facts, new Set(own.map(({ id }) => id)));

/** How the switch of a change that was accepted for a recipe is called. */
export const changeSwitch = (recipeId: string | null, changeId: string): string =>
  `change:${recipeId ?? ''}:${changeId}`;

/** Lessons that are not switched off, for a recipe. */
export function taughtOf(
  lessons: readonly Lesson[],
  own: readonly Food[],
  off: readonly string[],
  recipeId: string | null,
): Taught {
  const start = changeSwitch(recipeId, '');
  return {
    lessons: lessons.filter(({ id }) => !off.includes(id)),
    recipeId,
    foodNames: Object.fromEntries(own.map(({ id, name }) => [id, name])),
    changesOff: off.flatMap((id) => (id.startsWith(start) ? [id.slice(start.length)] : [])),
  };
}
