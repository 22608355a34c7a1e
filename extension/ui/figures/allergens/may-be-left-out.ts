/** Which of a page's lines a dish can do without, so that leaving one out may be offered. */
import { type Adaptation, isDough, type Role } from '../../../../engine/model.ts';

/** What a dough or batter, and what any other dish stands on. Common practice, no source. */
const DOUGH_NEEDS: ReadonlySet<Role> = new Set([
  'structure',
  'starch-bulk',
  'liquid',
  'fat',
  'egg',
  'leavening',
  'yeast',
  'yeast-food',
  'binder',
]);
const DISH_NEEDS: ReadonlySet<Role> = new Set(['structure', 'starch-bulk', 'wrapper', 'binder']);

/** A line that no food is known for has no job that could be told. */
export function mayBeLeftOut({ plan }: Pick<Adaptation, 'plan'>, key: string): boolean {
  const needs = isDough(plan.family.id) ? DOUGH_NEEDS : DISH_NEEDS;
  return (plan.roles[key] ?? []).every((role) => !needs.has(role));
}
