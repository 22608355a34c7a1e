/** How many of one unit make another, by definition of the units. */
import definitions from './unit-sizes.json' with { type: 'json' };

const SYSTEMS: readonly Readonly<Record<string, number>>[] = Object.values(definitions).map(
  ({ sizes }) => sizes,
);
/** Rounding in the tables' fifth decimal, far below any step between two units. */
const ROUNDING = 1e-4;

/** How many of the second unit make the first, where that is a whole number ('lb' and 'oz': 16); else null. */
export function unitsIn(large: string, small: string): number | null {
  for (const sizes of SYSTEMS) {
    const ratio = (sizes[large] ?? Number.NaN) / (sizes[small] ?? Number.NaN);
    const steps = Math.round(ratio);
    if (steps > 0 && Math.abs(ratio - steps) < ROUNDING) return steps;
  }
  return null;
}
