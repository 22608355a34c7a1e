/** How much work a search may do: counted, not timed, so that every machine stops at the same place. */
export interface Work {
  /** Cells of tableaux that pivots and copies may still go through. */
  left: number;
  /** A search ended before it was sure of its answer. */
  ranOut: boolean;
}

export const workOf = (cells: number): Work => ({ left: cells, ranOut: false });

/** No limit but the search's own. */
export const unlimited = (): Work => workOf(Number.POSITIVE_INFINITY);
