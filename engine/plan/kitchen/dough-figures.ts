/** Figures a baker checks, percent of the flour base. */
import type { DoughFigures } from '../../model.ts';
import { fat, gluten, starch } from '../dish/food-figures.ts';
import { type Amount, total } from './planned-masses.ts';
import { hydrating } from './water.ts';

const round = (value: number): number => Math.round(value * 100) / 100;

/** Baker's percentages of a dough; null when it has no flour base. */
export function doughFigures(amounts: readonly Amount[]): DoughFigures | null {
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  if (base <= 0) return null;
  const percent = (attribute: (a: Amount) => number): number =>
    round((100 * total(amounts, attribute)) / base);
  const role =
    (...names: string[]) =>
    (a: Amount): number =>
      names.includes(a.role) ? 1 : 0;
  return {
    flourBaseG: round(base),
    hydrationPct: percent(hydrating),
    saltPct: percent(role('salt')),
    yeastPct: percent(role('yeast')),
    binderPct: percent(role('binder')),
    fatPct: percent((a) => (a.base || a.role === 'fat' ? fat(a.food) * a.eaten : 0)),
    sugarPct: percent(role('sweetness', 'yeast-food')),
    glutenProteinPct: percent((a) => (a.base ? gluten(a.food) : 0)),
    digestibleStarchPct: percent((a) => (a.base ? starch(a.food) : 0)),
  };
}
